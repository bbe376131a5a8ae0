/** RangeAreas of the Excel API: several rectangles of one sheet. */
import { sheetColumns, sheetRows } from '../../../shared/a1Notation'
import { numberArgument } from './memberArguments'
import { itemNotFound } from './faults'
import { hostType, type HostObject, type HostType } from './hostObject'
import { rangeObject } from './range'
import { addressOf, cellCount } from './rangeTarget'
import type { AreasTarget } from './session'

function ranges({ session, sheetId, areas }: AreasTarget): HostObject[] {
  return areas.map((area) => rangeObject({ session, sheetId, area }))
}

const areasObject = hostType<AreasTarget>({
  name: 'RangeCollection',
  items: ranges,
  opens: {
    getItemAt: (target, args) => {
      const range = ranges(target)[numberArgument(args, 0, 'The index')]
      if (!range) throw itemNotFound('area of that index')
      return range
    }
  },
  calls: { getCount: ({ areas }) => areas.length }
})

export const rangeAreasObject: HostType<AreasTarget> = hostType({
  name: 'RangeAreas',
  reads: {
    address: ({ session, sheetId, areas }) =>
      areas.map((area) => addressOf({ session, sheetId, area })).join(', '),
    areaCount: ({ areas }) => areas.length,
    cellCount: ({ areas }) => {
      const cells = areas.reduce((sum, area) => sum + cellCount(area), 0)
      return cells > 2 ** 31 - 1 ? -1 : cells
    },
    isEntireColumn: ({ areas }) => areas.every((area) => area.rows === sheetRows),
    isEntireRow: ({ areas }) => areas.every((area) => area.columns === sheetColumns)
  },
  parts: {
    areas: (target) => areasObject(target),
    worksheet: ({ session, sheetId }) => session.types.worksheet({ session, sheetId })
  }
})

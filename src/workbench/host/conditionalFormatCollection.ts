/** Conditional formats of the Excel API, of the one kind that the add-in makes: a formula of one's own and a look. */
import { sharedPart, type Area } from '../../../shared/cells'
import type { AddedLook, ConditionalFormat } from '../book'
import { booleanValue, textValue } from './memberArguments'
import { colorValue, upperColor } from './colors'
import { invalidArgument, itemNotFound, notAnswered } from './faults'
import { hostType, type HostObject } from './hostObject'
import type { RangeTarget } from './rangeTarget'
import { writable, type SheetTarget } from './session'

interface FormatTarget extends SheetTarget {
  id: string
}

function formatOf({ session, sheetId, id }: FormatTarget): ConditionalFormat {
  const known = session.book.conditionalFormats(sheetId).find((other) => other.id === id)
  if (!known) throw itemNotFound('conditional format of that id')
  return known
}

function setLook(target: FormatTarget, part: AddedLook): void {
  const { session, sheetId, id } = target
  const look = { ...formatOf(target).look, ...part }
  writable(session, sheetId).changeConditionalFormat(sheetId, id, { look })
}

function setFormula(target: FormatTarget, to: unknown): void {
  const formula = textValue(to, 'The formula of the conditional format')
  if (!formula.startsWith('=')) throw invalidArgument('The formula of a conditional format begins with "=".')
  const { session, sheetId, id } = target
  formatOf(target)
  writable(session, sheetId).changeConditionalFormat(sheetId, id, { formula })
}

const ruleObject = hostType<FormatTarget>({
  name: 'ConditionalFormatRule',
  reads: { formula: (target) => formatOf(target).formula },
  writes: { formula: setFormula }
})

const fontObject = hostType<FormatTarget>({
  name: 'ConditionalRangeFont',
  reads: {
    bold: (target) => formatOf(target).look.bold ?? null,
    italic: (target) => formatOf(target).look.italic ?? null,
    color: (target) => upperColor(formatOf(target).look.color ?? null)
  },
  writes: {
    bold: (target, to) => {
      setLook(target, { bold: booleanValue(to, 'Bold') })
    },
    italic: (target, to) => {
      setLook(target, { italic: booleanValue(to, 'Italic') })
    },
    color: (target, to) => {
      setLook(target, { color: colorValue(to) })
    }
  }
})

const fillObject = hostType<FormatTarget>({
  name: 'ConditionalRangeFill',
  reads: { color: (target) => upperColor(formatOf(target).look.fill ?? null) },
  writes: {
    color: (target, to) => {
      setLook(target, { fill: colorValue(to) })
    }
  }
})

const rangeFormat = hostType<FormatTarget>({
  name: 'ConditionalRangeFormat',
  parts: { font: (target) => fontObject(target), fill: (target) => fillObject(target) }
})

const customObject = hostType<FormatTarget>({
  name: 'CustomConditionalFormat',
  parts: { rule: (target) => ruleObject(target), format: (target) => rangeFormat(target) }
})

const conditionalFormatObject = hostType<FormatTarget>({
  name: 'ConditionalFormat',
  identity: (target) => ({ Id: formatOf(target).id }),
  reads: { id: ({ id }) => id, type: () => 'Custom' },
  parts: { custom: (target) => customObject(target) }
})

/** Those that stand on a cell of the range, the one that wins first. */
function standingOn({ session, sheetId, area }: RangeTarget): HostObject[] {
  return session.book
    .conditionalFormats(sheetId)
    .filter(({ areas }) => areas.some((other) => sharedPart(other, area) !== null))
    .map(({ id }) => conditionalFormatObject({ session, sheetId, id }))
}

function covers(whole: Area, part: Area): boolean {
  const shared = sharedPart(whole, part)
  return shared !== null && shared.rows === part.rows && shared.columns === part.columns
}

export const conditionalFormatsObject = hostType<RangeTarget>({
  name: 'ConditionalFormatCollection',
  items: standingOn,
  item: ({ session, sheetId }, key) => {
    const target = { session, sheetId, id: String(key) }
    return conditionalFormatObject({ ...target, id: formatOf(target).id })
  },
  calls: {
    clearAll: ({ session, sheetId, area }) => {
      const book = writable(session, sheetId)
      for (const { id, areas } of book.conditionalFormats(sheetId)) {
        if (!areas.some((other) => sharedPart(other, area) !== null)) continue
        if (!areas.every((other) => covers(area, other)))
          throw notAnswered('ConditionalFormatCollection.clearAll on a part of the cells of a format')
        book.deleteConditionalFormat(sheetId, id)
      }
    }
  },
  opens: {
    add: ({ session, sheetId, area }, [kind]) => {
      if (kind !== 'Custom') throw notAnswered(`ConditionalFormatCollection.add('${String(kind)}')`)
      const { id } = writable(session, sheetId).addConditionalFormat(sheetId, area)
      return conditionalFormatObject({ session, sheetId, id })
    }
  }
})

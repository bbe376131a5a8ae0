/** RangeFormat of the Excel API with its font, fill and borders. */
import type { CellFormat } from '../book'
import { booleanValue, numberValue, oneOf, textValue } from './memberArguments'
import { fitColumns, fitRows, sameAcross, sizedSpan } from './cellSizes'
import { colorValue, upperColor } from './colors'
import { notAnswered } from './faults'
import { hostType, type HostObject } from './hostObject'
import type { RangeTarget } from './rangeTarget'
import { writable } from './session'

const horizontals = ['General', 'Left', 'Center', 'Right'] as const
const verticals = ['Top', 'Center', 'Bottom'] as const

function formatOf({ session, sheetId, area }: RangeTarget): CellFormat {
  return session.book.format(sheetId, area)
}

function change({ session, sheetId, area }: RangeTarget, format: Partial<CellFormat>): void {
  writable(session, sheetId).setFormat(sheetId, area, format)
}

const fontObject = hostType<RangeTarget>({
  name: 'RangeFont',
  reads: {
    bold: (target) => formatOf(target).bold,
    italic: (target) => formatOf(target).italic,
    size: (target) => formatOf(target).size,
    name: (target) => formatOf(target).fontName,
    color: (target) => upperColor(formatOf(target).color)
  },
  writes: {
    bold: (target, to) => {
      change(target, { bold: booleanValue(to, 'Bold') })
    },
    italic: (target, to) => {
      change(target, { italic: booleanValue(to, 'Italic') })
    },
    size: (target, to) => {
      change(target, { size: numberValue(to, 'The font size', 1) })
    },
    name: (target, to) => {
      change(target, { fontName: textValue(to, 'The font name') })
    },
    color: (target, to) => {
      change(target, { color: colorValue(to) })
    }
  }
})

/** Excel reads a cell without a fill as white. */
const fillObject = hostType<RangeTarget>({
  name: 'RangeFill',
  reads: { color: (target) => upperColor(formatOf(target).fill) },
  writes: {
    color: (target, to) => {
      change(target, { fill: colorValue(to) })
    }
  },
  calls: {
    clear: (target) => {
      change(target, { fill: null })
    }
  }
})

const borderObject = hostType<RangeTarget>({
  name: 'RangeBorder',
  reads: {
    sideIndex: () => 'EdgeBottom',
    style: (target) => (formatOf(target).bottomEdge === null ? 'None' : 'Continuous'),
    color: (target) => upperColor(formatOf(target).bottomEdge ?? '#000000'),
    weight: () => 'Thin'
  },
  writes: {
    style: (target, to) => {
      const style = oneOf(to, ['None', 'Continuous'], 'The style of the border')
      change(target, { bottomEdge: style === 'None' ? null : (formatOf(target).bottomEdge ?? '#000000') })
    },
    color: (target, to) => {
      change(target, { bottomEdge: colorValue(to) })
    },
    weight: (_target, to) => {
      oneOf(to, ['Thin'], 'The weight of the border')
    }
  }
})

function edge(target: RangeTarget, key: unknown): HostObject {
  if (key === 'EdgeBottom') return borderObject(target)
  throw notAnswered(`RangeBorderCollection.getItem('${String(key)}')`)
}

const bordersObject = hostType<RangeTarget>({
  name: 'RangeBorderCollection',
  item: edge,
  items: (target) => [borderObject(target)]
})

/** Excel's height of a row in points, from memory. */
const standardRowPoints = 15

export const rangeFormatObject = hostType<RangeTarget>({
  name: 'RangeFormat',
  reads: {
    horizontalAlignment: (target) => formatOf(target).horizontal,
    verticalAlignment: (target) => formatOf(target).vertical,
    wrapText: (target) => formatOf(target).wrap,
    columnWidth: ({ session: { book }, sheetId, area }) =>
      sameAcross(sizedSpan(area.column, area.columns), (column) => book.columnWidth(sheetId, column)),
    rowHeight: ({ session: { book }, sheetId, area }) =>
      sameAcross(sizedSpan(area.row, area.rows), (row) => book.rowHeight(sheetId, row))
  },
  writes: {
    horizontalAlignment: (target, to) => {
      change(target, { horizontal: oneOf(to, horizontals, 'The horizontal alignment') })
    },
    verticalAlignment: (target, to) => {
      change(target, { vertical: oneOf(to, verticals, 'The vertical alignment') })
    },
    wrapText: (target, to) => {
      change(target, { wrap: booleanValue(to, 'Wrapping') })
    },
    columnWidth: ({ session, sheetId, area }, to) => {
      const points = numberValue(to, 'The column width')
      writable(session, sheetId).setColumnWidth(sheetId, area.column, area.columns, points)
    },
    /** A grid in which rows fit their texts has no other standard than its own. */
    useStandardHeight: ({ session, sheetId, area }, to) => {
      if (!booleanValue(to, 'The standard height')) return
      writable(session, sheetId).setRowHeight(sheetId, area.row, area.rows, standardRowPoints)
    },
    rowHeight: ({ session, sheetId, area }, to) => {
      const points = numberValue(to, 'The row height')
      writable(session, sheetId).setRowHeight(sheetId, area.row, area.rows, points)
    }
  },
  parts: {
    font: (target) => fontObject(target),
    fill: (target) => fillObject(target),
    borders: (target) => bordersObject(target)
  },
  calls: { autofitColumns: fitColumns, autofitRows: fitRows }
})

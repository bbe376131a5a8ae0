/** Range of the Excel API. */
import { type Area, type Cell, sharedPart } from '../../../shared/cells'
import { areaAddress, boundingArea, sheetColumns, sheetRows, wholeSheet } from '../../../shared/a1Notation'
import { numberArgument, oneOf } from './memberArguments'
import { asWritten, isCell, isText, mostCells, asRead, valueType, withoutGaps } from './cellBlocks'
import { rangeExtent } from './cellSizes'
import { conditionalFormatsObject } from './conditionalFormatCollection'
import { dataValidationObject } from './dataValidation'
import { invalidArgument, invalidOperation, itemNotFound, notAnswered } from './faults'
import { hostType, type HostObject, type HostType } from './hostObject'
import { rangeFormatObject } from './rangeFormat'
import { addressOf, cellCount, rangeArgument, rangeGiven, rangeOn, type RangeTarget } from './rangeTarget'
import { writable } from './session'
import { usedWithin } from './usedRange'

/** A block of the area, or null where Excel would give none because it is too large. */
function block<T>(target: RangeTarget, read: (sheetId: string, area: Area) => T): T | null {
  const cells = cellCount(target.area)
  if (cells > mostCells) return null
  target.session.book.answering?.(cells)
  return read(target.sheetId, target.area)
}

function setCells(target: RangeTarget, to: unknown): void {
  const book = writable(target.session, target.sheetId)
  withoutGaps(asWritten(to, target.area, isCell), target.area, (area, cells: Cell[][]) => {
    book.setValues(target.sheetId, area, cells)
  })
}

function setNumberFormat(target: RangeTarget, to: unknown): void {
  const book = writable(target.session, target.sheetId)
  withoutGaps(asWritten(to, target.area, isText), target.area, (area, formats) => {
    book.setNumberFormats(target.sheetId, area, formats)
  })
}

/** True or false where all rows agree, null where they differ. Rows below the used ones are not looked at. */
function rowHidden({ session: { book }, sheetId, area }: RangeTarget): boolean | null {
  const used = book.usedArea(sheetId, false)
  const last = Math.min(area.rows, Math.max(1, (used ? used.row + used.rows : 0) + 1 - area.row))
  const first = book.rowHidden(sheetId, area.row)
  for (let row = 1; row < last; row++) if (book.rowHidden(sheetId, area.row + row) !== first) return null
  return first
}

/** The same of the columns. */
function columnHidden({ session: { book }, sheetId, area }: RangeTarget): boolean | null {
  const used = book.usedArea(sheetId, false)
  const last = Math.min(area.columns, Math.max(1, (used ? used.column + used.columns : 0) + 1 - area.column))
  const first = book.columnHidden(sheetId, area.column)
  for (let column = 1; column < last; column++)
    if (book.columnHidden(sheetId, area.column + column) !== first) return null
  return first
}

/** The same range moved and resized; refused where it leaves the sheet. */
function moved(target: RangeTarget, by: Partial<Area>): HostObject {
  const { row, column, rows, columns } = target.area
  const area = {
    row: row + (by.row ?? 0),
    column: column + (by.column ?? 0),
    rows: rows + (by.rows ?? 0),
    columns: columns + (by.columns ?? 0)
  }
  return rangeObject(rangeOn(target.session, target.sheetId, area))
}

/** A part of the range, counted from its own top left corner. It may lie outside, as in Excel. */
function part(target: RangeTarget, area: Partial<Area>): HostObject {
  const { row, column, rows, columns } = target.area
  const wanted = {
    row: row + (area.row ?? 0),
    column: column + (area.column ?? 0),
    rows: area.rows ?? rows,
    columns: area.columns ?? columns
  }
  return rangeObject(rangeOn(target.session, target.sheetId, wanted))
}

function common(target: RangeTarget, argument: unknown): HostObject | null {
  const other = rangeArgument(target.session, target.sheetId, argument)
  const area = sharedPart(target.area, other.area)
  return area && rangeObject({ ...target, area })
}

function used(target: RangeTarget, valuesOnly: unknown): HostObject | null {
  const area = usedWithin(target.session.book, target.sheetId, target.area, valuesOnly === true)
  return area && rangeObject({ ...target, area })
}

function clear(target: RangeTarget, what: unknown): void {
  const kind = what ?? 'All'
  const book = writable(target.session, target.sheetId)
  const used = book.usedArea(target.sheetId, false)
  const area = used && sharedPart(used, target.area)
  if (kind === 'All') book.clear(target.sheetId, target.area)
  else if (oneOf(kind, ['Contents', 'Formats'], 'What to clear') === 'Formats')
    throw notAnswered("Range.clear('Formats')")
  else if (area)
    book.setValues(
      target.sheetId,
      area,
      Array.from({ length: area.rows }, () => Array<Cell>(area.columns).fill(''))
    )
}

/** Cells of another place, of the same size, with their looks. */
function copyFrom(target: RangeTarget, [source, kind, blanks, transpose]: unknown[]): void {
  const from = rangeGiven(source)
  if (from === null) throw notAnswered('Range.copyFrom with anything but a range')
  if ((kind ?? 'All') !== 'All' || blanks === true || transpose === true)
    throw notAnswered('Range.copyFrom for anything but all of the cells')
  const { rows, columns } = from.area
  if (rows !== target.area.rows || columns !== target.area.columns)
    throw notAnswered('Range.copyFrom for a place of another size')
  writable(target.session, target.sheetId).copyCells(from.sheetId, from.area, target.sheetId, target.area)
}

function merged(target: RangeTarget): HostObject | null {
  const areas = target.session.book
    .mergedAreas(target.sheetId)
    .filter((area) => sharedPart(area, target.area) !== null)
  // Excel's own bound (documentation of Range.getMergedAreasOrNullObject).
  if (areas.length > 512) throw invalidOperation('The range has more than 512 merged areas.')
  const { session, sheetId } = target
  return areas.length ? session.types.rangeAreas({ session, sheetId, areas }) : null
}

export const rangeObject: HostType<RangeTarget> = hostType({
  name: 'Range',
  reads: {
    address: addressOf,
    cellCount: ({ area }) => (cellCount(area) > 2 ** 31 - 1 ? -1 : cellCount(area)),
    rowIndex: ({ area }) => area.row,
    columnIndex: ({ area }) => area.column,
    rowCount: ({ area }) => area.rows,
    columnCount: ({ area }) => area.columns,
    values: (target) => block(target, (sheetId, area) => asRead(target.session.book.values(sheetId, area))),
    formulas: (target) =>
      block(target, (sheetId, area) => asRead(target.session.book.formulas(sheetId, area))),
    text: (target) => block(target, (sheetId, area) => target.session.book.texts(sheetId, area)),
    valueTypes: (target) =>
      block(target, (sheetId, area) =>
        target.session.book.values(sheetId, area).map((row) => row.map(valueType))
      ),
    numberFormat: (target) =>
      block(target, (sheetId, area) => target.session.book.numberFormats(sheetId, area)),
    rowHidden,
    columnHidden,
    ...rangeExtent,
    isEntireColumn: ({ area }) => area.rows === sheetRows,
    isEntireRow: ({ area }) => area.columns === sheetColumns
  },
  writes: { values: setCells, formulas: setCells, numberFormat: setNumberFormat },
  parts: {
    format: (target) => rangeFormatObject(target),
    worksheet: ({ session, sheetId }) => session.types.worksheet({ session, sheetId }),
    dataValidation: (target) => dataValidationObject(target),
    conditionalFormats: (target) => conditionalFormatsObject(target)
  },
  opens: {
    getCell: (target, args) =>
      part(target, {
        row: numberArgument(args, 0, 'The row'),
        column: numberArgument(args, 1, 'The column'),
        rows: 1,
        columns: 1
      }),
    getRow: (target, args) => part(target, { row: numberArgument(args, 0, 'The row'), rows: 1 }),
    getColumn: (target, args) => part(target, { column: numberArgument(args, 0, 'The column'), columns: 1 }),
    getLastRow: (target) => part(target, { row: target.area.rows - 1, rows: 1 }),
    getLastCell: (target) =>
      part(target, { row: target.area.rows - 1, column: target.area.columns - 1, rows: 1, columns: 1 }),
    getResizedRange: (target, args) =>
      moved(target, {
        rows: numberArgument(args, 0, 'The change of rows'),
        columns: numberArgument(args, 1, 'The change of columns')
      }),
    getOffsetRange: (target, args) =>
      moved(target, {
        row: numberArgument(args, 0, 'The offset of rows'),
        column: numberArgument(args, 1, 'The offset of columns')
      }),
    getBoundingRect: (target, args) =>
      rangeObject({
        ...target,
        area: boundingArea(target.area, rangeArgument(target.session, target.sheetId, args[0]).area)
      }),
    getEntireColumn: (target) =>
      rangeObject({ ...target, area: { ...target.area, row: 0, rows: sheetRows } }),
    getEntireRow: (target) =>
      rangeObject({ ...target, area: { ...target.area, column: 0, columns: sheetColumns } }),
    getIntersection: (target, args) => {
      const shared = common(target, args[0])
      if (!shared) throw itemNotFound('cell that both ranges share')
      return shared
    },
    getIntersectionOrNullObject: (target, args) => common(target, args[0]),
    getUsedRange: (target, args) => used(target, args[0]) ?? part(target, { rows: 1, columns: 1 }),
    getUsedRangeOrNullObject: (target, args) => used(target, args[0]),
    getMergedAreasOrNullObject: merged
  },
  calls: {
    select: ({ session, sheetId, area }) => {
      session.book.select(sheetId, area)
    },
    copyFrom,
    clear: (target, args) => {
      clear(target, args[0])
    },
    /** The client announces the shape of a large block before it sends it in pieces. */
    _ValidateArraySize: ({ area }, [rows, columns]) => {
      if (rows !== area.rows || columns !== area.columns)
        throw invalidArgument(`The block given is not of the shape of ${areaAddress(area)}.`)
    }
  }
})

export function rangeOfSheet(target: Omit<RangeTarget, 'area'>): HostObject {
  return rangeObject({ ...target, area: wholeSheet })
}

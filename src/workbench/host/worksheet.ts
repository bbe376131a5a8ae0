/** Worksheet of the Excel API. */
import { sheetNameFault } from './sheetNames'
import { numberArgument, booleanValue, oneOf, textValue } from './memberArguments'
import { chartsObject } from './chartCollection'
import { colorValue } from './colors'
import { eventRegistrations } from './eventRegistrations'
import { invalidOperation, itemExists, invalidArgument } from './faults'
import { freezePanesObject } from './freezePanes'
import { hostType, type HostObject, type HostType } from './hostObject'
import { sheetNamesObject } from './namedItems'
import { horizontalPageBreaksObject } from './pageBreakCollection'
import { pageLayoutObject } from './pageLayout'
import { rangeObject, rangeOfSheet } from './range'
import { rangeByText, rangeOn } from './rangeTarget'
import { sheetOf, writable, writableStructure, type SheetTarget } from './session'
import { shapesObject } from './shapeCollection'
import { tablesObject } from './tableCollection'
import { usedWithin } from './usedRange'
import { wholeSheet } from '../../../shared/a1Notation'

function rename({ session, sheetId }: SheetTarget, to: unknown): void {
  const name = textValue(to, 'The name')
  const fault = sheetNameFault(name)
  if (fault) throw invalidArgument(fault)
  const taken = session.book
    .sheets()
    .some((sheet) => sheet.id !== sheetId && sheet.name.toLowerCase() === name.toLowerCase())
  const others = (session.book.otherSheets?.() ?? []).map((other) => other.toLowerCase())
  if (taken || others.includes(name.toLowerCase())) throw itemExists(`a sheet named "${name}"`)
  sheetOf(session, sheetId)
  writableStructure(session).renameSheet(sheetId, name)
}

function remove({ session, sheetId }: SheetTarget): void {
  const sheet = sheetOf(session, sheetId)
  const shown = session.book.sheets().filter(({ visible }) => visible)
  if (sheet.visible && shown.length === 1) throw invalidOperation('The last visible sheet cannot be deleted.')
  writableStructure(session).deleteSheet(sheetId)
}

function used({ session, sheetId }: SheetTarget, valuesOnly: unknown): HostObject | null {
  const area = usedWithin(session.book, sheetId, wholeSheet, valuesOnly === true)
  return area && rangeObject({ session, sheetId, area })
}

function protectionOf(name: string) {
  return hostType<SheetTarget>({
    name,
    reads: { protected: ({ session, sheetId }) => session.book.isProtected(sheetId) }
  })
}
const protectionObject = protectionOf('WorksheetProtection')

export const worksheetObject: HostType<SheetTarget> = hostType({
  name: 'Worksheet',
  identity: ({ session, sheetId }) => ({ Id: sheetOf(session, sheetId).id }),
  reads: {
    id: ({ session, sheetId }) => sheetOf(session, sheetId).id,
    name: ({ session, sheetId }) => sheetOf(session, sheetId).name,
    visibility: ({ session, sheetId }) => (sheetOf(session, sheetId).visible ? 'Visible' : 'Hidden'),
    position: ({ session, sheetId }) => session.book.sheets().findIndex(({ id }) => id === sheetId),
    tabColor: ({ session, sheetId }) => session.book.tabColor(sheetId),
    showGridlines: ({ session, sheetId }) => session.book.gridlines(sheetId)
  },
  writes: {
    name: rename,
    tabColor: ({ session, sheetId }, to) => {
      writable(session, sheetId).setTabColor(sheetId, to === '' ? '' : colorValue(to))
    },
    visibility: ({ session, sheetId }, to) => {
      const book = writable(session, sheetId)
      const hidden = oneOf(to, ['Visible', 'Hidden'], 'The visibility') === 'Hidden'
      const shown = book.sheets().filter(({ visible }) => visible)
      if (hidden && shown.length === 1 && shown[0]?.id === sheetId)
        throw invalidOperation('The last visible sheet cannot be hidden.')
      book.hideSheet(sheetId, hidden)
    },
    /** The client's wire name of showGridlines. */
    gridlines: ({ session, sheetId }, to) => {
      writable(session, sheetId).setGridlines(sheetId, booleanValue(to, 'Showing gridlines'))
    }
  },
  parts: {
    tables: (target) => tablesObject(target),
    names: (target) => sheetNamesObject(target),
    freezePanes: (target) => freezePanesObject(target),
    pageLayout: (target) => pageLayoutObject(target),
    horizontalPageBreaks: (target) => horizontalPageBreaksObject(target),
    protection: (target) => protectionObject(target),
    shapes: (target) => shapesObject(target),
    charts: (target) => chartsObject(target)
  },
  opens: {
    getRange: ({ session, sheetId }, [address]) =>
      address === null || address === undefined || address === ''
        ? rangeOfSheet({ session, sheetId })
        : rangeObject(rangeByText(session, sheetId, textValue(address, 'The address'))),
    getRangeByIndexes: ({ session, sheetId }, args) =>
      rangeObject(
        rangeOn(session, sheetId, {
          row: numberArgument(args, 0, 'The first row'),
          column: numberArgument(args, 1, 'The first column'),
          rows: numberArgument(args, 2, 'The number of rows'),
          columns: numberArgument(args, 3, 'The number of columns')
        })
      ),
    getCell: ({ session, sheetId }, args) =>
      rangeObject(
        rangeOn(session, sheetId, {
          row: numberArgument(args, 0, 'The row'),
          column: numberArgument(args, 1, 'The column'),
          rows: 1,
          columns: 1
        })
      ),
    getUsedRange: (target, args) =>
      used(target, args[0]) ?? rangeObject({ ...target, area: { row: 0, column: 0, rows: 1, columns: 1 } }),
    getUsedRangeOrNullObject: (target, args) => used(target, args[0])
  },
  calls: {
    activate: ({ session, sheetId }) => {
      sheetOf(session, sheetId)
      session.book.activateSheet(sheetId)
    },
    delete: remove,
    ...eventRegistrations((target: SheetTarget) => target)
  }
})

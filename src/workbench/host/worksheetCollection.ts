/** WorksheetCollection of the Excel API. */
import type { SheetInfo } from '../book'
import { eventRegistrations } from './eventRegistrations'
import { invalidArgument, itemExists, itemNotFound } from './faults'
import { hostType, type HostObject } from './hostObject'
import { anySheet, writableStructure, type Session } from './session'
import { sheetNameFault } from './sheetNames'
import { worksheetObject } from './worksheet'

function shown(session: Session, visibleOnly: unknown): SheetInfo[] {
  return session.book.sheets().filter(({ visible }) => visible || visibleOnly !== true)
}

function objectOf(session: Session, sheet: SheetInfo): HostObject {
  return worksheetObject({ session, sheetId: sheet.id })
}

/** By id or by name, in any case of letters. */
function find(session: Session, key: unknown): HostObject | null {
  const text = String(key).toLowerCase()
  const sheets = session.book.sheets()
  const sheet = sheets.find(({ id }) => id === key) ?? sheets.find(({ name }) => name.toLowerCase() === text)
  return sheet ? objectOf(session, sheet) : null
}

function item(session: Session, key: unknown): HostObject {
  const sheet = find(session, key)
  if (!sheet) throw itemNotFound(`sheet "${String(key)}"`)
  return sheet
}

function add(session: Session, given: unknown): HostObject {
  const name = typeof given === 'string' && given !== '' ? given : freeName(session)
  const fault = sheetNameFault(name)
  if (fault) throw invalidArgument(fault)
  const others = (session.book.otherSheets?.() ?? []).map((other) => other.toLowerCase())
  if (find(session, name) || others.includes(name.toLowerCase())) throw itemExists(`a sheet named "${name}"`)
  return objectOf(session, writableStructure(session).addSheet(name))
}

function freeName(session: Session): string {
  let number = session.book.sheets().length + 1
  while (find(session, `Sheet${number}`)) number++
  return `Sheet${number}`
}

function end(session: Session, visibleOnly: unknown, index: 0 | -1): HostObject {
  const sheet = shown(session, visibleOnly).at(index)
  if (!sheet) throw itemNotFound('visible sheet')
  return objectOf(session, sheet)
}

export const worksheetsObject = hostType<Session>({
  name: 'WorksheetCollection',
  items: (session) => session.book.sheets().map((sheet) => objectOf(session, sheet)),
  item,
  opens: {
    add: (session, args) => add(session, args[0]),
    getItemOrNullObject: (session, args) => find(session, args[0]),
    getActiveWorksheet: (session) => item(session, session.book.activeSheet()),
    getFirst: (session, args) => end(session, args[0], 0),
    getLast: (session, args) => end(session, args[0], -1)
  },
  calls: {
    getCount: (session, args) => shown(session, args[0]).length,
    ...eventRegistrations((session: Session) => ({ session, sheetId: anySheet }))
  }
})

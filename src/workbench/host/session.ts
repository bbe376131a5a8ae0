/** What the host's objects share: the book, the objects that the client asked to keep, and the way events leave. */
import type { Area } from '../../../shared/cells'
import type { Book, SheetInfo } from '../book'
import { accessDenied, itemNotFound } from './faults'
import type { HostObject, HostType } from './hostObject'

/** Stands for the id of a sheet where the events of all sheets are meant. */
export const anySheet = ''

/** Events that a client has asked for; selection of the workbook is always sent. */
export type EventKind = 'selection' | 'changed' | 'activated'

/** A sheet of the book. */
export interface SheetTarget {
  session: Session
  sheetId: string
}

/** Several rectangles of one sheet. */
export interface AreasTarget extends SheetTarget {
  areas: Area[]
}

/**
 * Types whose objects are reached from parts of their own: a sheet has ranges, and a range leads back to its sheet. The
 * host names them here, so that no file has to import the one that imports it.
 */
export interface WholeTypes {
  worksheet: HostType<SheetTarget>
  rangeAreas: HostType<AreasTarget>
}

export interface Session {
  book: Book
  types: WholeTypes
  /** Objects kept between requests by reference id, and the ids by object. */
  kept: Map<string, HostObject>
  referenceIds: WeakMap<HostObject, string>
  /** How many objects have been kept so far, for the next reference id. */
  references: number
  /** How often each event of a sheet was asked for, or of `anySheet`. */
  wanted: Map<string, number>
  /** Set by a write, so that values are read only after the formulas have been calculated. */
  stale: boolean
}

export function newSession(book: Book, types: WholeTypes): Session {
  return {
    book,
    types,
    kept: new Map(),
    referenceIds: new WeakMap(),
    references: 0,
    wanted: new Map(),
    stale: true
  }
}

/** When the pane is closed or loaded again, nothing that it asked for is kept. */
export function forgetClient(session: Session): void {
  session.kept.clear()
  session.wanted.clear()
}

export function registerEvent(session: Session, kind: EventKind, sheetId: string, step: 1 | -1): void {
  const key = `${kind} ${sheetId}`
  session.wanted.set(key, Math.max(0, (session.wanted.get(key) ?? 0) + step))
}

export function isWanted(session: Session, kind: EventKind, sheetId: string): boolean {
  return (session.wanted.get(`${kind} ${sheetId}`) ?? 0) > 0
}

export function sheetOf(session: Session, sheetId: string): SheetInfo {
  const sheet = session.book.sheets().find(({ id }) => id === sheetId)
  if (!sheet) throw itemNotFound('sheet of that id')
  return sheet
}

/** The book, for a change on that sheet; a protected sheet refuses. */
export function writable(session: Session, sheetId: string): Book {
  const sheet = sheetOf(session, sheetId)
  if (session.book.isProtected(sheetId)) throw accessDenied(`The sheet "${sheet.name}"`)
  session.stale = true
  return session.book
}

/** The book, for a change of its sheets or names; a protected workbook refuses. */
export function writableStructure(session: Session): Book {
  if (session.book.isProtected(null)) throw accessDenied('The structure of this workbook')
  session.stale = true
  return session.book
}

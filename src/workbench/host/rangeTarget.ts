/** One rectangle of cells of one sheet, and how arguments name it: by an object, an address or a defined name. */
import type { Area } from '../../../shared/cells'
import { fullAddress, parseAddress, withinSheet } from '../../../shared/a1Notation'
import { isHostObject } from './memberArguments'
import { invalidArgument } from './faults'
import { sheetOf, type Session, type SheetTarget } from './session'

export interface RangeTarget extends SheetTarget {
  area: Area
}

export function rangeOn(session: Session, sheetId: string, area: Area): RangeTarget {
  if (!withinSheet(area)) throw invalidArgument('The range reaches beyond the edge of the sheet.')
  return { session, sheetId, area }
}

export function addressOf({ session, sheetId, area }: RangeTarget): string {
  return fullAddress(sheetOf(session, sheetId).name, area)
}

export function cellCount({ rows, columns }: Area): number {
  return rows * columns
}

/** An address on that sheet, or a defined name that stands for one. */
export function rangeByText(session: Session, sheetId: string, text: string): RangeTarget {
  const named = session.book.names().find(({ name }) => name.toLowerCase() === text.toLowerCase())
  const parsed = parseAddress(named ? named.formula.replace(/^=/, '') : text)
  if (!parsed) throw invalidArgument(`"${text}" is not an address of one range.`)
  const own = sheetOf(session, sheetId).name.toLowerCase()
  if (parsed.sheet !== null && parsed.sheet.toLowerCase() !== own)
    throw invalidArgument(`"${text}" lies on another sheet than "${sheetOf(session, sheetId).name}".`)
  return rangeOn(session, sheetId, parsed.area)
}

/** An address with its sheet; without one, on the active sheet. */
export function rangeAnywhere(session: Session, text: string): RangeTarget {
  const parsed = parseAddress(text.replace(/^=/, ''))
  if (!parsed) throw invalidArgument(`"${text}" is not an address of one range.`)
  if (parsed.sheet === null) return rangeOn(session, session.book.activeSheet(), parsed.area)
  const wanted = parsed.sheet.toLowerCase()
  const sheet = session.book.sheets().find(({ name }) => name.toLowerCase() === wanted)
  if (!sheet) throw invalidArgument(`There is no sheet named "${parsed.sheet}".`)
  return rangeOn(session, sheet.id, parsed.area)
}

/** The target of an argument that is a Range object, or null. */
export function rangeGiven(argument: unknown): RangeTarget | null {
  return isHostObject(argument) && argument.typeName === 'Range' ? (argument.value as RangeTarget) : null
}

/** A Range object or an address on that sheet. */
export function rangeArgument(session: Session, sheetId: string, argument: unknown): RangeTarget {
  const given = rangeGiven(argument)
  if (given) {
    if (given.sheetId !== sheetId) throw invalidArgument('The range lies on another sheet.')
    return given
  }
  if (typeof argument !== 'string') throw invalidArgument('A range or an address is missing.')
  return rangeByText(session, sheetId, argument)
}

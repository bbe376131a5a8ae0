import { quotedPrefix } from '../../shared/cells'
import { documentBook, documentKinds, type DocumentKind } from './documentBook'

/** Title in the first cell of each document, which is also how a sheet is known to be ours. */
export const titles = Object.fromEntries(
  documentKinds.map((kind) => [kind, documentBook[kind].title])
) as Record<DocumentKind, string>

/** Sheets that we write once and a person then owns: they are read, and never replaced. */
export const usersSheets: ReadonlySet<DocumentKind> = new Set(
  documentKinds.filter((kind) => documentBook[kind].usersOwn)
)

/** A sheet of ours that a workbook name points at. */
export interface OwnName {
  kind: DocumentKind
  /** 1 for the first sheet of its kind. */
  number: number
  sheetName: string
}

const stemOf = (kind: DocumentKind): string => `Limbwright_${kind.replaceAll('-', '_')}`

/** The workbook name by which a document is found again: Limbwright_cut_plan, Limbwright_cut_plan_2. */
export function ownName(kind: DocumentKind, number = 1): string {
  return number === 1 ? stemOf(kind) : `${stemOf(kind)}_${String(number)}`
}

/** The first cell of a sheet as a workbook name refers to it, without "=": 'Cut plan'!$A$1. */
export function firstCellOf(sheetName: string): string {
  return `${quotedPrefix(sheetName)}$A$1`
}

const firstCell = /^=?(?:'((?:[^']|'')+)'|([^'!#]+))!\$A\$1$/
/** A sheet that is a person's own may have got rows above its title. */
const anyCell = /^=?(?:'((?:[^']|'')+)'|([^'!#]+))!\$[A-Z]{1,3}\$\d+$/

/** What a workbook name says: one of our sheets, or null where it is another name or its sheet is gone. */
export function readOwnName(name: string, formula: string): OwnName | null {
  for (const kind of documentKinds) {
    const stem = stemOf(kind)
    const rest = name.startsWith(stem) ? name.slice(stem.length) : null
    if (rest === null || !/^(_[1-9][0-9]*)?$/.test(rest)) continue
    const found = (usersSheets.has(kind) ? anyCell : firstCell).exec(formula)
    if (found === null) return null
    const sheetName = found[1] === undefined ? (found[2] ?? '') : found[1].replaceAll("''", "'")
    return { kind, number: rest === '' ? 1 : Number(rest.slice(1)), sheetName }
  }
  return null
}

/**
 * The workbook name that leads from a sheet of ours to the inventory it was written for: it follows that sheet when it is
 * renamed. A workbook with several inventories has documents and details of each.
 */
export function inventoryName(own: string): string {
  return own.replace('Limbwright_', 'Limbwright_of_')
}

/** The sheet that such a name leads to, or null where it is gone. */
export function inventorySheetIn(formula: string): string | null {
  const found = firstCell.exec(formula)
  return found === null ? null : (found[1]?.replaceAll("''", "'") ?? found[2] ?? null)
}

const draftStem = 'Limbwright_draft_'

/**
 * The workbook name that marks a sheet on which a document is being written: with it, what an ended writing left is found.
 * `writing` tells writings from each other, as two panes may write at once.
 */
export function draftName(writing: string, number: number): string {
  return `${draftStem}${writing}_${String(number)}`
}

/** What the first cell of such a sheet says until its title stands there. */
export const draftText = 'Limbwright is writing this sheet.'

/** The sheet that such a name marks; null where it is another name or its sheet is gone. */
export function readDraftName(name: string, formula: string): string | null {
  return name.startsWith(draftStem) ? inventorySheetIn(formula) : null
}

/** True of any name by which sheets are marked as on their way. */
export function isDraftName(name: string): boolean {
  return name.startsWith(draftStem)
}

/** True of the text of a first cell that we wrote. */
export function isOwnTitle(text: string): boolean {
  return text === draftText || Object.values(titles).includes(text)
}

/** The wanted sheet name, or the first free one after it: "Cut plan", "Cut plan (2)". Sheet names ignore case. */
export function freeSheetName(wanted: string, taken: Iterable<string>): string {
  const used = new Set([...taken].map((name) => name.toLowerCase()))
  for (let number = 1; ; number++) {
    const name = number === 1 ? wanted : `${wanted} (${String(number)})`
    if (!used.has(name.toLowerCase())) return name
  }
}

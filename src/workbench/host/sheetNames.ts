/** What Excel allows as the name of a sheet, of a table and of a defined name (Microsoft's support pages, from memory). */
import { parseAddress } from '../../../shared/a1Notation'

/** A sentence, or null where the name is allowed. */
export function sheetNameFault(name: string): string | null {
  if (name === '' || name.length > 31) return 'A sheet name has 1 to 31 characters.'
  if (/[:\\/?*[\]]/.test(name)) return `The sheet name "${name}" holds one of : \\ / ? * [ ].`
  if (name.startsWith("'") || name.endsWith("'"))
    return 'A sheet name neither begins nor ends with an apostrophe.'
  return name.toLowerCase() === 'history' ? 'Excel keeps the sheet name "History" for itself.' : null
}

export function definedNameFault(name: string): string | null {
  if (name === '' || name.length > 255) return 'A name has 1 to 255 characters.'
  if (!/^[\p{L}_\\][\p{L}\p{N}_.\\]*$/u.test(name))
    return `The name "${name}" may hold letters, digits, underscores and points only, and no digit first.`
  const looksLikeCell = parseAddress(name) !== null || /^r\d*c\d*$/i.test(name) || /^[rc]$/i.test(name)
  return looksLikeCell ? `The name "${name}" reads like a cell.` : null
}

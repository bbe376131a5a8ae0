/** Print areas and title rows, which stand in a file as names of the sheet. */
import { quotedPrefix } from '../../../shared/cells'
import type { FileName, BookSheet } from './fileBook'

/**
 * The names that say what is printed of a sheet. The library would write them from the page set-up with the sheet's name
 * unquoted, which a name with a space does not survive: the page is handed over without them, and they are written as
 * names of ours.
 */
export function printNames({ name: sheet, page }: BookSheet): FileName[] {
  const named = (name: string, address: string | undefined): FileName[] => {
    if (address === undefined) return []
    const corners = address.replaceAll('$', '').split(':')
    const [from = '', to = from] = corners.map((corner) => corner.replace(/[A-Z]+|\d+/g, '$$$&'))
    return [{ name, range: `${quotedPrefix(sheet)}${from}:${to}`, scope: sheet }]
  }
  return [...named('_xlnm.Print_Area', page.printArea), ...named('_xlnm.Print_Titles', page.titleRows)]
}

/** True for a name of the file format itself rather than of its author. */
export function isReservedName(name: string): boolean {
  return name.startsWith('_xlnm.')
}

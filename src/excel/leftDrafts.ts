import { quotedPrefix } from '../../shared/cells'
import { isDraftName, isOwnTitle, readDraftName } from '../sheets/ownSheets'
import { inExcel, isProblem } from './failures'

/** Names whose formula begins on a sheet, however the spreadsheet writes that. */
export function startsOn(sheetName: string): (formula: string) => boolean {
  const starts = [`=${quotedPrefix(sheetName)}`, `=${sheetName}!`]
  return (formula) => starts.some((start) => formula.startsWith(start))
}

/**
 * Takes away every sheet that a writing began and did not end, with its names. One of our names marks such a sheet, and it
 * is empty, or hidden with a first cell of our writing; any other stays.
 */
export async function removeDrafts(context: Excel.RequestContext): Promise<void> {
  const { names, worksheets } = context.workbook
  names.load('items/name,items/formula')
  await context.sync()
  const marks = names.items.filter(({ name }) => isDraftName(name))
  if (marks.length === 0) return
  const found = marks.map((mark) => {
    const sheetName = readDraftName(mark.name, String(mark.formula))
    if (sheetName === null) return { mark, sheet: null, first: null, used: null, sheetName: '' }
    const sheet = worksheets.getItemOrNullObject(sheetName).load('name,visibility')
    const first = sheet.getCell(0, 0).load('values')
    const used = sheet.getUsedRangeOrNullObject().load('rowCount')
    return { mark, sheet, first, used, sheetName }
  })
  await context.sync()
  for (const { mark, sheet, first, used, sheetName } of found) {
    const title = String((first?.values as unknown[][] | undefined)?.[0]?.[0])
    const ours = used?.isNullObject === true || (String(sheet?.visibility) === 'Hidden' && isOwnTitle(title))
    if (sheet?.isNullObject === false && ours) {
      const isOn = startsOn(sheetName)
      for (const item of names.items) if (!isDraftName(item.name) && isOn(String(item.formula))) item.delete()
      sheet.delete()
    }
    mark.delete()
  }
  await context.sync()
}

/** Milliseconds before each try to take away what was begun. */
export const cleanUpPauses: readonly number[] = [0, 300, 1500]

/** The same once nobody is typing in a cell any more, tried several times; true where nothing is left. */
export async function cleanUp(pauses: readonly number[]): Promise<boolean> {
  for (const pause of pauses) {
    if (pause > 0) await new Promise((resolve) => setTimeout(resolve, pause))
    if (!isProblem(await inExcel(removeDrafts, { wait: true }))) return true
  }
  return false
}

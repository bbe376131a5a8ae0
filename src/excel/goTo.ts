import { problem, type Problem } from '../../shared/problems'
import { takeApart } from './sheetAddresses'
import { inExcel, isProblem } from './failures'

/** Shows and selects a cell or range, named with its sheet. A problem where it is not there any more; null when done. */
export async function goToCell(address: string): Promise<Problem | null> {
  const place = takeApart(address)
  if (place === null) return problem('address-gone', address)
  const result = await inExcel(
    async (context) => {
      const sheet = context.workbook.worksheets.getItemOrNullObject(place.sheet)
      await context.sync()
      if (sheet.isNullObject) return problem('address-gone', address)
      sheet.activate()
      sheet.getRange(place.cells).select()
      await context.sync()
      return null
    },
    { wait: false }
  )
  return isProblem(result) ? result : null
}

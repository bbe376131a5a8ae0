/** PageBreakCollection of the Excel API: where pages begin when the sheet is printed. */
import { hostType } from './hostObject'
import { rangeArgument } from './rangeTarget'
import { writable, type SheetTarget } from './session'

const pageBreakObject = hostType<SheetTarget & { row: number }>({ name: 'PageBreak' })

export const horizontalPageBreaksObject = hostType<SheetTarget>({
  name: 'PageBreakCollection',
  calls: {
    removePageBreaks: ({ session, sheetId }) => {
      writable(session, sheetId).setPage(sheetId, { breaks: [] })
    }
  },
  opens: {
    /** The page begins with the first row of the range. */
    add: (target, args) => {
      const { session, sheetId } = target
      const { row } = rangeArgument(session, sheetId, args[0]).area
      const breaks = new Set([...(session.book.page(sheetId).breaks ?? []), row])
      writable(session, sheetId).setPage(sheetId, { breaks: [...breaks].sort((a, b) => a - b) })
      return pageBreakObject({ ...target, row })
    }
  }
})

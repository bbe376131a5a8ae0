/** The book that the Office host works on, with the visible grid behind it. */
import type { Book } from '../book'
import { cellsOf } from './cells'
import { conditionalFormatsOf } from './conditionalFormats'
import type { GridContext } from './context'
import { followingOf } from './following'
import { keepingOf } from './keeping'
import { looksOf } from './looks'
import { namesOf } from './names'
import { selectionOf } from './selecting'
import { sheetsOf } from './sheets'
import { tablesOf } from './tables'
import { validationsOf } from './validations'

export function createGridBook(context: GridContext): Book {
  const sheets = sheetsOf(context)
  return {
    ...sheets,
    ...cellsOf(context),
    ...looksOf(context),
    ...tablesOf(context),
    ...namesOf(context),
    ...validationsOf(context),
    ...conditionalFormatsOf(context),
    ...keepingOf(context),
    ...selectionOf(context, sheets.activateSheet),
    ...followingOf(context)
  }
}

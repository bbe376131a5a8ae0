/** The book that the Office host works on, with the visible grid behind it. */
import type { Book } from '../book'
import { cellsOf } from './gridCells'
import { conditionalFormatsOf } from './gridConditionalFormats'
import type { GridContext } from './context'
import { followingOf } from './following'
import { keepingOf } from './keeping'
import { looksOf } from './gridLooks'
import { namesOf } from './gridNames'
import { selectionOf } from './selecting'
import { sheetsOf } from './gridSheets'
import { tablesOf } from './gridTables'
import { validationsOf } from './gridValidations'

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

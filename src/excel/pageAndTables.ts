import { footerParts } from '../sheets/footers'
import { isScaled, marginsOf, pageScale } from '../sheets/pageBreaks'
import type { SheetDescription } from '../sheets/sheet'

/** Gridlines, frozen panes and how it prints: one page across, the headers of the table on each page. */
export function setUpPage(
  sheet: Excel.Worksheet,
  { page, rows, widths, hidden, freezeRows, freezeColumns }: SheetDescription
): void {
  sheet.showGridlines = false
  if (freezeRows > 0 && freezeColumns > 0)
    sheet.freezePanes.freezeAt(sheet.getRangeByIndexes(0, 0, freezeRows, freezeColumns))
  else if (freezeRows > 0) sheet.freezePanes.freezeRows(freezeRows)
  else if (freezeColumns > 0) sheet.freezePanes.freezeColumns(freezeColumns)
  const layout = sheet.pageLayout
  layout.orientation = page.orientation === 'landscape' ? 'Landscape' : 'Portrait'
  layout.paperSize = page.paper === 'a4' ? 'A4' : 'Letter'
  layout.zoom = isScaled(page) ? { scale: pageScale(page, widths) } : { horizontalFitToPages: 1 }
  const { beside, above, below } = marginsOf(page)
  layout.firstPageNumber = 1
  layout.leftMargin = beside
  layout.rightMargin = beside
  layout.topMargin = above
  layout.bottomMargin = below
  if (page.centered === true) layout.centerHorizontally = true
  if (hidden !== true)
    layout.setPrintArea(
      sheet.getRangeByIndexes(0, 0, page.rows ?? rows.length, page.columns ?? widths.length)
    )
  const { left, right } = footerParts(page.footer)
  layout.headersFooters.defaultForAllPages.leftFooter = left
  layout.headersFooters.defaultForAllPages.rightFooter = right
  for (const row of page.breaks ?? []) sheet.horizontalPageBreaks.add(sheet.getRangeByIndexes(row, 0, 1, 1))
  if (page.titleRow !== null) layout.setPrintTitleRows(sheet.getRangeByIndexes(page.titleRow, 0, 1, 1))
}

/** Tables under the names that the spreadsheet gives them, in plain black and white. */
export function addTables(sheet: Excel.Worksheet, { tables }: SheetDescription): void {
  for (const { area } of tables) {
    const table = sheet.tables.add(
      sheet.getRangeByIndexes(area.row, area.column, area.rows, area.columns),
      true
    )
    table.style = 'TableStyleLight1'
    table.showBandedRows = false
  }
}

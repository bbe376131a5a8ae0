import { footerParts } from '../sheets/footers'
import { isScaled, marginsOf, pageScale } from '../sheets/pageBreaks'
import type { SheetDescription, SheetTable } from '../sheets/sheet'

/** Gridlines and frozen panes. */
export function setUpView(sheet: Excel.Worksheet, { freezeRows, freezeColumns }: SheetDescription): void {
  sheet.showGridlines = false
  if (freezeRows > 0 && freezeColumns > 0)
    sheet.freezePanes.freezeAt(sheet.getRangeByIndexes(0, 0, freezeRows, freezeColumns))
  else if (freezeRows > 0) sheet.freezePanes.freezeRows(freezeRows)
  else if (freezeColumns > 0) sheet.freezePanes.freezeColumns(freezeColumns)
}

/** How it prints: one page across or at a scale, its margins, its area and its footer. */
export function setUpPage(sheet: Excel.Worksheet, { page, rows, widths, hidden }: SheetDescription): void {
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
}

/** Where pages begin. */
export function setPageBreaks(sheet: Excel.Worksheet, { page }: SheetDescription): void {
  for (const row of page.breaks ?? []) sheet.horizontalPageBreaks.add(sheet.getRangeByIndexes(row, 0, 1, 1))
}

/** The headers that each page repeats; the range has to span the whole row (reference, PageLayout.setPrintTitleRows). */
export function repeatHeaders(sheet: Excel.Worksheet, { page }: SheetDescription): void {
  if (page.titleRow === null) return
  const row = String(page.titleRow + 1)
  sheet.pageLayout.setPrintTitleRows(sheet.getRange(`${row}:${row}`))
}

/** A table in plain black and white, under its name. */
export function addTable(sheet: Excel.Worksheet, { area }: SheetTable, name: string): void {
  const table = sheet.tables.add(
    sheet.getRangeByIndexes(area.row, area.column, area.rows, area.columns),
    true
  )
  table.name = name
  table.style = 'TableStyleLight1'
  table.showBandedRows = false
}

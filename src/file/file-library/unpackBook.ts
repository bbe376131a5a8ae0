/** An .xlsx as a workbook that can be shown and saved again. */
import type { ConditionalRule, Sheet, Workbook } from 'hucre'
import { readXlsx } from 'hucre/xlsx'
import { parseAddress } from '../../../shared/a1Notation'
import type { FilePage, FileRow, KeptParts } from './fileBook'
import { chartsIn } from './foundCharts'
import { namesIn, serialOf } from './foundValues'
import { settingsOf, type FileSettings } from './settingsPart'
import type { FoundCell, FoundRule, UnpackedBook, UnpackedSheet } from './unpackedBook'

/** The library reads these without their rank or their side of the average: written again, they would say another thing. */
function isLost({ type }: ConditionalRule): boolean {
  return type === 'top10' || type === 'aboveAverage'
}

function ruleOf(rule: ConditionalRule): FoundRule {
  const { type, formula, stopIfTrue, style, range, priority } = rule
  const plain = type === 'expression' && typeof formula === 'string' && !stopIfTrue
  return { priority, range, formula: plain ? formula : null, style: style ?? null, asItCame: rule }
}

function pageOf({ pageSetup: setup }: Sheet): FilePage {
  if (setup === undefined) return {}
  const { orientation, paperSize, scale, fitToPage, fitToWidth, fitToHeight, margins } = setup
  return {
    ...(orientation ? { orientation } : {}),
    ...(paperSize ? { paperSize } : {}),
    ...(scale !== undefined && !fitToPage ? { scale } : {}),
    ...(fitToPage ? { fit: { width: fitToWidth ?? 1, height: fitToHeight ?? 1 } } : {}),
    ...(margins ? { margins } : {}),
    ...(setup.horizontalCentered ? { centered: true } : {}),
    ...(setup.printArea ? { printArea: setup.printArea } : {}),
    ...(setup.printTitlesRow ? { titleRows: setup.printTitlesRow } : {})
  }
}

function tablesOf({ tables = [] }: Sheet): UnpackedSheet['tables'] {
  return tables.flatMap(({ name, displayName, range, style, showAutoFilter, showRowStripes }) => {
    const area = parseAddress(range ?? '')?.area
    if (!area) return []
    const looks = { style: style ?? null, filter: showAutoFilter !== false, banded: showRowStripes !== false }
    return [{ name: displayName ?? name, area, ...looks }]
  })
}

/** What goes back into the file as it came; the filter of a table comes with its table. */
function keptOf(sheet: Sheet, charts: KeptParts['charts'] = []): KeptParts {
  const { images, protection, colBreaks, sparklines, textBoxes, backgroundImage } = sheet
  const { outlineProperties, pageSetup, headerFooter, a11y, autoFilter, tables = [] } = sheet
  const parts = {
    ...{ images, protection, colBreaks, sparklines, textBoxes, backgroundImage },
    ...{ outlineProperties, pageSetup, headerFooter, a11y },
    charts: charts.length > 0 ? charts : undefined,
    autoFilter: tables.length > 0 ? undefined : autoFilter
  }
  return Object.fromEntries(Object.entries(parts).filter(([, part]) => part !== undefined))
}

function sheetOf(sheet: Sheet): UnpackedSheet {
  const { name, rows, merges = [], freezePane, view, rowBreaks } = sheet
  const { charts, kept } = chartsIn(sheet.charts)
  return {
    name,
    hidden: sheet.hidden === true || sheet.veryHidden === true,
    rows: rows.map((row) => row.map(serialOf)),
    cells: sheet.cells ?? new Map<string, FoundCell>(),
    columns: sheet.columns ?? [],
    rowSizes: sheet.rowDefs ?? new Map<number, FileRow>(),
    merged: merges.map(({ startRow, endRow, startCol, endCol }) => ({
      row: startRow,
      column: startCol,
      rows: endRow - startRow + 1,
      columns: endCol - startCol + 1
    })),
    tables: tablesOf(sheet),
    validations: sheet.dataValidations ?? [],
    rules: (sheet.conditionalRules ?? []).filter((rule) => !isLost(rule)).map(ruleOf),
    charts,
    freeze: { rows: freezePane?.rows ?? 0, columns: freezePane?.columns ?? 0 },
    gridlines: view?.showGridLines !== false,
    tabColor: view?.tabColor ?? null,
    page: pageOf(sheet),
    footer: sheet.headerFooter?.oddFooter ?? '',
    // The file names the row above a break.
    breaks: rowBreaks?.map((row) => row + 1) ?? null,
    protected: sheet.protection !== undefined,
    kept: keptOf(sheet, kept)
  }
}

function lostParts({ sheets }: Workbook): string[] {
  const has = (part: keyof Sheet) =>
    sheets.some((sheet) => Array.isArray(sheet[part]) && (sheet[part] as unknown[]).length > 0)
  return [
    sheets.some(({ conditionalRules = [] }) => conditionalRules.some(isLost))
      ? 'conditional formats by rank or average'
      : '',
    sheets.some(({ charts }) => chartsIn(charts).someLost) ? 'charts of a rarer kind' : '',
    has('pivotTables') ? 'pivot tables' : '',
    has('slicers') || has('timelines') ? 'slicers' : '',
    has('threadedComments') ? 'threaded comments' : ''
  ].filter((part) => part !== '')
}

/** A workbook of the library in our words. */
export function bookOf(workbook: Workbook, settings: FileSettings = new Map()): UnpackedBook {
  const { sheets, namedRanges, activeSheet = 0, properties } = workbook
  const lost = lostParts(workbook)
  const names = namesIn(namedRanges)
  return { sheets: sheets.map(sheetOf), names, activeSheet, properties, settings, lost }
}

/** Throws where the bytes are no workbook. */
export async function unpackBook(bytes: Uint8Array): Promise<UnpackedBook> {
  return bookOf(await readXlsx(bytes, { readStyles: true }), await settingsOf(bytes))
}

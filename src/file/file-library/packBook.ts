/** A workbook into the bytes of an .xlsx. */
import type { ConditionalRule, NamedRange, SheetImage, TableDefinition, WriteSheet } from 'hucre'
import { writeXlsx } from 'hucre/xlsx'
import type JSZip from 'jszip'
import { areaOf, type Area } from '../../../shared/cells'
import { fitAltText } from '../../sheets/typedText'
import { chartParts, roomFor } from './drawnCharts'
import { anchoredOnce } from './drawnPictures'
import type { FileBook, FilePicture, BookSheet, FileTable } from './fileBook'
import { packAnywhere, partOf, withParts, type Packer, type Parts } from './packedParts'
import { printNames } from './printNames'
import { cellParts, hasPlainCells, withoutCells } from './quickCells'
import { withSettings } from './settingsPart'
import { possibleText } from './xmlText'

function tableOf({ name, area, columns, style, filter, banded }: FileTable): TableDefinition {
  return {
    name,
    range: areaOf(area),
    columns: columns.map((column) => ({ name: column })),
    style,
    showRowStripes: banded,
    showAutoFilter: filter
  }
}

function imageOf({ bytes, kind, area, width, height, alt }: FilePicture): SheetImage {
  return {
    data: bytes,
    type: kind,
    anchor: {
      from: { row: area.row, col: area.column },
      to: { row: area.row + area.rows, col: area.column + area.columns }
    },
    width,
    height,
    altText: possibleText(fitAltText(alt))
  }
}

const mergeOf = ({ row, column, rows, columns }: Area) => ({
  startRow: row,
  endRow: row + rows - 1,
  startCol: column,
  endCol: column + columns - 1
})

/** Those kept from an opened file follow, in their order. */
function conditionalRules({ formulaLooks = [], kept }: BookSheet): ConditionalRule[] {
  const own = formulaLooks.map((look) => ({ type: 'expression' as const, ...look }))
  const others = [...(kept?.conditionalRules ?? [])].sort((a, b) => a.priority - b.priority)
  return [...own, ...others.map((rule, index) => ({ ...rule, priority: own.length + index + 1 }))]
}

/** Without print area and title rows, which are names of the sheet (see `printNames`). */
function pageSetup({ page, kept }: BookSheet): WriteSheet['pageSetup'] {
  const others = { ...kept?.pageSetup }
  delete others.printArea
  delete others.printTitlesRow
  delete others.scale
  delete others.fitToPage
  delete others.fitToWidth
  delete others.fitToHeight
  const { orientation, paperSize, scale, fit, margins, centered } = page
  return {
    ...others,
    ...(orientation ? { orientation } : {}),
    ...(paperSize ? { paperSize } : {}),
    ...(margins ? { margins } : {}),
    ...(centered === undefined ? {} : { horizontalCentered: centered }),
    ...(scale === undefined ? {} : { scale }),
    ...(fit ? { fitToPage: true, fitToWidth: fit.width, fitToHeight: fit.height } : {})
  }
}

function headerFooter({ footer, kept }: BookSheet): WriteSheet['headerFooter'] {
  return footer === '' && kept?.headerFooter === undefined
    ? undefined
    : { ...kept?.headerFooter, oddFooter: footer }
}

/** The parts of a sheet that are there; one that holds nothing is left out. */
function partsOf(sheet: BookSheet): Partial<WriteSheet> {
  const {
    merged = [],
    tables = [],
    validations = [],
    pictures = [],
    charts = [],
    freeze,
    breaks,
    kept
  } = sheet
  const parts: Partial<WriteSheet> = {
    merges: merged.map(mergeOf),
    tables: tables.map(tableOf),
    dataValidations: [...(kept?.dataValidations ?? []), ...validations],
    conditionalRules: conditionalRules(sheet),
    images: [...(kept?.images ?? []), ...pictures.map(imageOf)],
    charts: [...(kept?.charts ?? []), ...charts.map(roomFor)],
    // The file names the row above a break.
    rowBreaks: (breaks ?? []).map((row) => row - 1)
  }
  const filled = Object.entries(parts).filter(([, part]) => (part as unknown[]).length > 0)
  const footer = headerFooter(sheet)
  return {
    ...(Object.fromEntries(filled) as typeof parts),
    ...(freeze.rows + freeze.columns > 0 ? { freezePane: freeze } : {}),
    ...(footer ? { headerFooter: footer } : {}),
    ...(sheet.hidden ? { hidden: true } : {})
  }
}

function sheetOf(sheet: BookSheet): WriteSheet {
  const { name, rows, cells, columns, rowSizes, gridlines, tabColor } = sheet
  return {
    ...sheet.kept,
    name,
    ...(rows ? { rows } : {}),
    ...(cells ? { cells } : {}),
    ...(columns ? { columns } : {}),
    ...(rowSizes ? { rowDefs: rowSizes } : {}),
    ...partsOf(sheet),
    view: { showGridLines: gridlines, ...(tabColor ? { tabColor } : {}) },
    pageSetup: pageSetup(sheet)
  }
}

/** Names are written in this order. Whether a name is hidden is lost: the library neither writes nor reads it. */
function namesOf({ sheets, names = [] }: FileBook): NamedRange[] {
  const ofSheets = sheets.flatMap((sheet) => [
    ...(sheet.mark ? [sheet.mark] : []),
    ...printNames(sheet),
    ...(sheet.names ?? [])
  ])
  return [...names, ...ofSheets]
}

const application = 'docProps/app.xml'

/** The library names itself as the program that made the file. */
async function madeBy(zip: JSZip): Promise<readonly [string, string]> {
  const text = await partOf(zip, application)
  return [
    application,
    text.replace(/<Application>[^<]*<\/Application>/, '<Application>Limbwright</Application>')
  ]
}

/** Runs in a browser too; in Node a faster packer may be given. */
export async function packBook(book: FileBook, pack: Packer = packAnywhere): Promise<Uint8Array> {
  const { sheets, activeSheet, properties, settings = new Map() } = book
  const quick = hasPlainCells(sheets) ? withoutCells(sheets) : null
  const file = await writeXlsx({
    sheets: (quick?.bare ?? sheets).map(sheetOf),
    namedRanges: namesOf(book),
    defaultFont: { name: 'Calibri', size: 11 },
    ...(activeSheet === undefined ? {} : { activeSheet }),
    ...(properties ? { properties } : {})
  })
  const made = async (zip: JSZip): Promise<Parts> => {
    const cells = quick === null ? [] : await cellParts(zip, sheets, quick.looks)
    return new Map([...chartParts(sheets), ...cells, ...(await anchoredOnce(zip, sheets)), await madeBy(zip)])
  }
  const filled = await withParts(file, made, pack)
  return withSettings(filled, settings)
}

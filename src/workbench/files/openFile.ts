/** A file that the user opens, .xlsx or .csv, as contents of the grid; or the reason why not, as one sentence. */
import type { Cell } from '../../../shared/cells'
import { isRefusal, refuse, type Refusal } from '../../../shared/refusal'
import { readCsvFile } from '../../file/csvFile'
import { unpackBook } from '../../file/file-library/unpackBook'
import type { UnpackedBook } from '../../file/file-library/unpackedBook'
import { noExtras } from '../grid/extras'
import type { BookContents } from './contents'
import { fromFile } from './fromFile'
import { plainCells, widthsFor } from './plainSheet'

export interface OpenedFile {
  contents: BookContents
  /** A sentence for the status line, or an empty text. */
  remark: string
}

/** One sheet of plain cells with its first row frozen, as a .csv or the sample inventory gives it. */
export function plainContents(name: string, sheetName: string, rows: Cell[][]): BookContents {
  const columns = rows.reduce((most, row) => Math.max(most, row.length), 0)
  const sheet = {
    id: 'sheet1',
    name: sheetName,
    rowCount: Math.max(100, rows.length + 60),
    columnCount: Math.max(26, columns + 6),
    cellData: plainCells(rows),
    columnData: widthsFor(rows),
    rowData: { 0: { h: 42, ia: 0 as const } },
    freeze: { startRow: 1, startColumn: -1, ySplit: 1, xSplit: 0 }
  }
  return {
    name,
    sheets: [sheet],
    styles: { header: { bl: 1, tb: 3, vt: 2, bg: { rgb: '#E7EDE3' }, cl: { rgb: '#1F2A1C' } } },
    spills: new Map(),
    conditionalFormats: new Map(),
    tables: [],
    names: [],
    extras: noExtras(),
    activeSheet: 'sheet1'
  }
}

/** What saving the file here would change, in words for the user. */
function remarkOn(name: string, { lost, sheets }: UnpackedBook): string {
  const without = 'the workbench does not show them and a file saved here is without them.'
  const plainer = `${name} holds charts: the workbench does not show them and saves them in a plainer form.`
  const charted = sheets.some(({ charts, kept }) => charts.length > 0 || kept.charts !== undefined)
  const remarks = [
    lost.length === 0 ? '' : `${name} holds ${lost.join(', ')}: ${without}`,
    charted ? plainer : ''
  ]
  return remarks.filter((remark) => remark !== '').join(' ')
}

async function openXlsx(name: string, bytes: Uint8Array): Promise<OpenedFile> {
  const book = await unpackBook(bytes)
  return { contents: fromFile(book, name), remark: remarkOn(name, book) }
}

export async function openFile(name: string, bytes: Uint8Array): Promise<OpenedFile | Refusal> {
  const kind = /\.[^.]*$/.exec(name)?.[0].toLowerCase()
  if (kind === '.csv' || kind === '.tsv' || kind === '.txt') {
    const file = readCsvFile(name, bytes)
    if (isRefusal(file)) return file
    return { contents: plainContents(name, name.slice(0, -kind.length).slice(0, 31), file.rows), remark: '' }
  }
  if (kind !== '.xlsx')
    return refuse(`${name} is neither .xlsx nor .csv: choose a file of one of these kinds.`)
  try {
    return await openXlsx(name, bytes)
  } catch {
    return refuse(
      `${name} could not be read as a workbook: save it again as .xlsx without a password, or as .csv.`
    )
  }
}

import { applySheets } from '../src/excel/applySheets'
import { inExcel, isProblem, problemFrom } from '../src/excel/failures'
import { goToCell } from '../src/excel/goTo'
import { findOwnSheets } from '../src/excel/ownSheetsInBook'
import { readSelectedBlock } from '../src/excel/readBlock'
import { readUsersSheet, writeUsersSheet } from '../src/excel/usersSheet'
import { describeSelection, watchSelection, type SelectionSummary } from '../src/excel/selection'
import type { Reading, Selected, SelectedCells, Steps, Surface } from './surface'

/** The selected cells themselves: a summary tells only of the block that they stand for. */
async function selectedCells(): Promise<SelectedCells | null> {
  const found = await inExcel(
    async (context): Promise<SelectedCells | null> => {
      const ranges = context.workbook.getSelectedRanges()
      ranges.load('areaCount')
      const range = ranges.areas.getItemAt(0)
      range.load('rowIndex,columnIndex,rowCount,columnCount')
      range.worksheet.load('name')
      await context.sync()
      if (ranges.areaCount > 1) return null
      const { rowIndex: row, columnIndex: column, rowCount: rows, columnCount: columns } = range
      return { sheet: range.worksheet.name, row, column, rows, columns }
    },
    { wait: true }
  )
  return isProblem(found) ? null : found
}

async function selected({ address, rows, columns, ...summary }: SelectionSummary): Promise<Selected> {
  const { problem, usable, sentence } = summary
  const remark = usable ? sentence : ''
  return { address: usable ? address : '', rows, columns, remark, problem, cells: await selectedCells() }
}

async function readBlock(address: string | null, steps: Steps): Promise<Reading> {
  if (address !== null) {
    const gone = await goToCell(address)
    if (gone !== null) return { block: null, problems: [gone] }
  }
  const { block, problems } = await readSelectedBlock(steps)
  const stopped = problems.some(({ level }) => level === 'stop')
  return { block: stopped ? null : block, problems }
}

/** The spreadsheet as the pane sees it, through Office.js. */
export const excelSurface: Surface = {
  describeSelection: async () => selected(await describeSelection()),
  watchSelection: (callback) => {
    let latest = 0
    return watchSelection((summary) => {
      latest += 1
      const turn = latest
      void selected(summary).then((now) => {
        if (turn === latest) callback(now)
      })
    })
  },
  readBlock,
  readRules: () => readUsersSheet('rules'),
  writeRules: writeUsersSheet,
  readRates: () => readUsersSheet('rates'),
  writeRates: writeUsersSheet,
  findOwnSheets,
  writeSheets: async (descriptions, options, steps) => {
    const drawn = descriptions.some(({ pictures = [] }) => pictures.length > 0)
    const painter = drawn ? (await import('./documents')).canvasPainter(document) : undefined
    const result = await applySheets(descriptions, { ...options, ...steps, painter })
    if (isProblem(result)) return { written: [], problems: [result] }
    return { written: result.written.map(({ sheetName }) => sheetName), problems: [] }
  },
  goToCell,
  explain: problemFrom
}

import type { CellBlock } from '../../shared/cells'
import { problem, type Problem } from '../../shared/problems'
import { inExcel, isProblem } from './failures'
import { findBlockAt, findSelectedBlock, type FoundBlock } from './findBlock'
import { countHiddenRows } from './hiddenRows'
import { readCells, type Reading } from './readCells'

export interface ReadBlock {
  block: CellBlock
  /** What stood in the way, or is worth knowing; with a problem of level "stop" the block is empty. */
  problems: Problem[]
}

const nothing: CellBlock = { rows: [], sheet: '', top: 0, left: 0 }

/** Merged cells need ExcelApi 1.13; where it is missing, merges are not looked for. */
async function mergedCells(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
  { area }: FoundBlock
): Promise<Problem[]> {
  if (!Office.context.requirements.isSetSupported('ExcelApi', '1.13')) return []
  const range = sheet.getRangeByIndexes(area.row, area.column, area.rows, area.columns)
  const merged = range.getMergedAreasOrNullObject()
  merged.load('address')
  await context.sync()
  if (merged.isNullObject) return []
  const addresses = merged.address.length > 60 ? `${merged.address.slice(0, 59)}…` : merged.address
  return [problem('merged-cells', addresses)]
}

async function hiddenRows(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
  { area, address }: FoundBlock
): Promise<Problem[]> {
  const count = await countHiddenRows(context, sheet, area)
  return count === 0 ? [] : [problem('hidden-rows', address, { count })]
}

export interface BlockReading extends Reading {
  /** A block with its sheet, such as Trees!A1:P64, to read in place of what is selected. */
  address?: string | undefined
}

async function read(context: Excel.RequestContext, options: BlockReading): Promise<ReadBlock> {
  const found =
    options.address === undefined
      ? (await findSelectedBlock(context)).block
      : await findBlockAt(context, options.address)
  if (isProblem(found)) return { block: nothing, problems: [found] }
  const { sheet, area } = found
  const worksheet = context.workbook.worksheets.getItem(sheet)
  const rows = await readCells(context, worksheet, area, options)
  const problems = [
    ...(await hiddenRows(context, worksheet, found)),
    ...(await mergedCells(context, worksheet, found))
  ]
  return { block: { rows, sheet, top: area.row, left: area.column }, problems }
}

/**
 * The cells that the selection means, in bands of rows; see `findSelectedBlock` for how it is cut or widened. Waits while
 * a cell is being edited. Rejects with the signal's AbortError when canceled.
 */
export async function readSelectedBlock(options: BlockReading = {}): Promise<ReadBlock> {
  options.signal?.throwIfAborted()
  const result = await inExcel((context) => read(context, options), { wait: true })
  return isProblem(result) ? { block: nothing, problems: [result] } : result
}

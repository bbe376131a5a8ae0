/** What a sheet says besides its cells: what is merged or hidden, and sheets that hold no survey. */
import fc from 'fast-check'
import type { Merge } from '../../../src/inventory/survey/sheetCells'
import type { Layout } from './layouts'
import type { ShapeColumn, ShapeRow, ShapeSheet } from './shape'

export interface Marks {
  readonly layout?: Layout
  readonly hiddenColumnsAt?: readonly number[]
  readonly hiddenRowsAt?: readonly number[]
  /** Titles are merged across the table. */
  readonly titlesMerged?: true
  /** A sheet without trees, before the others or behind them. */
  readonly otherSheet?: boolean
}

export const hiddenPlaces = fc.array(fc.nat(30), { minLength: 1, maxLength: 3 })

const widthOf = ({ rows }: ShapeSheet): number => Math.max(...rows.map(({ cells }) => cells.length))

/** First and last row of each run of a tree's rows; a copy at the end of the table begins another. */
function runsOfTrees(rows: readonly ShapeRow[]): { treeAt: number; top: number; bottom: number }[] {
  const runs: { treeAt: number; top: number; bottom: number }[] = []
  rows.forEach(({ treeAt }, row) => {
    if (treeAt === undefined) return
    const last = runs.at(-1)
    if (last?.treeAt === treeAt) last.bottom = row
    else runs.push({ treeAt, top: row, bottom: row })
  })
  return runs
}

/** The tree's columns of each tree with several limbs, from its first row to its last. */
function mergesOfTrees(columns: readonly ShapeColumn[], rows: readonly ShapeRow[]): Merge[] {
  const lefts = columns.flatMap(({ of, field }, left) => (of === 'tree' && field !== null ? [left] : []))
  return runsOfTrees(rows)
    .filter(({ top, bottom }) => top < bottom)
    .flatMap(({ top, bottom }) => lefts.map((left) => ({ top, left, bottom, right: left })))
}

function mergesOfTitles(sheet: ShapeSheet): Merge[] {
  const right = widthOf(sheet) - 1
  return sheet.rows.flatMap(({ kind, cells }, row) =>
    kind === 'title' && cells.length === 1 && right > 0 ? [{ top: row, left: 0, bottom: row, right }] : []
  )
}

/** Once no row is added any more. */
export function withMarks(sheet: ShapeSheet, marks: Marks): ShapeSheet {
  const { layout, titlesMerged, hiddenColumnsAt, hiddenRowsAt } = marks
  const { columns, rows } = sheet
  const isMerged = layout === 'tree columns merged downward' && columns !== undefined
  const merges = [
    ...(isMerged ? mergesOfTrees(columns, rows) : []),
    ...(titlesMerged === true ? mergesOfTitles(sheet) : [])
  ]
  const places = (at: readonly number[], count: number) => new Set(at.map((place) => place % count))
  return {
    ...sheet,
    ...(merges.length > 0 && { merges }),
    ...(hiddenColumnsAt !== undefined && { hiddenColumns: places(hiddenColumnsAt, widthOf(sheet)) }),
    ...(hiddenRowsAt !== undefined && { hiddenRows: places(hiddenRowsAt, rows.length) })
  }
}

const legend: ShapeSheet = {
  name: 'Legend',
  rows: [
    { kind: 'title', cells: ['Legend'] },
    { kind: 'note', cells: ['none', 'bark ridge visible all the way'] },
    { kind: 'note', cells: ['partial', 'ridge turned inward below'] },
    { kind: 'note', cells: ['full', 'no ridge'] }
  ]
}

const prices: ShapeSheet = {
  name: 'Prices',
  rows: [
    { kind: 'header', cells: ['Item', 'Hours', 'Rate', 'Price'] },
    { kind: 'note', cells: ['Crew of two', 6, 140, 840] },
    { kind: 'note', cells: ['Chipper', 4, 35, 140] },
    { kind: 'note', cells: ['Total', null, null, 980] }
  ]
}

export function withOtherSheet(sheets: readonly ShapeSheet[], { otherSheet }: Marks): ShapeSheet[] {
  if (otherSheet === undefined) return [...sheets]
  return otherSheet ? [legend, ...sheets] : [...sheets, prices]
}

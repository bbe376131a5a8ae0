/** Where the rows of a survey stand: in one table or several, one row per limb or one row per tree. */
import type { DrawnSurvey, DrawnTree } from './drawnSurvey'
import { cellOf, headerOf, inText, limbRows, type ShapeColumn, type ShapeRow, type ShapeSheet } from './shape'

export const layouts = [
  'tree columns on the first row',
  'tree columns merged downward',
  'trees and limbs on two sheets',
  'a sheet a zone',
  'numbered groups of columns',
  'titled groups of columns',
  'a form above each tree',
  'labels and values in one cell above each tree'
] as const
export type Layout = (typeof layouts)[number]

function headerRow(columns: readonly ShapeColumn[], unitsRow: boolean): ShapeRow[] {
  const names: ShapeRow = { kind: 'header', cells: columns.map((column) => headerOf(column, !unitsRow)) }
  if (!unitsRow || columns.every(({ unit, unitWithin }) => unit === null || unitWithin)) return [names]
  const units = columns.map(({ unit, unitWithin }) => (unitWithin ? null : unit))
  return [names, { kind: 'header', cells: units }]
}

function treeRow(columns: readonly ShapeColumn[], { values }: DrawnTree, at: number): ShapeRow {
  return { kind: 'data', cells: columns.map((column) => cellOf(column, values, at)) }
}

function twoSheets(
  columns: readonly ShapeColumn[],
  trees: readonly DrawnTree[],
  unitsRow: boolean
): ShapeSheet[] {
  const ofTree = columns.filter(({ of }) => of === 'tree')
  const ofLimb = columns.filter(({ of, field }) => of === 'limb' || field === 'tree')
  return [
    {
      name: 'Trees',
      rows: [...headerRow(ofTree, unitsRow), ...trees.map((tree, at) => treeRow(ofTree, tree, at))]
    },
    {
      name: 'Limbs',
      rows: [...headerRow(ofLimb, unitsRow), ...limbRows(ofLimb, trees, false)],
      columns: ofLimb
    }
  ]
}

function aSheetAZone(
  columns: readonly ShapeColumn[],
  trees: readonly DrawnTree[],
  unitsRow: boolean
): ShapeSheet[] {
  const half = Math.ceil(trees.length / 2)
  return [trees.slice(0, half), trees.slice(half)].flatMap((zone, at) =>
    zone.length === 0
      ? []
      : [
          {
            name: ['Elm Street', 'River park'][at] ?? '',
            rows: [...headerRow(columns, unitsRow), ...limbRows(columns, zone, false)],
            columns
          }
        ]
  )
}

const inGroups: Readonly<Record<string, string>> = {
  limb: 'ID',
  diameter: 'diameter',
  stem: 'stem',
  bark: 'included bark'
}

/** One row per tree, its limbs side by side. */
function groups(
  columns: readonly ShapeColumn[],
  trees: readonly DrawnTree[],
  unitsRow: boolean,
  titled: boolean
): ShapeSheet[] {
  const ofTree = columns.filter(({ of }) => of === 'tree')
  const ofLimb = columns.filter(({ of, field }) => of === 'limb' && field !== null)
  const count = Math.max(...trees.map(({ limbs }) => limbs.length))
  const turns = Array.from({ length: count }, (_none, turn) => turn)
  const titles = turns.flatMap((turn) =>
    ofLimb.map((_column, at) => (at === 0 ? `Limb ${String(turn + 1)}` : null))
  )
  const nameOf = (column: ShapeColumn, turn: number): ShapeColumn => {
    const own = inGroups[column.field ?? ''] ?? column.name.toLowerCase()
    return {
      ...column,
      unitWithin: false,
      girth: false,
      name: titled ? own : `Limb ${String(turn + 1)} ${own}`
    }
  }
  const header = headerRow(
    [...ofTree, ...turns.flatMap((turn) => ofLimb.map((column) => nameOf(column, turn)))],
    unitsRow
  )
  const above: ShapeRow[] = titled ? [{ kind: 'header', cells: [...ofTree.map(() => null), ...titles] }] : []
  const rows = trees.map((tree, at): ShapeRow => {
    const limbs = turns.flatMap((turn) =>
      ofLimb.map((column) => cellOf({ ...column, girth: false }, tree.limbs[turn] ?? {}, turn))
    )
    return { kind: 'data', cells: [...treeRow(ofTree, tree, at).cells, ...limbs] }
  })
  return [{ name: 'Survey', rows: [...above, ...header, ...rows] }]
}

/** A sheet a tree, what is measured of the tree above its table of limbs. */
function forms(
  columns: readonly ShapeColumn[],
  trees: readonly DrawnTree[],
  unitsRow: boolean,
  inOneCell: boolean
): ShapeSheet[] {
  const ofTree = columns.filter(({ of, field }) => of === 'tree' && field !== null)
  const ofLimb = columns.filter(({ of }) => of === 'limb')
  return trees.map((tree, at): ShapeSheet => {
    const labels = ofTree.flatMap((column): ShapeRow[] => {
      const value = cellOf(column, tree.values, at)
      if (value === null) return []
      const label = headerOf(column).replaceAll('\n', ' ')
      return [{ kind: 'title', cells: inOneCell ? [`${label}: ${inText(value)}`] : [`${label}:`, value] }]
    })
    return {
      name: `Form ${String(at + 1)}`,
      rows: [
        ...labels,
        { kind: 'blank', cells: [] },
        ...headerRow(ofLimb, unitsRow),
        ...limbRows(ofLimb, [tree], false)
      ]
    }
  })
}

export function laidOut(
  columns: readonly ShapeColumn[],
  { trees }: DrawnSurvey,
  layout: Layout | undefined,
  unitsRow: boolean
): ShapeSheet[] {
  switch (layout) {
    case 'trees and limbs on two sheets':
      return twoSheets(columns, trees, unitsRow)
    case 'a sheet a zone':
      return aSheetAZone(columns, trees, unitsRow)
    case 'numbered groups of columns':
    case 'titled groups of columns':
      return groups(columns, trees, unitsRow, layout === 'titled groups of columns')
    case 'a form above each tree':
    case 'labels and values in one cell above each tree':
      return forms(columns, trees, unitsRow, layout !== 'a form above each tree')
    case 'tree columns on the first row':
    case 'tree columns merged downward':
    case undefined:
      return [
        {
          name: 'Survey',
          rows: [...headerRow(columns, unitsRow), ...limbRows(columns, trees, layout !== undefined)],
          columns
        }
      ]
  }
}

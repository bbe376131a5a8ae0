/** Every column of the dictionary moves what its entry says: none is offered to a surveyor and then ignored. */
import { wholeProgram } from '../../src/price/offers'
import type { Cell, CellBlock } from '../../shared/cells'
import { choices } from '../../shared/choices'
import { columns, type Column, type ColumnUse, type Field } from '../../shared/columns'
import { drawTree } from '../../src/drawing/drawTree'
import { toSvg } from '../../src/drawing/paint/toSvg'
import { planJson } from '../../src/file/planJson'
import { lengthOf } from '../../src/inventory/lengthOf'
import { readInventory } from '../../src/inventory/readInventory'
import { planInventory } from '../../src/plan/planInventory'
import { estimatePlan } from '../../src/price/estimatePlan'
import { describeDocuments, planDocuments } from '../../src/sheets/describeDocuments'

type Row = Partial<Record<Field, Cell>>

const headerOf = ({ field, words }: Column & { field: Field }): string => {
  const length = lengthOf(field)
  return length === null ? words[0]! : `${words[0]!} (${length === 'height' ? 'm' : 'mm'})`
}

const headers = columns.map((column) => headerOf(column))

function tree(id: string, whole: Row, ...limbs: Row[]): Row[] {
  const [first = {}, ...rest] = limbs
  return [{ tree: id, ...whole, ...first }, ...rest.map((limb) => ({ tree: id, ...limb }))]
}

/** Invented trees in millimeters and meters, made so that each column has something to move. */
const rows: Row[] = [
  ...tree(
    'grown',
    {
      species: 'Red maple',
      height: 12,
      crownBase: 2,
      stage: 'medium',
      vigor: 'good',
      clearance: 4,
      clearanceSide: 'N',
      matureHeight: 20,
      trunk: 240
    },
    { limb: 'A', role: 'leader', diameter: 200, origin: 2, tip: 12, notes: 'tagged' },
    { limb: 'B', diameter: 110, stem: 150, origin: 3, tip: 11.5, bark: 'partial', bearing: 10, angle: 40 },
    { limb: 'C', diameter: 60, stem: 140, origin: 3.4, tip: 6, bearing: 40, lowestFoliage: 3.5 },
    { limb: 'B1', parent: 'B', diameter: 40, stem: 90, origin: 5, tip: 8 },
    { limb: 'D', diameter: 90, stemBelow: 200, origin: 5, tip: 10 },
    { limb: 'E', diameter: 95, stem: 130, origin: 6, tip: 10.5, cut: 60, lateral: 35 },
    { limb: 'F', diameter: 90, stem: 120, origin: 6.5, tip: 10, lastCutShare: 0.4, lastCutDate: 2029 },
    { limb: 'G', diameter: 40, origin: 7, tip: 8, live: 'dead' },
    { limb: 'H', diameter: 30, stem: 110, origin: 7.5, tip: 8.5 }
  ),
  ...tree(
    'small',
    { height: 6, crownBase: 1, stage: 'young', vigor: 'fair', trunk: 140 },
    { limb: 'A', diameter: 70, stem: 72, origin: 1.5, tip: 5.8 },
    { limb: 'B', diameter: 72, stem: 70, origin: 1.6, tip: 5.9 }
  ),
  ...tree('bare', { height: 8, crownBase: 2, stage: 'medium', vigor: 'good', trunk: 130 })
]

/** Cells to try in a column, by its kind. */
function tries({ reads }: Column): Cell[] {
  switch (reads.kind) {
    case 'text':
      return ['another', 'Pin oak', 'A']
    case 'diameter':
    case 'stems':
      return [20, 75, 140]
    case 'height':
    case 'positive height':
      return [0.6, 4.6, 9, 30]
    case 'share':
      return [0.02, 0.5, 1]
    case 'degrees':
      return [5, 80]
    case 'bearing':
      return [12, 190]
    case 'side':
      return ['S', 'street']
    case 'year':
      return [2020, 2028]
    case 'date':
      return [2020, '2029-11-15']
    case 'growth':
      return ['fast', 14]
    case 'choice':
    case 'flag':
    case 'dead':
      return Object.values(choices[reads.choice!]).map(([first]) => first as string)
  }
}

function blockOf(changed: readonly Row[]): CellBlock {
  const cells = changed.map((row) => columns.map(({ field }) => row[field] ?? null))
  return { rows: [headers, ...cells], sheet: 'Trees', top: 0, left: 0 }
}

/** What a plan says, what its documents and drawings show, and what is kept of the inventory. */
function outcome(changed: readonly Row[]) {
  const inventory = readInventory(blockOf(changed))
  const plan = planInventory(inventory, { date: '2030-03-01', timing: {} })
  const estimate = estimatePlan(plan)
  return {
    // What each column is taken for follows its cells too, and is no part of the plan.
    plan: JSON.stringify({ ...planJson(plan, wholeProgram(estimate)), columns: null }),
    document: () => {
      const sheets = describeDocuments(planDocuments, plan, wholeProgram(estimate))
      const size = { width: 400, height: 300, when: 'before', system: plan.system, palette: 'color' } as const
      const drawings = plan.trees.map((planned) => toSvg(drawTree(planned, planned.visits[0] ?? null, size)))
      return JSON.stringify(sheets.map(({ rows: content }) => content)) + drawings.join()
    },
    record: JSON.stringify(inventory.trees)
  }
}

const before = outcome(rows)
const documentBefore = before.document()

/** The rows with one cell of a column changed, for every cell that may be tried in it. */
function* changes(column: Column & { field: Field }): Generator<Row[]> {
  const [tree, limb] = [column.of === 'tree', column.of === 'limb']
  for (const cell of tries(column))
    for (const [at, row] of rows.entries()) {
      if ((tree && row.tree === rows[at - 1]?.tree) || (limb && row.limb === undefined)) continue
      yield rows.map((each, index) => (index === at ? { ...each, [column.field]: cell } : each))
    }
}

/** How far a column reaches: the furthest that any of its cells moves. */
function reachOf(column: Column & { field: Field }): ColumnUse | 'nothing' {
  const kept: ReturnType<typeof outcome>[] = []
  for (const changed of changes(column)) {
    const after = outcome(changed)
    if (after.plan !== before.plan) return 'plan'
    if (after.record !== before.record) kept.push(after)
  }
  if (kept.length === 0) return 'nothing'
  const shown = kept.slice(0, rows.length).some((after) => after.document() !== documentBefore)
  return shown ? 'document' : 'record'
}

describe('a column moves what its entry says', () => {
  it.each(columns.map((column) => [column.field, column] as const))('%s', (_field, column) => {
    expect(reachOf(column)).toBe(column.use)
  })

  it('has a name, and words for its header, of its own', () => {
    expect(new Set(columns.map(({ name }) => name)).size).toBe(columns.length)
    for (const { words } of columns) expect(words.length).toBeGreaterThan(0)
  })
})

import { columnLetters, type CellBlock } from '../../shared/cells'
import { problem } from '../../shared/problems'
import { blankLimb, blankTree } from '../../src/inventory/columnReaders'
import type { ColumnMatch, Inventory, Limb, Tree } from '../../src/inventory/inventory'
import type { Cut, LimbState, Plan, TreePlan, Visit } from '../../src/plan/plan'
import type { Estimate } from '../../src/price/estimate'
import type { LineWork } from '../../src/price/lineWork'
import { priceLines } from '../../src/price/priceLines'
import { inventedRates, type Rates } from '../../src/price/rates'

/**
 * A plan made by hand so that the pane can be tested without the engine. Trees, limbs and every number are invented;
 * nothing here checks the engine.
 */

/** A limb with only what the pane reads. */
export function inventedLimb(id: string, row: number, more: Partial<Limb> = {}): Limb {
  const measured = { diameter: 110, stem: 150, origin: 2.1, tip: 9.2 }
  return { ...blankLimb, id, row, ...measured, unplannable: null, ...more }
}

export function inventedTree(id: string, row: number, limbs: Limb[], more: Partial<Tree> = {}): Tree {
  return {
    ...blankTree,
    id,
    row,
    unplannable: null,
    species: 'Hornbeam',
    trunk: 190,
    height: 10,
    crownBase: 2,
    stage: 'young',
    vigor: 'good',
    site: 'Quarry lane (invented)',
    limbs,
    ...more
  }
}

export function inventedCut(limb: Limb, more: Partial<Cut> = {}): Cut {
  return {
    limb,
    kind: 'reduce',
    source: 'house rule',
    obligation: null,
    must: true,
    share: 0.5,
    count: 1,
    cutDiameter: 78,
    lateralMin: 39,
    cutHeight: 4.2,
    distance: null,
    tipAfter: 6.7,
    endsAt: 6.7,
    work: { diameter: 78, count: 1, height: 4.2, section: 78, part: 0.7 },
    dose: 0.15,
    aspectRatio: 0.84,
    projectedAspectRatio: 0.76,
    priority: 64.4,
    nextPriority: 31.2,
    standing: 'codominant',
    live: true,
    marked: true,
    inClearance: false,
    needsReason: false,
    reason: 'Nearly as thick as the leader and reaches its top.',
    ...more
  }
}

function state(limb: Limb, more: Partial<LimbState> = {}): LimbState {
  return {
    limb,
    aspectRatio: 0.41,
    standing: 'subordinate',
    priority: 6,
    foliageShare: 0.08,
    decision: 'retain',
    nextPriority: 7,
    nextRatio: 0.4,
    reason: 'Well under half its stem.',
    ...more
  }
}

function visit(number: number, year: number, cuts: Cut[], limbs: LimbState[]): Visit {
  return {
    visit: number,
    year,
    allowedRemoval: 0.25,
    dose: cuts.reduce((sum, cut) => sum + cut.dose, 0),
    objective: 1200,
    cuts,
    limbs,
    crownBaseAfter: 2,
    liveCrownRatioAfter: 0.78,
    lowerFoliageBefore: 0.61,
    lowerFoliageAfter: 0.58
  }
}

export function inventedTreePlan(tree: Tree, more: Partial<TreePlan> = {}): TreePlan {
  const [leader, cutLimb, dead, kept] = tree.limbs
  const cuts = [
    ...(dead === undefined
      ? []
      : [
          inventedCut(dead, {
            kind: 'remove',
            obligation: 'dead',
            share: 1,
            dose: 0,
            live: false,
            lateralMin: null,
            cutHeight: null,
            tipAfter: null,
            endsAt: null,
            projectedAspectRatio: null,
            priority: 3,
            nextPriority: 0,
            standing: 'subordinate',
            marked: false,
            reason: 'Dead.'
          })
        ]),
    ...(cutLimb === undefined ? [] : [inventedCut(cutLimb)])
  ]
  const limbs = [
    ...(cutLimb === undefined
      ? []
      : [state(cutLimb, { decision: 'reduce', aspectRatio: 0.84, standing: 'codominant', priority: 64.4 })]),
    ...(dead === undefined ? [] : [state(dead, { decision: 'remove' })]),
    ...(kept === undefined ? [] : [state(kept)])
  ]
  const later = cutLimb === undefined ? [] : [inventedCut(cutLimb, { dose: 0.06, priority: 31.2 })]
  return {
    tree,
    form: 'decurrent',
    stage: 'young',
    vigor: 'good',
    leader: {
      limb: leader ?? null,
      name: leader === undefined ? 'The trunk' : `Limb ${leader.id}`,
      reason: 'Marked as the leader in the inventory.',
      confirm: false,
      lost: null
    },
    allowedRemoval: 0.25,
    allowedBasis: 'young 25 %, good vigor',
    liveCrownRatio: 0.8,
    interval: 2,
    visits: tree.limbs.length === 0 ? [] : [visit(1, 2031, cuts, limbs), visit(2, 2033, later, limbs)],
    outcomes:
      cutLimb === undefined
        ? []
        : [
            {
              limb: cutLimb,
              outcome: 'keep',
              visit: null,
              year: null,
              heldBy: null,
              priority: 64.4,
              priorityAfter: 18,
              isStem: false
            }
          ],
    clearance: null,
    scaffold: null,
    notJudged: [],
    urgency: tree.limbs.length === 0 ? 0 : 64.4,
    ...more
  }
}

function match(column: number, header: string, more: Partial<ColumnMatch> = {}): ColumnMatch {
  const unread = { field: null, unit: null, unitNamed: false, percent: false, girth: false, runnerUp: null }
  const letters = columnLetters(1 + column)
  return { sheet: 'Survey', letters, column, header, confidence: 'sure', ...unread, ...more }
}

export const inventedBlock: CellBlock = {
  sheet: 'Survey',
  top: 2,
  left: 1,
  rows: [
    ['Tree', 'Limb', 'Limb dia', 'Stem dia (cm)', 'Color of tag'],
    ['K1', 'A', 15, null, 'blue'],
    ['K1', 'B', 11, 13, 'blue'],
    ['K1', 'C', 4, 15, 'blue'],
    ['K1', 'D', 5, 12, 'blue'],
    ['K2', null, null, null, 'blue'],
    ['K3', 'A', 'thick', 14, 'red']
  ]
}

const inventedMatches: readonly ColumnMatch[] = [
  match(0, 'Tree', { field: 'tree' }),
  match(1, 'Limb', { field: 'limb' }),
  match(2, 'Limb dia', { field: 'diameter', unit: 'cm' }),
  match(3, 'Stem dia (cm)', { field: 'stem', unit: 'cm', unitNamed: true }),
  match(4, 'Color of tag')
]

function inventedInventory(trees: Tree[]): Inventory {
  return {
    sheet: 'Survey',
    address: 'Survey!B3:F9',
    parts: [{ sheet: 'Survey', top: 2, left: 1, first: 0, count: 7, matches: inventedMatches }],
    matches: inventedMatches,
    asked: [],
    system: 'cm-m',
    trees,
    limbCount: 4,
    unplanned: [{ tree: 'K3', at: 6, row: 9, cell: 'Survey!B9', reason: 'Its diameter is not a number.' }],
    problems: [
      problem('no-unit', 'Survey!D3', { text: 'Limb dia', unit: 'cm' }),
      problem('not-a-number', 'Survey!D9', { column: 'Limb diameter', text: 'thick' }),
      problem('column-unknown', 'Survey!F3', { text: 'Color of tag' })
    ]
  }
}

/** One tree of four limbs, one without limbs, one row that could not be planned. */
export function inventedPlan(): Plan {
  const limbs = [1, 2, 3, 4].map((row) => inventedLimb('ABCD'.charAt(row - 1), row))
  const trees = [inventedTree('K1', 1, limbs), inventedTree('K2', 5, [], { species: '' })]
  const inventory = inventedInventory(trees)
  return {
    date: '2031-03-02',
    system: 'cm-m',
    inventory,
    trees: trees.map((tree) => inventedTreePlan(tree)),
    unplanned: [...inventory.unplanned],
    problems: [...inventory.problems]
  }
}

/** A plan of many trees without limbs, to test long lists. */
export function longPlan(count: number): Plan {
  const trees = Array.from({ length: count }, (_, index) => inventedTree(`N${index + 1}`, index + 1, []))
  const inventory = { ...inventedInventory(trees), unplanned: [], problems: [] }
  return {
    ...inventedPlan(),
    inventory,
    unplanned: [],
    problems: [],
    trees: trees.map((tree, index) => inventedTreePlan(tree, { urgency: index }))
  }
}

/** Invented work: so many crew-hours, nothing to haul. */
function work(tree: string, visitNumber: number, crewHours: number): LineWork {
  return {
    tree,
    visit: visitNumber,
    year: 2029 + visitNumber * 2,
    cuts: 2,
    persons: 3,
    byPole: false,
    minutes: { setUp: 15, cutting: 20, brush: 10 },
    accessFactor: 1,
    crewHours,
    brushKilograms: 40,
    brush: { weight: 40, looseVolume: 0.27, chipVolume: 0.14 },
    relief: 30,
    basis: 'Invented.'
  }
}

/** Rates under which a crew-hour costs 100.00 and nothing else costs anything, so that a price can be read. */
const plainRates: Rates = {
  ...inventedRates,
  crewPersons: 1,
  ...{ currency: 'XTS', wage: '0', equipmentHour: '100', disposalPerWeight: '0', taxRate: '0.07' },
  ...{ mobilization: '0', travelHours: 0, contingencyRate: '0', overheadRate: '0', profitRate: '0' },
  ...{ minimumPerTree: '0', minimumPerTrip: '0' }
}

export function inventedEstimate(): Estimate {
  const lines = [work('K1', 1, 12.4), work('K1', 2, 3.1), work('K2', 1, 0.95)]
  return {
    currency: 'XTS',
    minorDigits: 2,
    taxRate: 0.07,
    ...priceLines(lines, plainRates),
    budgetFigures: [],
    rates: plainRates,
    validUntil: '2031-04-01',
    inventedRates: true,
    inventedCount: inventedRates.invented.length,
    rateCount: inventedRates.invented.length
  }
}

/** What has to hold between the plans of two inventories that differ in one thing, over drawn trees and through the reader. */
import type { Cell } from '../../shared/cells'
import { dice, drawTree, exactRows, type Drawn, type DrawnTree } from './reference/draw'
import { planRows, type PrintedTree } from './reference/enginePlan'

const full = process.env['FUZZ'] === 'full'
const seed = Number(process.env['PROPERTY_SEED'] ?? 20270401)
const trees = full ? 1200 : 40
jest.setTimeout(full ? 1_800_000 : 240_000)

function planned(rows: Cell[][]): PrintedTree {
  return planRows(rows).printed.trees[0]!
}

function planOf(tree: DrawnTree): PrintedTree {
  return planned(exactRows([tree], 'cm-m'))
}

/** Drawn trees that a relation can be asked of. */
function* drawn(
  isFit: (tree: DrawnTree) => boolean = () => true
): Generator<{ at: number; tree: DrawnTree }> {
  for (let [at, found] = [0, 0]; found < trees; at++) {
    const tree = drawTree('T1', seed + at * 15_485_863)
    if (!isFit(tree)) continue
    found++
    yield { at, tree }
  }
}

/** The plan without its sentences, its lists in the order of the limbs' names. */
function shape(plan: PrintedTree): unknown {
  const byName = <T extends { limb: string }>(list: readonly T[]): T[] =>
    [...list].sort((a, b) => a.limb.localeCompare(b.limb))
  const plain = (record: object): unknown =>
    Object.fromEntries(
      Object.entries(record).flatMap(([name, value]) => (name === 'reason' ? [] : [[name, value]]))
    )
  return {
    allowed: plan.allowedRemoval,
    clearance: plan.clearance === null ? null : plain(plan.clearance),
    visits: plan.visits.map(({ year, cuts }) => ({ year, cuts: byName(cuts).map(plain) })),
    outcomes: byName(plan.outcomes).map(plain)
  }
}

/** Whether two plans say the same, numbers as two ways of computing them agree. */
function isSame(one: unknown, other: unknown): boolean {
  if (typeof one === 'number' && typeof other === 'number')
    return Math.abs(one - other) <= 1e-6 * Math.max(1, Math.abs(one))
  if (typeof one !== 'object' || typeof other !== 'object' || one === null || other === null)
    return one === other
  const names = Object.keys(one)
  if (names.length !== Object.keys(other).length) return false
  return names.every((name) =>
    isSame((one as Record<string, unknown>)[name], (other as Record<string, unknown>)[name])
  )
}

function expectSame(at: number, plan: PrintedTree, expected: PrintedTree): void {
  // What differs is shown whole.
  if (!isSame(shape(plan), shape(expected))) expect([at, shape(plan)]).toEqual([at, shape(expected)])
}

/** Nothing in it goes by the order of the rows: no two limbs alike, and no two that wait for one another. */
function hasNoTies({ tree, limbs }: DrawnTree): boolean {
  const twice = (of: (limb: Drawn) => unknown) => new Set(limbs.map(of)).size < limbs.length
  const temporary = limbs.filter(({ role }) => role === 'temporary').length
  return (
    !twice(({ diameter }) => diameter) &&
    temporary < 2 &&
    (tree.clearance === null ||
      (!twice(({ lowestFoliage }) => lowestFoliage) &&
        limbs.every(({ lowestFoliage, tip }) => Number(lowestFoliage) < Number(tip))))
  )
}

/** The same tree with the lowest foliage of every limb measured, each at a height of its own. */
function measured(drawnTree: DrawnTree): DrawnTree {
  const base = Number(drawnTree.tree.crownBase)
  return {
    ...drawnTree,
    limbs: drawnTree.limbs.map((limb, at) => ({
      ...limb,
      lowestFoliage:
        limb.lowestFoliage ?? Math.max(base, Math.min(Number(limb.origin), Number(limb.tip))) + at / 1000
    }))
  }
}

it(`the order of the rows moves nothing (seed ${seed})`, () => {
  for (const { at, tree } of drawn((each) => hasNoTies(measured(each)))) {
    const one = measured(tree)
    const turn = dice(seed + at)
    const order = one.limbs.map((limb) => ({ limb, place: turn.number(0, 1) }))
    const limbs = order.sort((a, b) => a.place - b.place).map(({ limb }) => limb)
    expectSame(at, planOf({ ...one, limbs }), planOf(one))
  }
})

it(`the units in which it is typed move nothing (seed ${seed})`, () => {
  for (const { at, tree } of drawn()) {
    expectSame(at, planned(exactRows([tree], 'in-ft')), planOf(tree))
  }
})

it(`columns without a use move nothing (seed ${seed})`, () => {
  for (const { at, tree } of drawn()) {
    const [header, ...rows] = exactRows([tree], 'cm-m')
    const more = [
      [...header!, 'Surveyor', 'Photo no.'],
      ...rows.map((row, place) => [...row, 'AB', 4000 + place])
    ]
    expectSame(at, planned(more), planOf(tree))
  }
})

/** The obligations of a first visit that are met, in their order. */
function obliged({ visits }: PrintedTree): string[] {
  return visits[0]!.cuts.flatMap(({ limb, obligation }) =>
    obligation === null ? [] : [`${limb} ${obligation}`]
  )
}

/** An obligation takes a larger share of a limb than in another plan. */
function takesMore(before: PrintedTree, after: PrintedTree): boolean {
  return after.visits[0]!.cuts.some(({ limb, obligation, share }) =>
    before.visits[0]!.cuts.some(
      (cut) =>
        obligation !== null && cut.limb === limb && cut.obligation === obligation && share > cut.share + 1e-9
    )
  )
}

it(`a subordinate limb more takes the place of no obligation (seed ${seed})`, () => {
  let met = 0
  const onTrunk = (limb: Drawn) =>
    (limb.parent ?? null) === null && limb.role !== 'leader' && (limb.live ?? null) === null
  // Where the leader is lost, another limb leads, and the highest union is not that of a limb.
  const keepsLeader = ({ role, live, broken }: Drawn) =>
    role !== 'leader' || (live === null && broken === null)
  const isFit = ({ limbs }: DrawnTree) => limbs.filter(onTrunk).length > 1 && limbs.every(keepsLeader)
  for (const { at, tree } of drawn(isFit)) {
    const heights = tree.limbs.filter(onTrunk).map(({ origin }) => Number(origin))
    const height = Number(tree.tree.height)
    const origin = Math.min(Math.max(...heights), height * 0.9) * 0.999
    const small = {
      limb: 'Small',
      diameter: 12,
      stem: 60,
      origin,
      tip: Math.min(height * 0.75, origin + 0.3)
    }
    const plan = planOf(tree)
    const before = obliged(plan)
    const after = planOf({ ...tree, limbs: [...tree.limbs, small] })
    met += before.length
    // Its foliage makes that of the others a lesser share, so that one may fit that waited, and only then another wait.
    const now = obliged(after)
    // It may itself hang in the clearance; and the largest part that fits of a limb may be larger.
    const isNew = now.some((each) => !before.includes(each))
    if (!isNew && !takesMore(plan, after))
      expect([at, before.filter((each) => !now.includes(each))]).toEqual([at, []])
    expect(after.visits[0]!.cuts.filter((cut) => cut.limb === 'Small' && cut.obligation === null)).toEqual([])
  }
  expect(met).toBeGreaterThan(trees / 4)
})

it(`a larger allowance never gives a worse objective, where nothing obliges (seed ${seed})`, () => {
  let better = 0
  for (const { at, tree } of drawn()) {
    const free = {
      tree: { ...tree.tree, clearance: null, vigor: 'good', dieback: null, removed: null, lastPruned: null },
      limbs: tree.limbs.map((limb) => ({
        ...limb,
        rubbing: null,
        broken: null,
        role: limb.role === 'temporary' ? null : (limb.role ?? null)
      }))
    }
    const objectives = [0, 0.02, 0.05, 0.1, 0.15, 0.25].map(
      (localLimit) => planOf({ ...free, tree: { ...free.tree, localLimit } }).visits[0]!.objective
    )
    for (const [step, objective] of objectives.entries())
      if (step > 0) expect([at, step, objective <= objectives[step - 1]! + 1e-3]).toEqual([at, step, true])
    if (objectives.at(-1)! < objectives[0]! - 1) better++
  }
  expect(better).toBeGreaterThan(trees / 4)
})

it(`a higher clearance never means less work on it, where all of it fits (seed ${seed})`, () => {
  let more = 0
  for (const { at, tree } of drawn(({ limbs }) => limbs.length > 1)) {
    const height = Number(tree.tree.height)
    const whole = {
      ...tree.tree,
      vigor: 'good',
      dieback: null,
      removed: null,
      lastPruned: null,
      localLimit: null
    }
    const plans = [0.1, 0.2, 0.3, 0.4].map((part) =>
      planOf({ ...tree, tree: { ...whole, stage: 'young', clearance: height * part } })
    )
    for (const [step, plan] of plans.entries()) {
      const before = plans[step - 1]
      // All that hangs below the height that keeps the crown ratio is cleared.
      const fits = ({ clearance }: PrintedTree) =>
        clearance!.reachedNowM >= Math.min(clearance!.requiredM, 0.4 * height) - 1e-6
      if (before === undefined || !fits(before) || !fits(plan)) continue
      const work = [before, plan].map(({ visits }) => {
        const cuts = visits[0]!.cuts.filter(({ obligation }) => obligation === 'clearance')
        return cuts.reduce((sum, { dose }) => sum + dose, 0)
      })
      if (work[1]! > work[0]! + 1e-6) more++
      expect([at, step, work[1]! >= work[0]! - 1e-9]).toEqual([at, step, true])
      expect(plan.clearance!.reachedNowM).toBeGreaterThanOrEqual(before.clearance!.reachedNowM - 1e-9)
    }
  }
  expect(more).toBeGreaterThan(trees / 8)
})

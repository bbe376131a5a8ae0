/**
 * The choice of a visit against an independent solver: HiGHS (a mixed-integer solver compiled to WebAssembly), asked
 * the same question as an integer program. First for the greatest gain, then for the least dose among the plans that
 * reach it, so that the rule for ties is checked too.
 */
import loadHighs, { type Highs } from 'highs'
import { madeInventory, numbers } from '../../bench/madeInventory'
import { readInventory } from '../../src/inventory/readInventory'
import { leaveAlone, type Item, type Limits } from '../../src/plan/choice'
import { choose } from '../../src/plan/choose'
import { firstVisitProblem } from '../../src/plan/firstVisit'
import type { VisitProblem } from '../../src/plan/visitProblem'

/** Enough in every run to meet each kind of tree; all of them with `npm run fuzz`. */
const trees = process.env['FUZZ'] === 'full' ? 500 : 100
const mostLimbs = 40

/** A tree of up to 40 limbs with up to 6 options each, shaped like real ones: more dose, more gain, with noise. */
function madeTree(next: () => number): { groups: Item[][]; limits: Limits } {
  const limbs = 1 + Math.floor(next() * mostLimbs)
  const equal = next() < 0.3
  const groups = Array.from({ length: limbs }, () => {
    const share = equal ? 4000 : 200 + Math.floor(next() * 9000)
    const need = equal ? 60 : 5 + Math.floor(next() * 90)
    const holds = next() < 0.2
    const leads = next() < 0.15 ? 1 : 0
    return Array.from({ length: Math.floor(next() * 7) }, (_, step): Item => {
      const part = (step + 2) / 8
      const noise = equal ? 1 : 0.8 + 0.4 * next()
      return {
        gain: Math.round(need * need * Math.sqrt(part) * noise),
        units: Math.round(share * Math.min(1, part)),
        cuts: 1,
        lower: Math.round((next() - 0.6) * 20) / 1000,
        raises: holds && step === 5,
        leaders: leads
      }
    })
  })
  const limits = {
    units: 1000 + Math.floor(next() * 24000),
    cuts: 6,
    lower: Math.round(next() * 60) / 1000,
    holders: next() < 0.5 ? Infinity : 1 + Math.floor(next() * 3),
    leaders: next() < 0.5 ? Infinity : 2
  }
  return { groups, limits }
}

interface Named {
  name: string
  item: Item
}

const sum = (terms: string[]): string =>
  terms.length === 0 ? '0 x' : terms.join(' + ').replaceAll('+ -', '- ')

function program(groups: Item[][], limits: Limits, leastGain: number | null): string {
  const all: Named[][] = groups.map((items, at) =>
    items.map((item, index) => ({ name: `x${at}_${index}`, item }))
  )
  const flat = all.flat()
  const terms = (of: (item: Item) => number): string =>
    sum(flat.filter(({ item }) => of(item) !== 0).map(({ name, item }) => `${of(item)} ${name}`))
  const rows = all
    .filter((items) => items.length > 0)
    .map((items, at) => ` one${at}: ${sum(items.map(({ name }) => name))} <= 1`)
  rows.push(` dose: ${terms((item) => item.units)} <= ${limits.units}`)
  rows.push(` cuts: ${terms((item) => item.cuts)} <= ${limits.cuts}`)
  rows.push(` low: ${terms((item) => item.lower * 1000)} >= ${-limits.lower * 1000}`)
  if (limits.holders < Infinity)
    rows.push(` base: ${terms((item) => Number(item.raises))} <= ${limits.holders - 1}`)
  if (limits.leaders < Infinity) rows.push(` lead: ${terms((item) => item.leaders)} <= ${limits.leaders}`)
  if (leastGain !== null) rows.push(` gain: ${terms((item) => item.gain)} >= ${leastGain}`)
  const objective = leastGain === null ? terms((item) => item.gain) : terms((item) => item.units)
  return [
    leastGain === null ? 'Maximize' : 'Minimize',
    ` obj: ${objective}`,
    'Subject To',
    ...rows,
    'Bounds',
    ' 0 <= x <= 0',
    'Binary',
    ` ${flat.map(({ name }) => name).join(' ')}`,
    'End'
  ].join('\n')
}

function solve(highs: Highs, text: string, whole = true): number {
  const result = highs.solve(text, {
    mip_rel_gap: 0,
    mip_abs_gap: 0,
    mip_feasibility_tolerance: 1e-9,
    primal_feasibility_tolerance: 1e-9
  })
  if (result.Status !== 'Optimal') throw new Error(`The solver ended with ${result.Status}`)
  return whole ? Math.round(result.ObjectiveValue) : result.ObjectiveValue
}

/** The engine's own problems for made-up trees of up to 40 limbs. */
function* problems(): Generator<VisitProblem> {
  for (const tree of readInventory(madeInventory(28 * trees, 11, mostLimbs)).trees) {
    const problem = firstVisitProblem(tree, { date: '2030-03-01' })
    if (problem !== null) yield problem
  }
}

/** One unit of gain is a thousandth of a point squared here, one of dose a millionth of the tree's foliage. */
function inSolverUnits({ groups, limits }: VisitProblem): { groups: Item[][]; limits: Limits } {
  return {
    groups: groups.map((items) =>
      items.map((item) => ({ ...item, gain: item.gain / 10, units: item.units / 1000 }))
    ),
    limits: { ...limits, units: limits.units / 1000 }
  }
}

describe('against an independent solver', () => {
  it(`reaches the same objective on ${trees} trees of up to ${mostLimbs} limbs as the engine asks about them`, async () => {
    const highs = await loadHighs()
    let asked = 0
    let pressed = 0
    let largest = 0
    for (const problem of problems()) {
      if (asked === trees) break
      if (problem.groups.length === 0) continue
      asked++
      largest = Math.max(largest, problem.groups.length)
      const chosen = choose(problem.groups, problem.limits)
      const taken = problem.groups.flatMap((group, at) =>
        chosen[at] === leaveAlone ? [] : [group[chosen[at]!]!]
      )
      const gain = taken.reduce((all, item) => all + item.gain, 0) / 10
      const dose = taken.reduce((all, item) => all + item.units, 0)
      expect(dose).toBeLessThanOrEqual(problem.limits.units)
      if (problem.limits.units - dose < 0.02 * problem.limits.units) pressed++
      const { groups, limits } = inSolverUnits(problem)
      const best = solve(highs, program(groups, limits, null), false)
      // The solver keeps its limits to a tolerance and may gain by it; the engine keeps them to the last unit.
      expect([asked, Math.abs(gain - best) <= 0.01 + best * 1e-5]).toEqual([asked, true])
    }
    expect(asked).toBe(trees)
    expect(largest).toBeGreaterThan(25)
    // A cut has to be worth its foliage, so that most trees keep some of what they may lose.
    expect(pressed).toBeGreaterThan(trees / 8)
  }, 240000)

  it(`finds the same gain and the same least dose on ${trees} trees of up to ${mostLimbs} limbs`, async () => {
    const highs = await loadHighs()
    const next = numbers(Number(process.env['PROPERTY_SEED'] ?? 20300301))
    let bound = 0
    let ties = 0
    let largest = 0
    for (let tree = 0; tree < trees; tree++) {
      const { groups, limits } = madeTree(next)
      if (groups.every((items) => items.length === 0)) continue
      const chosen = choose(groups, limits)
      const items = groups.flatMap((group, at) => (chosen[at] === leaveAlone ? [] : [group[chosen[at]!]!]))
      const gain = items.reduce((all, item) => all + item.gain, 0)
      const dose = items.reduce((all, item) => all + item.units, 0)
      const best = solve(highs, program(groups, limits, null))
      expect([tree, gain]).toEqual([tree, best])
      const least = solve(highs, program(groups, limits, best))
      expect([tree, dose]).toEqual([tree, least])
      largest = Math.max(largest, groups.length)
      if (limits.units - dose < limits.units * 0.02) bound++
      const worths = groups.flat().map((item) => `${item.gain}/${item.units}`)
      if (new Set(worths).size < worths.length) ties++
    }
    // The trees are of the kind that matters: many press against the allowance, and many hold equal options.
    expect(largest).toBe(mostLimbs)
    expect(bound).toBeGreaterThan(trees / 5)
    expect(ties).toBeGreaterThan(trees / 5)
  }, 240000)
})

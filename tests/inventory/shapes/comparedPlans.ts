/** Plans side by side: what differs, apart from where it stood and in which units it is told. */
import type { Inventory } from '../../../src/inventory/inventory'
import type { LeaderChoice, Plan, TreePlan } from '../../../src/plan/plan'
import { planInventory } from '../../../src/plan/planInventory'
import { estimatePlan } from '../../../src/price/estimatePlan'
import { inventedRatesIn } from '../../../src/price/rates'
import type { DrawnSurvey } from './drawnSurvey'

export function planOf(inventory: Inventory): Plan {
  return planInventory(inventory, { date: '2030-03-01' })
}

/** Of two limbs that are alike the plan takes the one that stands first. */
export function haveEqualLimbs({ trees }: DrawnSurvey): boolean {
  return trees.some(({ limbs }) => {
    const sizes = limbs.map(({ diameter, stem }) => [diameter, stem].join())
    return new Set(sizes).size < sizes.length
  })
}

/** Sentences name lengths in the units of the survey, and cells. */
const told = new Set(['reason', 'refused', 'source'])

type Entry = readonly [path: string, value: unknown]

/** Every number, word and flag of a value by where it stands, limbs by their ids. */
function entriesOf(value: unknown, path: string, into: Entry[]): Entry[] {
  if (Array.isArray(value)) {
    into.push([`${path} count`, value.length])
    value.forEach((each, at) => entriesOf(each, `${path} ${String(at)}`, into))
  } else if (typeof value === 'object' && value !== null) {
    for (const [key, each] of Object.entries(value)) {
      if (told.has(key)) continue
      if (key === 'limb' || key === 'lost') into.push([`${path} ${key}`, idOf(each as LeaderChoice['limb'])])
      else entriesOf(each, `${path} ${key}`, into)
    }
  } else into.push([path, value])
  return into
}

const idOf = (limb: LeaderChoice['limb']): string | null => limb?.id ?? null

const byLimb = <T extends { readonly limb: { readonly id: string } }>(list: readonly T[]): T[] =>
  [...list].sort((a, b) => (a.limb.id < b.limb.id ? -1 : 1))

/** A tree's plan without its survey, in an order of its own. */
function partsOf({ tree, visits, outcomes, notJudged, ...rest }: TreePlan): object {
  return {
    ...rest,
    id: tree.id,
    notJudged: notJudged.map(({ id }) => id).sort(),
    outcomes: byLimb(outcomes),
    visits: visits.map((visit) => ({ ...visit, cuts: byLimb(visit.cuts), limbs: byLimb(visit.limbs) }))
  }
}

/** What the plan costs, whatever the survey's units, by the same rates. */
function pricesOf(plan: Plan): string[] {
  const { lines, total } = estimatePlan(plan, inventedRatesIn['cm-m'])
  return [
    ...lines.map(
      ({ tree, visit, crewHours, price }) => `${tree} ${String(visit)} ${String(crewHours)} ${String(price)}`
    ),
    String(total)
  ]
}

function isSame(a: unknown, b: unknown): boolean {
  if (typeof a === 'number' && typeof b === 'number')
    return a === b || Math.abs(a - b) <= 1e-6 * Math.max(1, Math.abs(a), Math.abs(b))
  return a === b
}

/** What is not the same in two plans: cuts, visits, outcomes, what is left, and prices. */
export function differentPlans(got: Plan, wanted: Plan): string[] {
  const [mine, theirs] = [got, wanted].map((plan) =>
    entriesOf({ trees: plan.trees.map(partsOf), prices: pricesOf(plan) }, '', [])
  ) as [Entry[], Entry[]]
  for (let at = 0; at < Math.max(mine.length, theirs.length); at++) {
    const [path, value] = mine[at] ?? ['nothing', null]
    const [wantedPath, wantedValue] = theirs[at] ?? ['nothing', null]
    if (path !== wantedPath || !isSame(value, wantedValue))
      return [
        `plan${path.replaceAll(/ \d+/g, '')}: ${path} ${JSON.stringify(value)} and not ${wantedPath} ${JSON.stringify(wantedValue)}`
      ]
  }
  return []
}

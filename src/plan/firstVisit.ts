import { defaultRules, visitInterval, type Rules } from '../../shared/rules'
import type { UnitSystem } from '../../shared/units'
import type { Inventory, Tree } from '../inventory/inventory'
import { setShares } from './crown'
import { prepareTree, type PreparedTree } from './prepareTree'
import { applyScaffold } from './scaffold/applyScaffold'
import { allowedFirst, basics } from './treeBasics'
import { conditionsOf, type VisitConditions } from './visitConditions'
import { visitProblem, type VisitProblem } from './visitProblem'

/** What a first visit is looked at with: the rules, its date, and an error of the foliage shares; all may be left out. */
export interface FirstVisit {
  readonly rules?: Rules
  /** ISO date; visit 1 falls in its year. */
  readonly date?: string
  /** Share of the live foliage that may come off, where it is known already. */
  readonly allowed?: number
  /** Factor on the computed foliage shares, 1 unless given. */
  readonly factor?: number
  /** The units in which it is told. */
  readonly system?: UnitSystem
}

/** An inventory without cells: what is found again of a tree was told when it was planned. */
const nowhere: Inventory = {
  sheet: '',
  address: '',
  parts: [{ sheet: '', top: 0, left: 0, first: 0, count: 0, matches: [] }],
  matches: [],
  asked: [],
  system: 'in-ft',
  trees: [],
  limbCount: 0,
  unplanned: [],
  problems: []
}

/** A tree made ready outside a plan; null where its limbs cannot be judged. */
export function prepareAgain(
  tree: Tree,
  rules: Rules,
  date: string,
  system: UnitSystem = nowhere.system
): PreparedTree | null {
  const known = basics(tree, rules, date)
  const inventory = system === nowhere.system ? nowhere : { ...nowhere, system }
  const year = Number(date.slice(0, 4))
  const { prepared } = prepareTree({ inventory, tree }, known, rules, year)
  if (prepared !== null) applyScaffold(prepared, year, rules)
  return prepared
}

/** A tree made ready for its first visit, its limbs with their shares; null where its limbs cannot be judged. */
export function firstVisit(
  tree: Tree,
  { rules = defaultRules, date = '0000-01-01', allowed, factor = 1, system }: FirstVisit = {}
): { tree: PreparedTree; conditions: VisitConditions } | null {
  const prepared = prepareAgain(tree, rules, date, system)
  if (prepared === null) return null
  const { stage, crownBase } = prepared
  const conditions = conditionsOf(prepared, {
    rules,
    stage,
    crownBase,
    year: Number(date.slice(0, 4)),
    years: visitInterval(rules, stage),
    allowed: allowed ?? allowedFirst(basics(tree, rules, date), rules),
    first: true
  })
  setShares(prepared, factor)
  return { tree: prepared, conditions }
}

/** What a tree's first visit has to choose from; null where its limbs cannot be judged. */
export function firstVisitProblem(tree: Tree, wanted: FirstVisit = {}): VisitProblem | null {
  const first = firstVisit(tree, wanted)
  return first === null ? null : visitProblem(first.tree, first.conditions)
}

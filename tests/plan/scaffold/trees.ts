import type { Cell } from '../../../shared/cells'
import { defaultRules, type Rules } from '../../../shared/rules'
import type { PlanOptions } from '../../../src/plan/planInventory'
import type { Plan, TreePlan } from '../../../src/plan/plan'
import { block, planOf } from '../trees'

const headers =
  'Tree | Height (m) | Crown base (m) | Life stage | Vigor | Growth | Form | Trunk dia (mm) | Mature height (m) | Clearance (m) | Clearance side | Lowest permanent limb (m) | Limb | Role | Permanent | Limb dia (mm) | Stem dia (mm) | Origin (m) | Tip (m) | Lowest foliage (m) | Bearing | Included bark | Live | Broken | Decay | Parent'

/** What is different of a tree of 10 m with its crown from 2 m and a mature height of 20 m, medium aged. */
export interface Whole {
  stage?: Cell
  form?: Cell
  trunk?: Cell
  mature?: Cell
  clearance?: Cell
  side?: Cell
  lowest?: Cell
}

/** A limb of 40 mm on a stem of 160 mm, unless it says otherwise. */
export interface Row {
  id: string
  role?: Cell
  permanent?: Cell
  d?: Cell
  stem?: Cell
  origin?: Cell
  tip?: Cell
  foliage?: Cell
  bearing?: Cell
  bark?: Cell
  live?: Cell
  broken?: Cell
  decay?: Cell
  parent?: Cell
}

const or = (value: Cell | undefined, other: Cell): Cell => (value === undefined ? other : value)

/** These trees list the limbs that a test is about; none of them is taken for an incomplete survey. */
const anyGap: Rules = { ...defaultRules, scaffoldGap: defaultRules.scaffoldGap * 5 }

/** The plan of an invented tree, its leader A left out of the rows given. */
export function plannedTree(whole: Whole, rows: readonly Row[], options: Partial<PlanOptions> = {}): Plan {
  const leader: Row = { id: 'A', role: 'leader', d: 200, stem: 200, origin: 2, tip: 10 }
  const cells = [leader, ...rows].map((row) => [
    'T1',
    10,
    2,
    or(whole.stage, 'medium'),
    'good',
    'medium',
    or(whole.form, null),
    or(whole.trunk, 240),
    or(whole.mature, 20),
    or(whole.clearance, 2.5),
    or(whole.side, null),
    or(whole.lowest, null),
    row.id,
    or(row.role, null),
    or(row.permanent, null),
    or(row.d, 40),
    or(row.stem, 160),
    or(row.origin, 3),
    or(row.tip, 6),
    or(row.foliage, null),
    or(row.bearing, null),
    or(row.bark, null),
    or(row.live, null),
    or(row.broken, null),
    or(row.decay, null),
    or(row.parent, null)
  ])
  return planOf(block(headers, ...cells), { rules: anyGap, ...options })
}

/** Each limb of a scaffold with what it is, and the year by which a temporary one goes. */
export function judgedAs({ scaffold }: TreePlan): Record<string, string> {
  return Object.fromEntries(
    (scaffold?.limbs ?? []).map(({ limb, permanence, goneBy }) => [
      limb.id,
      `${permanence ?? 'not judged'}${goneBy === null ? '' : ` ${String(goneBy)}`}`
    ])
  )
}

export const reasonOf = ({ scaffold }: TreePlan, id: string): string =>
  scaffold?.limbs.find(({ limb }) => limb.id === id)?.reason ?? ''

export const codesOf = ({ problems }: Plan): readonly string[] => problems.map(({ code }) => code)

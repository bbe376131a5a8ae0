/** Every rule on the Rules sheet moves the plan of some tree: none is printed and then ignored. */
import { readInventory } from '../../src/inventory/readInventory'
import { planInventory } from '../../src/plan/planInventory'
import { sampleInventory } from '../../src/file/sampleInventory'
import type { Cell, CellBlock } from '../../shared/cells'
import { ruleBook, rulesWith, type RuleName } from '../../shared/rules'
import { block } from './trees'

const headers =
  'Tree | Height (m) | Crown base (m) | Life stage | Vigor | Clearance (m) | Clearance side | Mature height (m) | Limb | Role | Limb dia (mm) | Stem dia (mm) | Origin (m) | Tip (m) | Included bark | Angle | Bearing | Lowest foliage (m)'

type Limb = [id: string, role: Cell, d: Cell, stem: Cell, origin: Cell, tip: Cell, ...rest: Cell[]]

/** Invented trees, each made to show what the sample does not. */
function tree(id: string, whole: Cell[], ...limbs: Limb[]): Cell[][] {
  return limbs.map((limb, row) => [id, ...(row === 0 ? whole : whole.map(() => null)), ...limb])
}

const small = tree(
  'small',
  [10, 2, 'young', 'good', null, null, null],
  ['A', 'leader', 150, null, 2, 10],
  ['B', null, 24, 30, 7, 9, 'full'],
  ['C', null, 40, 120, 7.5, 8.5],
  ['D', null, 60, 140, 3, 6]
)
const crowded = tree(
  'crowded',
  [12, 2, 'medium', 'good', null, null, null],
  ['A', 'leader', 200, null, 2, 12],
  ['B', null, 60, 150, 6.5, 9, 'none', 40, 0],
  ['C', null, 50, 150, 6.1, 11, 'none', 40, 200]
)
const spaced = tree(
  'spaced',
  [12, 2, 'medium', 'good', null, null, 20],
  ['A', 'leader', 200, null, 2, 12],
  ['B', null, 60, 150, 5, 9, 'none', 40, 10],
  ['C', null, 55, 150, 5.5, 9, 'none', 40, 12]
)
const side = tree(
  'side',
  [12, 2, 'medium', 'good', 4, 'N', null],
  ['A', 'leader', 200, null, 2, 12],
  ['B', null, 50, 150, 3, 6, 'none', 40, 50, 2.5]
)
const held = tree(
  'held',
  [10, 2, 'medium', 'good', 6, null, null],
  ['A', 'leader', 200, null, 6, 10],
  ['B', null, 40, 160, 2.2, 5, 'partial', 40, 50, 2.3],
  ['C', null, 35, 150, 2.3, 5, 'partial', 40, 180, 2.4]
)
const union = tree(
  'union',
  [12, 2, 'young', 'good', null, null, null],
  ['A', null, 100, 95, 3, 11, 'full', 5],
  ['B', null, 95, 100, 3, 8.8, 'none', 40]
)
const close = tree(
  'close',
  [12, 2, 'young', 'good', null, null, null],
  ['A', null, 100, 98, 3, 11, 'none', 30],
  ['B', null, 98, 100, 3, 11.2, 'partial', 10]
)
const slow = tree(
  'slow',
  [14, 2, 'medium', 'fair', null, null, null],
  ['A', 'leader', 200, null, 2, 14],
  ...Array.from({ length: 8 }, (_none, at): Limb => [`L${String(at)}`, null, 90 + at, 140, 6.5 + at / 5, 8])
)

const special = block(headers, ...[small, crowded, spaced, side, held, union, close, slow].flat())
const sample: CellBlock = { rows: sampleInventory, sheet: 'Inventory', top: 0, left: 0 }

function planned(rules: Partial<Record<RuleName, number>>): string {
  const plans = [special, sample].map((cells) => {
    const { trees, problems } = planInventory(readInventory(cells), {
      date: '2030-05-02',
      rules: rulesWith(rules)
    })
    return { trees, problems }
  })
  return JSON.stringify(plans)
}

const byDefault = planned({})

/** Shown beside each share and used at the ends of the outlook, which has a test of its own. */
const elsewhere: RuleName[] = ['foliageError']

it.each((Object.keys(ruleBook) as RuleName[]).filter((rule) => !elsewhere.includes(rule)))(
  '%s moves a plan at one end of its range',
  (rule) => {
    const { low, high, value } = ruleBook[rule]
    const ends = [low, high].filter((end) => end !== value)
    expect(ends.some((end) => planned({ [rule]: end }) !== byDefault)).toBe(true)
  }
)

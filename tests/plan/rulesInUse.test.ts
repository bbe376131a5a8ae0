/**
 * Every rule on the Rules sheet moves what is decided for some tree, its cuts, years, ends or checks: none is printed and then
 * ignored, or only told in a sentence.
 */
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
  ['B', null, 80, 150, 6.7, 9, 'none', 40, 0],
  ['C', null, 50, 100, 6.5, 12, 'none', 40, 200]
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
const scaffold = tree(
  'scaffold',
  [12, 2, 'medium', 'good', 4, 'N', 20],
  ['A', 'leader', 200, null, 2, 12],
  ['B', null, 60, 150, 4.2, 9, 'none', 40, 10],
  ['C', null, 55, 150, 5.2, 9, 'none', 40, 40],
  ['D', null, 60, 105, 3, 7, 'none', 40, 180],
  ['E', null, 25, 140, 6.9, 9, 'none', 40, 270]
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
const thick = tree(
  'thick',
  [12, 2, 'young', 'good', null, null, null],
  ['A', null, 100, 95, 3, 11, 'none', 20],
  ['B', null, 95, 100, 3, 11, 'none', 10]
)
const tall = tree(
  'tall',
  [12, 2, 'young', 'good', null, null, null],
  ['A', null, 97, 97, 3, 11.5, 'none', 20],
  ['B', null, 97, 97, 3, 10, 'none', 10]
)
const slow = tree(
  'slow',
  [14, 2, 'medium', 'fair', null, null, null],
  ['A', 'leader', 200, null, 2, 14],
  ...Array.from({ length: 8 }, (_none, at): Limb => [`L${String(at)}`, null, 90 + at, 140, 6.5 + at / 5, 8])
)

/** Fields that only some trees have: form, dieback, last pruned, trunk, the limb's length. */
const fuller =
  'Tree | Height (m) | Crown base (m) | Life stage | Vigor | Dieback | Last pruned | Trunk dia (mm) | Clearance (m) | Limb | Role | Limb dia (mm) | Stem dia (mm) | Origin (m) | Tip (m) | Length (m) | Lowest foliage (m) | Last cut share | Last cut date'
const ailing = tree(
  'ailing',
  [12, 2, 'medium', 'good', 0.2, null, 240, null],
  ['A', 'leader', 200, null, 2, 12],
  ['B', null, 110, 150, 3, 11]
)
const pruned = tree(
  'pruned',
  [12, 2, 'medium', 'good', null, '2029-09-01', 240, null],
  ['A', 'leader', 200, null, 2, 12],
  ['B', null, 110, 150, 3, 11]
)
const clump = tree(
  'clump',
  [7, 0.5, 'medium', 'good', null, null, null, null],
  ['A', null, 90, 95, 0.2, 7],
  ['B', null, 80, 95, 0.2, 6.8],
  ['C', null, 70, 95, 0.3, 6.5]
)
const low = tree(
  'low',
  [10, 2, 'medium', 'good', null, null, 200, 5],
  ['A', 'leader', 180, null, 2, 10],
  ['B', null, 60, 150, 5.5, 9, null, 4.2]
)
const level = tree(
  'level',
  [12, 2, 'medium', 'good', null, null, 240, null],
  ['A', 'leader', 200, null, 2, 12],
  ['B', null, 130, 150, 4, 5.5, 6]
)
const bare = tree(
  'bare',
  [12, 2, 'young', 'good', null, null, 240, null],
  ['A', 'leader', 200, null, 2, 12],
  ['B', null, 130, 150, 3, 11.5, null, 7]
)
const staged = tree(
  'staged',
  [12, 2, 'medium', 'good', null, null, 240, null],
  ['A', 'leader', 200, null, 2, 12],
  ['B', null, 48, 75, 5, 11, null, null, 0.5, 2027]
)
const ended = tree(
  'ended',
  [12, 2, 'medium', 'good', null, null, 240, null],
  ['A', 'leader', 200, null, 2, 12],
  ['B', null, 50, 72, 5, 11.9, null, null, 0.5, 2029],
  ['C', null, 60, 160, 3, 6]
)
const nurse = tree(
  'nurse',
  [12, 2, 'medium', 'good', null, null, 240, null],
  ['A', 'leader', 200, null, 2, 12],
  ['B', 'temporary', 40, 150, 3, 5],
  ['C', 'temporary', 30, 70, 4, 5]
)
const twig = tree(
  'twig',
  [12, 2, 'medium', 'good', null, null, 240, null],
  ['A', 'leader', 200, null, 2, 12],
  ['B', null, 17, 27, 6, 10.3],
  ['C', null, 40, 82, 6.1, 11.8],
  ['D', null, 50, 90, 6.35, 9]
)

const sapling = tree(
  'sapling',
  [5, 1, 'young', 'good', null, null, null],
  ['A', 'leader', 60, null, 1, 5],
  ['B', null, 20, 28, 1.5, 4.6, 'full'],
  ['C', null, 20, 50, 1.2, 3]
)
const bush = tree(
  'bush',
  [4, 0.5, 'medium', 'good', null, null, null],
  ['A', 'leader', 60, null, 0.5, 4],
  ['C', null, 11, 22, 2.05, 4],
  ['D', null, 15, 24, 2.2, 3]
)

const special = block(
  headers,
  ...[small, crowded, spaced, side, held, scaffold, union, close, thick, tall, slow, sapling, bush].flat()
)
const others = block(fuller, ...[ailing, pruned, clump, low, level, bare, staged, ended, nurse, twig].flat())
const sample: CellBlock = { rows: sampleInventory, sheet: 'Inventory', top: 0, left: 0 }

function planned(rules: Partial<Record<RuleName, number>>): string {
  const plans = [special, others, sample].map((cells) => {
    const { trees, problems } = planInventory(readInventory(cells), {
      date: '2030-05-02',
      rules: rulesWith(rules)
    })
    return { trees, problems: problems.map(({ code, cell }) => [code, cell]) }
  })
  return JSON.stringify(plans, (key, value: unknown) => (sentences.has(key) ? undefined : value))
}

/** What is told of a decision, and not decided; rows are as they were surveyed. */
const sentences = new Set(['reason', 'source', 'allowedBasis', 'tree'])

const byDefault = planned({})

/**
 * Shown beside each share and used at the ends of the outlook; the word for a priority; whether leaders are too close to
 * call, which is told beside “confirm on site”; the reach of a hand, which decides the round sheet alone. Each has a test of
 * its own.
 */
const elsewhere: RuleName[] = ['foliageError', 'mediumFrom', 'leaderClose', 'handReach']

it.each((Object.keys(ruleBook) as RuleName[]).filter((rule) => !elsewhere.includes(rule)))(
  '%s moves a plan at one end of its range',
  (rule) => {
    const { low, high, value } = ruleBook[rule]
    const ends = [low, high].filter((end) => end !== value)
    expect(ends.some((end) => planned({ [rule]: end }) !== byDefault)).toBe(true)
  }
)

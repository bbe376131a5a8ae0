/**
 * What is wrong in a thousand rows alike is told once, on every surface that lists it, and leaves the rest to be read. All trees
 * are invented.
 */
import { wholeProgram } from '../../src/price/offers'
import { describeCutPlan } from '../../src/sheets/cut-plan/cutPlan'
import { planText } from '../../src/file/planText'
import { planJson } from '../../src/file/planJson'
import { estimatePlan } from '../../src/price/estimatePlan'
import { mostProblems } from '../../shared/groupProblems'
import type { Cell } from '../../shared/cells'
import type { Plan } from '../../src/plan/plan'
import { planOf } from '../sheets/samplePlan'
import { runningText } from '../sheets/sheetTexts'
import {
  thousandFaultsText,
  thousandLimbsText,
  threeHundredText
} from '../inventory/real/inventories/manyRows'

const cellsIn = (text: string): Cell[][] =>
  text
    .split('\n')
    .map((line) =>
      line.split(',').map((cell) => (cell === '' ? null : /^[\d.]+$/.test(cell) ? Number(cell) : cell))
    )

const trees = Array.from({ length: 1000 }, (_none, at) => `T${String(at + 1)}`)

/** A list of a street: one row per tree, the life stage in words of its own, no crown base measured. */
const streetText = [
  'Tree,DBH (in),Height (ft),Crown base (ft),Life stage,Vigor',
  ...trees.map((id, at) => `${id},${String(8 + (at % 9))},${String(30 + (at % 7))},,zz,good`)
].join('\n')

/** Five hundred trees of two limbs, each diameter with a unit of its own in the cell. */
const centimetersText = [
  'Tree,Height (ft),Crown base (ft),Life stage,Vigor,Limb,Limb dia (in),Stem dia (in),Origin (ft),Tip (ft),Included bark',
  ...trees
    .slice(0, 500)
    .flatMap((id) => [
      `${id},30,6,young,good,A,10.4 cm,12.7 cm,7,28,ww`,
      `${id},30,6,young,good,B,6.9 cm,13.7 cm,6.5,24,ww`
    ])
].join('\n')

/** Trees of which nothing but a trunk and a height is known. */
const trunksText = [
  'Tree,DBH (in),Height (ft)',
  ...trees.map((id, at) => `${id},${String(8 + (at % 9))},${String(30 + (at % 7))}`)
].join('\n')

const texts = {
  'no column of stems': thousandLimbsText,
  'four faults in a row': thousandFaultsText,
  'a list of a street': streetText,
  'units in the cells': centimetersText,
  'trunks alone': trunksText,
  'three hundred columns': threeHundredText
}

const plans = new Map<string, Plan>()

function planned(name: keyof typeof texts): Plan {
  const known = plans.get(name)
  if (known !== undefined) return known
  const made = planOf(cellsIn(texts[name]), 'trees')
  plans.set(name, made)
  return made
}

const sentences = ({ problems }: Plan) =>
  problems.map(({ message, waits = '' }) => `${message} ${waits}`.trim())

describe.each(Object.keys(texts) as (keyof typeof texts)[])('%s', (name) => {
  test('about a screen of problems, in the plan and in what is printed', () => {
    const plan = planned(name)
    expect(plan.problems.length).toBeLessThanOrEqual(mostProblems)
    const { problems } = planJson(plan, wholeProgram(estimatePlan(plan)))
    expect(problems).toHaveLength(plan.problems.length)
    for (const { count, message, remedy } of problems) {
      expect(count).toBeGreaterThan(0)
      expect(`${message} ${remedy}`).not.toMatch(/[{}]/)
    }
  })

  test('the text output needs few lines for them, and the cut plan few rows', () => {
    const plan = planned(name)
    const text = planText(plan, wholeProgram(estimatePlan(plan)))
    const listed = text.slice(text.search(/\nNOT PLANNED|\nCHECKS/))
    expect(listed.split('\n').length).toBeLessThanOrEqual(60)
    const { rows } = describeCutPlan(plan)
    const start = rows.findIndex(([first]) =>
      ['Rows that could not be planned', 'Checks of the inventory'].includes(String(first))
    )
    expect(start).toBeGreaterThan(0)
    expect(rows.length - start).toBeLessThanOrEqual(60)
  })
})

test('a missing column is one problem, and the limbs that wait stand beneath it', () => {
  const plan = planned('no column of stems')
  const [missing] = plan.problems.filter(({ code }) => code === 'column-asked')
  expect(missing?.waits).toBe('1,000 limbs wait for it: rows 2 to 1001.')
  expect(plan.unplanned).toHaveLength(1000)
  const { summary, unplanned } = planJson(plan, wholeProgram(estimatePlan(plan)))
  expect(unplanned).toHaveLength(1000)
  expect(summary).toMatchObject({ trees: 500, limbs: 1000, cuts: 0, treesNotPlanned: 500 })
  const text = planText(plan, wholeProgram(estimatePlan(plan))).replace(/\s+/g, ' ')
  expect(text).toContain('1,000 rows (rows 2 to 1001): the checks below say why.')
  const [, ...again] = text.split('No column was found for the stem diameter at the union')
  expect(again).toHaveLength(1)
  expect(runningText(describeCutPlan(plan))).toContain('Rows 2 to 1001.')
})

test('each fault of a row is told once a column, with how many, where and what it reads', () => {
  const told = sentences(planned('four faults in a row'))
  expect(told).toContain(
    '500 cells of “Access” could not be read: trees!D2, D4, D6 and 497 more in D2:D1000. They read “zz”, which is not one of open, fenced or no machine; in each case it counts as not given.'
  )
  expect(told).toContain(
    '250 cells of “Limb diameter” are blank: trees!G4, G8, G12 and 247 more in G4:G1000. The limbs in those rows cannot be planned without a value. 250 limbs wait for them: rows 4, 8, 12 and 247 more up to row 1000.'
  )
})

test('units in the cells are told once a column, and those limbs are planned', () => {
  const plan = planned('units in the cells')
  expect(sentences(plan)).toContain(
    '1,000 cells of “Limb diameter” name another unit than inches, that of their column: trees!G2:G1001. They read “10.4 cm” and “6.9 cm” and were converted.'
  )
  expect(plan.unplanned).toEqual([])
})

test.each([
  // Its life stages are words nobody knows, so that no allowance is known.
  ['a list of a street', 'a time budget is given'],
  ['trunks alone', 'allowance and a time budget are given']
] as const)('%s: without limbs, priced and told in one line', (name, given) => {
  const plan = planned(name)
  expect(plan.unplanned).toEqual([])
  expect(planJson(plan, wholeProgram(estimatePlan(plan))).summary).toEqual({
    trees: 1000,
    limbs: 0,
    cuts: 0,
    treesWithoutLimbs: 1000,
    treesNotPlanned: 0
  })
  expect(sentences(plan)).toContain(
    `1,000 trees have no limbs listed (trees!A2:A1001); ${given}, but no cuts.`
  )
  expect(sentences(plan).join(' ')).not.toMatch(/cannot be (judged|planned)/)
})

test('a tree without limbs of which nothing is known is listed, once for all of them', () => {
  const plan = planOf(
    cellsIn(['Tree,Species,Height (ft)', ...trees.map((id) => `${id},Red maple,30`)].join('\n'))
  )
  expect(plan.unplanned).toHaveLength(1000)
  const [none] = plan.problems.filter(({ code }) => code === 'no-limbs')
  expect(none?.message).toContain('allowance is given, but no cuts')
  expect(none?.waits).toBe('1,000 trees wait for them: rows 2 to 1001.')
})

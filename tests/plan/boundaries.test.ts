/** A value on a boundary belongs to it in whatever unit it was typed: the same tree twice, once in each. */
import type { Cell } from '../../shared/cells'
import { stemAbove } from '../../src/formulas/diameters'
import { inOrder, wholeUp } from '../../src/formulas/boundary'
import { checkHeights } from '../../src/formulas/heights'
import { leaderRank, lowAndHigh } from '../../src/formulas/priority'
import { block, planOf } from './trees'

const headers = (tall: string, small: string) =>
  `Tree | Height (${tall}) | Crown base (${tall}) | Life stage | Vigor | Limb | Limb dia (${small}) | Stem dia (${small}) | Origin (${tall}) | Tip (${tall}) | Included bark`

type LimbRow = readonly [limb: string, diameter: number, stem: number, origin: number, tip: number]

/** Plans of one tree in feet and inches, in meters and centimeters as its numbers are written exactly, and rounded to 13 digits. */
function plansOf(height: number, base: number, ...limbs: readonly LimbRow[]) {
  const rows = (tall: number, small: number): Cell[][] =>
    limbs.map(([limb, diameter, stem, origin, tip]) => [
      ...['T1', written(height * tall), written(base * tall), 'young', 'good', limb],
      ...[written(diameter * small), written(stem * small), written(origin * tall), written(tip * tall)],
      'none'
    ])
  const inFeet = planOf(block(headers('ft', 'in'), ...rows(1, 1)))
  const inMeters = planOf(block(headers('m', 'cm'), ...rows(0.3048, 2.54)))
  return [inFeet, inMeters].map(({ trees }) => trees[0]!)
}

const written = (value: number): number => Number(value.toPrecision(13))

test('a limb that starts exactly half-way up does not start low by a rounding', () => {
  const tree = { height: 6, crownBase: 0.9 }
  expect(lowAndHigh({ origin: 3 - 1e-15, tip: 6 }, tree)).toBe(0)
  expect(lowAndHigh({ origin: 2.9, tip: 6 }, tree)).toBeGreaterThan(0.1)
  const plans = plansOf(60, 15, ['A', 2, 6, 30, 60], ['B', 3, 6, 24, 45])
  expect(plans.map(({ urgency }) => urgency)).toEqual([plans[0]!.urgency, plans[0]!.urgency])
})

test('stems that differ by exactly a tenth are each other’s in either unit', () => {
  const plans = plansOf(34.1, 5.1, ['L1', 9.6, 11, 15.4, 25.6], ['L2', 9.9, 10.6, 15.7, 29.5])
  expect(plans[0]!.leader.name).toBe(plans[1]!.leader.name)
})

test('a limb exactly as thick as its stem asks for the leader in either unit', () => {
  const plans = plansOf(12, 1.2, ['A', 6, 6, 0.6, 4])
  expect(plans.map(({ leader }) => leader.confirm)).toEqual([true, true])
})

test('limbs as thick together as the stem below leave no stem, by a rounding or not', () => {
  expect(stemAbove(13, 5 * 5 + 12 * 12)).toBeNaN()
  expect(stemAbove(0.13, 0.05 * 0.05 + 0.12 * 0.12)).toBeNaN()
  expect(stemAbove(13, 12 * 12)).toBeCloseTo(5, 12)
})

test('a tip that was added up to the height of the tree is not above it', () => {
  expect(checkHeights({ origin: 0.1, tip: 0.1 + 0.2 }, { height: 0.3, crownBase: 0.05 })).toBeNull()
  expect(checkHeights({ origin: 0.1, tip: 0.301 }, { height: 0.3, crownBase: 0.05 })).not.toBeNull()
})

test('stems of one merit keep the order of the rows', () => {
  const stem = { diameter: 10, lean: 0, height: 3, bark: 'none' as const }
  expect(leaderRank([stem, { ...stem, height: 0.1 * 30 }, { ...stem, height: 3 + 1e-12 }])).toEqual([1, 2, 3])
})

test('two of one size stand in their own order, and a whole number is no more than it is', () => {
  expect([inOrder(1, 1 + 1e-9), inOrder(1, 2), inOrder(2, 1)]).toEqual([0, -1, 1])
  expect([wholeUp(0.9 / 0.3), wholeUp(3.01), wholeUp(0)]).toEqual([3, 4, 0])
})

import fc from 'fast-check'
import { readSheets } from '../../../../src/inventory/readSheets'
import { changes, shapeOf, type Changes } from '../changes'
import { planOf } from '../comparedPlans'
import { surveysOnBounds } from '../drawnBounds'
import type { DrawnSurvey } from '../drawnSurvey'
import { sheetsOf } from '../shape'
import { computedWithin, mostMilliseconds } from '../atLength/computed'
import { property } from './property'

interface Large {
  readonly survey: DrawnSurvey
  readonly made: Changes
}

/** Fifty limbs on one tree, on a few, and on one each. */
const spread: readonly (readonly number[])[] = [
  [50],
  [25, 25],
  [12, 13, 12, 13],
  Array.from({ length: 50 }, () => 1)
]

function faultsOf({ survey, made }: Large): string[] {
  const sheets = sheetsOf(shapeOf(survey, made))
  const took = computedWithin(() => planOf(readSheets(sheets)))
  return took > mostMilliseconds ? [`over a second: ${took.toFixed(0)} ms for 50 limbs`] : []
}

/** At length only: a unit test has no time of its own. */
export const fiftyLimbs = property({
  name: 'fifty limbs in any shape are read and planned within a second',
  drawn: fc.record({
    survey: fc.oneof(...spread.map((limbs) => surveysOnBounds(limbs))),
    made: changes
  }),
  faultsOf,
  sheetsOf: ({ survey, made }) => shapeOf(survey, made),
  casesOf: () => 1,
  usual: 0,
  long: 4000
})

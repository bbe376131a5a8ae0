/** What is planned does not depend on the shape of the tables either. */
import fc from 'fast-check'
import type { Inventory, Tree } from '../../../src/inventory/inventory'
import { readSheets } from '../../../src/inventory/readSheets'
import { planInventory } from '../../../src/plan/planInventory'
import { changes, shapeOf } from './changes'
import { cutsOf } from './compared'
import { surveys, type DrawnSurvey } from './drawnSurvey'
import { runs } from './runs'
import { plainShape, sheetsOf, type ShapeSheet } from './shape'

/** Of two limbs that are alike the plan takes the one that stands first. */
function haveEqualLimbs({ trees }: DrawnSurvey): boolean {
  return trees.some(({ limbs }) => {
    const sizes = limbs.map(({ diameter, stem }) => [diameter, stem].join())
    return new Set(sizes).size < sizes.length
  })
}

const read = (shape: readonly ShapeSheet[]) => readSheets(sheetsOf(shape))
const planned = (inventory: Inventory) => cutsOf(planInventory(inventory, { date: '2030-03-01' }))

/** The same to the last digit: a length in another unit may fall on the other side of a bound of the plan. */
function areExact({ trees }: Inventory, others: Inventory): boolean {
  const exact = (each: readonly Tree[]) =>
    JSON.stringify(
      each.map(({ limbs, ...tree }) => [
        { ...tree, row: 0 },
        limbs.map((limb) => JSON.stringify({ ...limb, row: 0 })).sort()
      ])
    )
  return exact(trees) === exact(others.trees)
}

test('any shape gives the same cuts', () => {
  fc.assert(
    fc.property(surveys(3), changes, (survey, made) => {
      fc.pre(!haveEqualLimbs(survey))
      const [got, wanted] = [read(shapeOf(survey, made)), read(plainShape(survey))]
      fc.pre(areExact(got, wanted))
      expect(planned(got)).toEqual(planned(wanted))
    }),
    runs(50, 5000)
  )
})

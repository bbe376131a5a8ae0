/** What is planned does not depend on the shape of the tables either. */
import fc from 'fast-check'
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

const planned = (shape: readonly ShapeSheet[]) =>
  cutsOf(planInventory(readSheets(sheetsOf(shape)), { date: '2030-03-01' }))

test('any shape gives the same cuts', () => {
  fc.assert(
    fc.property(surveys(3), changes, (survey, made) => {
      fc.pre(!haveEqualLimbs(survey))
      expect(planned(shapeOf(survey, made))).toEqual(planned(plainShape(survey)))
    }),
    runs(50, 20_000)
  )
})

/** What a survey says does not depend on the shape of its tables. */
import fc from 'fast-check'
import { groupProblems, mostProblems } from '../../../shared/groupProblems'
import { readSheets } from '../../../src/inventory/readSheets'
import { changes, decoysOf, shapeOf } from './changes'
import { askedOf, brokenNumbers, differentTrees, lostRows } from './compared'
import { surveys } from './drawnSurvey'
import { mostMilliseconds, runs } from './runs'
import { millimeters, plainShape, sheetsOf } from './shape'

test('our own shape gives what was measured', () => {
  fc.assert(
    fc.property(surveys(), (survey) => {
      const { trees } = readSheets(sheetsOf(plainShape(survey)))
      const has = (field: string) => survey.fields.some((each) => each === field)
      expect(trees.map(({ id }) => id)).toEqual(survey.trees.map(({ values }) => String(values.tree)))
      survey.trees.forEach(({ values, limbs }, at) => {
        const tree = trees[at]!
        expect(tree.height).toBeCloseTo(Number(values.height) / millimeters.m, 9)
        expect(tree.crownBase).toBeCloseTo(Number(values.crownBase) / millimeters.m, 9)
        if (has('trunk')) expect(tree.trunk).toBeCloseTo(Number(values.trunk), 9)
        expect([tree.stage, tree.vigor]).toEqual([values.stage, values.vigor])
        limbs.forEach((limb, index) => {
          const read = tree.limbs[index]!
          expect([read.id, read.bark]).toEqual([String(limb.limb), limb.bark])
          expect(read.diameter).toBeCloseTo(Number(limb.diameter), 9)
          expect(read.stem).toBeCloseTo(Number(limb.stem), 9)
          expect(read.origin).toBeCloseTo(Number(limb.origin) / millimeters.m, 9)
          expect(read.tip).toBeCloseTo(Number(limb.tip) / millimeters.m, 9)
        })
      })
    }),
    runs(50, 20_000)
  )
})

test('any shape gives the same trees, loses no row, and tells no more than a screen', () => {
  fc.assert(
    fc.property(surveys(), changes, (survey, made) => {
      const shape = shapeOf(survey, made)
      const wanted = readSheets(sheetsOf(plainShape(survey)))
      const begun = performance.now()
      const got = readSheets(sheetsOf(shape))
      const took = performance.now() - begun
      const asked = askedOf(got, decoysOf(survey, made))
      expect(differentTrees(got.trees, wanted.trees, asked)).toEqual([])
      expect(lostRows(shape, got)).toEqual([])
      expect(brokenNumbers(got)).toEqual([])
      expect(groupProblems(got.problems).length).toBeLessThanOrEqual(mostProblems)
      expect(took).toBeLessThan(mostMilliseconds)
    }),
    runs(200, 80_000)
  )
})

/** Whatever stands in cells of one tree, the others are read as if it did not. */
import fc from 'fast-check'
import type { Cell } from '../../../shared/cells'
import { groupProblems, mostProblems } from '../../../shared/groupProblems'
import { readSheets } from '../../../src/inventory/readSheets'
import { brokenNumbers, differentTrees, lostRows } from './compared'
import { surveys } from './drawnSurvey'
import { runs } from './runs'
import { plainShape, sheetsOf } from './shape'
import { thrown, withThrown } from './thrown'

test('random cells never throw, never change another tree, and lose no row', () => {
  fc.assert(
    fc.property(
      surveys(6).filter(({ trees }) => trees.length >= 4),
      thrown,
      (survey, { tree, cells }) => {
        const [sheet] = plainShape(survey)
        const id = survey.trees[tree % survey.trees.length]!.values.tree as Cell
        const shape = [withThrown(sheet!, id, cells)]
        const got = readSheets(sheetsOf(shape))
        const others = survey.trees
          .map(({ values }) => String(values.tree))
          .filter((each) => each !== String(id))
        const of = (inventory: typeof got) => inventory.trees.filter((each) => others.includes(each.id))
        expect(differentTrees(of(got), of(readSheets(sheetsOf(plainShape(survey)))))).toEqual([])
        expect(lostRows(shape, got)).toEqual([])
        expect(brokenNumbers(got.trees)).toEqual([])
        expect(groupProblems(got.problems).length).toBeLessThanOrEqual(mostProblems)
      }
    ),
    runs(200, 80_000)
  )
})

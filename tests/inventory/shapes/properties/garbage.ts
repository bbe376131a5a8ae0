import fc from 'fast-check'
import type { Cell } from '../../../../shared/cells'
import { groupProblems, mostProblems } from '../../../../shared/groupProblems'
import type { Inventory } from '../../../../src/inventory/inventory'
import { readSheets } from '../../../../src/inventory/readSheets'
import { brokenNumbers, differentTrees, lostRows } from '../compared'
import { surveys, type DrawnSurvey } from '../drawnSurvey'
import { plainShape, sheetsOf, type ShapeSheet } from '../shape'
import { thrown, withThrown } from '../thrown'
import { property } from './property'

const drawn = fc.record({
  survey: surveys(6).filter(({ trees }) => trees.length >= 4),
  thrown
})
type Thrown = typeof drawn extends fc.Arbitrary<infer T> ? T : never

const idOf = ({ survey, thrown: { tree } }: Thrown): Cell =>
  survey.trees[tree % survey.trees.length]!.values.tree as Cell

function shapeOf(drawnCells: Thrown): ShapeSheet[] {
  const [sheet] = plainShape(drawnCells.survey)
  return [withThrown(sheet!, idOf(drawnCells), drawnCells.thrown.cells)]
}

const treesBut = ({ trees }: Inventory, id: string, survey: DrawnSurvey) => {
  const ids = new Set(survey.trees.map(({ values }) => String(values.tree)))
  return trees.filter((tree) => tree.id !== id && ids.has(tree.id))
}

function faultsOf(drawnCells: Thrown): string[] {
  const { survey } = drawnCells
  const shape = shapeOf(drawnCells)
  const id = String(idOf(drawnCells))
  const got = readSheets(sheetsOf(shape))
  const wanted = readSheets(sheetsOf(plainShape(survey)))
  const told = groupProblems(got.problems).length
  return [
    ...differentTrees(treesBut(got, id, survey), treesBut(wanted, id, survey)),
    ...lostRows(shape, got).map((row) => `row lost: ${row}`),
    ...brokenNumbers(got.trees).map((number) => `broken number: ${number}`),
    ...(told > mostProblems ? [`more than a screen: ${String(told)} problems`] : [])
  ]
}

export const garbage = property({
  name: 'random cells in the rows of one tree never throw, never change another tree, and lose no row',
  drawn,
  faultsOf,
  sheetsOf: shapeOf,
  casesOf: () => 1,
  usual: 200,
  long: 40_000
})

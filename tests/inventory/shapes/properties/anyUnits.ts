import fc from 'fast-check'
import { readSheets } from '../../../../src/inventory/readSheets'
import { differentTrees } from '../compared'
import { differentPlans, planOf } from '../comparedPlans'
import { surveysOnBounds } from '../drawnBounds'
import type { DrawnSurvey } from '../drawnSurvey'
import { headerOf, limbRows, plainColumns, plainShape, sheetsOf, type ShapeSheet, type Unit } from '../shape'
import { property } from './property'

/** A survey in feet and inches, and the units of its columns in another writing. */
interface Writings {
  readonly survey: DrawnSurvey
  readonly units: readonly number[]
}

const small: readonly Unit[] = ['cm', 'mm', 'in']
const tall: readonly Unit[] = ['m', 'cm', 'ft']

/** Every length in another unit: all metric ones first, then each column in its own. */
function rewritten({ survey, units }: Writings, mixed: boolean): ShapeSheet[] {
  const columns = plainColumns(survey).map((column, at) => {
    const choice = mixed ? (units[at % units.length] ?? 0) : 0
    if (column.unit === 'in') return { ...column, unit: small[choice]! }
    return column.unit === 'ft' ? { ...column, unit: tall[choice]! } : column
  })
  const header = { kind: 'header' as const, cells: columns.map((column) => headerOf(column)) }
  return [{ name: 'Survey', rows: [header, ...limbRows(columns, survey.trees, false)] }]
}

function faultsOf(writings: Writings): string[] {
  const wanted = readSheets(sheetsOf(plainShape(writings.survey)))
  const plan = planOf(wanted)
  return [false, true].flatMap((mixed) => {
    const got = readSheets(sheetsOf(rewritten(writings, mixed)))
    const faults = differentTrees(got.trees, wanted.trees)
    return faults.length > 0 ? faults : differentPlans(planOf(got), plan)
  })
}

export const anyUnits = property({
  name: 'a survey in feet and inches and the same in metric units, exact in both, give one plan and one price',
  drawn: fc.record({
    survey: surveysOnBounds(),
    units: fc.array(fc.nat(2), { minLength: 5, maxLength: 12 })
  }),
  faultsOf,
  sheetsOf: (writings) => [
    ...plainShape(writings.survey),
    ...rewritten(writings, false),
    ...rewritten(writings, true)
  ],
  casesOf: () => 2,
  usual: 60,
  long: 12_000
})

import fc from 'fast-check'
import { groupProblems, mostProblems } from '../../../../shared/groupProblems'
import { decodeText, readCsv } from '../../../../src/file/csvFile'
import type { Inventory } from '../../../../src/inventory/inventory'
import { readSheets } from '../../../../src/inventory/readSheets'
import { changes, decoysOf, shapeOf, type Changes } from '../changes'
import { askedOf, brokenNumbers, differentTrees, lostRows } from '../compared'
import { differentPlans, haveEqualLimbs, planOf } from '../comparedPlans'
import { surveys, type DrawnSurvey } from '../drawnSurvey'
import { plainShape, sheetsOf, type ShapeSheet } from '../shape'
import { fileBytes, writings, type Writing } from '../written'
import { property } from './property'

/** A survey in one to four other shapes; one table alone is written as a file of separated values too. */
interface Shapes {
  readonly survey: DrawnSurvey
  readonly shapes: readonly { readonly made: Changes; readonly writing: Writing | null }[]
}

const drawn: fc.Arbitrary<Shapes> = fc.record({
  survey: surveys(),
  shapes: fc.array(fc.record({ made: changes, writing: fc.option(writings) }), {
    minLength: 1,
    maxLength: 4
  })
})

function readingFaults(
  got: Inventory,
  wanted: Inventory,
  shape: readonly ShapeSheet[],
  asked: ReadonlySet<string>
): string[] {
  const told = groupProblems(got.problems).length
  return [
    ...differentTrees(got.trees, wanted.trees, asked),
    ...lostRows(shape, got).map((row) => `row lost: ${row}`),
    ...brokenNumbers(got).map((number) => `broken number: ${number}`),
    ...(told > mostProblems ? [`more than a screen: ${String(told)} problems`] : [])
  ]
}

function faultsOf({ survey, shapes }: Shapes): string[] {
  const wanted = readSheets(sheetsOf(plainShape(survey)))
  const plan = planOf(wanted)
  return shapes.flatMap(({ made, writing }) => {
    const shape = shapeOf(survey, made)
    const got = readSheets(sheetsOf(shape))
    const asked = askedOf(got, decoysOf(survey, made))
    const faults = readingFaults(got, wanted, shape, asked)
    // Of two limbs that are alike the plan takes the one that stands first.
    const isPlanned = faults.length === 0 && asked.size === 0
    if (isPlanned && !(made.sort !== undefined && haveEqualLimbs(survey)))
      faults.push(...differentPlans(planOf(got), plan))
    const [sheet, ...others] = shape
    if (writing === null || sheet === undefined || others.length > 0) return faults
    const rows = readCsv(decodeText(fileBytes(sheet, writing)))
    const ofFile = readSheets([{ name: sheet.name, rows, top: 0, left: 0 }])
    const askedInFile = askedOf(ofFile, decoysOf(survey, made))
    return [
      ...faults,
      ...readingFaults(ofFile, wanted, shape, askedInFile).map(
        (fault) => `in a file of separated values, ${fault}`
      )
    ]
  })
}

export const anyShape = property({
  name: 'any shape gives the same trees and the same plan, loses no row, and tells no more than a screen',
  drawn,
  faultsOf,
  sheetsOf: ({ survey, shapes }) => shapes.flatMap(({ made }) => shapeOf(survey, made)),
  casesOf: ({ shapes }) => shapes.length,
  usual: 150,
  long: 60_000
})

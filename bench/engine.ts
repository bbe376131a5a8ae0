import { readInventory } from '../src/inventory/readInventory'
import { planInventory } from '../src/plan/planInventory'
import { estimatePlan } from '../src/price/estimatePlan'
import { describeDocuments, planDocuments } from '../src/sheets/describeDocuments'
import { cellFunctions } from '../functions/all'
import { madeInventory } from './madeInventory'
import { leastTimes, ratio, type Measurement } from './measure'

const date = '2026-11-25'

/** Reading and planning 20,000 limbs against one JSON round trip of the same cells. */
export function planning(): Measurement[] {
  const block = madeInventory(20000)
  const [json = NaN, read = NaN, visit = NaN, program = NaN] = leastTimes([
    () => JSON.parse(JSON.stringify(block.rows)) as unknown,
    () => readInventory(block),
    () => planInventory(readInventory(block), { date, visits: 1 }),
    () => planInventory(readInventory(block), { date })
  ])
  const against = 'JSON.parse(JSON.stringify()) of the same cells'
  return [
    ratio('read 20,000 limbs', 2, read, json, against),
    ratio('read and plan 20,000 limbs, one visit, reasons and problems included', 6, visit, json, against),
    ratio('read and plan 20,000 limbs, all visits', 20, program, json, against)
  ]
}

/** ASPECTRATIO over 100,000 rows in one call against a plain loop that builds the same column. */
export function cellFunction(): Measurement[] {
  const rows = 100000
  const limbs: unknown[][] = Array.from({ length: rows }, (_, at) => [1 + (at % 70) / 10])
  const stems: unknown[][] = Array.from({ length: rows }, (_, at) => [4 + (at % 90) / 10])
  const plainLoop = (): number[][] => {
    const column: number[][] = []
    for (let row = 0; row < rows; row++)
      column.push([(limbs[row]?.[0] as number) / (stems[row]?.[0] as number)])
    return column
  }
  const ours = cellFunctions['ASPECTRATIO']
  if (ours === undefined) throw new Error('ASPECTRATIO is not among the cell functions')
  const [called = NaN, loop = NaN] = leastTimes([() => ours(limbs, stems), plainLoop], 15, 5)
  return [
    ratio(
      'ASPECTRATIO over 100,000 rows in one call',
      2,
      called,
      loop,
      'a plain loop that builds the same column'
    )
  ]
}

/**
 * Describing the five documents of some 2,000 trees, against reading and planning the same trees. As in the add-in, nothing
 * tidies up the memory between a plan and its documents.
 */
export function describing(): Measurement[] {
  const block = madeInventory(17000)
  const plan = planInventory(readInventory(block), { date })
  const estimate = estimatePlan(plan)
  const kinds = [...planDocuments.map((kind) => [kind]), [...planDocuments]]
  const [planned = NaN, ...described] = leastTimes(
    [
      () => planInventory(readInventory(block), { date }),
      ...kinds.map((wanted) => () => describeDocuments(wanted, plan, estimate))
    ],
    20,
    4,
    true
  )
  return kinds.map((wanted, at) => {
    const all = wanted.length > 1
    const what = `describe ${all ? 'all five documents' : `the ${wanted.join()}`} of ${plan.trees.length} trees`
    return ratio(what, all ? 1 : null, described[at] ?? NaN, planned, 'reading and planning them')
  })
}

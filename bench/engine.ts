import { wholeProgram } from '../src/price/offers'
import { readInventory } from '../src/inventory/readInventory'
import { planInventory } from '../src/plan/planInventory'
import { estimatePlan } from '../src/price/estimatePlan'
import { describeDocuments, planDocuments, type PlanDocument } from '../src/sheets/describeDocuments'
import { cellFunctions } from '../functions/all'
import { inventoryOf } from './hardTrees'
import { hardTrees } from './knownHardTrees'
import { madeInventory } from './madeInventory'
import { leastTimes, ratio, type Measurement } from './measure'

const date = '2026-11-25'

/**
 * Reading and planning 20,000 limbs against one JSON round trip of the same cells. Planning is held apart from reading, as
 * reading has a limit of its own; what both take together is printed beside it and held to the sum of the two.
 */
export function planning(): Measurement[] {
  const block = madeInventory(20000)
  const inventory = readInventory(block)
  const [json = NaN, read = NaN, plan = NaN, visit = NaN, program = NaN] = leastTimes([
    () => JSON.parse(JSON.stringify(block.rows)) as unknown,
    () => readInventory(block),
    () => planInventory(inventory, { date, visits: 1 }),
    () => planInventory(readInventory(block), { date, visits: 1 }),
    () => planInventory(readInventory(block), { date })
  ])
  const against = 'JSON.parse(JSON.stringify()) of the same cells'
  const whole = 'reasons and problems included'
  return [
    ratio('read 20,000 limbs', 2, read, json, against),
    ratio(`plan 20,000 limbs that were read, one visit, ${whole}`, 3, plan, json, against),
    ratio(`read and plan 20,000 limbs, one visit, ${whole}`, 5, visit, json, against),
    ratio('read and plan 20,000 limbs, all visits', 10, program, json, against)
  ]
}

/** The slowest of the trees that are hard to plan, all its visits; the least time of each counts. */
export function hardestTree(): Measurement[] {
  const inventories = hardTrees.map((tree) => readInventory(inventoryOf(tree)))
  const times = leastTimes(
    inventories.map((inventory) => () => planInventory(inventory, { date })),
    5,
    0
  )
  const slowest = Math.max(...times)
  const name = hardTrees[times.indexOf(slowest)]?.name ?? ''
  return [{ what: 'plan the hardest tree', value: slowest / 1000, unit: 's', limit: 0.3, note: name }]
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
 * Describing the documents of some 2,000 trees, against reading and planning the same trees: once as in the add-in,
 * where nothing tidies up the memory between a plan and its documents, and once with a full tidying up before each.
 */
export function describing(): Measurement[] {
  const block = madeInventory(17000)
  const plan = planInventory(readInventory(block), { date })
  const offer = wholeProgram(estimatePlan(plan))
  const all = [...planDocuments]
  const planAgain = () => planInventory(readInventory(block), { date })
  const describe = (kinds: readonly PlanDocument[]) => () => describeDocuments(kinds, plan, offer)
  const jobs = [planAgain, describe(all), ...all.map((kind) => describe([kind]))]
  const [planned = NaN, whole = NaN, ...each] = leastTimes(jobs, 20, 4, true)
  const [plannedTidied = NaN, wholeTidied = NaN] = leastTimes([planAgain, describe(all)], 12, 2)
  const trees = `of ${plan.trees.length} trees`
  const against = 'reading and planning them'
  return [
    ...all.map((kind, at) => ratio(`describe the ${kind} ${trees}`, null, each[at] ?? NaN, planned, against)),
    ratio(`describe all five documents ${trees}`, 1, whole, planned, against),
    ratio(
      `describe all five documents ${trees}, the memory tidied up before`,
      1,
      wholeTidied,
      plannedTidied,
      against
    )
  ]
}

/**
 * Every cell function of the built functions.js, run in the Office client library's own runtime for custom functions
 * and compared with the same built function called directly, as the workbench's grid calls it.
 */
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { CellError, gatherFunctions, type CellFunction } from '../../src/workbench/grid/calling'
import type { FunctionCall, FunctionResult } from '../../src/workbench/host/customFunctions'
import { buildForTest } from '../build/addin'
import { startOffice, type OfficeInNode } from './officeInNode'

interface FunctionEntry {
  id: string
  parameters: { name: string; optional?: boolean }[]
}

let office: OfficeInNode
let entries: FunctionEntry[]
let direct: ReadonlyMap<string, CellFunction>

beforeAll(async () => {
  const out = await buildForTest()
  const script = readFileSync(join(out, 'functions.js'), 'utf8')
  const metadata = JSON.parse(readFileSync(join(out, 'functions.json'), 'utf8')) as {
    functions: FunctionEntry[]
  }
  entries = metadata.functions
  const gathering = gatherFunctions()
  new Function('CustomFunctions', script)(gathering.CustomFunctions)
  direct = gathering.functions
  office = await startOffice()
  const evaluate = eval
  evaluate(script)
})

/** Two good values for each parameter that a function of ours has. */
const samples: Record<string, [unknown, unknown]> = {
  limb_diameter: [4, 2.5],
  limb_diameters: [4, 2.5],
  stem_diameter: [9, 7],
  stem_diameters: [9, 7],
  measured: ['above', 'below'],
  tree_height: [30, 28],
  crown_base_height: [8, 6],
  crown_ratio: [0.6, 0.5],
  diameters: [6, 5],
  distance: [60, 40],
  top_angle: [40, 35],
  base_angle: [-3, -2],
  years: [3, 2],
  limb_growth: [0.2, 0.3],
  stem_growth: [0.4, 0.3],
  aspect_ratio: [0.7, 0.4],
  included_bark: ['none', 'full'],
  life_stage: ['young', 'medium'],
  vigor: ['good', 'fair'],
  removed_already: [0.05, 0],
  local_limit: [0.2, 0.25],
  origin_height: [9, 11],
  tip_height: [25, 22],
  lean_angles: [5, 20],
  heights: [28, 27],
  share_of_limb: [0.5, 0.25],
  cut_diameter: [2, 1.5],
  cut_diameters: [2, 1.5],
  limb_share: [0.2, 0.1],
  fraction: [0.5, 0.34],
  tree_ids: ['T1', 'T2'],
  needed_removal: [0.6, 0.3],
  allowed_removal: [0.25, 0.2],
  last_visit: [45000, '2024-03-31'],
  kilovolts_to_ground: [7.2, 40],
  length: [8, 6],
  species: ['hardwood', 'hardwood'],
  units: ['in-ft', 'in-ft'],
  access: ['easy', 'easy'],
  direct_cost: [400, 250],
  overhead_rate: [0.2, 0.3],
  margin_rate: [0.25, 0.1],
  minimum: [150, 200],
  inventory_with_headers: ['tree', 'T1'],
  visit: [1, 1]
}

/** The whole inventory that CUTPLAN takes in one argument. */
const inventory = [
  [
    'Tree',
    'Height (m)',
    'Crown base (m)',
    'Life stage',
    'Vigor',
    'Limb',
    'Role',
    'Limb dia (mm)',
    'Stem dia (mm)',
    'Origin (m)',
    'Tip (m)'
  ],
  ['T1', 10, 2, 'young', 'good', 'A', 'leader', null, null, null, null],
  ['T1', 10, 2, 'young', 'good', 'B', null, 80, 100, 3, 9]
]

/** An error cell as Excel sends it, which the runtime turns into CustomFunctions.Error. */
const errorCell = { type: 'CustomFunctionError', code: '#N/A' }

function sampleOf({ id, parameters }: FunctionEntry, index: number): [unknown, unknown] {
  const { name } = parameters[index]!
  const sample = samples[name]
  if (!sample) throw new Error(`This test has no sample values for ${name} of ${id}; add two.`)
  return sample
}

/** A good row, another, one whose first cell is a wrong word, one that is blank, one whose first is an error. */
function column(entry: FunctionEntry, index: number): unknown[][] {
  const [good, other] = sampleOf(entry, index)
  const first = index === 0
  return [[good], [other], [first ? 'bracken' : good], [null], [first ? errorCell : other]]
}

/** Excel hands over null for each optional argument that is left out, and its invocation object after the last. */
function callsOf(entry: FunctionEntry): FunctionCall[] {
  const all = entry.parameters.map((_, index) => index)
  const required = all.filter((index) => entry.parameters[index]!.optional !== true)
  const good = (index: number) =>
    entry.parameters[index]!.name === 'inventory_with_headers' ? inventory : [[sampleOf(entry, index)[0]]]
  const spilled = all.map((index) => column(entry, index))
  const omitted = all.map((index) => (required.includes(index) ? good(index) : null))
  const wrong = omitted.map((argument, index) => (index === 0 ? [['bracken']] : argument))
  return [spilled, omitted, wrong].map((args) => ({ id: entry.id, args }))
}

/** The error codes that the runtime hands to Excel, as the client library numbers them. */
const numbers: Record<string, number> = { '#N/A': 1, '#VALUE!': 7 }

function calledDirectly({ id, args }: FunctionCall): FunctionResult {
  const run = direct.get(id)
  if (!run) throw new Error(`functions.js associates nothing with ${id}.`)
  try {
    return { value: JSON.parse(JSON.stringify(run(...args.map(withErrors), { functionName: id }))) }
  } catch (thrown) {
    if (!(thrown instanceof CellError)) throw thrown
    return { error: numbers[thrown.code] ?? -1, message: thrown.message }
  }
}

function withErrors(argument: unknown): unknown {
  if (argument === errorCell) return new CellError('#N/A')
  return Array.isArray(argument) ? argument.map(withErrors) : argument
}

test('The runtime gives what the function gives, for every id, in cells and as errors', async () => {
  expect(entries.length).toBeGreaterThan(15)
  const calls = entries.flatMap(callsOf)
  const results = await office.host.callFunctions(calls)
  const compared = calls.map((call, index) => ({ id: call.id, result: results[index] }))
  expect(compared).toEqual(calls.map((call) => ({ id: call.id, result: calledDirectly(call) })))
})

test('The samples are good ones: every id gives a value, not only sentences', async () => {
  const results = await office.host.callFunctions(entries.map((entry) => callsOf(entry)[1]!))
  const failed = entries.filter((_, index) => !('value' in results[index]!))
  expect(failed.map(({ id }) => id)).toEqual([])
})

test('A wrong cell by itself is an error with a sentence, one that Excel shows', async () => {
  const [result] = await office.host.callFunctions([
    { id: 'ASPECTRATIO', args: [[['bracken']], [[9]], null] }
  ])
  expect(result).toEqual({ error: 7, message: expect.stringContaining('bracken') as string })
})

test('A column spills, with a sentence in the place of each row that cannot be worked out', async () => {
  const [result] = await office.host.callFunctions([
    {
      id: 'ASPECTRATIO',
      args: [[[4], ['bracken'], [null], [errorCell]], [[8], [8], [null], [8]], null]
    }
  ])
  expect(result).toEqual({
    value: [[0.5], [expect.stringMatching(/^! /)], [''], [expect.stringMatching(/^! /)]]
  })
})

test('functions.js associates exactly the ids of functions.json', () => {
  expect([...direct.keys()].sort()).toEqual(entries.map(({ id }) => id).sort())
})

import type { CellBlock } from '../shared/cells'
import { readInParts } from '../src/inventory/readInventory'
import { planEachTree } from '../src/plan/planInventory'
import { madeInventory } from './madeInventory'
import { ratio, type Measurement } from './measure'

/** Rows of a full sheet below its headers. */
const fullSheet = 1048575

/** Rows read and planned at a time. */
const rowsAPart = 2000

/** Reads and plans all visits of blocks one after the other, keeping no tree's plan; ms. */
function planAll(blocks: readonly CellBlock[]): number {
  const start = performance.now()
  let cuts = 0
  for (const block of blocks)
    for (const part of readInParts(block, rowsAPart))
      for (const tree of planEachTree(part, { date: '2026-11-25' }))
        for (const visit of tree.visits) cuts += visit.cuts.length
  if (cuts === 0) throw new Error('Nothing was planned')
  return performance.now() - start
}

/** Sheets of 1,000 rows, each different, so that neither side plans cells it has just seen. */
const smallSheets = 300

/** A full sheet: against the JSON round trip of the same cells, its memory, and the cost a limb as sheets grow. */
function measureFullSheet(): Measurement[] {
  const made = (count: number, from: number): CellBlock[] =>
    Array.from({ length: count }, (_, at) => madeInventory(1000, from + at))
  planAll(made(50, 10000))
  const small = planAll(made(smallSheets, 1)) / (smallSheets * 1000)
  const sheet = madeInventory(fullSheet)
  const large = planAll([sheet]) / fullSheet
  const peak = process.resourceUsage().maxRSS / 1024 / 1024
  const start = performance.now()
  JSON.parse(JSON.stringify(sheet.rows))
  const json = performance.now() - start
  const perLimb = `${(large * 1000).toFixed(1)} µs against ${(small * 1000).toFixed(1)} µs a limb`
  return [
    ratio('read and plan all visits of a full sheet', 5, large * fullSheet, json, 'JSON of its cells'),
    {
      what: 'cost a limb, a full sheet against 1,000 rows',
      value: large / small,
      unit: 'times',
      limit: 1.5,
      note: perLimb
    },
    {
      what: 'memory of a full sheet',
      value: peak,
      unit: 'GiB',
      limit: 1,
      note: 'highest resident size of the process, whose objects may take 900 MB'
    }
  ]
}

console.log(JSON.stringify(measureFullSheet()))

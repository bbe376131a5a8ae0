import { readInventory } from '../src/arbor/measure/readInventory'
import { planEachTree } from '../src/arbor/plan/planInventory'
import { madeInventory } from './madeInventory'
import { ratio, type Measurement } from './measure'

/** Rows of a full sheet below its headers. */
const fullSheet = 1048575

/** Reads and plans all visits of that many limbs, keeping no tree's plan; ms. */
function planAll(limbs: number): number {
  const block = madeInventory(limbs)
  const start = performance.now()
  let cuts = 0
  for (const tree of planEachTree(readInventory(block), { date: '2026-11-25' }))
    for (const visit of tree.visits) cuts += visit.cuts.length
  if (cuts === 0) throw new Error('Nothing was planned')
  return performance.now() - start
}

function roundTrip(limbs: number): number {
  const { rows } = madeInventory(limbs)
  const start = performance.now()
  JSON.parse(JSON.stringify(rows))
  return performance.now() - start
}

const least = (times: number, run: () => number): number => Math.min(...Array.from({ length: times }, run))

/** A full sheet: against the JSON round trip of the same cells, its memory, and the cost a limb as sheets grow. */
function measureFullSheet(): Measurement[] {
  const small = least(40, () => planAll(1000)) / 1000
  const large = planAll(fullSheet) / fullSheet
  const peak = process.resourceUsage().maxRSS / 1024 / 1024
  const json = roundTrip(fullSheet)
  const perLimb = `${(large * 1000).toFixed(1)} µs against ${(small * 1000).toFixed(1)} µs a limb`
  return [
    ratio('read and plan all visits of a full sheet', 20, large * fullSheet, json, 'JSON of its cells'),
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
      limit: 4,
      note: 'highest resident size of the process'
    }
  ]
}

console.log(JSON.stringify(measureFullSheet()))

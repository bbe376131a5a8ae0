import { readInventory } from '../../src/inventory/readInventory'
import type { Plan } from '../../src/plan/plan'
import { planInventory } from '../../src/plan/planInventory'
import { sampleInventory, sampleSheetName } from '../../src/file/sampleInventory'
import type { Cell } from '../../shared/cells'

/** The sample inventory, an invented scenario, planned for a fixed day. */
export function samplePlan(): Plan {
  return planOf(sampleInventory, sampleSheetName)
}

/** The sample, its first tree in a window of an invented kind that is closed. */
export function withClosedWindow(): Plan {
  const plan = samplePlan()
  return {
    ...plan,
    timing: [
      {
        state: 'closed',
        concern: 'region',
        sentence: 'An invented window is closed.',
        source: 'invented for this test',
        certainty: 'read',
        trees: plan.trees.slice(0, 1)
      }
    ]
  }
}

/** Any rows planned for a fixed day. */
export function planOf(rows: Cell[][], sheet = 'Trees'): Plan {
  return planInventory(readInventory({ rows, sheet, top: 0, left: 0 }), { date: '2026-03-02' })
}

/** One invented tree in centimeters and meters: a leader and one limb that competes with it. */
export function metricRows(limb: Cell[] = ['B', null, 11, 14, 2, 8]): Cell[][] {
  return [
    [
      'Tree',
      'Species',
      'Trunk dia (cm)',
      'Height (m)',
      'Crown base (m)',
      'Life stage',
      'Vigor',
      'Limb',
      'Role',
      'Limb dia (cm)',
      'Stem dia (cm)',
      'Origin (m)',
      'Tip (m)'
    ],
    ['M1', 'Sycamore', 22, 9, 1.5, 'young', 'good', 'A', 'leader', 15, null, 2, 9],
    ['M1', null, null, null, null, null, null, ...limb]
  ]
}

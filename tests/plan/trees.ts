import type { Cell, CellBlock } from '../../shared/cells'
import { readInventory } from '../../src/inventory/readInventory'
import { planInventory, type PlanOptions } from '../../src/plan/planInventory'
import type { Plan } from '../../src/plan/plan'

/** A block from headers and rows, at A1 of a sheet called Trees. */
export function block(headers: string, ...rows: Cell[][]): CellBlock {
  return { rows: [headers.split(' | '), ...rows], sheet: 'Trees', top: 0, left: 0 }
}

export const limbHeaders =
  'Tree | Height (m) | Crown base (m) | Life stage | Vigor | Growth | Limb | Role | Limb dia (mm) | Stem dia (mm) | Origin (m) | Tip (m) | Included bark'

/** A row under `limbHeaders` for one tree of 10 m with its crown from 2 m. */
export function limbRow(
  limb: string,
  diameter: Cell,
  stem: Cell,
  origin: Cell,
  tip: Cell,
  more: { tree?: string; bark?: string; role?: string; stage?: string; vigor?: string } = {}
): Cell[] {
  return [
    more.tree ?? 'T1',
    10,
    2,
    more.stage ?? 'young',
    more.vigor ?? 'good',
    'medium',
    limb,
    more.role ?? null,
    diameter,
    stem,
    origin,
    tip,
    more.bark ?? 'none'
  ]
}

export function planOf(inventory: CellBlock, options: Partial<PlanOptions> = {}): Plan {
  return planInventory(readInventory(inventory), { date: '2030-03-01', ...options })
}

/** More runs with `npm run fuzz`, which tries another seed each time. */
const times = process.env['FUZZ'] === 'full' ? 10 : 1

/** Runs of a property from a fixed seed, so that a failure can be run again; PROPERTY_SEED tries another one. */
export function runs(numRuns: number): { numRuns: number; seed: number } {
  return { numRuns: numRuns * times, seed: Number(process.env['PROPERTY_SEED'] ?? 20300301) }
}

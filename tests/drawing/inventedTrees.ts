import type { Cell } from '../../shared/cells'
import { readInventory } from '../../src/inventory/readInventory'
import type { Plan } from '../../src/plan/plan'
import { planInventory } from '../../src/plan/planInventory'
import { sampleInventory, sampleSheetName } from '../../src/file/sampleInventory'

const headers =
  'Tree | Species | Trunk dia (cm) | Height (m) | Crown base (m) | Spread (m) | Life stage | Vigor | Clearance (m) | Clearance side | Limb | Role | Limb dia (cm) | Stem dia (cm) | Origin (m) | Tip (m) | Parent limb | Included bark | Angle | Bearing | Live or dead | Length (m)'

/** Invented trees that the sample lacks: many limbs, limbs on limbs, drooping, unknown bearings, few measurements. */
const rows = `
Many | Invented oak | 30 | 14 | 3 | | medium | good | 4.5 | N | A | leader | 24 | | 3 | 14
Many | | | | | | | | | | B | | 16 | 23 | 3.4 | 13.2 | | partial | 30 | 80 | live |
Many | | | | | | | | | | C | | 12 | 22 | 3.8 | 11.5 | | none | 45 | 260 | live |
Many | | | | | | | | | | D | | 9 | 21 | 4.6 | 10.8 | | none | 50 | 15 | live |
Many | | | | | | | | | | E | | 8 | 19 | 5.2 | 10 | | none | 55 | 130 | live |
Many | | | | | | | | | | F | | 7 | 18 | 5.9 | 10.5 | | none | 55 | 310 | live |
Many | | | | | | | | | | G | | 6 | 17 | 6.5 | 10.2 | | none | 60 | 60 | live |
Many | | | | | | | | | | H | | 6 | 15 | 7.2 | 11 | | none | 55 | 220 | live |
Many | | | | | | | | | | J | | 5 | 13 | 8 | 11.5 | | none | 50 | 345 | live |
Many | | | | | | | | | | K | | 5 | 12 | 8.6 | 11.8 | | none | 50 | 110 | live |
Many | | | | | | | | | | L | | 4 | 11 | 9.3 | 12 | | none | 50 | 250 | live |
Many | | | | | | | | | | M | | 3 | 9 | 10 | 12.4 | | none | 45 | 75 | live |
Many | | | | | | | | | | N | | 3 | 8 | 10.6 | 12.8 | | none | 45 | 290 | live |
Many | | | | | | | | | | P | | 2.5 | 6 | 11.3 | 13.1 | | none | 40 | 30 | live |
Many | | | | | | | | | | Q | | 5 | 23 | 3.2 | 4.6 | | none | 75 | 190 | dead |
Limbs on limbs | Invented elm | 40 | 16 | 4 | 14 | medium | good | | | A | leader | 30 | | 5 | 16
Limbs on limbs | | | | | | | | | | B | | 22 | 29 | 5 | 15 | | full | | 90 | live |
Limbs on limbs | | | | | | | | | | B1 | | 10 | 19 | 8 | 12 | B | none | | 90 | live |
Limbs on limbs | | | | | | | | | | B2 | | 7 | 14 | 10.5 | 14 | B | none | | 270 | live |
Limbs on limbs | | | | | | | | | | C | | 14 | 27 | 6 | 13 | | none | | 270 | live |
Limbs on limbs | | | | | | | | | | C1 | | 6 | 10 | 8.5 | 11 | C | none | | | live |
Drooping | Invented beech | 45 | 15 | 2 | | mature | good | 3 | | A | leader | 35 | | 4 | 15
Drooping | | | | | | | | | | B | | 9 | 33 | 5 | 2.4 | | none | | 100 | live | 5
Drooping | | | | | | | | | | C | | 11 | 32 | 6 | 6.1 | | none | 90 | 280 | live | 6
Drooping | | | | | | | | | | D | | 20 | 29 | 7 | 14 | | none | | 70 | live |
Drooping | | | | | | | | | | E | | 8 | 27 | 8 | 6 | | none | | 200 | dead | 3
No bearings | Invented lime | 18 | 9 | 2 | | young | good | | | | | | | | | | | | | |
No bearings | | | | | | | | | | 1 | | 9 | 14 | 2.5 | 8.4 | | full | | | live |
No bearings | | | | | | | | | | 2 | | 6 | 13 | 3.1 | 7 | | none | | | live |
No bearings | | | | | | | | | | 3 | | 4 | 12 | 3.9 | 6.5 | | none | | | live |
No bearings | | | | | | | | | | 4 | | | 11 | 4.5 | 6.5 | | none | | | live |
Bare row | Invented ash | 25 | 11 | 3 | 6 | medium | good | 4
No height | Invented ash | 25 | | 3 | | medium | good
No height | | | | | | | | | | A | | 5 | 12 | 3 | 6 | | none | | 40 | live |
`

function cellOf(text: string): Cell {
  return text === '' ? null : /^-?\d+(\.\d+)?$/.test(text) ? Number(text) : text
}

const names = headers.split(' | ')
const table: Cell[][] = [
  names,
  ...rows
    .trim()
    .split('\n')
    .map((line) => {
      const cells = line.split('|').map((cell) => cell.trim())
      return names.map((_, column) => cellOf(cells[column] ?? ''))
    })
]

const date = '2026-11-25'

/** The invented trees, planned for a fixed day, in centimeters and meters. */
export function inventedPlan(): Plan {
  return planInventory(readInventory({ rows: table, sheet: 'Trees', top: 0, left: 0 }), { date })
}

/** The sample inventory planned for the same day, in inches and feet. */
export function samplePlan(): Plan {
  const block = { rows: sampleInventory, sheet: sampleSheetName, top: 0, left: 0 }
  return planInventory(readInventory(block), { date })
}

/** One of the planned trees. */
export function treeNamed(plan: Plan, id: string): Plan['trees'][number] {
  const found = plan.trees.find(({ tree }) => tree.id === id)
  if (found === undefined) throw new Error(`No tree ${id}`)
  return found
}

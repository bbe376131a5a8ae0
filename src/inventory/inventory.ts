import { cellAddress } from '../../shared/cells'
import type { Access, Growth, IncludedBark, LifeStage, MeasuredAt, Role, Vigor } from '../../shared/choices'
import type { Field } from '../../shared/columns'
import type { Problem } from '../../shared/problems'
import type { LengthUnit, UnitSystem } from '../../shared/units'

/** One limb as it was surveyed. Diameters in mm, heights in m, shares 0 to 1; null where not measured. */
export interface Limb {
  id: string
  /** Row within the block that was read, counted from 0 with the headers as row 0. */
  row: number
  diameter: number | null
  stem: number | null
  /** Whether `stem` was measured just above the union or below it. */
  measured: MeasuredAt
  origin: number | null
  tip: number | null
  parent: string | null
  role: Role | null
  bark: IncludedBark
  /** Degrees from vertical: 0 upright, 90 level. Recorded, not scored. */
  angle: number | null
  bearing: number | null
  dead: boolean
  broken: boolean
  rubbing: boolean
  decay: boolean
  length: number | null
  lowestFoliage: number | null
  /** Height of the first live lateral, and its diameter. */
  lateralHeight: number | null
  lateral: number | null
  /** Diameter measured where the surveyor would cut. */
  cut: number | null
  lastCutShare: number | null
  lastCutYear: number | null
  foliageShare: number | null
  notes: string
  /** Why this row cannot be planned, or null. */
  unplannable: string | null
}

/** One tree with its limbs. */
export interface Tree {
  id: string
  row: number
  species: string
  trunk: number | null
  height: number | null
  crownBase: number | null
  spread: number | null
  stage: LifeStage | null
  vigor: Vigor | null
  growth: Growth | null
  /** Measured trunk growth in mm a year; wins over the class. */
  growthRate: number | null
  removed: number
  localLimit: number | null
  clearance: number | null
  clearanceSide: string
  dieback: number | null
  caliper: number | null
  caliperHeight: number | null
  access: Access | null
  site: string
  lastPruned: number | null
  matureHeight: number | null
  notes: string
  limbs: Limb[]
}

/** Which column of the block gives which field, in which unit. */
export interface ColumnMatch {
  column: number
  header: string
  field: Field | null
  unit: LengthUnit | null
  /** The header named the unit; otherwise it was assumed. */
  unitNamed: boolean
  percent: boolean
}

/** A row that could not be planned, and why. */
export interface Unplanned {
  tree: string
  /** The sheet's own row number, counted from 1 (a limb's and a tree's `row` count within the block, from 0). */
  row: number
  /** Address of the row's first cell. */
  cell: string
  reason: string
}

/** What a block of cells says, once read: nothing is dropped, what could not be used stands in `problems`. */
export interface Inventory {
  sheet: string
  /** Address of the whole block. */
  address: string
  /** Row and column of the block's first cell in its sheet, from 0. */
  top: number
  left: number
  matches: ColumnMatch[]
  system: UnitSystem
  trees: Tree[]
  limbCount: number
  unplanned: Unplanned[]
  problems: Problem[]
}

/** What a person may settle before reading: the meaning of a column (by its position) and the system to assume. */
export interface ReadingChoices {
  system?: UnitSystem
  fields?: Record<number, Field | null>
  units?: Record<number, LengthUnit>
}

/** The address of a field of a row, or of the row's first cell where the inventory has no such column. */
export function fieldAddress(inventory: Inventory, row: number, field: Field): string {
  const column = inventory.matches.find((match) => match.field === field)?.column ?? 0
  return cellAddress(inventory.top + row, inventory.left + column, inventory.sheet)
}

/** Lists a row that is not planned. */
export function leaveUnplanned(inventory: Inventory, tree: string, row: number, reason: string): void {
  const cell = cellAddress(inventory.top + row, inventory.left, inventory.sheet)
  inventory.unplanned.push({ tree, row: inventory.top + row + 1, cell, reason })
}

import type { kinds } from './kinds'
import type { CsvFile } from './csvFile'
import type { Workbook } from './workbookFile'

/** What a limb's row says, in the units of its inventory (inches and feet, or centimeters and meters). */
export interface ExpectedLimb {
  /** Its id; `Limb 1|1` allows either, the first is the one that the canonical file bears; `*` allows any. */
  id: string
  diameter: number | null
  /** Just above the union. */
  stem: number | null
  origin: number | null
  tip: number | null
  bark: 'none' | 'partial' | 'full' | null
  /** Further columns of the canonical file, by our own header: `{ 'Live or dead': 'dead' }`. */
  more: Cells
}

export interface ExpectedTree {
  id: string
  height: number | null
  crownBase: number | null
  stage: string | null
  vigor: string | null
  trunk: number | null
  limbs: readonly ExpectedLimb[]
  more: Cells
}

type Cells = Readonly<Record<string, string | number>>

/**
 * What is wrong, doubtful or left out, as words that the sentence about it has to hold (`kinds.ts`); the code and the
 * wording stay the reader's business.
 */
export type Kind = keyof typeof kinds

/** What a careful arborist's assistant concludes from the file alone. */
export interface Expected {
  units: 'in-ft' | 'cm-m'
  /** By sheet (a .csv has one, named ''): `A tree; C trunk in; F diameter cm girth; K notes|treeNotes|-`. What is not named is not a field; `-` allows that too. */
  columns: Readonly<Record<string, string>>
  trees: readonly ExpectedTree[]
  /** How many ratios, limb diameter by stem diameter, the first visit's cuts must show; 2 if not given. */
  ratios?: number
  /** Header cells at which a question must be asked (`I1|J1`: at one of them), and those where one is reasonable. */
  asked?: readonly string[]
  mayAsk?: readonly string[]
  /** Rows (of a sheet, if there are several: `Oak zone!12`) that are left out or joined, and the words that say why. */
  leftOut?: Readonly<Record<string, Kind>>
  /** Further problems that have to be told, with a cell they have to name (or '' for none in particular). */
  told?: readonly (readonly [cell: string, kind: Kind])[]
  /** Trees that have limbs of which none could be judged: they stand in `unplanned`, and nothing calls them "No cut". */
  notJudged?: readonly string[]
  /** 0 if not given. */
  exit?: 0 | 2 | 3
  /** Arguments beside the file. */
  args?: readonly string[]
}

/** One invented inventory: its shape in a line, its file, and what is to be read from it. */
export interface RealInventory {
  shape: string
  file: CsvFile | Workbook
  expected: Expected
}

/** A limb as read: diameter, stem above the union, origin, tip. */
export function limb(
  id: string,
  diameter: number | null,
  stem: number | null,
  origin: number | null,
  tip: number | null,
  bark: ExpectedLimb['bark'] = null,
  more: Cells = {}
): ExpectedLimb {
  return { id, diameter, stem, origin, tip, bark, more }
}

/** A tree as read: height and crown base, then what else the file gives, then its limbs. */
export function tree(
  id: string,
  height: number | null,
  crownBase: number | null,
  rest: { stage?: string; vigor?: string; trunk?: number; more?: Cells },
  ...limbs: ExpectedLimb[]
): ExpectedTree {
  const { stage = null, vigor = null, trunk = null, more = {} } = rest
  return { id, height, crownBase, stage, vigor, trunk, limbs, more }
}

/** The stem above a union where it was measured below: sqrt(D² - d²), cross-section conserved (design section 3). */
export const above = (below: number, ...limbs: number[]): number =>
  Math.sqrt(limbs.reduce((left, each) => left - each * each, below * below))

/** The diameter of a girth. */
export const fromGirth = (girth: number): number => girth / Math.PI

/** Several stems as one, by cross-section: sqrt(Σ d²). */
export const together = (...diameters: number[]): number => Math.hypot(...diameters)

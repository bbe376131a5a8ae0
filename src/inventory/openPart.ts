import type { Field } from '../../shared/columns'
import type { CellReader } from './cellReader'
import type { Part } from './survey/part'

/** A part with the readers of its columns. */
export interface OpenPart {
  readonly part: Part
  readonly readers: ReadonlyMap<Field, CellReader>
  /** The inventory's number of the part's row 0. */
  readonly first: number
}

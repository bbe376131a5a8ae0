import type { Field } from '../../../shared/columns'
import type { LengthUnit } from '../../../shared/units'
import type { ColumnValues } from './columnValues'

/** A column as the sheet has it: its header (group title first, where there is one) and the cells below. */
export interface HeadedColumn {
  readonly header: string
  readonly unit: LengthUnit | null
  readonly values: ColumnValues
  /** What a person said the column gives, null for nothing; not there where nobody said anything. */
  readonly answered?: Field | null | undefined
}

/** A field that a column may give, and how well it fits, 0 to 1. */
export interface Candidate {
  readonly field: Field
  readonly score: number
  readonly girth: boolean
}

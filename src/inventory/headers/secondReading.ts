import type { Field } from '../../../shared/columns'
import { millimetersPer } from '../../../shared/units'
import type { HeadedColumn } from './headedColumn'
import type { HeaderText } from './headerText'

/** How far two readings of one limb are apart at most, and in how many of the rows. House judgment. */
const within = 1.15
const share = 0.6

function agree(one: HeadedColumn, two: HeadedColumn, factor: number): boolean {
  let both = 0
  let near = 0
  one.values.numbers.forEach((a, row) => {
    const b = two.values.numbers[row] ?? null
    if (a === null || b === null || a <= 0 || b <= 0) return
    both++
    const ratio = a / (b * factor)
    if (ratio <= within && ratio >= 1 / within) near++
  })
  return near >= both * share
}

/**
 * The column taken for a second reading of the limb that is none, or null: its sizes are others than the first's, or it and
 * the first are "Dia 1" and "Dia 2" of who knows what, where no column gives the stem.
 */
export function noSecondReading(
  columns: readonly HeadedColumn[],
  texts: readonly HeaderText[],
  chosen: readonly (Field | null)[]
): number | null {
  const [first, second] = [chosen.indexOf('diameter'), chosen.indexOf('diameter2')]
  const [one, two] = [columns[first], columns[second]]
  if (one === undefined || two === undefined) return null
  const hasStem = chosen.includes('stem') || chosen.includes('stemBelow')
  const saysLimb = texts[second]?.notions.has('limb') === true
  const [unit, other] = [one.unit ?? texts[first]?.unit, two.unit ?? texts[second]?.unit]
  const factor = unit && other ? millimetersPer[other] / millimetersPer[unit] : 1
  return agree(one, two, factor) && (hasStem || saysLimb) ? null : second
}

import type { ColumnKind } from '../../../shared/columnKinds'
import { columnOf, type Field } from '../../../shared/columns'
import type { HeaderText } from './headerText'

const lengths = new Set<ColumnKind>(['diameter', 'stems', 'height', 'positive height', 'growth'])
const answers = new Set<ColumnKind>(['flag', 'dead', 'choice'])
const unfit = 0.3

/** What the unit of a header says about a field: feet head no diameter, and nothing that is a word or a yes. House judgment. */
export function unitSuits(header: HeaderText, field: Field): number {
  const { kind } = columnOf(field).reads
  // A condition is given in percent in some lists, which is asked.
  if (header.percent && field === 'vigor') return 0.85
  if (header.percent && kind !== 'share') return unfit
  if (header.degrees && kind !== 'degrees' && kind !== 'bearing' && kind !== 'side') return unfit
  if (header.tick && !answers.has(kind)) return unfit
  if (header.unit === null) return 1
  if (!lengths.has(kind)) return unfit
  const thick = kind === 'diameter' || kind === 'stems'
  if (header.unit === 'ft' || header.unit === 'yd') return thick ? 0.55 : 1
  if (header.unit === 'm') return thick ? 0.85 : 1
  if (thick || field === 'caliperHeight' || kind === 'growth' || header.unit === 'cm') return 1
  return header.unit === 'mm' ? 0.95 : 0.88
}

import { columnOf, type Field } from '../../shared/columns'

/** What the numbers of a field are measured in, or null where they are no lengths. */
export function lengthOf(field: Field): 'diameter' | 'height' | 'growth' | null {
  const { kind } = columnOf(field).reads
  if (kind === 'diameter' || kind === 'stems') return 'diameter'
  if (kind === 'height' || kind === 'positive height') return 'height'
  return kind === 'growth' ? 'growth' : null
}

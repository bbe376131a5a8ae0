import type { ColumnMatch, Inventory } from '../../src/inventory/inventory'
import type { Planned } from '../planning'
import { samplesOf } from './samples'

/** Where a column stands, by its sheet where several were read, and its first values: "Column J of Limbs: 3.5; 4; 6". */
export function columnPlace(match: ColumnMatch, inventory: Inventory, { sheets }: Planned['read']): string {
  const several = new Set(inventory.matches.map(({ sheet }) => sheet)).size > 1
  const samples = samplesOf(match, inventory, sheets)
  const place = `Column ${match.letters}${several ? ` of ${match.sheet}` : ''}`
  return samples.length === 0 ? `${place}: nothing below its header.` : `${place}: ${samples.join('; ')}`
}

import type { Evidence } from '../../../shared/evidence'

/** A height to keep clear of branches that one place or text asks for, in feet. */
export interface Clearance extends Evidence {
  over: 'street' | 'walk' | 'accessible route' | 'alley'
  feet: number
}

const caution = 'Places differ: ask for the height that the local ordinance requires, none is assumed.'

function clearance(
  over: Clearance['over'],
  feet: number,
  where: string,
  source: string,
  certainty: Evidence['certainty'] = 'read'
): Clearance {
  return { over, feet, finding: `${feet} ft over a ${over}`, source, certainty, range: where, caution }
}

export const clearances: readonly Clearance[] = [
  clearance('street', 16, 'lowest permanent limb', 'ISA consumer brochure, Pruning Young Trees'),
  clearance('walk', 8, 'lowest permanent limb elsewhere', 'ISA consumer brochure, Pruning Young Trees'),
  clearance('street', 14, 'one city', 'ordinance, Mt Pleasant MI'),
  clearance('walk', 7, 'one city', 'ordinance, Mt Pleasant MI'),
  clearance('street', 14, 'edge of pavement, one city', 'ordinance, Plano TX'),
  clearance('alley', 12, 'one city', 'ordinance, Plano TX'),
  clearance('accessible route', 80 / 12, 'federal outdoor routes', 'ABA standards 1016.9, as summarized')
]

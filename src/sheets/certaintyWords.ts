import type { Certainty } from '../../shared/sourced'

/** How sure a number is, as a sentence has it. */
export const certaintyWords: Record<Certainty, string> = {
  read: 'read in the source',
  'second-hand': 'quoted by another source',
  data: 'derived from open data',
  memory: 'from memory',
  practice: 'common practice, no source',
  house: 'house rule'
}

import type { TimingNote, TimingState } from '../season/timing'
import { certaintyWords } from './certaintyWords'

/** How a note on the season stands, as a word. */
export const timingWords: Record<TimingState, string> = {
  closed: 'Closed',
  ask: 'Ask',
  always: 'All year',
  open: 'Open',
  advice: 'Usual time'
}

/** The source with how sure it is, or an empty text where a note only asks. */
export function timingSource({ source, certainty }: TimingNote): string {
  return certainty === null ? '' : `${source} (${certaintyWords[certainty]})`
}

import { nameTrees } from '../season/timingProblems'
import type { TimingState } from '../season/timing'
import type { Plan } from '../plan/plan'
import { timingSource, timingWords } from './timingWords'

/** What is known of the season of the work, worst first, a sentence each with its trees and its source. */
export function seasonSentences(
  { timing = [] }: Pick<Plan, 'timing'>,
  states: readonly TimingState[]
): string[] {
  return timing
    .filter(({ state }) => states.includes(state))
    .map((note) => {
      const source = timingSource(note)
      const trees = note.trees.length === 0 ? '' : ` (${nameTrees(note.trees)})`
      return `${timingWords[note.state]}${trees}: ${note.sentence}${source === '' ? '' : ` Source: ${source}.`}`
    })
}

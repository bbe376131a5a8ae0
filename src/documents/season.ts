import { nameTrees } from '../arbor/assess/timingProblems'
import type { TimingState } from '../arbor/assess/timing'
import type { Plan } from '../arbor/plan/plan'
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

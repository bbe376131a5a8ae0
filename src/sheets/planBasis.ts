import { shownChange } from '../plan/rules/ruleUnits'
import { nameTrees } from '../season/timingProblems'
import type { Plan } from '../plan/plan'
import { addRemarks, type Remark } from './cut-plan/cutPlanRemarks'
import type { SheetDraft } from './draft'
import { timingSource, timingWords } from './timingWords'

/** "Trees T02 and T06: …", for the head of a document. */
export function closedSentences({ timing = [] }: Pick<Plan, 'timing'>): string[] {
  return timing
    .filter(({ state }) => state === 'closed')
    .map((note) => `${nameTrees(note.trees)}. ${note.sentence} Source: ${timingSource(note)}.`)
}

/** The rules that a person changed, with the reason that was written down. */
export function addRuleChanges(draft: SheetDraft, { ruleChanges = [], system }: Plan): void {
  const remarks = ruleChanges.map((change): Remark => {
    const { unit, from, to } = shownChange(change, system)
    return {
      place: [to, `default ${from}`],
      sentence: `${change.name} (${unit})`,
      remedy: change.reason === '' ? 'No reason was written down.' : change.reason
    }
  })
  addRemarks(draft, 'Rules changed from their defaults', ['Now', 'Before', 'Rule', 'Reason'], remarks)
}

/** The changed rules as sentences, for documents that carry no table of them. */
export function ruleChangeSentences({ ruleChanges = [], system }: Plan): string[] {
  return ruleChanges.map((change) => {
    const { name, reason } = change
    const { unit, from, to } = shownChange(change, system)
    const why = reason === '' ? 'No reason was written down.' : `Reason: ${reason}`
    return `Rule changed for this plan: ${name}, ${to} ${unit} instead of ${from}. ${why}`
  })
}

/** What is to be known about the season, worst first. */
export function addTiming(draft: SheetDraft, { timing = [] }: Plan): void {
  const remarks = timing.map((note): Remark => ({
    place: [timingWords[note.state], nameTrees(note.trees)],
    sentence: note.sentence,
    remedy: timingSource(note)
  }))
  addRemarks(draft, 'Season of the work', ['Window', 'Trees', 'What is known', 'Source'], remarks)
}

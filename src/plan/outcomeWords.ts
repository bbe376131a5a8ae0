import { points } from '../../shared/words/figures'
import type { Outcome, WaitsFor } from './plan'

const waiting: Record<WaitsFor, string> = {
  allowance: 'Waits: the tree can spare no more foliage; look again at the next visit.',
  'inspect first': 'Waits: inspect its decay or crack first; the arborist decides.',
  leader: 'Waits until it is decided which stem leads.'
}

/** What becomes of a limb, in one sentence. */
export function outcomeWords(end: Outcome): string {
  const { limb, outcome, visit, year, heldBy, priorityAfter } = end
  if (end.isStem && outcome === 'keep')
    return `Kept: a stem of a multi-stem tree, not reduced for the others.${unionNote(limb)}`
  switch (outcome) {
    case 'removed':
      return `Removed at visit ${String(visit)}, ${String(year)}.`
    case 'settled':
      return `Settled at visit ${String(visit)}, ${String(year)}: at most half its stem and kept low.${unionNote(limb)}`
    case 'expected':
      return `Expected to be at most half its stem by ${String(year)}, by growth alone: measure again.${unionNote(limb)}`
    case 'done':
      return 'Done: nothing else is wanted of it.'
    case 'wait':
      return waiting[heldBy ?? 'allowance']
    case 'keep':
      return `Keep and inspect: no cut of this plan settles it (priority ${points(priorityAfter)}). Support or removal is the arborist’s decision.`
  }
}

/** Included bark stays whatever is cut. */
function unionNote({ bark }: Outcome['limb']): string {
  return bark !== 'none' ? ' Its union has included bark: inspect the union.' : ''
}

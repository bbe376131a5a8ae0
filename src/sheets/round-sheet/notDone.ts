import { namedLimbs } from '../../../shared/words/lists'
import type { ClearanceReached, LimbState, Outcome, TreePlan, WaitsFor } from '../../plan/plan'

type Reason = WaitsFor | 'keep' | 'on site' | 'clearance'

const words: Readonly<Record<Reason, string>> = {
  'inspect first': 'inspect decay or crack first',
  leader: 'decide first which stem leads',
  allowance: 'no foliage to spare at this visit',
  keep: 'keep and inspect: no cut settles it',
  'on site': 'the arborist decides on site',
  clearance: 'clearance not reached yet'
}

const isShort = (clearance: ClearanceReached | null): boolean =>
  clearance !== null && clearance.reachedNow < clearance.required - 1e-6

/** What a tree with no cut at its first visit still wants, in words with the limbs; null where it needs nothing. */
export function notDone({ outcomes, visits, clearance }: TreePlan): string | null {
  const limbs = new Map<Reason, Set<Outcome['limb']>>()
  const told = new Set<Outcome['limb']>()
  const add = (reason: Reason, limb: Outcome['limb']) => {
    if (told.has(limb)) return
    told.add(limb)
    limbs.set(reason, (limbs.get(reason) ?? new Set()).add(limb))
  }
  for (const { limb, outcome, heldBy } of outcomes) {
    if (outcome === 'wait') add(heldBy ?? 'allowance', limb)
    else if (outcome === 'keep') add('keep', limb)
  }
  const isHeld = ({ decision }: LimbState) => decision === 'hold'
  for (const { limb } of visits[0]?.limbs.filter(isHeld) ?? []) add('on site', limb)
  const said = [...limbs].map(([reason, of]) => `${words[reason]} (${namedLimbs([...of])})`)
  if (isShort(clearance)) said.push(words.clearance)
  return said.length === 0 ? null : said.join('; ')
}

import { ruleChangeSentences } from '../planBasis'
import { defaultRules, type Rules } from '../../../shared/rules'
import type { UnitSystem } from '../../../shared/units'
import { showDiameter } from '../../../shared/words/lengths'
import type { Plan } from '../../plan/plan'
import { cautions } from '../cautions'
import { seasonSentences } from '../seasonWords'

/** A part of the specification: what it is about and what it says, a paragraph each. */
export interface Clause {
  label: string
  lines: readonly string[]
}

/** From which size on a cut is kept rare and reasoned; the source holds for the sizes as they come. */
function largeCuts(rules: Rules, system: UnitSystem): string {
  const { markedCut, reasonedCut } = rules
  const asTheyCome = markedCut === defaultRules.markedCut && reasonedCut === defaultRules.reasonedCut
  const source = asTheyCome
    ? 'Colorado State University Extension GardenNotes, Pruning Cuts: 2 in and 4 in'
    : 'sizes set on the Rules sheet'
  return `Cuts over ${showDiameter(markedCut, system)} are kept few; one over ${showDiameter(reasonedCut, system)} is made only with its reason written down and agreed beforehand (${source}).`
}

/** What was changed for this plan, with the reason; nothing where the defaults hold. */
function changedRules(plan: Plan): Clause[] {
  const changes = ruleChangeSentences(plan)
  return changes.length === 0 ? [] : [{ label: 'Rules', lines: changes }]
}

const askFirst =
  'Before a date is set, the supervisor asks the authority of the region for the windows that hold there (oak wilt and other diseases, nesting, protected species), and for the weather and drought limits of the year.'

/** Whether windows of the region are known; what is known is not all there is. */
function windowsKnown({ timing = [] }: Plan): boolean {
  return timing.some(({ state }) => state === 'closed' || state === 'open')
}

/**
 * What holds for every tree. Sources: half the foliage in the lower two-thirds, ANSI A300-1995, 5.3.1; what stripping
 * does not do, Smiley & Kane 2006, AUF 32(1):33-40; sizes of cuts, Colorado State University Extension GardenNotes,
 * Pruning Cuts; spurs from memory, trade practice; the rest is common practice, no source.
 */
export function generalClauses(plan: Plan): Clause[] {
  const season = seasonSentences(plan, ['closed', 'always', 'open', 'advice'])
  return [
    {
      label: 'System',
      lines: [
        'Structural pruning in the natural form of the species. The amounts below are ceilings, not targets.'
      ]
    },
    {
      label: 'Cuts',
      lines: [
        'Reduction cut: back to a live lateral of at least the diameter given, without a stub. Removal cut: just outside the branch collar, which stays whole. Dead wood: at the edge of the live tissue. A limb too heavy to hold in one hand is precut in three cuts (ANSI A300-1995).'
      ]
    },
    {
      label: 'Not to be done',
      lines: [
        'Topping: no cut between laterals, and none to a lateral smaller than given. It leaves stubs and many weak shoots where one limb was.',
        'Stripping inner foliage (lion-tailing): the leaves that feed the limb near its base go, the load stays at the tips, and less than half of the foliage is left in the lower two-thirds of the crown and of each limb, which ANSI A300-1995, 5.3.1, asks to keep.',
        'No cut of the leader, none beyond the amount given, no climbing spurs on trees being pruned (from memory, trade practice).'
      ]
    },
    {
      label: 'Large cuts',
      lines: [largeCuts(plan.rules ?? defaultRules, plan.system)]
    },
    ...changedRules(plan),
    {
      label: 'Timing',
      lines: [
        `${windowsKnown(plan) ? 'The windows below are those that were looked up.' : 'No season is assumed here.'} ${askFirst}`,
        ...season
      ]
    },
    {
      label: 'Clean-up',
      lines: [
        'Brush and chips are taken away and lawns, walks and roads raked clean on the same day, unless agreed otherwise. No limb is left hanging. Wood, stumps and chips under a quarantine stay within it.'
      ]
    },
    {
      label: 'Standards',
      lines: [
        'In the United States: ANSI A300 (tree care) and ANSI Z133 (safety in arboricultural operations), each in its current edition; elsewhere the national standards in their place. Local law comes first.'
      ]
    },
    {
      label: 'Supervision',
      lines: [
        'A qualified arborist is on site or inspects each tree before and after the work, confirms the leader and every cut, and may depart from this specification in writing.'
      ]
    },
    { label: 'Cautions', lines: cautions }
  ]
}

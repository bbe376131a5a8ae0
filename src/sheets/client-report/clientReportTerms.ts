import type { Plan } from '../../plan/plan'
import { cautions } from '../cautions'
import { looks } from '../looks'
import { ruleChangeSentences } from '../planBasis'
import type { PrintedDraft } from '../printedDraft'
import { seasonSentences } from '../seasonWords'
import { counted, plural } from '../../../shared/words/counts'
import { firstOf } from '../../../shared/words/some'

const assumptions: readonly string[] = [
  'The measurements in the inventory are taken as they stand; where one was missing or doubtful, what was assumed is kept with the plan of the cuts.',
  'The crew can reach each tree as the inventory says, and the owner of the ground agrees to the work.',
  'Brush is chipped and taken away unless agreed otherwise. Stumps, roots and planting are not part of the work.',
  'Permits, and the consent of neighbors where limbs cross a boundary, are in hand before work begins.',
  'The share of leaves that may come off is a ceiling for the season, not a target. What a single limb carries is known to ±30 % only, and limbs left out of the survey make the others’ shares look larger.'
]

const notInspected =
  'Not inspected: roots and soil, wood inside the trunk and limbs, pests and diseases, cables and pipes, nests, boundaries, and any tree that is not in the inventory.'

/** Trees named in one sentence; more are counted. */
const mostNamed = 12

/** Trees with limbs that could not be used; what belongs to no tree is the planner's, and stands on the cut plan. */
function leftOut({ unplanned }: Plan): string[] {
  const trees = [...new Set(unplanned.map(({ tree }) => tree))].filter((tree) => tree !== '')
  if (trees.length === 0) return []
  return [
    `Left out until they are measured again: limbs of ${plural(trees.length, 'tree')} ${firstOf(trees, mostNamed)}.`
  ]
}

function limits(plan: Plan): string[] {
  const { trees, date } = plan
  return [
    `The task: to plan structural pruning for the ${counted(trees.length, 'tree')} of the inventory, as of ${date}. Nothing else was asked or judged.`,
    'The method: each limb is compared with the stem that bears it and with the place it takes in the crown; the cuts that improve the structure most are chosen within the share of leaves that may come off.',
    notInspected,
    ...leftOut(plan)
  ]
}

const notLookedUp =
  'The pruning windows of the region (diseases, nesting) have not been looked up yet; they are asked for before a date is set.'

/** What a client has to know of the season; what the preparer is asked stands on the other documents. */
function season(plan: Plan): string[] {
  const known = seasonSentences(plan, ['closed', 'always', 'open'])
  return known.length > 0 ? known : [notLookedUp]
}

function list(draft: PrintedDraft, title: string, sentences: readonly string[]): void {
  draft.heading(title)
  for (const text of sentences) draft.bullet(text)
}

const sources: readonly string[] = [
  '1: Eisner, Gilman & Grabosky 2002, Journal of Arboriculture 28(2):99-105.',
  'That cuts on young trees stay small and that leaves feed a tree: common practice, no source.'
]

/** What the report takes for granted, where its knowledge ends, its sources, and the cautions. */
export function addTerms(draft: PrintedDraft, plan: Plan): void {
  draft.keepTogether()
  draft.air()
  list(draft, 'What this report assumes', [...assumptions, ...ruleChangeSentences(plan)])
  draft.keepTogether()
  draft.air()
  list(draft, 'Where its limits are', limits(plan))
  draft.keepTogether()
  draft.air()
  list(draft, 'The season of the work', season(plan))
  draft.keepTogether()
  draft.air()
  list(draft, 'Sources', sources)
  draft.keepTogether()
  draft.air()
  draft.heading('Cautions')
  for (const text of cautions) draft.bullet(text, { ...looks.caution, size: draft.size })
}

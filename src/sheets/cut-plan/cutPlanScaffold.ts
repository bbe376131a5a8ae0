import type { TreePlan } from '../../plan/plan'
import { permanenceWords, treesNamed, withheldSentences } from '../../plan/scaffold/scaffoldWords'
import { counted } from '../../../shared/words/counts'
import { capital } from '../../../shared/words/sentences'
import type { SheetDraft } from '../draft'
import { addRemarks, type Remark } from './cutPlanRemarks'

/** Limb by limb, which ones are permanent and by when the temporary ones go; then why none are chosen, each reason once. */
export function addScaffold(draft: SheetDraft, trees: readonly TreePlan[]): void {
  const limbs = trees.flatMap(({ tree, scaffold }) =>
    (scaffold?.limbs ?? []).map((each): Remark => {
      const what = capital(permanenceWords(each))
      return { place: [tree.id, each.limb.id], sentence: what, remedy: capital(each.reason) }
    })
  )
  const withheld = withheldSentences(trees).map(({ sentence, trees: some }): Remark => ({
    place: [counted(some.length, 'tree'), null],
    sentence,
    remedy: capital(treesNamed(some))
  }))
  addRemarks(
    draft,
    'Permanent and temporary limbs',
    ['Tree', 'Limb', 'Permanent, or temporary and gone by', 'Why, or which trees'],
    [...limbs, ...withheld]
  )
}

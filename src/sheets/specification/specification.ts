import { noDetails, type JobDetails } from '../../details/detailsBook'
import type { Plan, TreePlan } from '../../plan/plan'
import { addLetterhead, footerOf, paperOf } from '../details/letterhead'
import { nothingOffered, offerName, offerSize, type ChosenOffer } from '../offered'
import { titles } from '../ownSheets'
import { PrintedDraft } from '../printedDraft'
import type { SheetDescription } from '../sheet'
import { notSpecified, specifiedTrees } from './notSpecified'
import { generalClauses, type Clause } from './specificationGeneral'
import { specifyTree, type TreeSpecification } from './specificationTree'

/** A specification: what holds for all trees, then one part a tree that is offered, most urgent first. */
export interface PruningSpecification {
  general: Clause[]
  trees: TreeSpecification[]
  /** Trees that nothing is specified for, a sentence per reason. */
  notSpecified: string[]
}

/** What a contractor is held to, as texts: the visits that are offered. Lengths in the units of the plan's system. */
export function specify(plan: Plan, offer: ChosenOffer): PruningSpecification {
  return {
    general: generalClauses(plan),
    trees: specifiedTrees(plan, offer).map(({ tree, isOffered }) =>
      specifyTree(tree, plan.system, isOffered)
    ),
    notSpecified: notSpecified(plan, offer)
  }
}

function intro(plan: Plan, offer: ChosenOffer): string {
  const what = `${offerName(offer)}: ${offerSize(offer)}`
  const from = `Planned from ${plan.inventory.address}.`
  if (offer.lines.length === 0) return `${nothingOffered(offer)} ${from}`
  return `Structural pruning. ${what}. ${from}`
}

const notSpecifiedTitle = 'Not in this specification'

function part(title: string, clauses: readonly Clause[]): string {
  return [title, ...clauses.map(({ label, lines }) => `${label}: ${lines.join('\n  ')}`)].join('\n')
}

/** The specification as plain text: a line for each label and what it says, parts set apart by empty lines. */
export function specificationText(plan: Plan, offer: ChosenOffer): string {
  const { general, trees, notSpecified: others } = specify(plan, offer)
  return [
    `${titles.specification}, ${plan.date}\n${intro(plan, offer)}`,
    part('For all trees', general),
    ...trees.map(({ title, clauses }) => part(title, clauses)),
    ...(others.length === 0 ? [] : [[notSpecifiedTitle, ...others].join('\n')])
  ].join('\n\n')
}

/** The specification of one tree as plain text: the tree, then what holds for all, the cautions and its season's notes. */
export function treeSpecificationText(plan: Plan, tree: TreePlan): string {
  const timing = plan.timing?.flatMap((note) => {
    if (note.trees.length === 0) return [note]
    return note.trees.includes(tree) ? [{ ...note, trees: [tree] }] : []
  })
  const { title, clauses } = specifyTree(tree, plan.system)
  return [
    `${titles.specification}, ${plan.date}`,
    part(title, clauses),
    part('For all trees', generalClauses({ ...plan, ...(timing === undefined ? {} : { timing }) }))
  ].join('\n\n')
}

/** Label and text; a portrait page of either paper is as wide. */
const widths = [16, 76]

/** The specification as a sheet: general part, then a part a tree that is offered, then the trees that are not. */
export function describeSpecification(
  plan: Plan,
  offer: ChosenOffer,
  details: JobDetails = noDetails
): SheetDescription {
  const { general, trees, notSpecified: others } = specify(plan, offer)
  const draft = new PrintedDraft(widths, 10)
  draft.title(titles.specification)
  addLetterhead(draft, details, plan.date)
  draft.dated(plan.date)
  draft.prose(intro(plan, offer))
  draft.blank()
  draft.heading('For all trees')
  draft.clauses(general)
  for (const { title, clauses } of trees) {
    draft.keepTogether()
    draft.blank()
    draft.heading(title, 12)
    draft.clauses(clauses)
  }
  if (others.length > 0) {
    draft.keepTogether()
    draft.blank()
    draft.heading(notSpecifiedTitle, 12)
    for (const sentence of others) draft.bullet(sentence)
  }
  return draft.finish({
    kind: 'specification',
    name: titles.specification,
    freezeRows: 0,
    freezeColumns: 0,
    page: draft.page({
      orientation: 'portrait',
      paper: paperOf(details, plan),
      titleRow: null,
      fitsWidth: true,
      footer: footerOf(details, `Pruning specification, ${plan.date}. A qualified arborist on site decides.`)
    })
  })
}

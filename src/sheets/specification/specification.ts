import { byUrgency, type Plan, type TreePlan } from '../../plan/plan'
import { titles } from '../ownSheets'
import { PrintedDraft } from '../printedDraft'
import { counted } from '../../../shared/words/counts'
import type { SheetDescription } from '../sheet'
import { generalClauses, type Clause } from './specificationGeneral'
import { specifyTree, type TreeSpecification } from './specificationTree'

/** A specification: what holds for all trees, then one part a tree, most urgent first. */
export interface PruningSpecification {
  general: Clause[]
  trees: TreeSpecification[]
}

/** What a contractor is held to, as texts. Lengths in the units of the plan's system. */
export function specify(plan: Plan): PruningSpecification {
  return {
    general: generalClauses(plan),
    trees: byUrgency(plan).map((tree) => specifyTree(tree, plan.system))
  }
}

function intro(plan: Plan): string {
  return `Structural pruning of ${counted(plan.trees.length, 'tree')}, planned from ${plan.inventory.address}.`
}

function part(title: string, clauses: readonly Clause[]): string {
  return [title, ...clauses.map(({ label, lines }) => `${label}: ${lines.join('\n  ')}`)].join('\n')
}

/** The specification as plain text: a line for each label and what it says, parts set apart by empty lines. */
export function specificationText(plan: Plan): string {
  const { general, trees } = specify(plan)
  return [
    `${titles.specification}, ${plan.date}\n${intro(plan)}`,
    part('For all trees', general),
    ...trees.map(({ title, clauses }) => part(title, clauses))
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

/** The specification as a sheet: general part, then a part a tree. */
export function describeSpecification(plan: Plan): SheetDescription {
  const draft = new PrintedDraft(widths, 10)
  draft.title(titles.specification)
  draft.dated(plan.date)
  draft.prose(intro(plan))
  draft.blank()
  draft.heading('For all trees')
  draft.clauses(generalClauses(plan))
  for (const tree of byUrgency(plan)) {
    const { title, clauses } = specifyTree(tree, plan.system)
    draft.keepTogether()
    draft.blank()
    draft.heading(title, 12)
    draft.clauses(clauses)
  }
  return draft.finish({
    kind: 'specification',
    name: titles.specification,
    freezeRows: 0,
    freezeColumns: 0,
    page: draft.page({
      orientation: 'portrait',
      paper: plan.system === 'in-ft' ? 'letter' : 'a4',
      titleRow: null,
      footer: `Pruning specification, ${plan.date}. A qualified arborist on site decides.`
    })
  })
}

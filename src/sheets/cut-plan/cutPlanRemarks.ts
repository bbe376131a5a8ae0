import { keepCompiled } from '../../../shared/keepCompiled'
import type { Inventory } from '../../inventory/inventory'
import { judgedOf, judgedWords, notJudgedLimbs, type Judged } from '../../plan/judged'
import { leftOut } from '../../plan/leftOut'
import { confidenceOf } from '../../plan/outlook'
import { outcomeWords } from '../../plan/outcomeWords'
import type { LimbState, Plan, TreePlan } from '../../plan/plan'
import { priorityText } from '../../plan/priorityWords'
import { weighFirstVisit } from '../../plan/weighed/weighTree'
import { sheetPrefix } from '../../../shared/cells'
import type { ProblemLevel } from '../../../shared/problems'
import { defaultRules, type Rules } from '../../../shared/rules'
import { counted } from '../../../shared/words/counts'
import { points } from '../../../shared/words/figures'
import { ceilingPercent, percent } from '../../../shared/words/percent'
import { capital } from '../../../shared/words/sentences'
import { rowsNamed } from '../../../shared/words/some'
import { cellFormats } from '../cellFormats'
import type { SheetDraft } from '../draft'
import { looks } from '../looks'
import type { Content } from '../sheet'
import { foldText } from '../../../shared/folding'
import { fits } from '../wrapping'

/** A sentence starts in the one column and its remedy in the other; both run to the right over empty cells. */
const sentenceColumn = 2
const sentenceWidth = 114
const remedyColumn = 13
const remedyWidth = 120
const beforeRemedy = Array<null>(remedyColumn - sentenceColumn - 1).fill(null)

/** One line of a remark: where or who, the sentence and its remedy in their columns. */
function remarkRow(place: Content[], sentence: string | number, remedy: string): Content[] {
  const cells = [place[0] ?? null, place[1] ?? null, sentence === '' ? null : sentence]
  return remedy === '' ? cells : [...cells, ...beforeRemedy, remedy]
}

/** Who or where, what about it, and the remedy beside it. */
export interface Remark {
  place: [Content, Content]
  /** A number stays one. */
  sentence: string | number
  remedy: string
}

/** A remark in as many rows as the longest of its texts takes. */
function addFolded(draft: SheetDraft, { place, sentence, remedy }: Remark): void {
  const left = typeof sentence === 'number' ? [sentence] : foldText(sentence, sentenceWidth)
  const right = foldText(remedy, remedyWidth)
  const places = place.map((content, column): Content[] =>
    typeof content === 'string' ? foldText(content, draft.widths[column] ?? 9) : [content]
  )
  const lines = Math.max(left.length, right.length, ...places.map(({ length }) => length))
  for (let index = 0; index < lines; index++) {
    const parts = places.map((each) => each[index] ?? null)
    draft.rows.push(remarkRow(parts, left[index] ?? '', right[index] ?? ''))
  }
}

/** A section of remarks under a header. Long texts go on in the rows below, as the cell beside them would cut them off. */
export function addRemarks(
  draft: SheetDraft,
  title: string,
  header: [string, string, string, string],
  remarks: Remark[]
): void {
  if (remarks.length === 0) return
  draft.section(title)
  const top = draft.line(remarkRow([header[0], header[1]], header[2], header[3]), looks.header)
  draft.format(top, 0, 1, draft.widths.length, { wrap: false })
  const [first = 9, second = 9] = draft.widths
  for (const remark of remarks) {
    const { place, sentence, remedy } = remark
    const short = fits(place[0], first) && fits(place[1], second)
    if (short && fits(sentence, sentenceWidth) && fits(remedy, remedyWidth))
      draft.rows.push(remarkRow(place, sentence, remedy))
    else addFolded(draft, remark)
  }
  const rows = draft.next - top - 1
  draft.format(top + 1, 0, rows, draft.widths.length, looks.body)
  draft.format(top + 1, 0, rows, 1, { bold: true })
  draft.format(top + 1, sentenceColumn, rows, 1, { ...cellFormats.whole, align: 'left' })
}

/** The limb of a tree that most needs work, with what was decided about it. */
function foremost(states: readonly LimbState[]): LimbState | null {
  return states.reduce<LimbState | null>(
    (best, state) => (best === null || state.priority > best.priority ? state : best),
    null
  )
}

function whyUncut(tree: TreePlan): string {
  if (tree.allowedRemoval <= 0) return 'No live foliage to spare this season, and no dead limb is listed.'
  const limb = foremost(tree.visits[0]?.limbs ?? [])
  if (limb === null) return 'No limb is listed beside its leader.'
  return `Limb ${limb.limb.id} comes first with priority ${points(limb.priority)}. ${limb.reason}`
}

/** What may come off a tree, and how that comes about. */
function allowedOf({ allowedRemoval, allowedBasis }: TreePlan): string {
  return `${ceilingPercent(allowedRemoval)}: ${allowedBasis}`
}

const uncut = (tree: TreePlan): boolean => tree.visits.every((visit) => visit.cuts.length === 0)

function aboutTrees(trees: readonly TreePlan[], say: (tree: TreePlan) => [sentence: string, remedy: string]) {
  return trees.map((tree): Remark => {
    const [sentence, remedy] = say(tree)
    return { place: [tree.tree.id, tree.tree.species], sentence, remedy }
  })
}

/** Trees that need no cut, or may have none, and why; then those without limbs, and those whose limbs were not all judged. */
export function addUncut(draft: SheetDraft, trees: readonly TreePlan[]): void {
  const of = (...kinds: readonly Judged[]) => trees.filter((tree) => kinds.includes(judgedOf(tree)))
  addRemarks(
    draft,
    'Trees with no cut',
    ['Tree', 'Species', 'Why', 'Allowed removal'],
    aboutTrees(of('all', 'some').filter(uncut), (tree) => {
      const judged = judgedOf(tree) === 'some' ? ` ${judgedWords(tree)}.` : ''
      return [whyUncut(tree) + judged, allowedOf(tree)]
    })
  )
  addRemarks(
    draft,
    'Limbs not judged',
    ['Tree', 'Species', 'What was not judged', 'What to do'],
    aboutTrees(of('some', 'none'), (tree) => [
      `${capital(judgedWords(tree))}: ${notJudgedLimbs(tree)}.`,
      'See “Rows that could not be planned”, survey them again and plan again.'
    ])
  )
  addRemarks(
    draft,
    'Trees with no limbs listed',
    ['Tree', 'Species', 'Why no cut can be chosen', 'Allowed removal'],
    aboutTrees(of('no limbs'), (tree) => ['No limbs are listed.', allowedOf(tree)])
  )
}

/** Limbs of the first visit that were held, to be decided on site. */
export function addOnSite(draft: SheetDraft, trees: readonly TreePlan[]): void {
  const remarks = trees.flatMap((tree) =>
    (tree.visits[0]?.limbs ?? [])
      .filter((state) => state.decision === 'hold')
      .map((state): Remark => ({
        place: [tree.tree.id, state.limb.id],
        sentence: state.reason,
        remedy: `${points(state.priority)}, then ${points(state.nextPriority)}`
      }))
  )
  const header: [string, string, string, string] = [
    'Tree',
    'Limb',
    'Why',
    'Priority now, and at the next visit'
  ]
  addRemarks(draft, 'Limbs to hold, or to decide on site', header, remarks)
}

/** Whether a tree has a limb with a claim at its first visit, so that there is something to weigh. */
function hasClaims({ visits: [first] }: TreePlan, rules: Rules): boolean {
  if (first === undefined) return false
  return (
    first.cuts.some(({ live }) => live) ||
    first.limbs.some(({ priority }) => priority >= rules.clearedBelow - 1e-6)
  )
}

/** Why this and not more: what was weighed at the first visit for every limb with a claim, cut or left. */
export function addWeighed(
  draft: SheetDraft,
  trees: readonly TreePlan[],
  { rules = defaultRules, system }: Plan
): void {
  const remarks = trees.flatMap((tree): Remark[] => {
    if (!hasClaims(tree, rules)) return []
    const weighed = weighFirstVisit(tree, { rules, system })
    const states = tree.visits[0]?.limbs ?? []
    return states.flatMap(({ limb, priority, decision }): Remark[] => {
      const sentences = weighed.get(limb) ?? []
      if (sentences.length === 0) return []
      return [
        {
          place: [tree.tree.id, limb.id],
          sentence: sentences.join(' '),
          remedy: `${capital(decision)}, priority ${priorityText(priority, rules)}`
        }
      ]
    })
  })
  const header: [string, string, string, string] = [
    'Tree',
    'Limb',
    'What was weighed and refused, and by which rule',
    'Decided, and priority now'
  ]
  addRemarks(draft, 'Why this and not more', header, remarks)
}

/** How every limb ends that had a priority over 10 at the survey, or an obligation. */
export function addLeftOver(draft: SheetDraft, trees: readonly TreePlan[]): void {
  const remarks = trees.flatMap(({ tree, outcomes }) =>
    outcomes.map((outcome): Remark => {
      const { limb, priority } = outcome
      return { place: [tree.id, limb.id], sentence: priority, remedy: outcomeWords(outcome) }
    })
  )
  const header: [string, string, string, string] = ['Tree', 'Limb', 'Priority at the survey', 'How it ends']
  addRemarks(draft, 'How every limb ends', header, remarks)
}

/** Trees examined at most: each is planned twice more. The most urgent are the ones whose cuts come first. */
const mostExamined = 60

/** Which first cuts would change if foliage shares are wrong by their usual error. */
export function addConfidence(draft: SheetDraft, trees: readonly TreePlan[], rules: Rules): void {
  const examined = trees.slice(0, mostExamined)
  const remarks = examined.flatMap((tree) =>
    confidenceOf(tree, rules).changes.map((sentence): Remark => ({
      place: [tree.tree.id, tree.tree.species],
      sentence,
      remedy: 'Look at how much foliage the limb really carries before cutting.'
    }))
  )
  const which = examined.length < trees.length ? `, of the ${String(examined.length)} most urgent trees` : ''
  const title = `First cuts that change where foliage is ${percent(rules.foliageError)} less or more than estimated${which}`
  addRemarks(draft, title, ['Tree', 'Species', 'What changes', 'What to do'], remarks)
}

/** How many cuts there are of each source. */
export class SourceTally {
  private readonly counts = new Map<string, { count: number }>()
  private last = ''
  private counter = { count: 0 }

  /** Most cuts have the source of the one before. */
  add(source: string): void {
    if (source !== this.last) {
      this.last = source
      this.counter = this.counts.get(source) ?? { count: 0 }
      this.counts.set(source, this.counter)
    }
    this.counter.count += 1
  }

  get remarks(): Remark[] {
    return [...this.counts].map(([source, { count }]) => ({
      place: [count, null],
      sentence: source,
      remedy: ''
    }))
  }
}

keepCompiled(new SourceTally())

/** Where the reasons for the cuts come from, each once. */
export function addSources(draft: SheetDraft, tally: SourceTally): void {
  addRemarks(draft, 'Where the reasons come from', ['Cuts', '', 'Source', ''], tally.remarks)
}

/** A cell without its sheet, where that is the inventory’s: the head of the document names it. */
function within(inventory: Inventory, cell: string): string {
  const prefix = sheetPrefix(inventory.sheet)
  return cell.startsWith(prefix) ? cell.slice(prefix.length) : cell
}

/** Rows that could not be planned, those of one cause together. */
export function addUnplanned(draft: SheetDraft, plan: Plan): void {
  const remarks = leftOut(plan).map(({ rows, reason, remedy }): Remark => {
    const trees = new Set(rows.map(({ tree }) => tree))
    const which = rows.length === 1 ? '' : ` ${capital(rowsNamed(rows.map(({ row }) => row)))}.`
    return {
      place: [
        within(plan.inventory, rows[0]?.cell ?? ''),
        trees.size === 1 ? (rows[0]?.tree ?? '') : counted(trees.size, 'tree')
      ],
      sentence: reason + which,
      remedy: remedy === '' ? 'Correct the row and plan again.' : remedy
    }
  })
  addRemarks(draft, 'Rows that could not be planned', ['Cell', 'Tree', 'Why', 'What to do'], remarks)
}

const levelWords: Record<ProblemLevel, string> = {
  stop: 'Stopped',
  row: 'Not planned',
  doubt: 'Assumed',
  note: 'Note'
}

/** Every problem of the inventory with its cell, worst first. */
export function addProblems(draft: SheetDraft, { problems, inventory }: Plan): void {
  const levels = Object.keys(levelWords) as ProblemLevel[]
  const remarks = levels.flatMap((level) =>
    problems
      .filter((entry) => entry.level === level)
      .map(({ cell, message, remedy, waits }): Remark => ({
        place: [within(inventory, cell), levelWords[level]],
        sentence: waits === undefined ? message : `${message} ${waits}`,
        remedy
      }))
  )
  addRemarks(draft, 'Checks of the inventory', ['Cell', 'Kind', 'What was found', 'What to do'], remarks)
}

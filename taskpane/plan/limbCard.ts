import { columnLetters, sheetPrefix } from '../../shared/cells'
import { partOf, rowPlace, rowsAt, type Inventory } from '../../src/inventory/inventory'
import { defaultRules } from '../../shared/rules'
import { judgedWords } from '../../src/plan/judged'
import { priorityText } from '../../src/plan/priorityWords'
import type { LimbState, Plan, TreePlan, Visit } from '../../src/plan/plan'
import { permanenceWords, scaffoldLimb } from '../../src/plan/scaffold/scaffoldWords'
import { instruction } from './cutEntry'
import type { Weigh } from '../engine'
import { disclosure } from '../parts/disclosure'
import { button, el, facts, type Child } from '../parts/elements'
import type { SelectedCells } from '../surface'
import { ratio } from '../../shared/words/figures'
import { capital, sentence } from '../../shared/words/sentences'
import { panePercent } from '../parts/wording'

/** What the plan says of one row of the inventory. */
export type RowFinding =
  | { kind: 'limb'; treePlan: TreePlan; state: LimbState; visit: Visit }
  | { kind: 'leader'; treePlan: TreePlan }
  | { kind: 'tree'; treePlan: TreePlan }
  | { kind: 'unplanned'; tree: string; reason: string }

/** The id of the tree that a row is of. */
export function treeOf(finding: RowFinding): string {
  return finding.kind === 'unplanned' ? finding.tree : finding.treePlan.tree.id
}

/** What the plan says of each row of the inventory. */
export function findingsByRow(plan: Plan): Map<number, RowFinding> {
  const rows = new Map<number, RowFinding>()
  for (const { tree, at, reason } of plan.unplanned) rows.set(at, { kind: 'unplanned', tree, reason })
  for (const treePlan of plan.trees) {
    if (!rows.has(treePlan.tree.row)) rows.set(treePlan.tree.row, { kind: 'tree', treePlan })
    const { limb: leader } = treePlan.leader
    if (leader !== null) rows.set(leader.row, { kind: 'leader', treePlan })
    const visit = treePlan.visits[0]
    if (visit === undefined) continue
    for (const state of visit.limbs) rows.set(state.limb.row, { kind: 'limb', treePlan, state, visit })
  }
  return rows
}

/** The row of the inventory that is selected, or null where the selection is elsewhere or several rows high. */
export function selectedRow(inventory: Inventory, cells: SelectedCells | null): number | null {
  if (cells === null || cells.rows !== 1) return null
  const rows = rowsAt(inventory, cells.sheet, cells.row + 1)
  const within = rows.filter((row) => {
    const { first, last } = columnsOf(inventory, row)
    return cells.column <= last && cells.column + cells.columns > first
  })
  // Of the groups in which columns repeat, the one that is selected.
  return within.at(-1) ?? null
}

/** The first and the last column of a row that was read, in its sheet. */
function columnsOf(inventory: Inventory, row: number): { first: number; last: number } {
  const { left, matches, first, placeOf } = partOf(inventory, row)
  const columns = matches.map(({ column }) => placeOf?.(row - first, column).column ?? left + column)
  return { first: Math.min(...columns), last: Math.max(...columns) }
}

/** What the card leads to, and whether a person has folded it down to its title. */
export interface LimbCardSetting {
  weigh: Weigh
  folded: boolean
  onFold(folded: boolean): void
  showTree(id: string): void
}

/** The card of the selected row: how the limb stands, what was decided and why. */
export function limbCard(
  finding: RowFinding,
  plan: Plan,
  row: number,
  setting: LimbCardSetting
): HTMLElement {
  const { title, tree, body } = cardWords(finding, plan, setting.weigh)
  const place = el('span', { class: 'cell' }, `Row ${String(rowPlace(plan.inventory, row).number)}`)
  const show = (): void => {
    setting.showTree(tree)
  }
  const part = disclosure(
    'limb',
    [el('span', {}, place, ` ${title}`)],
    () => [...body, tree !== '' && button(`Show tree ${tree}`, show, 'link')],
    'h2'
  )
  if (!setting.folded) part.open()
  part.toggle.addEventListener('click', () => {
    setting.onFold(part.toggle.getAttribute('aria-expanded') !== 'true')
  })
  return part.element
}

/** Title, the tree whose card can be opened, and the text. */
function cardWords(
  finding: RowFinding,
  plan: Plan,
  weigh: Weigh
): { title: string; tree: string; body: Child[] } {
  if (finding.kind === 'unplanned') {
    const title = finding.tree === '' ? 'Not planned' : `Tree ${finding.tree}, not planned`
    return { title, tree: '', body: [el('p', {}, sentence(finding.reason))] }
  }
  const { leader, tree, allowedRemoval, allowedBasis } = finding.treePlan
  const { id } = tree
  if (finding.kind === 'limb') {
    const { state, visit } = finding
    return {
      title: `Tree ${id}, limb ${state.limb.id}`,
      tree: id,
      body: limbWords(finding.treePlan, state, visit, plan, weigh)
    }
  }
  if (finding.kind === 'leader')
    return { title: `Tree ${id}, leader`, tree: id, body: [el('p', {}, `Kept. ${sentence(leader.reason)}`)] }
  const allowance = `Allowed removal ${panePercent(allowedRemoval, 'at most')}: ${allowedBasis}.`
  const judged = judgedWords(finding.treePlan)
  return {
    title: `Tree ${id}`,
    tree: id,
    body: [el('p', {}, allowance), judged !== '' && el('p', {}, sentence(judged))]
  }
}

function limbWords(treePlan: TreePlan, state: LimbState, visit: Visit, plan: Plan, weigh: Weigh): Child[] {
  const { rules, system } = plan
  const scaffold = scaffoldLimb(treePlan, state.limb)
  const weighed = weigh.weighedFor(treePlan, visit.visit, state.limb, { rules, system })
  const cut = visit.cuts.find(({ limb }) => limb === state.limb)
  return [
    facts([
      ['Aspect ratio', `${ratio(state.aspectRatio)}, ${state.standing}`],
      [
        'Priority',
        `${priorityText(state.priority, plan.rules)}, then ${priorityText(state.nextPriority, plan.rules)}`
      ],
      [
        'Foliage',
        `${panePercent(state.foliageShare)} of the tree (±${panePercent((plan.rules ?? defaultRules).foliageError)})`
      ],
      ['Decision', capital(state.decision)],
      [
        'Permanent',
        scaffold !== null && sentence(`${capital(permanenceWords(scaffold))}: ${scaffold.reason}`)
      ]
    ]),
    cut !== undefined && el('p', { class: 'cut-do' }, instruction(cut, plan.system)),
    el('p', {}, sentence(cut?.reason ?? state.reason)),
    weighed.length > 0 && el('h3', {}, 'Why this and not more'),
    weighed.length > 0 && el('ul', {}, ...weighed.map((words) => el('li', {}, words)))
  ]
}

/** The address of a row of the inventory, across the columns that were read: rows are selected whole. */
export function rowAddress({ inventory }: Plan, row: number): string {
  const { sheet, number } = rowPlace(inventory, row)
  const { first, last } = columnsOf(inventory, row)
  return `${sheetPrefix(sheet)}${columnLetters(first)}${String(number)}:${columnLetters(last)}${String(number)}`
}

import { asNumber, Money } from '../../../shared/money'
import { counted } from '../../../shared/words/counts'
import type { Plan } from '../../plan/plan'
import { treePlace } from '../../plan/treeTitle'
import { looks } from '../looks'
import { placeTeller } from '../places'
import { moneyFormat } from '../moneyFormat'
import type { ChosenOffer } from '../offered'
import type { PrintedDraft } from '../printedDraft'
import type { Content } from '../sheet'
import { priceOf } from './clientReportYears'
import { columns, columnCount } from './reportGrid'
import { urgencies, type ReportedTree } from './reportedTrees'

/** Rows of a table of sums at most; the smallest groups are drawn together in its last. */
const mostRows = 16

/** Points of a row: three tables of as many rows as there may be go on one page. */
const rowPoints = 13

interface Group {
  name: string
  trees: number
  offered: number
  price: Money
}

function groupsBy(
  trees: readonly ReportedTree[],
  nameOf: (tree: ReportedTree) => string,
  { minorDigits }: ChosenOffer
): Group[] {
  const groups = new Map<string, Group>()
  for (const each of trees) {
    const name = nameOf(each)
    const group = groups.get(name) ?? { name, trees: 0, offered: 0, price: new Money(0) }
    group.trees += 1
    group.offered += each.lines.length > 0 ? 1 : 0
    group.price = group.price.plus(priceOf(each.lines, minorDigits))
    groups.set(name, group)
  }
  return [...groups.values()]
}

/** Groups with the highest price first, and what is left of many in one row. */
function fewOf(groups: readonly Group[]): readonly Group[] {
  const sorted = [...groups].sort((a, b) => b.price.comparedTo(a.price) || b.trees - a.trees)
  if (sorted.length <= mostRows) return sorted
  const rest = sorted.slice(mostRows - 1)
  const sum = rest.reduce((all, { price }) => all.plus(price), new Money(0))
  return [
    ...sorted.slice(0, mostRows - 1),
    {
      name: counted(rest.length, 'other'),
      trees: rest.reduce((all, group) => all + group.trees, 0),
      offered: rest.reduce((all, group) => all + group.offered, 0),
      price: sum
    }
  ]
}

function line(name: string, trees: Content, offered: Content, price: Content): Content[] {
  const cells = Array<Content>(columnCount).fill(null)
  cells[0] = name
  cells[columns.urgency] = trees
  cells[columns.next] = offered
  cells[columns.price] = price
  return cells
}

function addGroups(draft: PrintedDraft, title: string, groups: readonly Group[], offer: ChosenOffer): void {
  draft.air()
  const top = draft.next
  const head = draft.line(line(title, 'Trees', 'Offered', 'Price'), {
    ...looks.header,
    size: draft.size,
    wrap: false
  })
  draft.format(head, columns.urgency, 1, 3, { align: 'right' })
  const from = draft.next
  for (const { name, trees, offered, price } of groups)
    draft.line(line(name, trees, offered, price.isZero() ? null : asNumber(price)), draft.body)
  draft.format(from, columns.price, groups.length, 1, moneyFormat(offer.minorDigits))
  const count = (of: (group: Group) => number) => groups.reduce((all, group) => all + of(group), 0)
  const sum = groups.reduce((all, { price }) => all.plus(price), new Money(0))
  const last = draft.line(
    line(
      'All trees',
      count(({ trees }) => trees),
      count(({ offered }) => offered),
      asNumber(sum)
    ),
    { ...looks.total, size: draft.size }
  )
  draft.format(last, columns.price, 1, 1, moneyFormat(offer.minorDigits))
  draft.height(top, draft.next - top, rowPoints)
}

/** What the trees come to by urgency, by place and by species, each down to the same sum. */
export function addSums(
  draft: PrintedDraft,
  plan: Plan,
  offer: ChosenOffer,
  trees: readonly ReportedTree[]
): void {
  if (offer.lines.length === 0) return
  draft.keepTogether()
  const known = groupsBy(trees, ({ urgency }) => urgency ?? 'no cut now', offer)
  const order = [...urgencies, 'no cut now']
  addGroups(
    draft,
    'By urgency',
    order.flatMap((name) => known.filter((group) => group.name === name)),
    offer
  )
  const teller = placeTeller(plan.trees, plan)
  const placeOf = ({ tree }: ReportedTree) => (teller?.nameOf(tree) ?? treePlace(tree.tree)).trim()
  const places = groupsBy(trees, (tree) => placeOf(tree) || 'place not given', offer)
  if (places.length > 1)
    addGroups(draft, teller?.isZone === true ? 'By zone' : 'By place', fewOf(places), offer)
  const species = groupsBy(trees, ({ tree }) => tree.tree.species.trim() || 'species not given', offer)
  if (species.length > 1) addGroups(draft, 'By species', fewOf(species), offer)
}

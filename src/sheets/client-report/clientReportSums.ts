import { asNumber, Money } from '../../../shared/money'
import { counted } from '../../../shared/words/counts'
import { zoneWords } from '../../plan/treeTitle'
import { looks } from '../looks'
import { moneyFormat } from '../moneyFormat'
import type { ChosenOffer } from '../offered'
import type { PrintedDraft } from '../printedDraft'
import type { Content } from '../sheet'
import { priceOf } from './clientReportYears'
import { columns, columnCount } from './reportGrid'
import { urgencies, type ReportedTree } from './reportedTrees'

/** Rows of a table of sums at most; the smallest groups are drawn together in its last. */
const mostRows = 16

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
  draft.keepTogether()
  draft.air()
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
}

/** What the trees come to by urgency, by place and by species, each down to the same sum. */
export function addSums(draft: PrintedDraft, trees: readonly ReportedTree[], offer: ChosenOffer): void {
  if (offer.lines.length === 0) return
  const known = groupsBy(trees, ({ urgency }) => urgency ?? 'no cut now', offer)
  const order = [...urgencies, 'no cut now']
  addGroups(
    draft,
    'By urgency',
    order.flatMap((name) => known.filter((group) => group.name === name)),
    offer
  )
  const places = groupsBy(
    trees,
    ({ tree: { tree } }) => (tree.zone.trim() === '' ? placeOf(tree.site) : zoneWords(tree.zone)),
    offer
  )
  const zoned = trees.some(({ tree: { tree } }) => tree.zone.trim() !== '')
  if (places.length > 1) addGroups(draft, zoned ? 'By zone' : 'By place', fewOf(places), offer)
  const species = groupsBy(trees, ({ tree }) => tree.tree.species.trim() || 'species not given', offer)
  if (species.length > 1) addGroups(draft, 'By species', fewOf(species), offer)
}

/** The street or area of an address: what stands before its first comma, without the number of a house or a bed. */
export function placeOf(site: string): string {
  const [first = ''] = site.split(/[,;]/)
  const street = first
    .replace(/\(.*?\)/g, ' ')
    .replace(/[\s#]*\d+\s*[a-z]?\s*$/i, '')
    .replace(/^\s*\d+\s*[a-z]?\s+/i, '')
  return street.replace(/\s+/g, ' ').trim() || first.trim() || 'place not given'
}

import type { JobDetails } from '../../details/detailsBook'
import { priceOf } from './clientReportYears'
import type { ChosenOffer } from '../offered'
import { inOrder } from '../inOrder'
import type { Visit } from '../../plan/plan'
import { treeTitle } from '../../plan/treeTitle'
import type { ReportedTree } from './reportedTrees'

/** A tree that has a page, or half of one, with the visit that is drawn. */
export interface ExplainedTree extends ReportedTree {
  readonly visit: Visit
  /** Has a page to itself. */
  readonly large: boolean
}

/** Trees that are drawn at most, whatever is asked for: each picture takes its time to paint. */
export const mostDrawn = 200

/** Pages that trees take unless more are asked for, by how many trees there are. */
const mostPages = { few: 6, many: 12, fewTrees: 20 } as const

/** Cuts and limbs up to which two trees share a page, so that the drawings stay legible. */
const small = { cuts: 3, limbs: 10, title: 90, name: 16 } as const

/** A price this many times the usual one of the offer asks for an explanation. */
const costly = 1.5

function isLarge(visit: Visit, { tree }: ReportedTree): boolean {
  const { limbs } = tree.tree
  return (
    visit.cuts.length > small.cuts ||
    limbs.length > small.limbs ||
    treeTitle(tree.tree).length > small.title ||
    limbs.some(({ id }) => id.length > small.name)
  )
}

/** Offered, with a visit to draw; ordered by urgency, then by price. */
function candidates(trees: readonly ReportedTree[], offer: ChosenOffer): ExplainedTree[] {
  const offered = trees.flatMap((each): ExplainedTree[] => {
    const first = each.lines[0]
    const visit = each.tree.visits.find(({ visit }) => visit === first?.visit) ?? each.visit
    return visit === null || first === undefined ? [] : [{ ...each, visit, large: isLarge(visit, each) }]
  })
  const prices = new Map(offered.map((each) => [each, priceOf(each.lines, offer.minorDigits).toNumber()]))
  const price = (each: ExplainedTree) => prices.get(each) ?? 0
  const usual = offered.reduce((sum, each) => sum + price(each), 0) / Math.max(1, offered.length)
  const rank = (each: ExplainedTree) => (each.urgency === 'high' || price(each) >= costly * usual ? 0 : 1)
  return [...inOrder(offered, (a, b) => rank(a) - rank(b))]
}

/** The first of them that go on so many pages. */
function within(trees: readonly ExplainedTree[], pages: number): ExplainedTree[] {
  const chosen: ExplainedTree[] = []
  let left = pages
  for (const tree of trees) {
    const takes = tree.large ? 1 : 0.5
    if (takes > left) continue
    chosen.push(tree)
    left -= takes
  }
  return chosen
}

/** What the Job details ask for: the urgent and costly trees, all, none, or those named. */
export function asked(text: string): 'urgent' | 'all' | 'none' | ReadonlySet<string> {
  const word = text.trim().toLowerCase()
  if (word === '' || word === 'urgent') return 'urgent'
  if (word === 'all' || word === 'none') return word
  return new Set(
    text
      .split(/[,;]/)
      .map((id) => id.trim().toLowerCase())
      .filter((id) => id !== '')
  )
}

/** The trees that are explained one by one, in the order of the table. */
export function chosenTrees(
  trees: readonly ReportedTree[],
  offer: ChosenOffer,
  { treePages }: Pick<JobDetails, 'treePages'>
): readonly ExplainedTree[] {
  const wanted = asked(treePages)
  if (wanted === 'none') return []
  const all = candidates(trees, offer)
  const chosen =
    wanted === 'all'
      ? all
      : wanted === 'urgent'
        ? within(all, trees.length <= mostPages.fewTrees ? mostPages.few : mostPages.many)
        : all.filter(({ tree }) => wanted.has(tree.tree.id.toLowerCase()))
  const drawn = new Set(chosen.slice(0, mostDrawn).map(({ tree }) => tree))
  const places = new Map(trees.map(({ tree }, place) => [tree, place]))
  return inOrder(
    all.filter(({ tree }) => drawn.has(tree)),
    (a, b) => (places.get(a.tree) ?? 0) - (places.get(b.tree) ?? 0)
  )
}

/** The same trees so that two small ones stand on a page wherever there are two. */
export function packed(trees: readonly ExplainedTree[]): readonly (readonly ExplainedTree[])[] {
  const pages: ExplainedTree[][] = []
  let open: ExplainedTree[] | null = null
  for (const tree of trees) {
    if (tree.large) pages.push([tree])
    else if (open === null) pages.push((open = [tree]))
    else {
      open.push(tree)
      open = null
    }
  }
  return pages
}

import type { ChosenOffer } from '../../price/offers'
import { columnsInAnyFont } from '../pageBreaks'
import type { PageSetup } from '../sheet'
import type { ReportedTree } from './reportedTrees'

/** The columns of every page of the report; running text goes across all of them. */
export const columns = { tree: 0, about: 1, trunk: 2, work: 3, urgency: 4, next: 5, price: 6 } as const

export const columnCount = Object.keys(columns).length

const [trunk, urgency, next] = [6.4, 7.4, 5.4]

/** Characters of a tree's id at least and at most; a longer one wraps. */
const ofId = { least: 6, most: 13 } as const

/** Text of the tables is smaller than the standard font that columns are measured in. */
const ofText = 0.82

function priceWidth({ subtotal, total, minorDigits }: ChosenOffer): number {
  const largest = Math.max(subtotal.toNumber(), total.toNumber())
  const digits = Math.floor(largest).toString().length
  return Math.max(9, digits + Math.floor((digits - 1) / 3) + minorDigits + 1.5)
}

/** The widths of the columns, in characters; all of them go on a page whatever the font. */
export function gridWidths(
  page: Pick<PageSetup, 'paper' | 'orientation' | 'margins'>,
  trees: readonly ReportedTree[],
  offer: ChosenOffer
): number[] {
  const longest = Math.max(0, ...trees.map(({ tree }) => tree.tree.id.length))
  const tree = Math.min(ofId.most, Math.max(ofId.least, longest * ofText + 1))
  const price = priceWidth(offer)
  const left = columnsInAnyFont(page, columnCount) - tree - trunk - urgency - next - price
  const about = Math.floor(left * 0.54 * 10) / 10
  return [tree, about, trunk, Math.floor((left - about) * 10) / 10, urgency, next, price]
}

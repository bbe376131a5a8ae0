import { palette } from '../../../shared/palette'
import { hours as hoursText } from '../../../shared/words/figures'
import type { CrewDay } from '../crewDays'
import type { PrintedDraft } from '../printedDraft'
import type { SheetPicture } from '../sheet'
import type { CardUnits } from './cardFacts'
import { addCard, cardOf, growthOf, type Card } from './orderCard'
import { printedColumns } from './orderColumns'
import type { Stop } from './workOrderDays'

/** Trees that are drawn at most: each drawing takes time to paint and room in the file. */
const mostDrawn = 150

/** Points of the row that begins a day. */
const dayPoints = 22

/** A card with its place in the order, and the day that begins with it. */
interface Placed {
  readonly card: Card
  /** "day 1, tree 3" */
  readonly place: string
  readonly day: string | null
  readonly points: number
}

function placedCards(days: readonly CrewDay<Stop>[], units: CardUnits): Placed[] {
  let drawn = 0
  return days.flatMap((day, at) =>
    day.stops.map((stop, index): Placed => {
      const card = cardOf(stop, units, drawn < mostDrawn)
      if (card.drawn) drawn += 1
      const number = String(at + 1)
      const begins = index === 0 ? `Day ${number}, ${hoursText(day.hours)} crew-hours` : null
      const points = card.points + (begins === null ? 0 : dayPoints)
      return { card, place: `day ${number}, tree ${String(index + 1)}`, day: begins, points }
    })
  )
}

/** As many cards on each page as fit; one that is longer than a page runs on. */
function pagesOf(cards: readonly Placed[], room: number): Placed[][] {
  const pages: Placed[][] = []
  let left = 0
  for (const card of cards) {
    const page = pages.at(-1)
    if (page === undefined || card.points > left) {
      pages.push([card])
      left = room - card.points
    } else {
      page.push(card)
      left -= card.points
    }
  }
  return pages
}

/** What is left of a page, shared out over its drawings. */
function growths(page: readonly Placed[], room: number): number[] {
  let left = room - page.reduce((sum, { points }) => sum + points, 0)
  return page.map(({ card }, at) => {
    const growth = Math.max(0, Math.min(Math.floor(left / (page.length - at)), growthOf(card)))
    left -= growth
    return growth
  })
}

const dayLook = {
  bold: true,
  size: 12,
  color: palette.ink,
  fill: palette.headerFill,
  vertical: 'middle'
} as const

function addDay(draft: PrintedDraft, text: string): void {
  const row = draft.rows.push([text]) - 1
  draft.format(row, 0, 1, printedColumns, dayLook)
  draft.height(row, 1, dayPoints)
}

/** The cards of all days, page by page; gives their drawings. */
export function addCards(
  draft: PrintedDraft,
  days: readonly CrewDay<Stop>[],
  units: CardUnits,
  room: number
): SheetPicture[] {
  const pictures: SheetPicture[] = []
  for (const page of pagesOf(placedCards(days, units), room)) {
    draft.newPage()
    const grown = growths(page, room)
    page.forEach(({ card, place, day }, at) => {
      if (day !== null) addDay(draft, day)
      const picture = addCard(draft, card, place, grown[at] ?? 0, units)
      if (picture !== null) pictures.push(picture)
    })
  }
  return pictures
}

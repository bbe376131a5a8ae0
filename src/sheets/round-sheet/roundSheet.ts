import { noDetails, type JobDetails } from '../../details/detailsBook'
import type { Plan } from '../../plan/plan'
import { palette } from '../../../shared/palette'
import { widthsOf } from '../columns'
import { crewDays } from '../crewDays'
import { footerOf, paperOf } from '../details/letterhead'
import type { ChosenOffer } from '../offered'
import { titles } from '../ownSheets'
import { pageRoom, pagesTaken, pointsBetween } from '../pageBreaks'
import { PrintedDraft } from '../printedDraft'
import type { SheetDescription } from '../sheet'
import { roundColumns, type RoundSetting } from './roundColumns'
import { addHead, addHowToRead, addLists } from './roundHead'
import { placesOf } from './roundPlaces'
import { RoundTable } from './roundTable'
import { divideTrees } from './roundTrees'
import { writtenPlaces } from './roundWords'

export interface RoundSheetOptions {
  /** Whose job it is, and where. */
  details?: JobDetails
}

/** Points of the type, the largest first. */
const sizes = [10, 9.5, 9, 8.5] as const

/** The smallest type that is read on a clipboard. */
const smallest = 8

/** Pages for so many trees: one for what stands before the lines, and 11 for 500 trees. A short round is set larger. */
const pagesFor = (trees: number): number => 1 + Math.ceil((trees * 11) / 500)

/** Points of a page in which the head of the table and its first trees stand. */
const firstTrees = 70

/** Where a page has hardly room left for the table, leaves the rest of it blank. */
function toNextPage(draft: PrintedDraft, room: number): void {
  const used = pointsBetween(draft.heights, 0, draft.next) % room
  const left = room - used
  if (left >= firstTrees) return
  draft.blank()
  draft.height(draft.next - 1, 1, left)
}

interface InSize {
  readonly sheet: SheetDescription
  readonly pages: number
}

/**
 * The largest size in which the pages are enough; before there is a smaller one, locations are cut short to what the name of
 * their place leaves of them. A size is only tried where its letters could go on the pages at all.
 */
function largest(inSize: (setting: RoundSetting) => InSize, most: number): SheetDescription {
  const small = inSize({ size: smallest, brief: false })
  if (small.pages > most) return inSize({ size: smallest, brief: true }).sheet
  for (const size of sizes) {
    if (((small.pages - 1) * size) / smallest > most) continue
    for (const brief of [false, true]) {
      const { sheet, pages } = inSize({ size, brief })
      if (pages <= most) return sheet
    }
  }
  return small.sheet
}

/**
 * The round sheet of the first visits that are offered: what a crew does with a hand saw and a pole, one line per tree, by days and places, the
 * worst first; before it the trees that it does not lead to, each with its reason. The type is the largest in which the
 * round takes at most 12 pages for 500 trees.
 */
export function describeRoundSheet(
  plan: Plan,
  offer: ChosenOffer,
  { details = noDetails }: RoundSheetOptions = {}
): SheetDescription {
  const divided = divideTrees(plan, offer)
  const places = writtenPlaces(placesOf(divided.lines, plan), plan.system)
  const lines = places.flatMap((place) => place.lines)
  const productiveHours = offer.rates.dayHours
  const days = crewDays(lines, productiveHours)
  const paper = {
    orientation: 'landscape',
    paper: paperOf(details, plan),
    margins: 'narrow'
  } as const

  const inSize = (setting: RoundSetting): InSize => {
    const columns = roundColumns(lines, plan.system, setting, paper)
    const draft = new PrintedDraft(widthsOf(columns), setting.size, palette.ink)
    addHead(draft, plan, offer, lines, days.length, details)
    addLists(draft, plan, divided)
    draft.air()
    toNextPage(draft, pageRoom(paper, [0]))
    const table = new RoundTable(draft, columns)
    const titleRow = table.headers()
    if (days.length === 0) draft.prose('No tree of this plan has a cut that this round could make.')
    table.days(days, places, productiveHours)
    draft.air()
    addHowToRead(draft, plan, lines)
    const sheet = draft.finish({
      kind: 'round-sheet',
      name: titles['round-sheet'],
      freezeRows: 0,
      freezeColumns: 0,
      page: {
        ...paper,
        titleRow,
        footer: footerOf(
          details,
          `Round sheet, ${plan.date}. Not a tree risk assessment. Wires: stop and call. Nobody works alone aloft.`
        )
      }
    })
    const room = pageRoom(paper, [0])
    return { sheet, pages: pagesTaken(sheet.heights, sheet.rows.length, titleRow, room) }
  }

  return largest(inSize, pagesFor(plan.trees.length))
}

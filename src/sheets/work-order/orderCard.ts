import { palette } from '../../../shared/palette'
import type { UnitSystem } from '../../../shared/units'
import { showDiameter } from '../../../shared/words/lengths'
import { sentence } from '../../../shared/words/sentences'
import { cardAlt, drawCard } from '../../drawing/drawCard'
import { numberedCuts } from '../../drawing/form/limbsAtVisit'
import { columnPoints } from '../pageBreaks'
import type { PrintedDraft } from '../printedDraft'
import { printedFold, printedLines, printedPoints } from '../printedLines'
import type { Content, Format, SheetPicture } from '../sheet'
import { cardFacts, cardTitle, type CardUnits, type Fact } from './cardFacts'
import { cutLine, type CutLine } from './cutLine'
import { boxes, orderAt, orderWidths, printedColumns } from './orderColumns'
import type { Stop } from './workOrderDays'

/** Points of type: lines are read at arm's length, sentences beside the drawing closer by. */
export const sizes = { title: 15, line: 12, when: 11, fact: 11, key: 9 } as const

/** Points of the rows of a card. */
const rows = { title: 24, fact: 16, reason: 20, otherwise: 18 } as const

/** Points of a drawing at least, and at most where its page has room. */
const drawing = { least: 96, most: 230 } as const

/** The drawing stands in the columns before the sentences. */
const factsFrom = orderAt.what
const drawingWidth = columnPoints(...orderWidths.slice(0, factsFrom))
/** The title ends where its day stands. */
const titleWidth = columnPoints(...orderWidths.slice(orderAt.number, orderAt.when)) - 20
const factsWidth = columnPoints(...orderWidths.slice(factsFrom, printedColumns)) - 6

/** A numbered cut in words, and the points that its line takes. */
interface NumberedLine extends CutLine {
  readonly number: number
  readonly id: string
  readonly points: number
}

/** A tree of the order, set in words and measured before it is known on which page it comes. */
export interface Card {
  readonly stop: Stop
  /** The first line stands beside the box of the tree. */
  readonly title: readonly string[]
  readonly facts: readonly Fact[]
  readonly lines: readonly NumberedLine[]
  /** Cuts that nobody makes before somebody has written down why. */
  readonly reasons: readonly string[]
  readonly drawn: boolean
  /** Points at least. */
  readonly points: number
}

/** Points that a cell's text has: a program keeps 2 pixels free on either side. */
const widthAt = (column: number): number => columnPoints(orderWidths[column] ?? 0) - 3

/** Sizes for a name of a limb: smaller where a word of it is longer than its column. */
const limbSizes = [12, 10.5, 9] as const

function limbSize(limb: string): number {
  const words = limb.split(' ')
  const fits = (size: number) =>
    words.every((word) => printedPoints(word, size, true) <= widthAt(orderAt.limb))
  return limbSizes.find(fits) ?? limbSizes[2]
}

function linePoints({ limb, at, what, keep, when }: CutLine): number {
  const lines = (text: string, column: number, size: number, strong = false) =>
    printedLines(text, widthAt(column), size, strong)
  const most = Math.max(
    lines(limb, orderAt.limb, limbSize(limb), true),
    lines(at, orderAt.at, sizes.line),
    lines(what, orderAt.what, sizes.line),
    lines(keep, orderAt.keep, sizes.line),
    lines(when, orderAt.when, sizes.when, when.startsWith('must'))
  )
  return Math.ceil(most * sizes.line * 1.22 + 5)
}

function folded(facts: readonly Fact[]): Fact[] {
  return facts.flatMap(({ text, bold }) =>
    printedFold(text, factsWidth, sizes.fact, bold).map((part) => ({ text: part, bold }))
  )
}

/** The title in one line; what it has no room for stands below it. A longer id takes several. */
function titleOf(stop: Stop, system: UnitSystem): { title: string[]; facts: Fact[] } {
  const [id, ...about] = cardTitle(stop, system)
  for (let told = about.length; told >= 0; told--) {
    const line = [id, ...about.slice(0, told)].join(' · ')
    if (told > 0 && printedPoints(line, sizes.title, true) > titleWidth) continue
    const rest = about.slice(told).join(', ')
    const facts = rest === '' ? [] : [{ text: sentence(rest), bold: false }]
    return { title: printedFold(line, titleWidth, sizes.title, true), facts }
  }
  return { title: [], facts: [] }
}

/** A card in words. */
export function cardOf(stop: Stop, units: CardUnits, drawn: boolean): Card {
  const { system } = units
  const { title, facts: first } = titleOf(stop, system)
  const facts = folded([...first, ...cardFacts(stop, units)])
  const lines = numberedCuts(stop.visit).map(({ number, cut }): NumberedLine => {
    const line = cutLine(cut, system)
    return { ...line, number, id: cut.limb.id, points: linePoints(line) }
  })
  const reasons = stop.visit.cuts
    .filter(({ needsReason }) => needsReason)
    .map(
      ({ limb, cutDiameter }) =>
        `Limb ${limb.id}, ${showDiameter(cutDiameter ?? 0, system)}: reason before the cut`
    )
  const isDrawn = drawn && stop.tree.tree.height !== null
  const beside = facts.length * rows.fact
  const points =
    title.length * rows.title +
    Math.max(beside, isDrawn ? drawing.least : 0) +
    lines.reduce((sum, { points: own }) => sum + own, 0) +
    reasons.length * rows.reason +
    rows.otherwise
  return { stop, title, facts, lines, reasons, drawn: isDrawn, points }
}

/** Points that a drawing may grow by. */
export function growthOf({ drawn, facts }: Card): number {
  return drawn ? drawing.most - Math.max(facts.length * rows.fact, drawing.least) : 0
}

const title: Format = { bold: true, size: sizes.title, color: palette.ink, vertical: 'middle' }
const titleEnd: Format = { ...title, underline: palette.ink }
const centered: Format = { align: 'center' }
const bold: Format = { bold: true }
const whenLook: Format = { align: 'right', size: sizes.when }
const small: Format = { size: sizes.fact, bold: false, align: 'right' }
const fact: Format = { size: sizes.fact, color: palette.ink, vertical: 'middle' }
const line: Format = {
  size: sizes.line,
  color: palette.ink,
  vertical: 'middle',
  wrap: true,
  underline: palette.rule
}
const key: Format = { size: sizes.key, color: palette.quiet }
const label: Format = { size: sizes.fact, color: palette.ink, vertical: 'bottom' }
const toWriteOn: Format = { underline: palette.ink }

function put(places: readonly (readonly [column: number, content: Content])[]): Content[] {
  const cells = Array<Content>(orderWidths.length).fill(null)
  for (const [column, content] of places) cells[column] = content
  return cells
}

/** What a box is of, beside the printed columns. */
function keysOf({ tree, visit }: Stop, limb: string | null): readonly (readonly [number, Content])[] {
  return [
    [orderAt.tree, tree.tree.id],
    [orderAt.limbKey, limb],
    [orderAt.visit, visit.visit]
  ]
}

/** A row of the printed columns, and its keys beside them. */
function addRow(draft: PrintedDraft, cells: Content[], look: Format, points: number): number {
  const row = draft.rows.push(cells) - 1
  draft.format(row, 0, 1, printedColumns, look)
  draft.format(row, printedColumns, 1, orderWidths.length - printedColumns, key)
  draft.height(row, 1, points)
  return row
}

function addTitle(draft: PrintedDraft, { stop, title: words }: Card, place: string): void {
  const [first = '', ...more] = words
  const cells = put([
    [orderAt.tick, boxes.open],
    [orderAt.number, first],
    [orderAt.when, place],
    ...keysOf(stop, null)
  ])
  const row = addRow(draft, cells, more.length === 0 ? titleEnd : title, rows.title)
  draft.format(row, orderAt.tick, 1, 1, centered)
  draft.format(row, orderAt.when, 1, 1, small)
  more.forEach((text, at) => {
    addRow(draft, put([[orderAt.number, text]]), at === more.length - 1 ? titleEnd : title, rows.title)
  })
}

/** The sentences with the drawing at their left; gives the area of the drawing. */
function addFacts(draft: PrintedDraft, { facts, drawn }: Card, growth: number): SheetPicture['area'] {
  const top = draft.next
  for (const { text, bold: strong } of facts) {
    const row = draft.rows.push(put([[factsFrom, text]])) - 1
    draft.height(row, 1, rows.fact)
    draft.format(row, 0, 1, printedColumns, fact)
    if (strong) draft.format(row, factsFrom, 1, 1, bold)
  }
  const left = (drawn ? Math.max(0, drawing.least - facts.length * rows.fact) : 0) + growth
  if (left > 0) {
    draft.rows.push([])
    draft.height(draft.next - 1, 1, left)
  }
  return { row: top, column: 0, rows: draft.next - top, columns: factsFrom }
}

function addLine(draft: PrintedDraft, stop: Stop, each: NumberedLine): void {
  const cells = put([
    [orderAt.tick, boxes.open],
    [orderAt.number, each.number],
    [orderAt.limb, each.limb],
    [orderAt.side, each.side],
    [orderAt.at, each.at],
    [orderAt.what, each.what],
    [orderAt.keep, each.keep],
    [orderAt.when, each.when],
    ...keysOf(stop, each.id)
  ])
  const row = addRow(draft, cells, line, each.points)
  draft.format(row, orderAt.tick, 1, 2, centered)
  draft.format(row, orderAt.number, 1, 3, bold)
  if (each.when.startsWith('must')) draft.format(row, orderAt.when, 1, 1, bold)
  draft.format(row, orderAt.when, 1, 1, whenLook)
  const size = limbSize(each.limb)
  if (size < sizes.line) draft.format(row, orderAt.limb, 1, 1, { size })
}

function addToFill(draft: PrintedDraft, text: string, from: number, points: number): void {
  const row = addRow(draft, put([[orderAt.number, text]]), label, points)
  draft.format(row, from, 1, printedColumns - from, toWriteOn)
}

function pictureOf(
  { stop }: Card,
  area: SheetPicture['area'],
  height: number,
  { system }: CardUnits
): SheetPicture {
  const { tree, visit } = stop
  return {
    area,
    width: drawingWidth,
    height,
    get alt() {
      return cardAlt(tree, visit, system)
    },
    draw: () => drawCard(tree, visit, { width: drawingWidth, height, system })
  }
}

/** Sets a card; `growth` are the points that its drawing has more than at least. Gives its drawing. */
export function addCard(
  draft: PrintedDraft,
  card: Card,
  place: string,
  growth: number,
  units: CardUnits
): SheetPicture | null {
  addTitle(draft, card, place)
  const area = addFacts(draft, card, growth)
  for (const each of card.lines) addLine(draft, card.stop, each)
  for (const reason of card.reasons) addToFill(draft, reason, orderAt.keep, rows.reason)
  addToFill(draft, 'Done otherwise', orderAt.what, rows.otherwise)
  if (!card.drawn) return null
  const height = Math.max(card.facts.length * rows.fact, drawing.least) + growth
  return pictureOf(card, area, height, units)
}

import { systems, type UnitSystem } from '../../../shared/units'
import { fixedTenth } from '../../../shared/words/figures'
import { printedDiameter } from '../../../shared/words/lengths'
import { rounded } from '../../../shared/words/rounding'
import { cellFormats } from '../cellFormats'
import type { Column } from '../columns'
import { columnPoints, pageAcross, widerColumns } from '../pageBreaks'
import { printedPoints } from '../printedLines'
import type { Format, PageSetup } from '../sheet'
import type { Reach } from './reach'
import { cutsOnLine, type WrittenLine } from './roundWords'

type Paper = Pick<PageSetup, 'paper' | 'orientation' | 'margins'>

/** A column of the round, before it is known how wide it can be. */
interface Sized extends Omit<Column<WrittenLine>, 'width'> {
  /** Characters at least and at most; a column of cuts shares what the others leave. */
  readonly room: readonly [least: number, most: number] | 'rest'
}

const wrapped: Format = { wrap: true }
const named: Format = { bold: true, wrap: true }
const centered: Format = { align: 'center' }

const reachWords: Readonly<Record<Exclude<Reach, 'beyond'>, string>> = {
  ground: 'ground',
  pole: 'pole',
  look: 'look first'
}

/** Crew-minutes of crew-hours; exact, as hours are kept to a hundredth. */
export function minutesOf(hours: number): number {
  return rounded(hours * 60, 1)
}

/** Points of a column's text for each character of its width. */
export const pointsPerCharacter = columnPoints(1) - columnPoints(0)

/** How a round is set. */
export interface RoundSetting {
  /** Points of the type. */
  readonly size: number
  /** Locations without what the name of the place above them says. */
  readonly brief: boolean
}

/** Characters of the column that says where a tree stands, at most. */
const whereRoom = 15

/** Where trees stand: in full, or what the name of the place above leaves of it where that takes more than a line. */
function standing(
  lines: readonly WrittenLine[],
  size: number,
  brief: boolean
): (line: WrittenLine) => string {
  const isShort = lines.every(({ where }) => printedPoints(where, size) <= whereRoom * pointsPerCharacter)
  return isShort && !brief ? ({ where }) => where : ({ spot }) => spot
}

/** Room for the minutes of all trees, which stand in bold below the last day. */
function minutesRoom(lines: readonly WrittenLine[], size: number): readonly [number, number] {
  const all = lines.reduce((sum, { hours }) => sum + minutesOf(hours), 0)
  const width = Math.max(4.6, widthOf(fixedTenth(all), size, { bold: true }) + 0.6)
  return [width, width]
}

function columnsFor(
  lines: readonly WrittenLine[],
  system: UnitSystem,
  { size, brief }: RoundSetting
): Sized[] {
  return [
    { header: '', room: [3, 3], format: centered, of: () => '☐' },
    { header: 'Tree', room: [5, 18], format: named, of: ({ tree }) => tree.tree.id },
    { header: 'Where', room: [5, whereRoom], format: wrapped, of: standing(lines, size, brief) },
    { header: 'Species', room: [8, 16], format: wrapped, of: ({ species }) => species },
    {
      header: `Trunk (${systems[system].diameter})`,
      room: [4.6, 4.6],
      format: { ...cellFormats.tenth, align: 'center' },
      of: ({ tree: { tree } }) => (tree.trunk === null ? null : printedDiameter(tree.trunk, system))
    },
    {
      header: 'Keep',
      room: [4.4, 9],
      format: { wrap: true, align: 'center' },
      of: ({ leader }) => leader
    },
    ...Array.from({ length: cutsOnLine }, (_none, at): Sized => ({
      header: at === 0 ? 'Cut 1, the worst' : `Cut ${String(at + 1)}`,
      room: 'rest',
      format: wrapped,
      of: ({ cells }) => cells[at] ?? null
    })),
    {
      header: 'From',
      room: [6.2, 6.2],
      format: { wrap: true, align: 'center' },
      of: ({ reach }) => reachWords[reach]
    },
    {
      header: 'Crew min',
      room: minutesRoom(lines, size),
      format: cellFormats.tenth,
      of: ({ hours }) => minutesOf(hours)
    }
  ]
}

/** Columns that are left out where no tree has anything to say in them, and one where all trees say the same. */
const leftOutBlank = new Set(['Where', 'Species'])
const leftOutEqual = 'Keep'

/** The stem that is kept on every tree, where it is the same one on all. */
export function keptOnAll(lines: readonly WrittenLine[]): string | null {
  const marks = new Set(lines.map(({ leader }) => leader))
  return marks.size === 1 && lines.length > 1 ? ([...marks][0] ?? null) : null
}

/** Width in characters of the standard font of a text in this size. */
function widthOf(text: string, size: number, format?: Format): number {
  return printedPoints(text, size, format?.bold) / pointsPerCharacter + 0.3
}

/**
 * The columns of a round in a size of type, as wide as the page where columns come out widest, so that the type keeps its
 * size; the cuts share what the others leave.
 */
export function roundColumns(
  lines: readonly WrittenLine[],
  system: UnitSystem,
  setting: RoundSetting,
  page: Paper
): Column<WrittenLine>[] {
  const { size } = setting
  const used = columnsFor(lines, system, setting).filter(({ header, of }) => {
    if (header === leftOutEqual) return keptOnAll(lines) === null
    return !leftOutBlank.has(header) || lines.some((line) => of(line) !== '')
  })
  const widths = used.map(({ room, format, of }) => {
    if (room === 'rest') return null
    const [least, most] = room
    const longest = lines.reduce(
      (width, line) => Math.max(width, widthOf(String(of(line) ?? ''), size, format)),
      0
    )
    return rounded(Math.min(most, Math.max(least, longest)), 1)
  })
  const fixed = widths.filter((width) => width !== null)
  const left = pageAcross(page) / widerColumns - columnPoints(...fixed) - cutsOnLine * columnPoints(0)
  const cut = Math.floor((10 * left) / (pointsPerCharacter * cutsOnLine)) / 10
  return used.map(({ header, format, of }, at) => ({
    header,
    width: widths[at] ?? cut,
    ...(format === undefined ? {} : { format }),
    of
  }))
}

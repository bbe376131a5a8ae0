import { isBlank } from '../../../shared/cells'
import { problem, type Problem } from '../../../shared/problems'
import { listed } from '../../../shared/words/lists'
import { type IdentifiedRow } from './identity'
import { plain } from './plain'
import { columnGiving } from './part'
import { treeKey } from './treeKeys'

/** Share of the smaller sheet's limbs that another has to list, and of the trees that have to be alike. House judgment. */
const mostly = 0.6
const alike = 0.8
/** How many times as high one tree may be on another sheet and still be the same tree, seen again. House judgment. */
const grown = 1.5
/** About as many feet as a meter has: the other sheet is a converted copy. */
const converted = 3.3

interface SheetSurvey {
  readonly sheet: string
  readonly limbs: ReadonlySet<string>
  readonly species: ReadonlyMap<string, string>
  readonly heights: ReadonlyMap<string, number>
}

function surveyOf(sheet: string, rows: readonly IdentifiedRow[]): SheetSurvey {
  const limbs = new Set<string>()
  const species = new Map<string, string>()
  const heights = new Map<string, number>()
  for (const { part, row, key } of rows) {
    const cells = part.block.rows[row] ?? []
    const limb = cells[columnGiving(part, 'limb')]
    if (limb !== undefined && !isBlank(limb)) limbs.add(`${key}\n${treeKey(String(limb).trim())}`)
    const kind = cells[columnGiving(part, 'species')]
    if (kind !== undefined && !isBlank(kind)) species.set(key, plain(kind))
    const height = cells[columnGiving(part, 'height')]
    if (typeof height === 'number' && height > 0) heights.set(key, height)
  }
  return { sheet, limbs, species, heights }
}

/** Whether two sheets list the same trees: the same limbs of trees of the same kind and about the same height. */
function listSame(one: SheetSurvey, other: SheetSurvey): boolean {
  const shared = [...one.limbs].filter((limb) => other.limbs.has(limb)).length
  if (shared === 0 || shared < mostly * Math.min(one.limbs.size, other.limbs.size)) return false
  const agree = <T>(
    a: ReadonlyMap<string, T>,
    b: ReadonlyMap<string, T>,
    same: (x: T, y: T) => boolean
  ): boolean => {
    const both = [...a].flatMap(([key, value]) => {
      const theirs = b.get(key)
      return theirs === undefined ? [] : [same(value, theirs)]
    })
    return both.filter(Boolean).length >= alike * both.length
  }
  return (
    agree(one.species, other.species, (a, b) => a === b) &&
    agree(one.heights, other.heights, (a, b) => {
      const times = Math.max(a, b) / Math.min(a, b)
      return times <= grown || Math.abs(times - converted) < 0.1
    })
  )
}

const newer =
  /final|current|latest|new\b|updated|revis|correct|\(\d\)|neu|aktuell|actuel|nouveau|actual|nuevo|v\d/i
const older =
  /old|draft|previous|backup|copy|archiv|alt\b|entwurf|kopie|ancien|brouillon|copie|viejo|antiguo|borrador|copia/i

/** How much speaks for a sheet being the one that counts: the year in its name, then words for newer and older. */
function weight(sheet: string): readonly [year: number, word: number] {
  const years = [...sheet.matchAll(/(?<!\d)(?:19|20)\d\d(?!\d)/g)].map(([year]) => Number(year))
  const word = (newer.test(sheet) ? 1 : 0) - (older.test(sheet) ? 1 : 0)
  return [Math.max(0, ...years), word]
}

function later(one: string, other: string): string {
  const [a, b] = [weight(one), weight(other)]
  return b[0] > a[0] || (b[0] === a[0] && b[1] > a[1]) ? other : one
}

function areOfOneSheet(rows: readonly IdentifiedRow[]): boolean {
  const first = rows[0]?.part.block.sheet
  for (const { part } of rows) if (part.block.sheet !== first) return false
  return true
}

/** Where sheets list the same trees again, as two surveys or a copy do, one of them is read, and it is asked which. */
export function oneSurvey(rows: readonly IdentifiedRow[], problems: Problem[]): readonly IdentifiedRow[] {
  if (areOfOneSheet(rows)) return rows
  const bySheet = new Map<string, IdentifiedRow[]>()
  for (const each of rows) {
    const { sheet } = each.part.block
    const list = bySheet.get(sheet)
    if (list === undefined) bySheet.set(sheet, [each])
    else list.push(each)
  }
  const full = [...bySheet].filter(([, list]) => list.some(({ part }) => part.of === 'both'))
  if (full.length < 2) return rows
  const surveys = full.map(([sheet, list]) => surveyOf(sheet, list))
  const left = new Map<string, string>()
  surveys.forEach((one, at) => {
    for (const other of surveys.slice(at + 1)) {
      if (left.has(one.sheet) || left.has(other.sheet) || !listSame(one, other)) continue
      const kept = later(one.sheet, other.sheet)
      left.set(kept === one.sheet ? other.sheet : one.sheet, kept)
    }
  })
  if (left.size === 0) return rows
  const quotedSheets = (names: Iterable<string>): string =>
    listed([...new Set(names)].map((name) => `“${name}”`))
  const facts = { sheets: quotedSheets(left.keys()), from: quotedSheets(left.values()) }
  problems.push(problem('same-trees-again', '', facts))
  return rows.filter(({ part }) => !left.has(part.block.sheet))
}

import { millimetersPer, type LengthUnit } from '../../../shared/units'
import type { HeadedColumn } from './headedColumn'
import type { Meaning } from './dictionary'
import type { HeaderText } from './headerText'

/**
 * Why a column is not used: another one gives the same measure in the other system, in a later year, or as a diameter; or it
 * holds the inches that are left over from the feet in another one.
 */
export type Doubled = 'other system' | 'earlier year' | 'girth' | 'inches left over'

/** What is found of columns that say one thing twice. */
export interface SameMeasures {
  /** By column; null where it gives something of its own. */
  readonly doubled: readonly (Doubled | null)[]
  /** Columns whose year only tells them from an earlier one. */
  readonly latest: ReadonlySet<number>
}

const year = /(?<!\d)(?:19|20)\d{2}(?!\d)/

/** Share of the rows in which two columns have to agree, and how closely. House judgment. */
const mostly = 0.8
const closely = 0.06

/** What a header says without its unit and year. */
function saying({ words }: HeaderText): string {
  return words
    .filter(({ spelling }) => spelling !== 'mark')
    .map(({ text }) => text)
    .join(' ')
}

/** What a header says, whether it is a girth or a diameter that it says it of. */
function sayingOfRound({ words }: HeaderText): string | null {
  const said = words.flatMap(({ spelling, meanings, text }) => {
    if (spelling === 'mark' || (meanings.length > 0 && meanings.every((each) => each === 'noise'))) return []
    if (meanings.some((each) => roundness.has(each))) return ['#']
    return meanings.length > 0 ? [meanings.join('|')] : [text]
  })
  return said.includes('#') ? said.sort().join(' ') : null
}

const roundness = new Set<Meaning>(['diameter', 'girth', 'dbh', 'gbh'])

const isGirth = ({ notions }: HeaderText): boolean => notions.has('girth') || notions.has('gbh')

/** Whether one column's numbers are the other's times a factor, in most rows that have both. */
function areTimes(a: HeadedColumn, b: HeadedColumn, factor: number, within: number): boolean {
  let both = 0
  let agree = 0
  a.values.numbers.forEach((one, row) => {
    const other = b.values.numbers[row] ?? null
    if (one === null || other === null || other === 0) return
    both++
    if (Math.abs(one / (other * factor) - 1) <= within) agree++
  })
  return both > 0 && agree >= both * mostly
}

const metric = (unit: LengthUnit): boolean => unit === 'mm' || unit === 'cm' || unit === 'm'

/** Columns without an answer, by what is the same of them. */
function alike(columns: readonly HeadedColumn[], key: (at: number) => string | null): number[][] {
  const found = new Map<string, number[]>()
  columns.forEach(({ answered }, at) => {
    const same = answered === undefined ? key(at) : null
    if (same !== null && same !== '') found.set(same, [...(found.get(same) ?? []), at])
  })
  return [...found.values()].filter((list) => list.length >= 2)
}

function unitsOf(columns: readonly HeadedColumn[], texts: readonly HeaderText[]): (LengthUnit | null)[] {
  return columns.map(({ unit }, at) => unit ?? texts[at]?.unit ?? null)
}

/** Columns of which another one is the same in the other system: the system that more of the other columns name is used. */
function otherSystem(columns: readonly HeadedColumn[], texts: readonly HeaderText[]): Set<number> {
  const units = unitsOf(columns, texts)
  const inMetric = (at: number): boolean => metric(units[at] ?? 'mm')
  const sayings = alike(columns, (at) =>
    texts[at] === undefined || units[at] === null ? null : saying(texts[at])
  )
  const pairs = sayings.flatMap(([a = 0, b = 0, ...more]): (readonly [number, number])[] => {
    const [one, two, unit, other] = [columns[a], columns[b], units[a], units[b]]
    if (more.length > 0 || !one || !two || !unit || !other || inMetric(a) === inMetric(b)) return []
    return areTimes(one, two, millimetersPer[other] / millimetersPer[unit], closely) ? [[a, b]] : []
  })
  const [first] = pairs
  if (first === undefined) return new Set()
  const paired = new Set(pairs.flat())
  const alone = units.flatMap((unit, at) => (unit === null || paired.has(at) ? [] : [at]))
  const more = alone.filter(inMetric).length * 2 - alone.length
  const wanted = more === 0 ? inMetric(first[0]) : more > 0
  return new Set(pairs.flatMap((pair) => pair.filter((at) => inMetric(at) !== wanted)))
}

/** Of columns that say the same but for the year: whether each is the latest. */
function byYear(columns: readonly HeadedColumn[], texts: readonly HeaderText[]): Map<number, boolean> {
  const dated = columns.map(({ header }) => Number(year.exec(header)?.[0] ?? 0))
  const latest = new Map<number, boolean>()
  const sayings = alike(columns, (at) => {
    const text = texts[at]
    return dated[at] === 0 || text?.notions.has('inYear') !== true
      ? null
      : `${saying(text)} ${text.unit ?? ''}`
  })
  for (const same of sayings) {
    const last = Math.max(...same.map((at) => dated[at] ?? 0))
    if (same.filter((at) => dated[at] === last).length > 1) continue
    for (const at of same) latest.set(at, dated[at] === last)
  }
  return latest
}

/** Girths of what another column gives the diameter of: π times as much in most rows. */
function girths(columns: readonly HeadedColumn[], texts: readonly HeaderText[]): Set<number> {
  const units = unitsOf(columns, texts)
  const round = alike(columns, (at) => (texts[at] === undefined ? null : sayingOfRound(texts[at])))
  const isTwin = (girth: number, other: number): boolean => {
    const [one, two] = [columns[girth], columns[other]]
    const [unit, theirs] = [units[girth] ?? 'mm', units[other] ?? 'mm']
    const factor = units[girth] && units[other] ? millimetersPer[theirs] / millimetersPer[unit] : 1
    return one !== undefined && two !== undefined && areTimes(one, two, Math.PI * factor, closely)
  }
  const girth = (at: number): boolean => texts[at] !== undefined && isGirth(texts[at])
  return new Set(
    round.flatMap((same) =>
      same.filter((at) => girth(at) && same.some((other) => !girth(other) && isTwin(at, other)))
    )
  )
}

/** Columns of inches, below twelve, beside a column of whole feet that says the same. */
function inchesLeftOver(columns: readonly HeadedColumn[], texts: readonly HeaderText[]): Set<number> {
  const units = unitsOf(columns, texts)
  const whole = (at: number): boolean => (columns[at]?.values.integers ?? 0) === 1
  const below = (at: number): boolean => (columns[at]?.values.high ?? 12) < 12
  const sayings = alike(columns, (at) =>
    texts[at] === undefined || units[at] === null ? null : saying(texts[at])
  )
  return new Set(
    sayings.flatMap((same) => {
      const feet = same.some((at) => units[at] === 'ft' && whole(at))
      return feet ? same.filter((at) => units[at] === 'in' && below(at)) : []
    })
  )
}

/** Finds the columns that give again what another column gives. A column that a person spoke of is left as it is. */
export function sameMeasures(columns: readonly HeadedColumn[], texts: readonly HeaderText[]): SameMeasures {
  const years = byYear(columns, texts)
  const systems = otherSystem(columns, texts)
  const round = girths(columns, texts)
  const inches = inchesLeftOver(columns, texts)
  const doubled = columns.map((_column, at): Doubled | null => {
    if (years.get(at) === false) return 'earlier year'
    if (round.has(at)) return 'girth'
    if (inches.has(at)) return 'inches left over'
    return systems.has(at) ? 'other system' : null
  })
  return { doubled, latest: new Set([...years].flatMap(([at, isLatest]) => (isLatest ? [at] : []))) }
}

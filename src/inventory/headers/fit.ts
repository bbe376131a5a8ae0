import { readChoice, type ChoiceName } from '../../../shared/choices'
import type { Reads } from '../../../shared/columnKinds'
import { columnOf, type Field } from '../../../shared/columns'
import { millimetersPer, type LengthUnit } from '../../../shared/units'
import type { ColumnValues } from './columnValues'

/** Millimeters within which a median of a field is ordinary (house limits, generous). */
const ordinary: Partial<Record<Field, readonly [number, number]>> = {
  trunk: [8, 3000],
  caliper: [8, 400],
  diameter: [3, 1500],
  diameter2: [3, 1500],
  stem: [5, 3000],
  stemBelow: [5, 3000],
  lateral: [2, 800],
  cut: [2, 1000],
  height: [600, 90_000],
  crownBase: [100, 40_000],
  spread: [200, 50_000],
  clearance: [1000, 15_000],
  matureHeight: [1500, 110_000],
  lowestPermanent: [500, 20_000],
  origin: [50, 60_000],
  tip: [200, 90_000],
  length: [100, 40_000],
  lowestFoliage: [50, 60_000],
  lateralHeight: [50, 60_000],
  breakHeight: [50, 60_000]
}

/** Whether a length in millimeters is ordinary for a field; null where nothing is known of it. */
export function isOrdinary(field: Field, millimeters: number): boolean | null {
  const range = ordinary[field]
  return range === undefined ? null : millimeters >= range[0] && millimeters <= range[1]
}

/**
 * How far values speak against a field (below 1) or for it (above 1). A header that says what it is stays likely with values
 * that hardly fit, so that the fault is told at its cells. All numbers here are house judgments.
 */
function fitsLength(values: ColumnValues, field: Field, unit: LengthUnit | null): number {
  if (values.numeric < 0.35) return 0.56
  const range = ordinary[field]
  const enough = values.numeric < 0.6 ? 0.85 : 1
  if (range === undefined || values.median === null) return enough
  const median = values.median
  // Nothing on a tree is shorter than nothing: a place on the globe is, or a difference.
  if (median < 0) return 0.4
  const units: readonly LengthUnit[] = unit === null ? ['in', 'cm', 'mm', 'ft', 'm'] : [unit]
  const isOrdinary = (millimeters: number): boolean => millimeters >= range[0] && millimeters <= range[1]
  // What the cells themselves say goes before what the header says.
  const fits =
    values.ownMillimeters !== null
      ? isOrdinary(values.ownMillimeters)
      : units.some((each) => isOrdinary(median * millimetersPer[each]))
  return (fits ? 1 : 0.74) * enough
}

/** Different words at most that a choice has in a column. */
const fewWords = 9

function fitsChoice(values: ColumnValues, choice: ChoiceName): number {
  const read = values.texts.filter((text) => readChoice(choice, text) !== null).length / values.filled
  if (read >= 0.7) return 1.05
  if (read >= 0.4) return 0.95
  const percents = choice === 'vigor' && values.numeric > 0.9 && (values.high ?? 101) <= 100
  const classes = (values.distinct <= fewWords && values.longest <= 24) || percents
  return classes && (read > 0 || values.wordy > 0.5 || choice === 'vigor' || choice === 'lifeStage')
    ? 0.84
    : 0.5
}

/** A cell that is empty for "no" leaves ticks alone in a column. */
function fitsFlag(values: ColumnValues, choice: ChoiceName): number {
  const fits = fitsChoice(values, choice)
  return fits < 0.9 && values.numeric > 0.8 ? 0.4 : fits
}

const side =
  /^(?:[neswo]{1,3}|(?:north|south|east|west|nord|sud|ost|est|ouest|norte|sur|este|oeste)[a-z -]*|all(?: sides| round)?|both|street(?: side)?|road(?: side)?|house(?: side)?|strasse|rue|calle|left|right|\d{1,3}\s*°?)$/

function fitsSide(values: ColumnValues): number {
  const read = values.texts.filter((text) => side.test(text)).length / values.filled
  if (read >= 0.7) return values.numeric > 0.8 && (values.high ?? 0) <= 45 ? 0.6 : 1.05
  return read > 0.2 ? 0.85 : 0.6
}

function fitsDegrees(values: ColumnValues, limit: number): number {
  return values.numeric > 0.6 && (values.high ?? 0) <= limit ? 1 : 0.5
}

const compassWord = '(?:north|south|east|west|nord|sud|ost|est|ouest|norte|sur|este|oeste)'
const compassPoint = new RegExp(`^(?:[neswo]{1,3}|${compassWord}(?:[ -]?${compassWord})*)$`)

function fitsBearing(values: ColumnValues): number {
  const points = values.texts.filter((text) => compassPoint.test(text)).length / values.filled
  return points >= 0.7 ? 1.05 : fitsDegrees(values, 360)
}

function fitsYear(values: ColumnValues): number {
  const dated = values.texts.filter((text) => /(?:^|\D)(?:19|20)\d{2}(?:\D|$)|\d[./-]\d/.test(text)).length
  return dated >= values.filled * 0.6 ? 1.05 : 0.4
}

function fitsShare(values: ColumnValues): number {
  return values.numeric < 0.4 || (values.high ?? 0) > 100 ? 0.4 : 1
}

function fitsSpecies(values: ColumnValues): number {
  if (values.wordy > 0.6) return 1.05
  // Codes for species are letters, or letters and a digit.
  return values.numeric < 0.2 ? 0.85 : 0.5
}

function fitsId(values: ColumnValues, field: Field): number {
  if (values.texts.filter((text) => text.length > 40).length > values.filled * 0.3) return 0.7
  // Of the numbers: a word between them, such as that of a total, is no fraction.
  if (values.numeric > 0.6 && values.integers < 0.7 * values.numeric) return 0.4
  const several = values.texts.filter(
    (text) => /\p{L}{2,}[\s-]+\p{L}{2,}/u.test(text) && !/\d/.test(text)
  ).length
  // Two words and no figure name a kind of tree rather than a tree.
  return field === 'tree' && several > values.filled * 0.5 ? 0.7 : 1
}

/** Rows from which numbers that hardly come twice are measurements and no zones. House judgment. */
const rowsOfZones = 6

function fitsZone({ numeric, integers, distinct, filled }: ColumnValues): number {
  if (numeric <= 0.95) return 1
  if (integers < 0.9) return 0.5
  return filled >= rowsOfZones && distinct > filled * 0.7 ? 0.5 : 1
}

function fitsText(values: ColumnValues, field: Field, unit: LengthUnit | null): number {
  if (field === 'species') return fitsSpecies(values)
  // What is measured names nothing.
  if (field === 'tree' || field === 'limb' || field === 'parent')
    return unit !== null && values.numeric > 0.6 ? 0.4 : fitsId(values, field)
  if (field === 'notes' || field === 'treeNotes') return values.numeric > 0.95 ? 0.6 : 1
  if (field === 'zone') return fitsZone(values)
  return field === 'site' && values.numeric > 0.95 && values.integers < 0.5 ? 0.5 : 1
}

function fits(values: ColumnValues, field: Field, reads: Reads<unknown>, unit: LengthUnit | null): number {
  switch (reads.kind) {
    case 'diameter':
    case 'stems':
    case 'height':
    case 'positive height':
      return fitsLength(values, field, unit)
    case 'growth':
      return Math.max(fitsChoice(values, 'growth'), values.numeric > 0.6 ? 0.95 : 0)
    case 'share':
      return fitsShare(values)
    case 'degrees':
      return fitsDegrees(values, reads.limit ?? 360)
    case 'bearing':
      return fitsBearing(values)
    case 'side':
      return fitsSide(values)
    case 'year':
    case 'date':
      return fitsYear(values)
    case 'choice':
      return fitsChoice(values, reads.choice ?? 'flag')
    case 'flag':
    case 'dead':
      return Math.max(fitsFlag(values, reads.choice ?? 'flag'), fitsFlag(values, 'flag'))
    case 'text':
      return fitsText(values, field, unit)
  }
}

/** Nothing stands below: nothing speaks against a field, and little for it. */
const blankColumn = 0.95

/** How well what stands below a header fits a field: above 1 where it speaks for it, below 1 where against. */
export function fitOf(values: ColumnValues, field: Field, unit: LengthUnit | null): number {
  return values.filled === 0 ? blankColumn : fits(values, field, columnOf(field).reads, unit)
}

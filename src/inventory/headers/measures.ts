import { millimetersPer, unitFromWord, type LengthUnit } from '../../../shared/units'

/** The same units in the other languages; "foot", "pied" and "pie" are left out, as they also mean a base. */
const foreignUnits: Readonly<Record<string, LengthUnit>> = {
  zoll: 'in',
  pouce: 'in',
  pouces: 'in',
  po: 'in',
  pulgada: 'in',
  pulgadas: 'in',
  pulg: 'in',
  fuss: 'ft',
  pieds: 'ft',
  pi: 'ft',
  pies: 'ft',
  metros: 'm',
  metro: 'm',
  mts: 'm',
  mt: 'm',
  zentimeter: 'cm',
  centimetros: 'cm',
  centimetro: 'cm',
  cms: 'cm',
  millimeter: 'mm',
  milimetros: 'mm'
}

/** Units that are told from a word or a letter of the header wherever they stand. */
const anywhere =
  /^(?:mm|cms?|ft|feet|inch|inches|met(?:er|re)s?|metros?|zoll|pouces?|pulgadas?|pieds|(?:cent|z?ent|mill)i?m.{3,6})$/

export function unitOf(word: string): LengthUnit | null {
  const key = word.trim().replace(/\.$/, '')
  return unitFromWord(key) ?? (Object.hasOwn(foreignUnits, key) ? (foreignUnits[key] ?? null) : null)
}

export function unitAnywhere(word: string): LengthUnit | null {
  return anywhere.test(word) ? unitOf(word) : null
}

const growthUnit = /\s*(?:\/|per|a|je|pro|par|por)\s*(?:yr|year|jahr|an|ano|annum|y|a|j)\.?$/

/** The unit that brackets hold: "(in.)", "[cm]", "(in inches)", "(mm/yr)", "(cm, above)". */
export function unitInBrackets(inner: string): LengthUnit | null {
  const text = inner.trim().replace(growthUnit, '')
  return (
    unitOf(text) ??
    unitOf(text.replace(/^in\s+/, '')) ??
    unitOf(/^([^\s,;/]+)\s*[;,]/.exec(text)?.[1] ?? '') ??
    (text.length <= 20 ? unitOf(/^([^\s,;/]+)[\s,;/]/.exec(text)?.[1] ?? '') : null)
  )
}

const preposition = String.raw`(?:@\s*|\b(?:at|a|in|bei|auf|en|measured|h|ht|height|von|of|de)\s+(?:a\s+|der\s+|la\s+)?(?:height|ht|hohe|hoehe|hauteur|altura)?\s*(?:of|von|de)?\s*)`
const number = String.raw`(\d{1,3}(?:[.,]\d{1,2})?)`
const feetAndInches = /(\d)\s*(?:ft|feet|['′’])\s*-?\s*(\d{1,2})\s*(?:in(?:ch(?:es)?)?|["″”]|'')/
const meterAndCentimeters = /\b(\d)\s?m\s?(\d{2})\b/
const afterIt = String.raw`(?:\s*(?:stamm)?(?:height|high|hohe|hoehe|hauteur|altura|de haut|de alto|de hauteur|de altura|above (?:the )?(?:ground|grade)(?: level)?|agl|uber (?:dem )?boden|vom boden|du sol|del suelo))*`
const measuredAt = new RegExp(
  `(${preposition})?(?<![\\d.,])${number}\\s*(mm|cm|m|ft|feet|foot|in|inch|inches|['′’"″”])(?![\\p{L}\\d])${afterIt}`,
  'u'
)
const bareBreastHeight = new RegExp(
  `(?:@\\s*|\\b(?:at|a|in|en)\\s+)(?:1[.,]3\\d?|1[.,]4|4[.,]5)(?![\\d.,]|\\s*(?:mm|cm|m|ft|feet|in|['′’"″”]))${afterIt}`
)

/** Bounds in mm of what counts as breast height (1.30 m, 4.5 ft, 1 m for girths) and as a nursery's (6 and 12 in, 1 m not). */
const breastHeights = [900, 1600] as const
const caliperHeights = [100, 400] as const

function within(value: number, [low, high]: readonly [number, number]): boolean {
  return value >= low && value <= high
}

/** How a header's words go on where it says at what height a stem was measured. */
function mark(millimeters: number): string {
  if (within(millimeters, breastHeights)) return ' breast '
  return within(millimeters, caliperHeights) ? ' caliperheight ' : ' elsewhere '
}

/**
 * Puts a word in the place of the height at which something was measured ("at 1.3 m", "@ 4.5 ft", "à 1m30"), so that it is
 * no unit. A number of one digit before a unit, without a preposition, counts readings ("limb_dia_2_in") and stays.
 */
export function markMeasuringHeights(text: string): string {
  const spoken = text
    .replace(
      feetAndInches,
      (_whole, feet: string, inches: string) =>
        `@ ${((Number(feet) * 12 + Number(inches)) * 2.54).toFixed(1)} cm`
    )
    .replace(meterAndCentimeters, (_whole, meters: string, rest: string) => `${meters}.${rest} m`)
    .replace(bareBreastHeight, ' breast ')
  return spoken.replace(measuredAt, (whole, before: string | undefined, figure: string, word: string) => {
    const unit = unitOf(word)
    if (unit === null || (before === undefined && /^\d$/.test(figure))) return whole
    return mark(Number(figure.replace(',', '.')) * millimetersPer[unit])
  })
}

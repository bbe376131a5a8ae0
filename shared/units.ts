/** Lengths the inventory may use. Factors are exact by definition (NIST SP 811: 1 in = 2.54 cm, 1 ft = 0.3048 m). */
export const millimetersPer = { mm: 1, cm: 10, m: 1000, in: 25.4, ft: 304.8, yd: 914.4 } as const

export type LengthUnit = keyof typeof millimetersPer

/** The unit as a sentence says it. */
export const unitNames: Record<LengthUnit, string> = {
  mm: 'mm',
  cm: 'cm',
  m: 'meters',
  in: 'inches',
  ft: 'feet',
  yd: 'yards'
}

/** Pounds to kilograms, exact by definition (NIST SP 811). */
export const kilogramsPerPound = 0.45359237

/** Pounds per cubic foot to kilograms per cubic meter, from the two exact factors above. */
export const kilogramsPerCubicMeterPerPoundPerCubicFoot = kilogramsPerPound / 0.028316846592

/** Breast height in the United States: 4.5 ft, 1.3716 m. Most of the world measures at 1.30 m, New Zealand at 1.40 m. */
export const breastHeightMeters = 4.5 * 0.3048

export type UnitSystem = 'in-ft' | 'cm-m'

/** What a person reads: inches and feet, or centimeters and meters. */
export const systems: Record<UnitSystem, { diameter: LengthUnit; height: LengthUnit; weight: 'lb' | 'kg' }> =
  {
    'in-ft': { diameter: 'in', height: 'ft', weight: 'lb' },
    'cm-m': { diameter: 'cm', height: 'm', weight: 'kg' }
  }

/** A length in `from` given in `to`. */
export function convertLength(value: number, from: LengthUnit, to: LengthUnit): number {
  return from === to ? value : (value * millimetersPer[from]) / millimetersPer[to]
}

const unitWords: Record<string, LengthUnit> = {
  mm: 'mm',
  millimetre: 'mm',
  millimetres: 'mm',
  millimeter: 'mm',
  millimeters: 'mm',
  cm: 'cm',
  centimetre: 'cm',
  centimetres: 'cm',
  centimeter: 'cm',
  centimeters: 'cm',
  cms: 'cm',
  zentimeter: 'cm',
  centimètre: 'cm',
  centimètres: 'cm',
  centímetros: 'cm',
  m: 'm',
  mts: 'm',
  mtrs: 'm',
  mètre: 'm',
  mètres: 'm',
  metros: 'm',
  metre: 'm',
  metres: 'm',
  meter: 'm',
  meters: 'm',
  mtr: 'm',
  in: 'in',
  ins: 'in',
  inch: 'in',
  inches: 'in',
  zoll: 'in',
  pouces: 'in',
  pulgadas: 'in',
  '"': 'in',
  '″': 'in',
  '”': 'in',
  ft: 'ft',
  foot: 'ft',
  feet: 'ft',
  "'": 'ft',
  '′': 'ft',
  '’': 'ft',
  yd: 'yd',
  yard: 'yd',
  yards: 'yd'
}

/** The unit a word names, or null: "inches" gives "in". */
export function unitFromWord(word: string): LengthUnit | null {
  const key = word.trim().toLowerCase().replace(/\.$/, '')
  return Object.hasOwn(unitWords, key) ? (unitWords[key] ?? null) : null
}

/** How a number was meant that was not plainly measured. */
export type Manner = 'estimate' | 'range' | 'below' | 'above'

/** A number that is no plain one, taken apart: the marks of its manner left off. A range has two texts. */
export interface Approximate {
  readonly manner: Manner
  readonly texts: readonly string[]
}

/** How a sentence names the manner. */
export const mannerWords: Readonly<Record<Manner, string>> = {
  estimate: 'an estimate',
  range: 'a range',
  below: 'less than a number',
  above: 'more than a number'
}

/** The words people write for it in English, German, French and Spanish (common practice, no source). */
const about =
  'about|approx|approximately|around|roughly|circa|ca|est|estimated|etwa|ungefähr|ungefaehr|rund|geschätzt|environ|env|estimé|estimée|aprox|aproximadamente|estimado|estimada|unos'
const before: readonly (readonly [Manner, RegExp])[] = [
  ['estimate', new RegExp(`^(?:[~≈∼±]|\\+/-|(?:${about})\\.?(?=[\\s\\d]))\\s*`, 'i')],
  // A small letter: a capital C stands for a circumference.
  ['estimate', /^c\.?\s*(?=\d)/],
  [
    'below',
    /^(?:<=?|≤|(?:less than|under|below|up to|at most|max\.?|unter|bis|moins de|menos de|hasta)\s)\s*/i
  ],
  ['above', /^(?:>=?|≥|(?:more than|over|above|at least|min\.?|über|ueber|mehr als|plus de|más de)\s)\s*/i]
]
const behind: readonly (readonly [Manner, RegExp])[] = [
  ['estimate', new RegExp(`(?:\\s*\\*+|\\s*\\(?(?:${about})\\.?\\)?)$`, 'i')],
  // Two question marks are no reading at all.
  ['estimate', /(?:(?<!\?)\s*\?|\s+e\.?)$/],
  ['estimate', /\s*(?:±|\+\/?-)\s*\d[^±]*$/],
  ['above', /\s*(?:\+|\bplus|\bor more|\bund mehr|\bet plus|\by más)$/i]
]
const ranges: readonly RegExp[] = [
  /^(\d\D*?|\d.*?[^\s\-–—])\s*[-–—]\s*(\d.*)$/,
  /^(\d.*?)\s+(?:to|bis|à|a)\s+(\d.*)$/i,
  /^(?:between|zwischen|entre)\s+(\d.*?)\s+(?:and|und|et|y)\s+(\d.*)$/i
]

/** The parts of an estimate ("~12", "12 est.", "12 ± 1"), a bound ("<12", "12+") or a range ("12-14"); null for all else. */
export function takeApart(text: string): Approximate | null {
  const trimmed = text.trim()
  for (const [manner, mark] of [...before, ...behind]) {
    const rest = trimmed.replace(mark, '').trim()
    if (rest !== trimmed && /\d|[½¼¾]/.test(rest)) return { manner, texts: [rest] }
  }
  for (const range of ranges) {
    const [, low, high] = range.exec(trimmed) ?? []
    if (low !== undefined && high !== undefined) return { manner: 'range', texts: [low, high] }
  }
  return null
}

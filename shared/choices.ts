import { choices } from './choiceWords'
import { listedChoices } from './words/lists'

export { choices }

export type ChoiceName = keyof typeof choices
export type Choice<N extends ChoiceName> = keyof (typeof choices)[N]

export type LifeStage = Choice<'lifeStage'>
export type Form = Choice<'form'>
export type Vigor = Choice<'vigor'>
export type Growth = Choice<'growth'>
export type IncludedBark = Choice<'includedBark'>
export type MeasuredAt = Choice<'measured'>
export type Access = Choice<'access'>

const lookups = new Map<ChoiceName, Map<string, string>>()
for (const name of Object.keys(choices) as ChoiceName[]) {
  const lookup = new Map<string, string>()
  for (const [value, words] of Object.entries(choices[name]))
    for (const word of words) {
      lookup.set(word, value)
      for (const way of [plain(word), joined(plain(word))]) if (way !== '') lookup.set(way, value)
    }
  lookups.set(name, lookup)
}

/** Without case, accents and stray spaces. */
function plain(text: string): string {
  return text
    .normalize('NFD')
    .replace(/\p{M}+/gu, '')
    .replace(/ß/g, 'ss')
    .trim()
    .toLowerCase()
    .replace(/\s+/g, ' ')
    .replace(/(?<=\p{L})[.,;:!]+$/u, '')
}

/** Without hyphens, so that "semi mature", "semi-mature" and "semimature" are one. */
function joined(text: string): string {
  return text.replace(/[\s\-‐‑–]+/g, '')
}

/** A code before its word ("2 - fair", "1 = good", "G: good"), or after it ("fair (2)"). */
const codeFirst = /^\(?(\d{1,2}|\p{L}{1,2})\)?\s?(?:[-–—=:.)/]|\s-)\s?(\p{L}.*)$/u
const codeBefore = /^(\d{1,2}|\p{L}{1,2})\s?[([](\p{L}.*)[)\]]$/u
const codeLast = /^(\p{L}.*?)\s?[([](\d{1,2}|\p{L}{1,2})[)\]]$/u

/** The word of a text that gives it with a code; null without a code. */
function withoutCode(text: string): { readonly word: string; readonly code: string } | null {
  const [, code, word] = codeFirst.exec(text) ?? codeBefore.exec(text) ?? []
  if (code !== undefined && word !== undefined) return { word, code }
  const [, before, after] = codeLast.exec(text) ?? []
  return before === undefined || after === undefined ? null : { word: before, code: after }
}

/** What is longer is a remark, and no word of a choice. */
const longestText = 120

/** What stands beside a word for a condition: "bon état", "in good condition". */
const condition =
  /^(?:in|en|im)\s|\s?(?<!\p{L})(?:condition|health|vigou?r|zustand|vitalitat|etat|vitalite|vigueur|estado|vitalidad|salud)(?!\p{L})\s?/gu

/** A remark with figures behind a word: "establishing (3-7 yrs)". */
const figures = /\s*\([^()]*\d[^()]*\)$/

/** The value of two words that say the same: "Bonne / Good". */
function inTwoLanguages(lookup: ReadonlyMap<string, string> | undefined, text: string): string | undefined {
  const [one, other, ...more] = text.split(/\s*[/|]\s*/).map((word) => wordIn(lookup, word))
  return one !== undefined && one === other && more.every((each) => each === one) ? one : undefined
}

/** The value of a word in letters, also where it is hyphenated otherwise or a plural. */
function wordIn(lookup: ReadonlyMap<string, string> | undefined, text: string): string | undefined {
  const word = /\p{L}{3}/u.test(text) ? joined(text) : text
  return (
    lookup?.get(text) ??
    lookup?.get(word) ??
    (/\p{L}{3}s$/u.test(word) ? lookup?.get(word.slice(0, -1)) : undefined)
  )
}

const ticks = new Set([
  ...choices.flag.yes.filter(
    (word) => word.length === 1 || /^(?:yes|true|ja|oui|sí|vrai|wahr|verdadero)$/.test(word)
  ),
  'si'
])

/** Whether a word only says yes: "x", "✓", "yes", "ja". */
export function isTick(text: string): boolean {
  return ticks.has(text.trim().toLowerCase())
}

/**
 * The choice a cell's text names, or null: readChoice("vigor", "Healthy") gives "good", and so does "1 - good". Two values in
 * one cell ("good/fair") name none.
 */
export function readChoice<N extends ChoiceName>(name: N, text: string): Choice<N> | null {
  const lookup = lookups.get(name)
  const own = lookup?.get(text) ?? lookup?.get(plain(text)) ?? wordIn(lookup, plain(text))
  if (own !== undefined) return own as Choice<N>
  if (text.length > longestText) return null
  const bare = name === 'vigor' ? wordIn(lookup, plain(text).replace(condition, ' ').trim()) : undefined
  if (bare !== undefined) return bare as Choice<N>
  const noted = wordIn(lookup, plain(text).replace(figures, ''))
  if (noted !== undefined) return noted as Choice<N>
  const both = inTwoLanguages(lookup, plain(text))
  if (both !== undefined) return both as Choice<N>
  const coded = withoutCode(plain(text))
  const found = coded === null ? undefined : wordIn(lookup, coded.word)
  const other = coded === null || /\d/.test(coded.code) ? undefined : lookup?.get(coded.code)
  return found === undefined || (other !== undefined && other !== found) ? null : (found as Choice<N>)
}

/** The values a choice has, as a sentence lists them: "good, fair or poor". */
export function listChoices(name: ChoiceName): string {
  return listedChoices(Object.keys(choices[name]))
}

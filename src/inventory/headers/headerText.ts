import { readChoice, choices, type ChoiceName } from '../../../shared/choices'
import type { LengthUnit } from '../../../shared/units'
import { fold } from './fold'
import { articles, meaningsOf, phraseLength, recognize, type Meaning, type Spelling } from './lexicon'
import { markMeasuringHeights, unitAnywhere, unitInBrackets, unitOf } from './measures'
import { foreignNotions, type Notion } from './words/notion'

export { fold }
export { isSlipOf } from './slips'

/** A word of a header and what it may stand for; nothing where no language here knows it. */
export interface HeaderWord {
  readonly text: string
  readonly meanings: readonly Meaning[]
  /** `mark` is a unit or a sign, no word. */
  readonly spelling: Spelling | 'mark'
}

/** A header taken apart: what it speaks of, and the unit it names. */
export interface HeaderText {
  readonly words: readonly HeaderWord[]
  /** Every notion that a word of the header may stand for. */
  readonly notions: ReadonlySet<Notion>
  /** Words that none of the languages here knows, as folded. */
  readonly unknown: readonly string[]
  /** A word that tells the column is about something else, or null. */
  readonly decoy: string | null
  /** Whether a word was taken for one that is spelled nearly like it. */
  readonly guessed: boolean
  readonly unit: LengthUnit | null
  readonly percent: boolean
  readonly degrees: boolean
  /** The header asks for yes or no: "(y/n)", "(x)". */
  readonly tick: boolean
}

/** Letters of a header that are looked at; more is a sentence, not a name. */
export const longestHeader = 120

const foreign = new Set<Meaning>(foreignNotions)

/** Parts words written together: "treeId", "limbDiaIn", "H2"; a word known as it stands ("StU", "D130") stays. */
function spaced(header: string): string {
  return header
    .replace(/[²³]/g, (power) => (power === '²' ? '2' : '3'))
    .replace(/½/g, '.5')
    .replace(/\p{L}[\p{L}\p{M}]+/gu, (word) =>
      meaningsOf(fold(word)) !== null
        ? word
        : word.replace(/(\p{Ll})(\p{Lu})/gu, '$1 $2').replace(/(\p{Lu})(\p{Lu}\p{Ll})/gu, '$1 $2')
    )
    .replace(/([øØ⌀])/g, ' ø ')
    .replace(/_/g, ' ')
}

/** "N°", "Nº", "N.º", "No." as one word; "d’arbre" and "l'union" without what is elided. */
function plain(folded: string): string {
  return folded
    .replace(/(?<!\p{L})n\s?\.?\s?(?:°|o(?!\p{L}))\.?/gu, ' no ')
    .replace(/(?<!\p{L})(?:d|l|s|n|c|qu|jusqu)['’′](?=\p{L})/gu, ' ')
    .replace(/\s+/g, ' ')
}

const ticks =
  /[([]?(?<![\p{L}\d])(?:y|yes|j|ja|o|oui|s|si)\s*\/\s*(?:n|no|nein|non)(?![\p{L}\d])[)\]]?|[([]\s*[x✓✔]\s*[)\]]|[([]0\/1[)\]]/gu

const codeList = /^\p{L}{0,3}\d{0,3}\s*(?:[/,|;–=-]\s*[\p{L}\d.]{0,6}\s*)+$/u
const choiceNames = Object.keys(choices) as ChoiceName[]

/** A list of codes or of the words of a choice says what the cells hold, not what the column is: "(Y/SM/M)", "(good/fair)". */
function withoutValues(inner: string): string {
  if (codeList.test(inner.trim()) || /^\d[\d\s.,–-]+$/.test(inner)) return ' '
  return inner
    .split(/[\s/,|;=]+/)
    .filter(
      (word) => meaningsOf(word) !== null || !choiceNames.some((name) => readChoice(name, word) !== null)
    )
    .join(' ')
}

interface Taken {
  readonly rest: string
  readonly unit: LengthUnit | null
}

function takeBrackets(text: string): Taken {
  let unit: LengthUnit | null = null
  const rest = text.replace(/[([{<]([^()[\]{}<>]*)[)\]}>]/g, (_whole, inner: string) => {
    const found = unitInBrackets(inner)
    unit ??= found
    if (found === null) return ` ${withoutValues(inner)} `
    const more = inner.replace(/^\s*(?:in\s+)?[^\s,;/]+/, '')
    return /^[\s,;]+\p{L}/u.test(more) ? ` ${more} ` : ' '
  })
  return { rest, unit }
}

const degreeWord = /°|\b(?:deg|degs|degrees?|grad|degres?|grados?)\b\.?/g

/** Takes the unit out of the tokens: the last one, or one that is no other word wherever it stands. */
function takeUnit(tokens: string[], given: LengthUnit | null): { tokens: string[]; unit: LengthUnit | null } {
  let unit = given
  const last = tokens.at(-1)
  const rest = [...tokens]
  if (unit === null && last !== undefined && tokens.length > 1) {
    unit = unitOf(last)
    if (unit !== null) rest.pop()
  }
  const kept = rest.filter((token) => {
    const found = unitAnywhere(token)
    if (found === null || rest.length === 1) return true
    unit ??= found
    return false
  })
  return { tokens: kept, unit }
}

const tokenPattern = /[\p{L}\p{N}ø#%@$€£"″”]+(?:'(?=\s|$))?\.?/gu

function tokensOf(text: string): string[] {
  return [...text.replace(/(\d)(?:nd|rd|th|st|e|a)\b/g, '$1').matchAll(tokenPattern)].flatMap(([token]) => {
    const bare = token.replace(/\.$/, '')
    if (meaningsOf(bare) !== null || !/[\d#]/.test(bare)) return [token]
    return token.match(/\d+|#|[^\d.#]+/g) ?? []
  })
}

/** Plurals of what is counted: "number of limbs" is a count, "limb number" is a name. */
const counted = new Set(
  'limbs branches scaffolds stems trunks trees leaders laterals cuts forks cavities aste aeste asten aesten stammlinge staemmlinge baume baeume stamme staemme arbres tiges troncs charpentieres rameaux coupes ramas arboles troncos tallos ejes cortes brazos ejemplares'.split(
    ' '
  )
)

function isCount(meanings: readonly Meaning[], following: readonly string[]): boolean {
  if (!meanings.includes('id') && !meanings.includes('name')) return false
  const next = following.find((token) => !(meaningsOf(token) ?? []).includes('noise'))
  return next !== undefined && counted.has(next)
}

/** The words of a header, phrases first. */
function wordsOf(all: readonly string[]): HeaderWord[] {
  const tokens = all.filter((token) => !articles.has(token))
  const bare = tokens.map((token) => token.replace(/\.$/, ''))
  const words: HeaderWord[] = []
  for (let at = 0; at < bare.length;) {
    let length = Math.min(phraseLength(bare[at] ?? ''), bare.length - at)
    while (length > 1 && meaningsOf(bare.slice(at, at + length).join(' ')) === null) length--
    const text = bare.slice(at, at + length).join(' ')
    const found = length > 1 ? null : recognize(text, tokens[at]?.endsWith('.') === true)
    const meanings = length > 1 ? meaningsOf(text) : null
    if (meanings !== null) words.push({ text, meanings, spelling: 'known' })
    else if (found !== null)
      for (const each of found)
        words.push({
          text,
          ...(isCount(each.meanings, bare.slice(at + 1)) ? { meanings: ['count'], spelling: 'known' } : each)
        })
    else if (/^(?:19|20)\d{2}$/.test(text)) words.push({ text, meanings: ['inYear'], spelling: 'mark' })
    else if (!/^\d+$/.test(text) && text.length > 1) words.push({ text, meanings: [], spelling: 'unknown' })
    at += length
  }
  return words
}

const said = (text: string, meaning: Meaning): HeaderWord => ({
  text,
  meanings: [meaning],
  spelling: 'mark'
})

/** What is given in a unit: thick things, tall ones, or either. */
const sizes: Readonly<Record<LengthUnit, readonly Meaning[]>> = {
  in: ['small'],
  mm: ['small', 'tall'],
  cm: ['small', 'tall'],
  m: ['tall'],
  ft: ['tall'],
  yd: ['tall']
}

/**
 * Takes a header apart. A word may stand for more than one notion ("top", "base"); the reading of a field takes the one
 * it needs, so all are given.
 */
export function readHeaderText(header: string): HeaderText {
  const folded = plain(fold(spaced(header.slice(0, longestHeader))))
  const asked = folded.replace(ticks, ' ')
  const marked = markMeasuringHeights(asked)
  const percent = marked.includes('%')
  const degrees = marked.search(degreeWord) >= 0
  const bracketed = takeBrackets(marked.replace(degreeWord, ' ').replaceAll('%', ' '))
  const { tokens, unit } = takeUnit(tokensOf(bracketed.rest), bracketed.unit)
  const words = wordsOf(tokens)
  if (percent) words.push(said('%', 'share'))
  if (degrees) words.push(said('°', 'angle'))
  if (unit !== null) words.push({ text: unit, meanings: sizes[unit], spelling: 'mark' })
  const decoy = words.find(
    ({ meanings }) => meanings.length > 0 && meanings.every((each) => foreign.has(each))
  )
  return {
    words,
    notions: new Set(
      words.flatMap(({ meanings }) => meanings.filter((each): each is Notion => each !== 'noise'))
    ),
    unknown: words.filter(({ spelling }) => spelling === 'unknown').map(({ text }) => text),
    decoy: decoy?.text ?? null,
    guessed: words.some(({ spelling }) => spelling === 'slip'),
    unit,
    percent,
    degrees,
    tick: asked !== folded
  }
}

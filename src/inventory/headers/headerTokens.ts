import { choices, readChoice, type ChoiceName } from '../../../shared/choices'
import type { LengthUnit } from '../../../shared/units'
import { fold } from './fold'
import { partsOf } from './compounds'
import { isEnding, isGerman, isPart, meaningsOf } from './dictionary'
import { markMeasuringHeights, unitAnywhere, unitInBrackets, unitOf } from './measures'

/** Letters of a header that are looked at; more is a sentence, not a name. */
export const longestHeader = 120

/** The words of a header as written, and what stood beside them as a sign or a unit. */
export interface HeaderTokens {
  /** Folded; one that ends with a point keeps it, as it may be short for something. */
  readonly tokens: readonly string[]
  readonly unit: LengthUnit | null
  readonly percent: boolean
  readonly degrees: boolean
  /** The header asks for yes or no: "(y/n)", "(x)". */
  readonly tick: boolean
}

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

function isChoice(text: string): boolean {
  return choiceNames.some((name) => readChoice(name, text) !== null)
}

/** A list of codes or of the words of a choice says what the cells hold, not what the column is: "(Y/SM/M)", "(good/fair)". */
function withoutValues(inner: string): string {
  if (codeList.test(inner.trim()) || /^\d[\d\s.,–-]+$/.test(inner)) return ' '
  const choicesGiven = inner.split(/\s*[/,|;]\s*/).map(isChoice)
  if (choicesGiven.filter(Boolean).length >= Math.max(2, choicesGiven.length / 2)) return ' '
  return inner
    .split(/[\s/,|;=]+/)
    .filter((word) => meaningsOf(word) !== null || !isChoice(word))
    .join(' ')
}

interface Taken {
  readonly rest: string
  readonly unit: LengthUnit | null
}

/** "(ft; lowest live branch counts)": what the number is, not that something is counted. */
const counting = /(?<!\p{L})(?:counts|zahlt|compte|cuenta)(?!\p{L})/gu

function takeBrackets(text: string): Taken {
  let unit: LengthUnit | null = null
  const rest = text.replace(/[([{<]([^()[\]{}<>]*)[)\]}>]/g, (_whole, inner: string) => {
    const found = unitInBrackets(inner)
    unit ??= found
    if (found === null) return ` ${withoutValues(inner)} `
    const more = inner.replace(/^\s*(?:in\s+)?[^\s,;/]+/, '')
    return /^[\s,;]+\p{L}/u.test(more) ? ` ${more.replace(counting, ' ')} ` : ' '
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

/** "treeheightft", "limbdiain": words that are known as a compound with a unit run into them. */
function withUnitApart(token: string): string[] | null {
  const found = /^(\p{L}{5,})(ft|in|cm|mm|m)$/u.exec(token)
  if (found?.[1] === undefined || found[2] === undefined) return null
  const whole = compound(token)
  if (whole !== null && whole.at(-1) !== found[2]) return null
  return meaningsOf(found[1]) !== null || compound(found[1]) !== null ? [found[1], found[2]] : null
}

const compound = (token: string): string[] | null => partsOf(token, isPart, isEnding, isGerman)

function parted(text: string): string[] {
  return [
    ...text.replace(/(?!(?<!\d)1(?:st|a)\b\s*\p{L})(\d)(?:nd|rd|th|st|e|a)\b/gu, '$1').matchAll(tokenPattern)
  ].flatMap(([token]) => {
    const bare = token.replace(/\.$/, '')
    if (meaningsOf(bare) !== null) return [token]
    if (!/[\d#]/.test(bare)) return withUnitApart(bare) ?? [token]
    return token.match(/\d+|#|[^\d.#]+/g) ?? []
  })
}

/** "(h) Stem dia", "3) Tip": what counts the columns. */
const lettered = /^\s*(?:[([]?(?:[a-z]|\d{1,2})[)\]]|\d{1,2}\.)\s*(?=\p{L}{2})/iu

/** "1. lebender Ast": what is first of the live ones counts no columns. */
const firstLive = /^\s*1\.\s*(?=(?:leb|gr[uü]e?n|live|living|green|viv|vert|verd))/iu

export function tokensOf(header: string): HeaderTokens {
  const spoken = header.slice(0, longestHeader).replace(firstLive, '1st ').replace(lettered, '')
  const folded = plain(fold(spaced(spoken)))
  const asked = folded.replace(ticks, ' ')
  const marked = markMeasuringHeights(asked)
  const bracketed = takeBrackets(marked.replace(degreeWord, ' ').replaceAll('%', ' '))
  return {
    ...takeUnit(parted(bracketed.rest), bracketed.unit),
    percent: marked.includes('%'),
    degrees: marked.search(degreeWord) >= 0,
    tick: asked !== folded
  }
}

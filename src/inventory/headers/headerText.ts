import { unitFromWord, type LengthUnit } from '../../../shared/units'
import { decoyWords, noiseWords, notionWords, type Notion } from './notions'

/** A header taken apart: what it speaks of, and the unit it names. */
export interface HeaderText {
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
}

type Word = { readonly notion: Notion } | 'noise' | 'decoy'

/** Folded for comparison: lower case, no accents, "ß" as "ss". */
export function fold(text: string): string {
  return text
    .normalize('NFKD')
    .replace(/\p{M}+/gu, '')
    .replace(/ß/g, 'ss')
    .replace(/[\u200b-\u200d\u2060\ufeff\u00ad]/g, '')
    .toLowerCase()
}

const words = new Map<string, Word[]>()
function learn(word: string, meaning: Word): void {
  const key = fold(word.replaceAll('.', ' '))
  const known = words.get(key)
  if (known === undefined) words.set(key, [meaning])
  else if (!known.includes(meaning)) known.push(meaning)
}
for (const [notion, list] of Object.entries(notionWords) as [Notion, string][]) {
  const meaning = { notion }
  for (const word of list.split(/[ |]+/)) if (word !== '') learn(word, meaning)
}
for (const word of noiseWords) learn(word, 'noise')
for (const word of decoyWords) learn(word, 'decoy')

const longest = Math.max(...[...words.keys()].map((word) => word.split(' ').length))

/** Words that may stand inside a compound ("Stammdurchmesser", "crownbase"): known, and long enough not to be chance. */
const compoundParts = [...words.keys()]
  .filter((word) => !word.includes(' ') && word.length >= 3 && !words.get(word)?.includes('noise'))
  .sort((a, b) => b.length - a.length)

const perYear = /\s*(?:\/|per|a|je|pro|par|por)?\s*(?:yr|year|jahr|an|ano|annum|y)\.?$/

/** Units written in brackets, after a comma or slash, or as the last word; what is left is the header's words. */
function takeUnit(text: string): { rest: string; unit: LengthUnit | null; percent: boolean; degrees: boolean } {
  let unit: LengthUnit | null = null
  let rest = text
  const percent = /%|\b(?:percent|percentage|pct|prozent|pourcentage|porcentaje)\b/.test(rest)
  const degrees = /°|\bdeg(?:rees|s)?\b|\bgrad\b|\bdegres\b|\bgrados\b/.test(rest)
  rest = rest.replace(/[([{<]([^()[\]{}<>]*)[)\]}>]/g, (_whole, inner: string) => {
    const found = unitFromWord(inner.trim().replace(perYear, '')) ?? unitFromWord(inner.trim().split(/[\s,;/]+/)[0] ?? '')
    if (found !== null && inner.trim().length <= 14) {
      unit ??= found
      return ' '
    }
    return ` ${inner} `
  })
  rest = rest.replace(/%|°/g, ' ')
  const last = /^(.*?)[\s,;:/\-_.]+(?:in\s+)?([a-z"'″′”’]+)\.?\s*$/.exec(rest)
  if (unit === null && last?.[1] !== undefined && last[2] !== undefined && last[1].trim() !== '') {
    const found = unitFromWord(last[2])
    if (found !== null) {
      unit = found
      rest = last[1]
    }
  }
  return { rest, unit, percent, degrees }
}

function spaced(header: string): string {
  return header
    .replace(/(\p{Ll})(\p{Lu})/gu, '$1 $2')
    .replace(/(\p{Lu})(\p{Lu}\p{Ll})/gu, '$1 $2')
    .replace(/([øØ⌀])/g, ' ø ')
}

/** The parts of a compound of known words, or null. */
function parted(word: string): string[] | null {
  if (word.length < 5) return null
  for (const part of compoundParts) {
    if (!word.startsWith(part) || part.length === word.length) continue
    const rest = word.slice(part.length)
    for (const tail of [rest, rest.replace(/^(?:s|n|en|es|e)(?=...)/, '')]) {
      if (words.has(tail)) return [part, tail]
      const further = parted(tail)
      if (further !== null) return [part, ...further]
    }
  }
  return null
}

/** Whether one word is the other with one letter changed, left out, put in, or two neighbors exchanged. */
export function isSlipOf(a: string, b: string): boolean {
  if (Math.abs(a.length - b.length) > 1 || a === b) return false
  let at = 0
  while (at < a.length && a[at] === b[at]) at++
  if (a.length === b.length) {
    if (a.slice(at + 1) === b.slice(at + 1)) return true
    return a[at] === b[at + 1] && a[at + 1] === b[at] && a.slice(at + 2) === b.slice(at + 2)
  }
  return a.length > b.length ? a.slice(at + 1) === b.slice(at) : a.slice(at) === b.slice(at + 1)
}

const slippable = [...words.keys()].filter((word) => word.length >= 5 && !word.includes(' '))

function nearly(word: string): string | null {
  if (word.length < 5) return null
  const found = slippable.filter((known) => isSlipOf(word, known))
  return found.length > 0 && new Set(found.map((known) => words.get(known)?.[0])).size === 1 ? (found[0] ?? null) : null
}

/**
 * Takes a header apart. A word may stand for more than one notion ("top", "base"); the reading of a field takes the one
 * it needs, so all are given.
 */
export function readHeaderText(header: string): HeaderText {
  const { rest, unit, percent, degrees } = takeUnit(fold(spaced(header)))
  const tokens = rest
    .replace(/(\d)(?:nd|rd|th|st)\b/g, '$1')
    .split(/[^\p{L}\p{N}#ø]+/u)
    .filter((token) => token !== '')
  const notions = new Set<Notion>()
  const unknown: string[] = []
  let decoy: string | null = null
  let guessed = false
  const take = (meanings: readonly Word[], word: string): void => {
    for (const meaning of meanings)
      if (meaning === 'decoy') decoy ??= word
      else if (meaning !== 'noise') notions.add(meaning.notion)
  }
  const takeOne = (token: string): void => {
    const known = words.get(token)
    if (known !== undefined) {
      take(known, token)
      return
    }
    const parts = parted(token)
    if (parts !== null) {
      for (const part of parts) take(words.get(part) ?? [], part)
      return
    }
    const near = nearly(token)
    if (near !== null) {
      guessed = true
      take(words.get(near) ?? [], near)
    } else if (!/^\d+$/.test(token) && token.length > 1) unknown.push(token)
  }
  for (let at = 0; at < tokens.length; ) {
    let length = Math.min(longest, tokens.length - at)
    while (length > 1 && !words.has(tokens.slice(at, at + length).join(' '))) length--
    if (length > 1) take(words.get(tokens.slice(at, at + length).join(' ')) ?? [], tokens[at] ?? '')
    else takeOne(tokens[at] ?? '')
    at += length
  }
  if (percent) notions.add('share')
  if (degrees) notions.add('angle')
  return { notions, unknown, decoy, guessed, unit, percent, degrees }
}

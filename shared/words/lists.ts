import { listLocale } from './locale'

/**
 * How the language joins a list, taken from its own formatter once: documents hold tens of thousands of lists, and
 * joining is much faster than asking it each time.
 */
function joiner(type: 'conjunction' | 'disjunction'): (words: readonly string[]) => string {
  const format = new Intl.ListFormat(listLocale, { type })
  const literals = (words: string[]) =>
    format.formatToParts(words).flatMap((part) => (part.type === 'literal' ? [part.value] : []))
  const [pair = ''] = literals(['A', 'B'])
  const [first = '', middle = '', last = ''] = literals(['A', 'B', 'C', 'D'])
  return (words) => {
    if (words.length < 2) return words.join('')
    if (words.length === 2) return `${words[0] ?? ''}${pair}${words[1] ?? ''}`
    const [one = '', ...rest] = words
    const end = rest.pop() ?? ''
    return `${one}${first}${rest.join(middle)}${last}${end}`
  }
}

const all = joiner('conjunction')
const any = joiner('disjunction')

/** Words as a sentence lists them: "A, B and C". */
export function listed(words: readonly string[]): string {
  return all(words)
}

/** What may be chosen among: "good, fair or poor". */
export function listedChoices(words: readonly string[]): string {
  return any(words)
}

/** Ids with their noun, each once: "limb B", "limbs B and C". */
export function namedLimbs(limbs: readonly { readonly id: string }[]): string {
  const ids = [...new Set(limbs.map(({ id }) => id))]
  return `${ids.length === 1 ? 'limb' : 'limbs'} ${listed(ids)}`
}

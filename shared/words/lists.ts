import { listLocale } from './locale'

const all = new Intl.ListFormat(listLocale, { type: 'conjunction' })
const one = new Intl.ListFormat(listLocale, { type: 'disjunction' })

/** Words as a sentence lists them: "A, B and C". */
export function listed(words: readonly string[]): string {
  return all.format(words)
}

/** What may be chosen among: "good, fair or poor". */
export function listedChoices(words: readonly string[]): string {
  return one.format(words)
}

/** Ids with their noun: "limb B", "limbs B and C". */
export function namedLimbs(limbs: readonly { readonly id: string }[]): string {
  return `${limbs.length === 1 ? 'limb' : 'limbs'} ${listed(limbs.map(({ id }) => id))}`
}

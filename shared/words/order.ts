import { locale } from './locale'

const names = new Intl.Collator(locale, { numeric: true, sensitivity: 'base' })

/** Names as a person counts them up: T2 before T10. */
export function byName(one: string, other: string): number {
  return names.compare(one, other)
}

import { grouped } from './figures'
import { locale } from './locale'

const rules = new Intl.PluralRules(locale)
/** Whether a small number takes the singular; each is looked up once. */
const ones: boolean[] = Array.from({ length: 100 }, (_, number) => rules.select(number) === 'one')

/** The word that goes with a number: (1, "tree") gives "tree", (3, "tree") gives "trees". */
export function plural(number: number, one: string, many = `${one}s`): string {
  return (ones[number] ?? rules.select(number) === 'one') ? one : many
}

/** A count with its noun: (1, "tree") gives "1 tree", (3400, "tree") gives "3,400 trees". */
export function counted(number: number, one: string, many?: string): string {
  return `${grouped(number)} ${plural(number, one, many)}`
}

import { isFormula, type Content, type SheetDescription } from './sheet'

/** A name and whatever may stand beside it in a formula without making it another name. */
function finder(names: readonly string[]): RegExp {
  const longestFirst = [...names].sort((a, b) => b.length - a.length)
  return new RegExp(`(?<![A-Za-z0-9_.!'])(${longestFirst.join('|')})(?![A-Za-z0-9_.(!])`, 'g')
}

/** Texts in quotes are no names. */
function renamed(formula: string, find: RegExp, suffix: string): string {
  return formula
    .split(/("(?:[^"]|"")*")/)
    .map((part, index) => (index % 2 === 1 ? part : part.replace(find, `$1${suffix}`)))
    .join('')
}

/**
 * The description with names that the workbook does not have yet: Crew_hour, or Crew_hour_2 where any of its names is
 * taken; its formulas follow. `taken` is in lower case, as names ignore it.
 */
export function withFreeNames(description: SheetDescription, taken: ReadonlySet<string>): SheetDescription {
  const { names = [], rows } = description
  const isTaken = (suffix: string) => names.some(({ name }) => taken.has(`${name}${suffix}`.toLowerCase()))
  if (names.length === 0 || !isTaken('')) return description
  let number = 2
  while (isTaken(`_${String(number)}`)) number += 1
  const suffix = `_${String(number)}`
  const find = finder(names.map(({ name }) => name))
  const cell = (content: Content): Content =>
    isFormula(content) ? { value: content.value, formula: renamed(content.formula, find, suffix) } : content
  return {
    ...description,
    names: names.map(({ name, area }) => ({ name: `${name}${suffix}`, area })),
    rows: rows.map((row) => row.map(cell))
  }
}

/** True for a name that a description of ours could have given: one of its names, or one with a number after it. */
export function isNameOf({ names = [] }: SheetDescription, name: string): boolean {
  const bare = name.toLowerCase().replace(/_\d+$/, '')
  return names.some((own) => [name.toLowerCase(), bare].includes(own.name.toLowerCase()))
}

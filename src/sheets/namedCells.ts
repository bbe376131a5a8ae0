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

/** Descriptions that call each other's names, which each has to follow by itself. */
function families(descriptions: readonly SheetDescription[]): SheetDescription[][] {
  const found: SheetDescription[][] = []
  for (const description of descriptions) {
    const last = found.at(-1)
    if (description.continues === true && last !== undefined) last.push(description)
    else found.push([description])
  }
  return found
}

/**
 * The descriptions with names that the workbook does not have yet: Crew_hour, or Crew_hour_2 where any of the names of
 * descriptions that belong together is taken; their formulas follow, and so do those of the descriptions behind them that
 * give no names. `taken` is in lower case, as names ignore it.
 */
export function withFreeNames(
  descriptions: readonly SheetDescription[],
  taken: ReadonlySet<string>
): SheetDescription[] {
  const known = new Set(taken)
  let follow = (description: SheetDescription): SheetDescription => description
  return families(descriptions).flatMap((family) => {
    const names = family.flatMap((description) => description.names?.map(({ name }) => name) ?? [])
    if (names.length === 0) return family.map(follow)
    const isTaken = (suffix: string) => names.some((name) => known.has(`${name}${suffix}`.toLowerCase()))
    let suffix = ''
    for (let number = 2; isTaken(suffix); number++) suffix = `_${String(number)}`
    for (const name of names) known.add(`${name}${suffix}`.toLowerCase())
    const find = finder(names)
    follow =
      suffix === '' ? (description) => description : (description) => withSuffix(description, find, suffix)
    return family.map(follow)
  })
}

function withSuffix(description: SheetDescription, find: RegExp, suffix: string): SheetDescription {
  const { names = [], rows } = description
  const cell = (content: Content): Content =>
    isFormula(content) ? { value: content.value, formula: renamed(content.formula, find, suffix) } : content
  return {
    ...description,
    names: names.map(({ name, area }) => ({ name: `${name}${suffix}`, area })),
    rows: rows.map((row) => row.map(cell))
  }
}

/** True for a name that a description of ours could have given: one of its names, whatever number follows either. */
export function isNameOf({ names = [] }: SheetDescription, name: string): boolean {
  const bare = (text: string): string => text.toLowerCase().replace(/_\d+$/, '')
  return names.some((own) => bare(own.name) === bare(name))
}

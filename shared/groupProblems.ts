import { cellsNamed, placesNamed, rowOf } from './cellPlaces'
import { severalOf, type Several } from './problemGroups'
import type { Place, Problem } from './problems'
import { plural } from './words/counts'
import { grouped } from './words/figures'
import { capital } from './words/sentences'
import { rowsNamed, someOf, valuesOf } from './words/some'

/** As many problems as a person takes in at once: about a screen. */
export const mostProblems = 25

/** The problems that one stands for; itself, where it is alone. */
export function membersOf(found: Problem): readonly Problem[] {
  return found.of ?? [found]
}

export function countOf(found: Problem): number {
  return membersOf(found).length
}

/** The cells that a problem is about, the first one first; none where it stands at no cell. */
export function cellsOf(found: Problem): readonly string[] {
  const cells = membersOf(found).map(({ cell }) => cell)
  return [...new Set(cells)].filter((each) => each !== '')
}

/**
 * One problem for all of the same cause: of one column, with one sentence that is true of all of them. A problem that is alone
 * stays as it is. Where that leaves more than about a screen, causes are drawn together over the columns, then whatever was
 * taken instead; where even that is too much, the first of each kind is told and the others are counted. The order is that of
 * the first of each.
 */
export function groupProblems(problems: readonly Problem[]): readonly Problem[] {
  const single = problems.some(({ of }) => of !== undefined) ? problems.flatMap(membersOf) : problems
  let causes = gathered(single, 'column')
  if (causes.length > mostProblems) causes = gathered(single, 'what was taken')
  if (causes.length > mostProblems) causes = gathered(single, 'fault')
  if (causes.length > mostProblems) causes = gathered(single, 'code')
  return causes.map(asOne)
}

/** What parts one cause from another, from the finest to the coarsest. */
type Parting = 'column' | 'what was taken' | 'fault' | 'code'

function gathered(problems: readonly Problem[], parting: Parting): Problem[][] {
  const causes: Problem[][] = []
  const kinds = new Map<string, Map<string, Problem[]>>()
  for (const each of problems) {
    let ofKind = kinds.get(each.code)
    if (ofKind === undefined) kinds.set(each.code, (ofKind = new Map()))
    const cause = causeOf(each, parting)
    const known = ofKind.get(cause)
    if (known === undefined) {
      const fresh = [each]
      ofKind.set(cause, fresh)
      causes.push(fresh)
    } else known.push(each)
  }
  return causes
}

/** What parts the problems of one code. */
function causeOf(found: Problem, parting: Parting): string {
  const { code, level, facts, instead } = found
  const several: Several | null = severalOf[code]
  if (parting === 'code') return ''
  if (several === null) return found.message
  let cause = parting === 'column' ? columnOf(found, several) : ''
  // Thousands of notes differ in their column at most: theirs is the cause as it stands.
  if (level !== 'note') cause += `\n${level}`
  if (instead !== undefined && parting !== 'fault') cause += `\n${instead}`
  for (const fact of several.by ?? []) cause += `\n${String(facts[fact])}`
  return cause
}

/** Sheet and column, or the header that is missing; the sheet alone where all columns are one cause. */
function columnOf({ cell, place }: Problem, { across }: Several): string {
  if (place !== null) return place.header
  let end = across === true ? cell.lastIndexOf('!') : cell.length
  while (end > 0 && cell.charCodeAt(end - 1) >= 48 && cell.charCodeAt(end - 1) <= 57) end--
  return cell.slice(0, Math.max(0, end))
}

/** A problem that stands for several; one alone, or one said twice, is itself. */
function asOne(several: readonly Problem[]): Problem {
  const [only] = several
  if (only === undefined) throw new Error('A cause without a problem')
  const words = severalOf[only.code]
  if (several.length === 1) return only
  if (words === null) return withOthers(several)
  const of = inOrder(several)
  const { code, level, facts, cell, place } = of[0] ?? only
  const holes = new Map<string, string>()
  return {
    code,
    level,
    cell,
    message: withInstead(filled(words.message, of, holes), of),
    remedy: filled(words.remedy, of, holes),
    facts,
    place,
    of
  }
}

/** The first of several that have no sentence for all of them, with the others counted; one said several times is itself. */
function withOthers(several: readonly Problem[]): Problem {
  const [only, ...others] = several.filter(
    ({ message }, at) => several.findIndex((each) => each.message === message) === at
  )
  if (only === undefined) throw new Error('A cause without a problem')
  if (others.length === 0) return only
  const cells = others.flatMap(({ cell }) => (cell === '' ? [] : [cell]))
  const where = cells.length === 0 ? '' : `: ${cellsNamed(cells)}`
  const message = `${only.message} The same was found ${grouped(others.length)} more ${plural(others.length, 'time')}${where}.`
  return { ...only, message, of: [only, ...others] }
}

/** The sentence with what was taken instead, where that was told of each. */
function withInstead(message: string, of: readonly Problem[]): string {
  const taken = [...new Set(of.flatMap(({ instead = [] }) => instead))]
  if (taken.length === 0) return message
  const which = taken.length === 1 ? `in each case ${taken.join('')}` : `instead, ${valuesOf(taken)}`
  return `${message.replace(/\.$/, '')}; ${which}.`
}

/** By row, as they mostly are already. */
function inOrder(problems: readonly Problem[]): readonly Problem[] {
  const rows = problems.map(({ cell, place }) => place?.row ?? rowOf(cell))
  if (rows.every((row, at) => row >= (rows[at - 1] ?? 0))) return problems
  return problems
    .map((found, at) => ({ found, row: rows[at] ?? 0 }))
    .sort((one, other) => one.row - other.row)
    .map(({ found }) => found)
}

/** A sentence with its holes filled; what was found for one hole stands for the same in the other sentence too. */
function filled(sentence: string, of: readonly Problem[], holes: Map<string, string>): string {
  return sentence.replace(/\{(\w+)\}/g, (_hole, name: string) => {
    const known = holes.get(name) ?? wordsFor(name, of)
    holes.set(name, known)
    return known
  })
}

function wordsFor(name: string, of: readonly Problem[]): string {
  switch (name) {
    case 'count':
      return grouped(of.length)
    case 'cells':
      return placeWords(of)
    case 'rows':
      return rowsNamed(of.map(({ facts }) => Number(facts['row'])))
    case 'columns':
      return quotedOf('column', of, capital)
    case 'texts':
      return quotedOf('text', of)
    case 'names':
      return quotedOf('name', of)
    case 'rules':
      return quotedOf('rule', of)
    case 'ids':
      return someOf(different('tree', of))
    case 'trees': {
      const trees = different('tree', of)
      return `${plural(trees.length, 'tree')} ${someOf(trees)}`
    }
  }
  return name.endsWith('1') ? String(of[0]?.facts[name.slice(0, -1)] ?? '') : valuesOf(different(name, of))
}

/** Where they are: their cells, or their rows where the column is missing. */
function placeWords(of: readonly Problem[]): string {
  const places = of.flatMap(({ place }): Place[] => (place === null ? [] : [place]))
  return places.length === of.length
    ? placesNamed(places)
    : cellsNamed(of.flatMap(({ cell }) => (cell === '' ? [] : [cell])))
}

function different(fact: string, of: readonly Problem[]): string[] {
  const values = new Set<string>()
  for (const { facts } of of) values.add(String(facts[fact] ?? ''))
  return [...values]
}

function quotedOf(fact: string, of: readonly Problem[], as = (word: string): string => word): string {
  return valuesOf(different(fact, of).map((word) => `“${as(word)}”`))
}

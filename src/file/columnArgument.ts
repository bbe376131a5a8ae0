/** What a person states of a column on the command line: --column "J=stem above", --column "Limbs!J=diameter (in)". */
import { parseAddress } from '../../shared/a1Notation'
import { columnOf, columns, type Field } from '../../shared/columns'
import { isRefusal, refuse, type Refusal } from '../../shared/refusal'
import { millimetersPer, unitFromWord } from '../../shared/units'
import { listedChoices } from '../../shared/words/lists'
import { fold } from '../inventory/headers/fold'
import { likelyFields } from '../inventory/headers/likelihood'
import type { ColumnAnswer } from '../inventory/inventory'
import { lengthOf } from '../inventory/lengthOf'

/** From here on words alone are sure of a field, unless another comes as near as that (house judgment). */
const sureFrom = 0.8
const clearBy = 0.12

/** A text as names are compared: without case, accents or double spaces. */
export function comparable(text: string): string {
  return fold(text).replace(/\s+/g, ' ').trim()
}

const names = (fields: readonly Field[]): string => listedChoices(fields.map((field) => columnOf(field).name))

/** The field that these words mean, null where the column is not to be used; or why they mean none. */
function fieldOf(words: string): { field: Field | null } | string {
  const key = comparable(words)
  if (key === '-' || key === 'not used') return { field: null }
  const exact = columns.find(({ field, name }) => comparable(field) === key || comparable(name) === key)
  if (exact !== undefined) return { field: exact.field }
  const [best, ...others] = likelyFields(words)
  if (best === undefined || best.score < sureFrom)
    return `“${words}” is no column of an inventory: write ${names(columns.map(({ field }) => field))}, or - where it is not used.`
  if (best.girth)
    return `“${words}” is a girth, which only a header can tell: write “girth” into the header of the column.`
  const near = others.filter(({ score }) => score > best.score - clearBy)
  if (near.length === 0) return { field: best.field }
  return `“${words}” may be ${names([best, ...near].map(({ field }) => field))}: write one of them.`
}

type Gives = Pick<ColumnAnswer, 'field' | 'unit'>

/** The right side: a field, a unit in brackets, or both. */
function readMeaning(text: string): Gives | string {
  const [, words = '', bracket] = /^([^]*?)\s*(?:[([]([^()[\]]*)[)\]])?$/.exec(text.trim()) ?? []
  const unit = bracket === undefined ? null : unitFromWord(bracket)
  if (bracket !== undefined && unit === null)
    return `“${bracket}” is no unit: write ${listedChoices(Object.keys(millimetersPer))}.`
  if (words === '') return unit === null ? '' : { unit }
  const found = fieldOf(words)
  if (typeof found === 'string' || unit === null) return found
  const { field } = found
  return field !== null && lengthOf(field) !== null
    ? { field, unit }
    : `${field === null ? 'A column that is not used' : columnOf(field).name} has no unit: leave out (${bracket ?? ''}).`
}

/** The left side: letters or a header, with a sheet before it or not. */
function readColumn(text: string): Pick<ColumnAnswer, 'sheet' | 'column' | 'header'> {
  const [, quoted, bare, rest = ''] = /^(?:'((?:[^']|'')+)'!|([^'"!]+)!)?([^]+)$/.exec(text.trim()) ?? []
  const sheet = quoted?.replaceAll("''", "'") ?? bare
  const header = /^["“]([^]*)["”]$/.exec(rest.trim())?.[1]
  const letters = rest.trim().toUpperCase()
  const isColumn = header === undefined && parseAddress(`${letters}:${letters}`)?.area.columns === 1
  return {
    ...(sheet === undefined ? {} : { sheet: sheet.trim() }),
    ...(isColumn ? { column: letters } : { header: (header ?? rest).trim() })
  }
}

/** One --column, taken apart; whether the file has such a sheet and column is asked when it is read. */
export function readColumnArgument(text: string): ColumnAnswer | Refusal {
  const mark = text.lastIndexOf('=')
  const meaning = mark > 0 ? readMeaning(text.slice(mark + 1)) : ''
  if (typeof meaning !== 'string') return { ...readColumn(text.slice(0, mark)), ...meaning }
  return refuse(
    meaning === ''
      ? `--column ${text} does not say what a column gives: write for instance --column "J=stem above".`
      : `--column ${text}: ${meaning}`
  )
}

/** All of them, or the first that cannot be used. */
export function readColumnArguments(texts: readonly string[]): readonly ColumnAnswer[] | Refusal {
  const answers = texts.map(readColumnArgument)
  return answers.find(isRefusal) ?? answers.filter((answer): answer is ColumnAnswer => !isRefusal(answer))
}

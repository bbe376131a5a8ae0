import { isBlank, quoted, type Cell } from '../../../shared/cells'
import { isTick, readChoice, type ChoiceName } from '../../../shared/choices'
import { columnOf, type Field } from '../../../shared/columns'
import { likelyFields } from '../headers/likelihood'
import type { SheetCells } from '../survey/sheetCells'
import type { SheetTable } from '../survey/sheetTables'
import { placedAt, rearranged, type Placed } from './placed'

/** Columns of one question: what it asks for, and the answer that each of them stands for. */
interface Question {
  readonly field: Field
  readonly name: string
  readonly answers: readonly { readonly column: number; readonly answer: string }[]
}

/** How well the words before the answer have to mean a field. House judgment. */
const likelyEnough = 0.6

/** An empty box, or a no. */
const unticked = /^(?:[☐□▢○]|\[\s*\]|0|n|no|nein|non|false|-)$/i

const ticked = /^(?:[☒☑✅✔✓■]|\[\s*[x✓✔]\s*\])$/iu

const isNo = (cell: Cell | undefined): boolean =>
  isBlank(cell) || cell === false || cell === 0 || (typeof cell === 'string' && unticked.test(cell.trim()))
const isYes = (cell: Cell | undefined): boolean =>
  cell === true ||
  cell === 1 ||
  (!isBlank(cell) && (isTick(String(cell)) || ticked.test(String(cell).trim())))

/** "Bark partial", "Vigor: good": the question and the answer, where the answer is one of the words of the question's field. */
function answerIn(name: string): { field: Field; question: string; answer: string } | null {
  const found = /^(.*\p{L}.*?)\s*(?:[:–—=/-]\s*|\s)(\p{L}+)$/u.exec(name.trim())
  if (found?.[1] === undefined || found[2] === undefined) return null
  const [, question, answer] = found
  for (const { field, score } of likelyFields(question)) {
    const { kind, choice } = columnOf(field).reads as { kind: string; choice?: ChoiceName }
    if (kind !== 'choice' || choice === undefined || score < likelyEnough) continue
    if (readChoice(choice, answer) !== null && !isTick(answer)) return { field, question, answer }
  }
  return null
}

function questionsIn({ sheet, header, rows }: SheetTable): Question[] {
  const found = new Map<Field, { name: string; answers: { column: number; answer: string }[] }>()
  for (const { column, name, group } of header.columns) {
    const answer = answerIn(group === '' ? name : `${group} ${name}`)
    if (answer === null) continue
    if (!rows.every((row) => isNo(sheet.rows[row]?.[column]) || isYes(sheet.rows[row]?.[column]))) continue
    const known = found.get(answer.field) ?? { name: answer.question, answers: [] }
    known.answers.push({ column, answer: answer.answer })
    found.set(answer.field, known)
  }
  return [...found].flatMap(([field, { name, answers }]) => {
    const own = new Set(answers.map(({ column }) => column))
    const elsewhere = header.columns.some(
      ({ column, meaning }) => meaning.field === field && !own.has(column)
    )
    return answers.length < 2 || elsewhere ? [] : [{ field, name, answers }]
  })
}

/** The answers that are ticked in a row, the first of them with its place. */
function answerAt(sheet: SheetCells, row: number, { answers }: Question): Placed {
  const ticked = answers.filter(({ column }) => isYes(sheet.rows[row]?.[column]))
  const place = { row, column: ticked[0]?.column ?? answers[0]?.column ?? 0 }
  return { ...place, cell: ticked.length === 0 ? null : ticked.map(({ answer }) => answer).join(', ') }
}

/**
 * The sheet with the answers to a question in one column, where each answer has a column of its own that is ticked ("Bark
 * none", "Bark partial", "Bark full"); null where there are none. Two ticks in a row stay two words, which no choice has.
 */
export function withTickedAnswers(table: SheetTable): {
  readonly sheet: SheetCells
  readonly joined: readonly { readonly column: number; readonly text: string }[]
} | null {
  const questions = questionsIn(table)
  if (questions.length === 0) return null
  const { sheet, header } = table
  const gone = new Set(questions.flatMap(({ answers }) => answers.map(({ column }) => column)))
  const width = sheet.rows.reduce((most, row) => Math.max(most, row.length), 0)
  const kept = Array.from({ length: width }, (_none, column) => column).filter((column) => !gone.has(column))
  const data = new Set(table.rows)
  const rows = sheet.rows.map((_cells, row) => [
    ...kept.map((column) => placedAt(sheet, row, column)),
    ...questions.map((question): Placed => {
      const first = { row, column: question.answers[0]?.column ?? 0 }
      if (row === header.names) return { ...first, cell: question.name }
      return data.has(row) ? answerAt(sheet, row, question) : { ...first, cell: null }
    })
  ])
  const given = new Map(questions.map(({ field }, at) => [kept.length + at, field] as const))
  const { says, given: before } = sheet
  return {
    sheet: {
      ...rearranged(sheet, rows),
      given: new Map([
        ...[...(before ?? [])].map(([column, field]) => [kept.indexOf(column), field] as const),
        ...given
      ]),
      ...(says === undefined
        ? {}
        : { says: (name: string, column: number) => says(name, kept[column] ?? -1) })
    },
    joined: questions.map(({ answers, name }) => ({ column: answers[0]?.column ?? 0, text: quoted(name) }))
  }
}

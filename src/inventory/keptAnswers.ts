import { columns, type Field } from '../../shared/columns'
import { problem, type Problem } from '../../shared/problems'
import { systems, unitNames, type LengthUnit, type UnitSystem } from '../../shared/units'
import { counted } from '../../shared/words/counts'
import type { ColumnAnswer, ReadingChoices } from './inventory'

/** The name under which a workbook keeps a person's answers, in its document settings and in its file alike. */
export const answersKey = 'limbwright.answers'

/** Of the text in which they are kept; a reader that does not know the version leaves them alone. */
const version = 1

/** What a workbook keeps of a person's choices. */
export type KeptChoices = Pick<ReadingChoices, 'system' | 'answers' | 'noTrees'>

/** Answers as they are kept; null where there is nothing to keep. */
export function keptText({ system, answers = [], noTrees = [] }: KeptChoices): string | null {
  if (system === undefined && answers.length + noTrees.length === 0) return null
  return JSON.stringify({ version, system, answers, noTrees })
}

const fields = new Set<unknown>(columns.map(({ field }) => field))

function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value)
}

const isText = (value: unknown): value is string => typeof value === 'string'
const isUnit = (value: unknown): value is LengthUnit => isText(value) && Object.hasOwn(unitNames, value)
const isSystem = (value: unknown): value is UnitSystem => isText(value) && Object.hasOwn(systems, value)
const isField = (value: unknown): value is Field | null => value === null || fields.has(value)

/** One answer, or null where a part of it means nothing to this version. */
function answerOf(kept: unknown): ColumnAnswer | null {
  if (!isRecord(kept)) return null
  const { header, column, sheet, field, unit } = kept
  const names = [header, column, sheet]
  if (names.some((name) => name !== undefined && !isText(name))) return null
  if (header === undefined && column === undefined) return null
  if (field === undefined && unit === undefined) return null
  if ((field !== undefined && !isField(field)) || (unit !== undefined && !isUnit(unit))) return null
  return {
    ...(isText(header) && { header }),
    ...(isText(column) && { column }),
    ...(isText(sheet) && { sheet }),
    ...(field !== undefined && isField(field) && { field }),
    ...(isUnit(unit) && { unit })
  }
}

/** What a workbook keeps, and what of it cannot be read. */
export interface ReadAnswers {
  readonly choices: KeptChoices
  readonly problems: readonly Problem[]
}

function unread(answers: string, why: string): Problem {
  return problem('answers-unread', '', { answers, why })
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text)
  } catch {
    return undefined
  }
}

/** Reads answers as they were kept, or null where none were; what is damaged or unknown is told, and left out. */
export function readKept(text: unknown): ReadAnswers {
  if (text === null || text === undefined) return { choices: {}, problems: [] }
  const kept = isText(text) ? parsed(text) : undefined
  if (!isRecord(kept) || typeof kept['version'] !== 'number')
    return { choices: {}, problems: [unread('The answers', 'they are damaged')] }
  if (kept['version'] !== version)
    return { choices: {}, problems: [unread('The answers', 'another version of Limbwright wrote them')] }
  const { system, answers, noTrees } = kept
  const listedAnswers = Array.isArray(answers) ? answers.map(answerOf) : []
  const ids: unknown[] = Array.isArray(noTrees) ? noTrees : []
  const choices: KeptChoices = {
    ...(isSystem(system) && { system }),
    ...(listedAnswers.length > 0 && { answers: listedAnswers.filter((answer) => answer !== null) }),
    ...(ids.length > 0 && { noTrees: ids.filter(isText) })
  }
  const lost =
    listedAnswers.filter((answer) => answer === null).length +
    ids.filter((id) => !isText(id)).length +
    [answers, noTrees].filter((list) => list !== undefined && !Array.isArray(list)).length +
    (system === undefined || isSystem(system) ? 0 : 1)
  return { choices, problems: lost === 0 ? [] : [unread(counted(lost, 'answer'), 'damaged or unknown')] }
}

/** Choices made now, which go before those that a workbook keeps. */
export function withKept(now: ReadingChoices, kept: KeptChoices): ReadingChoices {
  const system = now.system ?? kept.system
  const answers = [...(now.answers ?? []), ...(kept.answers ?? [])]
  const noTrees = [...new Set([...(now.noTrees ?? []), ...(kept.noTrees ?? [])])]
  return {
    ...now,
    ...(system === undefined ? {} : { system }),
    ...(answers.length === 0 ? {} : { answers }),
    ...(noTrees.length === 0 ? {} : { noTrees })
  }
}

import { rulesHeaders } from '../../plan/rules/readRules'
import { whatToType } from '../../plan/rules/ruleFacts'
import { isCounted, isLength } from '../../plan/rules/ruleRange'
import { inUnit, lengthUnitOf, unitText } from '../../plan/rules/ruleUnits'
import { questions, type QuestionKey } from '../../season/questions'
import { ruleBook, ruleNames, type Rule } from '../../../shared/rules'
import type { LengthUnit, UnitSystem } from '../../../shared/units'
import { cautions } from '../cautions'
import { certaintyWords } from '../certaintyWords'
import { SheetDraft, type TableColumn } from '../draft'
import { titles } from '../ownSheets'
import { looks } from '../looks'
import { palette } from '../../../shared/palette'
import { rulesLooks } from './rulesLooks'
import type { CellRule, Content, SheetDescription } from '../sheet'

const header = (name: string): string => name.charAt(0).toUpperCase() + name.slice(1)

const input = { fill: palette.inputFill, align: 'right' } as const
const number = { align: 'right' } as const

const ruleColumns: TableColumn[] = [
  { header: header(rulesHeaders.rule), format: { bold: true, wrap: true } },
  { header: header(rulesHeaders.value), format: input },
  { header: 'Unit', format: { align: 'center' } },
  { header: 'Default', format: number },
  { header: 'From', format: number },
  { header: 'To', format: number },
  { header: header(rulesHeaders.reason), format: { fill: palette.inputFill, wrap: true } },
  { header: 'Certainty', format: { wrap: true } },
  { header: 'Source', format: { wrap: true } }
]

const widths = [46, 10, 11, 9, 8, 8, 40, 26, 58]

const lead: readonly (readonly [string, string])[] = [
  [
    'What this is',
    'Every number the plan goes by. This sheet is yours: it is read at each planning and never replaced.'
  ],
  [
    'To change a rule',
    'Type in the column Value. A share may be typed as 0.25 or 25 %, a length in the unit beside it or with one of its own, such as 2 in. A blank takes the default. A value that differs from its default is in bold on a tint.'
  ],
  [
    'A higher allowance',
    'Raising an allowed removal or a share for vigor above its default needs a reason beside it; the plan prints it.'
  ],
  ['Not for change', 'Names in the first column are how a rule is found: leave them as they are.']
]

function ruleRow(rule: Rule, unit: LengthUnit): Content[] {
  const { name, certainty, source } = rule
  const value = inUnit(rule, rule.value, unit)
  const { low, high } = rangeOf(rule, unit)
  return [name, value, unitText(rule, unit), value, low, high, null, certaintyWords[certainty], source]
}

/** The range of a rule in the unit of the sheet, never wider than it is. */
function rangeOf(rule: Rule, unit: LengthUnit): Pick<Rule, 'low' | 'high'> {
  return { low: inUnit(rule, rule.low, unit, 'at least'), high: inUnit(rule, rule.high, unit, 'at most') }
}

/** The columns that a rule's range and look are about. */
const columns = { value: 1, standard: 3 } as const

/** What the cell of a rule takes. A length may also be typed with its unit, which is read when the plan is made. */
function ruleOf(rule: Rule, row: number, unit: LengthUnit): CellRule {
  const { low, high } = rangeOf(rule, unit)
  return {
    area: { row, column: columns.value, rows: 1, columns: 1 },
    takes: { from: low, to: high, whole: isCounted(rule), ...(isLength(rule) ? { texts: true } : {}) },
    sentence: whatToType(rule, unit)
  }
}

/** Questions that are answered with yes or no; a place and a month are typed in words of one's own. */
const yesOrNo: readonly QuestionKey[] = ['nest', 'stress', 'flush']

function answerOf(key: QuestionKey, row: number): CellRule {
  return {
    area: { row, column: columns.value, rows: 1, columns: 1 },
    takes: { values: ['yes', 'no'] },
    sentence: `${questions[key].asks} Type yes or no, or leave it blank.`
  }
}

/** Gives what the cells of the answers take. */
function addQuestions(draft: SheetDraft): CellRule[] {
  draft.section('Season of the work')
  const keys = Object.keys(questions) as QuestionKey[]
  const top = draft.line(['Question', 'Answer', null, null, null, null, 'Why it is asked'], looks.header)
  for (const key of keys)
    draft.rows.push([questions[key].asks, null, null, null, null, null, questions[key].why])
  draft.format(top + 1, 0, keys.length, draft.widths.length, looks.body)
  draft.format(top + 1, 0, keys.length, 1, { bold: true })
  draft.format(top + 1, 1, keys.length, 5, { fill: palette.inputFill, align: 'left' })
  draft.format(top + keys.length, 0, 1, draft.widths.length, looks.groupEnd)
  return yesOrNo.map((key) => answerOf(key, top + 1 + keys.indexOf(key)))
}

/**
 * The rules as a sheet that a person then owns: what is asked about the season, then every rule with its value, unit,
 * default, allowed range, certainty and source, and room for the reason of a change. Lengths are in inches where the
 * inventory is, otherwise in millimeters; the column Unit is read with the values.
 */
export function describeRules(system: UnitSystem = 'cm-m'): SheetDescription {
  const unit = lengthUnitOf(system)
  const draft = new SheetDraft(widths)
  draft.title(titles.rules)
  for (const [label, sentence] of lead) draft.labeled(label, sentence)
  for (const sentence of cautions) draft.labeled('Caution', sentence, looks.caution)
  const answers = addQuestions(draft)
  draft.section('Rules of the plan')
  const top = draft.table(
    ruleColumns,
    ruleNames.map((name) => ruleRow(ruleBook[name], unit))
  )
  // A line stands above the first rule of each topic but the first.
  ruleNames.forEach((name, index) => {
    const before = ruleNames[index - 1]
    if (before !== undefined && ruleBook[before].topic !== ruleBook[name].topic)
      draft.format(top + index, 0, 1, widths.length, looks.groupEnd)
  })
  draft.tables.push({
    name: 'Rules',
    area: { row: top, column: 0, rows: ruleNames.length + 1, columns: widths.length }
  })
  const description = draft.finish({
    kind: 'rules',
    name: titles.rules,
    freezeRows: 0,
    freezeColumns: 1,
    page: {
      orientation: 'landscape',
      paper: system === 'in-ft' ? 'letter' : 'a4',
      titleRow: top,
      footer: 'Rules of the plan. A qualified arborist on site decides.'
    }
  })
  return {
    ...description,
    rules: [...answers, ...ruleNames.map((name, index) => ruleOf(ruleBook[name], top + 1 + index, unit))],
    conditionalLooks: rulesLooks(top + 1, ruleNames.length, columns)
  }
}

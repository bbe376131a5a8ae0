import { addressIn, isBlank, quoted, type Cell, type CellBlock } from '../../../shared/cells'
import { problem, type Problem } from '../../../shared/problems'
import { ruleBook, ruleEntry, ruleNames, rulesWith, type RuleName, type Rules } from '../../../shared/rules'
import { styleOf, type NumberStyle } from '../../../shared/numbers'
import { questions, readAnswer, type QuestionKey } from '../../season/questions'
import { readRule } from './readRule'
import { showRule, type RuleReasons } from './ruleChanges'
import { showRuleIn, unitInCell } from './ruleUnits'
import { checkTogether, type PlacedRules } from './rulesTogether'
import type { TimingAnswers } from '../../season/timing'

/** What a Rules sheet says: the rules in use, the reasons written for changes, the answers on timing, what was wrong. */
export interface RulesRead {
  rules: Rules
  reasons: RuleReasons
  timing: TimingAnswers
  problems: Problem[]
}

/** Headers by which the columns are found, in lower case. */
export const rulesHeaders = {
  rule: 'rule',
  value: 'value',
  unit: 'unit',
  reason: 'reason for a change'
} as const

interface Columns {
  rule: number
  value: number
  /** -1 where there is none. */
  unit: number
  reason: number
}

const byName = new Map(ruleNames.map((key) => [ruleBook[key].name.toLowerCase(), key]))
const byQuestion = new Map(
  (Object.keys(questions) as QuestionKey[]).map((key) => [questions[key].asks.toLowerCase(), key])
)

/** Raising these asks for a written reason. */
export function isAllowance(rule: RuleName): boolean {
  return ruleBook[rule].topic === 'allowance'
}

const plain = (cell: Cell | undefined): string =>
  typeof cell === 'string' ? cell.trim().toLowerCase().replace(/\s+/g, ' ') : ''

/**
 * Reads a Rules sheet, from its first cell on. A blank value takes the default; one that cannot be used is a problem
 * with its address and the default is used. An allowance above its default is used only with a written reason.
 */
export function readRules(block: CellBlock): RulesRead {
  const problems: Problem[] = []
  const found = headersOf(block)
  if (found === null) {
    problems.push(problem('rules-unreadable', addressIn(block, 0, 0), { sheet: block.sheet }))
    return { rules: rulesWith(), reasons: {}, timing: {}, problems }
  }
  const reading = new RulesReading(block, found.row, found.columns, problems)
  for (let row = 0; row < block.rows.length; row++) reading.add(row)
  const own = checkTogether(reading.placed, problems)
  const reasons: Partial<Record<RuleName, string>> = {}
  for (const rule of Object.keys(own) as RuleName[]) {
    const reason = reading.reasons[rule]
    if (reason !== undefined && own[rule] !== ruleBook[rule].value) reasons[rule] = reason
  }
  return { rules: rulesWith(own), reasons, timing: reading.timing, problems }
}

function headersOf(block: CellBlock): { row: number; columns: Columns } | null {
  for (let row = 0; row < block.rows.length; row++) {
    const cells = (block.rows[row] ?? []).map(plain)
    const rule = cells.indexOf(rulesHeaders.rule)
    const value = cells.indexOf(rulesHeaders.value)
    if (rule < 0 || value < 0) continue
    const columns = { unit: cells.indexOf(rulesHeaders.unit), reason: cells.indexOf(rulesHeaders.reason) }
    return { row, columns: { rule, value, ...columns } }
  }
  return null
}

/** The rows of a Rules sheet, one after the other. */
class RulesReading {
  readonly placed: PlacedRules = new Map()
  readonly reasons: Partial<Record<RuleName, string>> = {}
  readonly timing: TimingAnswers = {}
  private readonly seen = new Map<string, string>()

  constructor(
    private readonly block: CellBlock,
    private readonly header: number,
    private readonly columns: Columns,
    private readonly problems: Problem[]
  ) {
    this.style = styleOf(block.rows.map((cells) => cells[columns.value]))
  }

  /** Which sign stands before the decimals, told from the whole column of values. */
  private readonly style: NumberStyle

  /** The table of rules ends at the first blank row; what stands elsewhere belongs to the user. */
  private inTable = false

  add(row: number): void {
    if (row === this.header) this.inTable = true
    else if ((this.block.rows[row] ?? []).every(isBlank)) this.inTable = false
    else this.readRow(row)
  }

  private readRow(row: number): void {
    const name = plain(this.at(row, this.columns.rule))
    const rule = byName.get(name)
    const question = byQuestion.get(name)
    if (rule !== undefined) this.readRule(rule, row)
    else if (question !== undefined) this.readQuestion(question, row)
    else if (this.inTable && name !== '')
      this.problems.push(
        problem('rule-unknown', this.address(row, this.columns.rule), {
          text: quoted(this.at(row, this.columns.rule))
        })
      )
  }

  private at(row: number, column: number): Cell | undefined {
    return this.block.rows[row]?.[column]
  }

  private address(row: number, column: number): string {
    return addressIn(this.block, row, column)
  }

  private readRule(rule: RuleName, row: number): void {
    const entry = ruleEntry(rule)
    const cell = this.address(row, this.columns.value)
    const first = this.seen.get(rule)
    if (first !== undefined) {
      this.problems.push(problem('rule-twice', cell, { rule: entry.name, other: first }))
      return
    }
    this.seen.set(rule, cell)
    const typed = this.at(row, this.columns.value)
    const named = this.columns.unit < 0 ? null : this.at(row, this.columns.unit)
    const unit = unitInCell(entry, named)
    if (unit === null) {
      const at = this.address(row, this.columns.unit)
      const facts = { rule: entry.name, text: quoted(named), value: showRuleIn(entry, entry.value, 'mm') }
      this.problems.push(problem('rule-unit', at, facts))
      return
    }
    const value = readRule(entry, typed, cell, this.style, unit)
    if (value === null) return
    if (typeof value !== 'number') {
      this.problems.push(value)
      return
    }
    const reason = this.columns.reason < 0 ? '' : textOf(this.at(row, this.columns.reason))
    if (isAllowance(rule) && value > entry.value && reason === '') {
      const facts = { rule: entry.name, value: showRule(entry.value), text: showRule(value) }
      this.problems.push(problem('rule-reason', cell, facts))
      return
    }
    this.placed.set(rule, { value, cell, unit })
    if (reason !== '') this.reasons[rule] = reason
  }

  private readQuestion(key: QuestionKey, row: number): void {
    const typed = this.at(row, this.columns.value)
    if (isBlank(typed)) return
    if (readAnswer(key, typed, this.timing)) return
    const { asks, choices } = questions[key]
    const facts = { question: asks, text: quoted(typed), choices }
    this.problems.push(problem('timing-answer', this.address(row, this.columns.value), facts))
  }
}

function textOf(cell: Cell | undefined): string {
  return cell === null || cell === undefined ? '' : String(cell).trim()
}

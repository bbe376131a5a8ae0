import { readRules } from '../../src/plan/rules/readRules'
import { planByRules } from '../../src/plan/rules/planByRules'
import { planInventory } from '../../src/plan/planInventory'
import { readInventory } from '../../src/inventory/readInventory'
import { cautions } from '../../src/sheets/cautions'
import { describeCutPlan } from '../../src/sheets/cut-plan/cutPlan'
import { describeRules } from '../../src/sheets/rules/rulesSheet'
import type { CellRule, Content, SheetDescription } from '../../src/sheets/sheet'
import { sampleInventory, sampleSheetName } from '../../src/file/sampleInventory'
import { questions } from '../../src/season/questions'
import { isCounted } from '../../src/plan/rules/ruleRange'
import type { Cell, CellBlock } from '../../shared/cells'
import { defaultRules, ruleBook, type RuleName } from '../../shared/rules'

const sheet = describeRules()
const names = Object.keys(ruleBook) as RuleName[]
const table = sheet.tables[0]!.area
const headers = sheet.rows[table.row]!

/** The sheet as it is read back, with these answers typed beside a rule or a question. */
function typed(
  values: Record<string, Cell> = {},
  reasons: Record<string, Cell> = {},
  units: Record<string, Cell> = {},
  own: SheetDescription = sheet
): CellBlock {
  const cellOf = (content: Content): Cell => (typeof content === 'object' ? null : content)
  const rows = own.rows.map((row) => {
    const cells = row.map(cellOf)
    const name = String(cells[0])
    if (name in values) cells[1] = values[name] ?? null
    if (name in units) cells[2] = units[name] ?? null
    if (name in reasons) cells[headers.indexOf('Reason for a change')] = reasons[name] ?? null
    return cells
  })
  return { rows, sheet: 'Rules', top: 0, left: 0 }
}

function cutPlanOf(rules: CellBlock | null): SheetDescription {
  const inventory = readInventory({ rows: sampleInventory, sheet: sampleSheetName, top: 0, left: 0 })
  return describeCutPlan(planInventory(inventory, { date: '2030-05-02', ...planByRules(rules) }))
}

const texts = ({ rows }: SheetDescription) => rows.flat().filter((cell) => typeof cell === 'string')

describe('the rules as a sheet', () => {
  it('has one row per rule with value, unit, default, range, certainty in words and source', () => {
    const body = sheet.rows.slice(table.row + 1, table.row + table.rows)
    expect(body.map((row) => row[0])).toEqual(names.map((name) => ruleBook[name].name))
    names.forEach((name, index) => {
      const { value, unit, low, high, source } = ruleBook[name]
      expect(body[index]!.slice(1, 7)).toEqual([value, unit, value, low, high, null])
      expect(body[index]![8]).toBe(source)
      expect(body[index]![7]).toMatch(
        /^(read in the source|quoted by another source|derived from open data|from memory|common practice, no source|house rule)$/
      )
    })
    expect(headers).toContain('Reason for a change')
  })

  it('read back as it was written gives the defaults, no answer and nothing to say', () => {
    expect(readRules(typed())).toEqual({ rules: defaultRules, reasons: {}, timing: {}, problems: [] })
  })

  describe('refuses while it is typed what the reading would refuse', () => {
    const inRange = new Set(['rule-value', 'rule-range', 'rule-not-whole'])
    const checked = (name: RuleName) => {
      const row = table.row + 1 + names.indexOf(name)
      const found = sheet.rules!.filter(({ area }) => area.row === row)
      expect(found.map(({ area }) => area)).toEqual([{ row, column: 1, rows: 1, columns: 1 }])
      return found[0]!
    }
    /** What a spreadsheet takes by a check of this kind. */
    const taken = ({ takes }: CellRule, value: number | string): boolean => {
      if ('values' in takes) return takes.values.includes(String(value))
      if (typeof value === 'string') return takes.texts === true
      return value >= takes.from && value <= takes.to && (!takes.whole || Number.isInteger(value))
    }
    const read = (name: RuleName, value: number | string): boolean => {
      const said = { [ruleBook[name].name]: value }
      const { problems } = readRules(typed(said, { [ruleBook[name].name]: 'agreed' }))
      return !problems.some(({ code }) => inRange.has(code))
    }

    it.each(names)('%s, at its bounds, within and beyond them', (name) => {
      const { low, high, unit } = ruleBook[name]
      const check = checked(name)
      const step = (high - low) / 1000
      for (const value of [low, high]) expect([value, taken(check, value)]).toEqual([value, true])
      for (const value of [low - step, high + step, low - 1, high + 1])
        expect([value, taken(check, value)]).toEqual([value, false])
      const more = [low + step, high - step, (low + high) / 2, Math.ceil(low), Math.floor(high)]
      for (const value of [low, high, low - step, high + step, low - 1, high + 1, ...more])
        expect([value, taken(check, value)]).toEqual([value, read(name, value)])
      // A length with its unit goes through, and is read; any other text is not for these cells.
      const length = `${String((low + high) / 20)} cm`
      expect([taken(check, length), read(name, length)]).toEqual(
        unit.startsWith('mm') ? [true, true] : [false, false]
      )
    })

    it('and says what to type as the reading says it, in at most 255 characters', () => {
      for (const name of names) {
        const entry = ruleBook[name]
        const { sentence } = checked(name)
        expect(sentence.length).toBeLessThanOrEqual(255)
        expect(sentence.startsWith(`${entry.name}: `)).toBe(true)
        const { problems } = readRules(typed({ [entry.name]: isCounted(entry) ? entry.low + 0.5 : 'some' }))
        expect(sentence.toLowerCase()).toBe(`${entry.name}: ${problems[0]!.remedy}`.toLowerCase())
      }
      expect(checked('cutsPerVisit').sentence).toBe(
        'Live cuts per tree per visit, at most: type a whole number from 1 to 30, or clear the cell to use the default.'
      )
    })
  })

  it('offers yes and no where a question asks for one of them, and the reading takes both', () => {
    const offered = sheet.rules!.filter(({ takes }) => 'values' in takes)
    const asked = offered.map(({ area }) => String(sheet.rows[area.row]![0]))
    expect(asked).toEqual(
      Object.values(questions)
        .filter(({ choices }) => choices === 'yes or no')
        .map(({ asks }) => asks)
    )
    for (const { takes } of offered)
      for (const answer of (takes as { values: readonly string[] }).values)
        expect(
          readRules(typed(Object.fromEntries(asked.map((question) => [question, answer])))).problems
        ).toEqual([])
  })

  it('read back with changes gives them', () => {
    const name = ruleBook.allowedYoung.name
    const read = readRules(
      typed(
        { [name]: 0.35, 'Region of the trees': 'Texas', 'Month of the first visit': 3 },
        { [name]: 'agreed' }
      )
    )
    expect(read.problems).toEqual([])
    expect(read.rules.allowedYoung).toBe(0.35)
    expect(read.reasons).toEqual({ allowedYoung: 'agreed' })
    expect(read.timing).toEqual({ region: 'Texas', visitMonth: 3 })
  })

  it('has the cautions, and no row is wider than the sheet', () => {
    for (const caution of cautions) expect(texts(sheet)).toContain(caution)
    expect(Math.max(...sheet.rows.map(({ length }) => length))).toBe(sheet.widths.length)
  })
})

describe('the rules in inches', () => {
  const inches = describeRules('in-ft')
  const read = (values: Record<string, Cell> = {}, units: Record<string, Cell> = {}) =>
    readRules(typed(values, {}, units, inches))
  const rowOf = (name: RuleName) => inches.rows.find((row) => row[0] === ruleBook[name].name)!
  const lengths = names.filter((name) => ruleBook[name].unit.startsWith('mm'))

  it('have every length in inches, with a range that is not wider, and other rules as they are', () => {
    expect(lengths.length).toBeGreaterThan(15)
    for (const name of names) {
      const { value, unit, low, high } = ruleBook[name]
      const [, shown, shownUnit, standard, from, to] = rowOf(name)
      const per = lengths.includes(name) ? 25.4 : 1
      expect(shownUnit).toBe(unit.replace('mm', 'in'))
      expect(shown).toBe(standard)
      expect(Math.abs(Number(shown) * per - value)).toBeLessThanOrEqual(per * 0.0005 + 1e-12)
      expect(Number(from) * per).toBeGreaterThanOrEqual(low - 1e-9)
      expect(Number(to) * per).toBeLessThanOrEqual(high + 1e-9)
    }
    expect(rowOf('markedCut').slice(1, 3)).toEqual([2, 'in'])
    expect(rowOf('growthMedium').slice(1, 3)).toEqual([0.4, 'in a year'])
  })

  it('read back as they were written are the defaults to the last digit', () => {
    expect(read()).toEqual({ rules: defaultRules, reasons: {}, timing: {}, problems: [] })
  })

  it('take a number in the unit beside it, a length with a unit of its own, and another unit typed beside it', () => {
    const marked = ruleBook.markedCut.name
    expect(read({ [marked]: 3 }).rules.markedCut).toBeCloseTo(76.2, 9)
    expect(read({ [marked]: '7 cm' }).rules.markedCut).toBeCloseTo(70, 9)
    expect(read({ [marked]: 6 }, { [marked]: 'cm' }).rules.markedCut).toBeCloseTo(60, 9)
    expect(read({ [marked]: 60 }, { [marked]: null }).rules.markedCut).toBe(60)
    const { rules, problems } = read({ [ruleBook.growthFast.name]: 0.7 })
    expect([rules.growthFast, problems]).toEqual([expect.closeTo(17.78, 9), []])
  })

  it('say what is wrong in inches, with the cell', () => {
    const marked = ruleBook.markedCut.name
    const far = read({ [marked]: 50 })
    expect(far.rules).toEqual(defaultRules)
    expect(far.problems[0]!.message).toMatch(
      /at Rules!B\d+ is 50, outside its range of 0\.985 to 5\.905 \(in\); its default 2 is used/
    )
    expect(read({ [marked]: 'two' }).problems[0]!.remedy).toContain('from 0.985 to 5.905 (in)')
    const odd = read({ [marked]: 3 }, { [marked]: 'hands' })
    expect(odd.rules).toEqual(defaultRules)
    expect(odd.problems.map(({ code, cell }) => [code, /^Rules!C\d+$/.test(cell)])).toEqual([
      ['rule-unit', true]
    ])
    const order = read({ [marked]: 5, [ruleBook.reasonedCut.name]: 3 })
    expect(order.problems[0]!.message).toContain('is 5, more than')
  })

  it('and a change is printed in the units of the inventory', () => {
    const inventory = readInventory({ rows: sampleInventory, sheet: sampleSheetName, top: 0, left: 0 })
    const marked = typed({ [ruleBook.markedCut.name]: 3 }, {}, {}, inches)
    const plan = planInventory(inventory, { date: '2030-05-02', ...planByRules(marked) })
    expect(plan.system).toBe('in-ft')
    const printed = texts(describeCutPlan(plan))
    expect(printed).toContain(`${ruleBook.markedCut.name} (in)`)
    expect(printed).toContain('default 2')
  })
})

describe('the cut plan', () => {
  it('prints each changed rule with its reason', () => {
    const { name } = ruleBook.allowedYoung
    const printed = cutPlanOf(typed({ [name]: 0.35 }, { [name]: 'vigorous young trees, agreed' }))
    const start = printed.rows.findIndex((row) => row[0] === 'Rules changed from their defaults')
    expect(printed.rows[start + 2]).toEqual(
      expect.arrayContaining(['0.35', 'default 0.25', `${name} (share)`, 'vigorous young trees, agreed'])
    )
    expect(texts(cutPlanOf(typed()))).not.toContain('Rules changed from their defaults')
  })

  it('prints a closed window above the first cut, and what is known of the season with its source', () => {
    const printed = cutPlanOf(typed({ 'Region of the trees': 'Wisconsin' }))
    const head = printed.rows.slice(0, printed.tables[0]!.area.row)
    const closed = head.filter((row) => row[0] === 'Closed window')
    expect(closed).toHaveLength(1)
    expect(closed[0]![1]).toMatch(/^Trees T0\d.* Wisconsin, oak wilt: closed from 1 April to 31 July/)
    expect(texts(printed)).toContain('Season of the work')
    expect(texts(printed).join()).toContain('Natural Resources, oak wilt (read in the source)')
  })

  it('asks for the region where none is given, and says of no window that it is open', () => {
    const printed = texts(cutPlanOf(null))
    expect(printed.some((text) => text.startsWith('No region is given'))).toBe(true)
    expect(printed).not.toContain('Closed window')
    expect(printed).not.toContain('Open')
  })
})

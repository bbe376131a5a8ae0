import { wholeProgram } from '../../src/price/offers'
import { estimatePlan } from '../../src/price/estimatePlan'
import { describeDocuments, planDocuments } from '../../src/sheets/describeDocuments'
import { describeStartRates } from '../../src/sheets/rates/ratesSheet'
import { describeRules } from '../../src/sheets/rules/rulesSheet'
import { samplePlan } from './samplePlan'

const plan = samplePlan()
const sheets = [
  ...describeDocuments(planDocuments, plan, wholeProgram(estimatePlan(plan))),
  describeRules(),
  describeStartRates('in-ft')
]
const following = sheets.filter(({ conditionalLooks = [] }) => conditionalLooks.length > 0)

describe.each(following.map((sheet) => [sheet.name, sheet] as const))(
  'looks that follow %s',
  (_name, sheet) => {
    const all = sheet.conditionalLooks!

    test('are never by color alone, and the sheet says in words what they mean', () => {
      const words = sheet.rows
        .flat()
        .filter((cell) => typeof cell === 'string')
        .join(' ')
        .toLowerCase()
      for (const { format } of all) {
        expect(format.bold === true || format.italic === true).toBe(true)
        if (format.bold) expect(words).toContain('bold')
        if (format.italic) expect(words).toContain('italic')
        if (format.fill !== undefined) expect(words).toContain('on a tint')
      }
    })

    test('are a few rules over whole columns, read for their first row', () => {
      expect(all.length).toBeLessThanOrEqual(3)
      for (const { area, formula } of all) {
        expect(area.row + area.rows).toBeLessThanOrEqual(sheet.rows.length)
        expect(area.rows).toBeGreaterThan(10)
        expect(formula).toMatch(new RegExp(`^=.*\\$[A-Z]+${String(area.row + 1)}(?!\\d)`))
        // Excel refuses lists in braces here, and no name of ours is sure to keep its spelling.
        expect(formula).not.toMatch(/[{}]|[A-Za-z]_[a-z]/)
      }
    })
  }
)

test('a plan without cuts has none', () => {
  const bare = { ...plan, trees: [] }
  for (const sheet of describeDocuments(['cut-plan', 'estimate'], bare, wholeProgram(estimatePlan(bare))))
    expect(sheet.conditionalLooks ?? []).toEqual([])
})

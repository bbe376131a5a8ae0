import { isAllowance, readRules } from '../../src/plan/rules/readRules'
import { ruleChanges } from '../../src/plan/rules/ruleChanges'
import { planByRules } from '../../src/plan/rules/planByRules'
import type { Cell, CellBlock } from '../../shared/cells'
import { defaultRules, ruleBook, type RuleName } from '../../shared/rules'
import { block, limbHeaders, limbRow, planOf } from './trees'

/** A Rules sheet of these rows under its headers, from A1 of a sheet called My rules. */
function rulesOf(...rows: Cell[][]): CellBlock {
  return { rows: [['Rule', 'Value', 'Reason for a change'], ...rows], sheet: 'My rules', top: 0, left: 0 }
}

const named = (rule: RuleName) => ruleBook[rule].name
const codes = (sheet: CellBlock) => readRules(sheet).problems.map(({ code, cell }) => `${code} ${cell}`)

describe('a Rules sheet', () => {
  it('without values of one’s own gives the defaults and nothing to say', () => {
    const rows = (Object.keys(ruleBook) as RuleName[]).map((rule) => [named(rule), ruleBook[rule].value])
    expect(readRules(rulesOf(...rows))).toEqual({
      rules: defaultRules,
      reasons: {},
      timing: {},
      problems: []
    })
    expect(readRules(rulesOf([named('leastCut'), null])).rules).toEqual(defaultRules)
  })

  it('gives a value that may be used, and the reason written beside it', () => {
    const read = readRules(rulesOf([named('cutsPerVisit'), 4, 'small crews']))
    expect(read.rules).toEqual({ ...defaultRules, cutsPerVisit: 4 })
    expect(read.reasons).toEqual({ cutsPerVisit: 'small crews' })
    expect(ruleChanges(read.rules, read.reasons)).toEqual([
      {
        name: named('cutsPerVisit'),
        rule: 'cutsPerVisit',
        unit: 'cuts',
        from: 6,
        to: 4,
        reason: 'small crews'
      }
    ])
  })

  it('reads shares as percentages and lengths with their unit', () => {
    const { rules, problems } = readRules(
      rulesOf([named('allowedYoung'), '15 %'], [named('markedCut'), '3 in'], [named('leastCut'), '1,5 cm'])
    )
    expect(problems).toEqual([])
    expect(rules.allowedYoung).toBeCloseTo(0.15, 12)
    expect(rules.markedCut).toBeCloseTo(76.2, 12)
    expect(rules.leastCut).toBeCloseTo(15, 12)
  })

  it.each<[string, RuleName, Cell, string]>([
    ['a text', 'leastGain', 'a little', 'rule-value'],
    ['an error', 'leastGain', '#N/A', 'rule-value'],
    ['a truth value', 'leastGain', true, 'rule-value'],
    ['a percentage of a length', 'leastCut', '50 %', 'rule-value'],
    ['a number below its range', 'leastCut', -10, 'rule-range'],
    ['a whole percentage where a share belongs', 'crownRatioGoal', 60, 'rule-range'],
    ['half a year', 'intervalYoung', 2.5, 'rule-not-whole'],
    ['half a cut', 'cutsPerVisit', 4.5, 'rule-not-whole']
  ])('uses the default where it holds %s, and says where', (_what, rule, cell, code) => {
    const sheet = rulesOf([named('leaderReach'), null], [named(rule), cell, 'because'])
    expect(codes(sheet)).toEqual([`${code} 'My rules'!B3`])
    const { rules, reasons, problems } = readRules(sheet)
    expect(rules).toEqual(defaultRules)
    expect(reasons).toEqual({})
    expect(problems[0]?.message).toContain(named(rule))
    expect(problems[0]?.remedy).not.toMatch(/[{}]/)
  })

  it('finds its columns in any order, below a title, and leaves notes of one’s own alone', () => {
    const sheet: CellBlock = {
      rows: [
        ['Rules', null, null],
        ['Reason for a change', ' value ', 'RULE'],
        ['agreed', 0.3, named('allowedYoung')],
        [null, null, null],
        [null, 'mine', 'a note']
      ],
      sheet: 'Rules',
      top: 0,
      left: 0
    }
    const { rules, problems } = readRules(sheet)
    expect(rules.allowedYoung).toBe(0.3)
    expect(problems).toEqual([])
  })

  it('says where it has no headers, and where a row names no rule or names one twice', () => {
    expect(codes({ ...rulesOf(), rows: [['Rules'], ['anything']] })).toEqual([
      "rules-unreadable 'My rules'!A1"
    ])
    const sheet = rulesOf(['Least of all', 3], [named('leastCut'), 12], [named('leastCut'), 14])
    expect(codes(sheet)).toEqual(["rule-unknown 'My rules'!A2", "rule-twice 'My rules'!B4"])
    expect(readRules(sheet).rules.leastCut).toBe(12)
  })
})

describe('raising an allowance', () => {
  const allowances = (Object.keys(ruleBook) as RuleName[]).filter(isAllowance)

  it('is what is asked of every allowed removal and share for vigor', () => {
    expect(allowances).toEqual([
      'allowedPlanting',
      'allowedYoung',
      'allowedMedium',
      'allowedMature',
      'allowedOld',
      'vigorGood',
      'vigorFair',
      'vigorPoor'
    ])
  })

  it('needs a written reason: without one the default is used, and the reason’s cell is named', () => {
    const sheet = rulesOf([named('allowedYoung'), 0.35, '  '])
    expect(codes(sheet)).toEqual(["rule-reason 'My rules'!B2"])
    const { rules, problems } = readRules(sheet)
    expect(rules).toEqual(defaultRules)
    expect(problems[0]?.remedy).toContain('under “Reason for a change”')
  })

  it('is used with a reason, and lowering one needs none', () => {
    const sheet = rulesOf([named('allowedYoung'), 0.35, 'warm climate'], [named('allowedMature'), 0.05])
    const { rules, reasons, problems } = readRules(sheet)
    expect(problems).toEqual([])
    expect([rules.allowedYoung, rules.allowedMature]).toEqual([0.35, 0.05])
    expect(reasons).toEqual({ allowedYoung: 'warm climate' })
  })

  it('reaches the plan, and the plan says so', () => {
    const inventory = block(
      limbHeaders,
      limbRow('A', null, null, 2, 10, { role: 'leader' }),
      limbRow('B', 90, 100, 2, 9)
    )
    const sheet = rulesOf([named('allowedYoung'), 0.4, 'agreed with the owner'])
    const raised = planOf(inventory, planByRules(sheet))
    expect(planOf(inventory).trees[0]?.allowedRemoval).toBe(0.25)
    expect(raised.trees[0]?.allowedRemoval).toBe(0.4)
    expect(raised.ruleChanges?.map(({ to, reason }) => [to, reason])).toEqual([
      [0.4, 'agreed with the owner']
    ])
    const unreasoned = planOf(inventory, planByRules(rulesOf([named('allowedYoung'), 0.4])))
    expect(unreasoned.trees[0]?.allowedRemoval).toBe(0.25)
    expect(unreasoned.problems.map(({ code }) => code)).toContain('rule-reason')
  })
})

describe('rules that contradict each other', () => {
  it('are taken back, with every pair that a default then contradicts', () => {
    const sheet = rulesOf([named('subordinateUpTo'), 0.65], [named('gainingUpTo'), 0.75])
    expect(codes(sheet)).toEqual(["rule-order 'My rules'!B3", "rule-order 'My rules'!B2"])
    expect(readRules(sheet).rules).toEqual(defaultRules)
  })

  it('weights of the priority have to add up to 1', () => {
    expect(codes(rulesOf([named('weightRatio'), 0.6]))).toEqual(["rule-weights 'My rules'!B2"])
    const { rules, problems } = readRules(rulesOf([named('weightRatio'), 0.55], [named('weightReach'), 0.2]))
    expect(problems).toEqual([])
    expect([rules.weightRatio, rules.weightReach]).toEqual([0.55, 0.2])
  })

  it('some weight of the leader has to count', () => {
    const none = (['leaderUpright', 'leaderDiameter', 'leaderHeight', 'leaderBark'] as const).map(
      (rule): Cell[] => [named(rule), 0]
    )
    expect(codes(rulesOf(...none))).toEqual(["rule-weights-none 'My rules'!B2"])
  })
})

describe('the questions on the season', () => {
  const answer = (question: string, cell: Cell) => readRules(rulesOf([question, cell]))

  it('are answered in words', () => {
    expect(answer('Region of the trees', ' Dane County, Wisconsin ').timing).toEqual({
      region: 'Dane County, Wisconsin'
    })
    for (const month of [5, '5', 'May', 'may'])
      expect(answer('Month of the first visit', month).timing).toEqual({ visitMonth: 5 })
    expect(answer('Month of the first visit', 'Sept.').timing).toEqual({ visitMonth: 9 })
    expect(answer('Was an active nest found?', 'No').timing).toEqual({ nest: false })
    expect(answer('Drought or frost stress this season?', 'yes').timing).toEqual({ stress: true })
    expect(answer('Are new leaves coming out at the visit?', null).timing).toEqual({})
  })

  it('an answer that cannot be read counts as none, and says so', () => {
    for (const [question, cell] of [
      ['Month of the first visit', 13],
      ['Month of the first visit', 'J'],
      ['Was an active nest found?', 'perhaps'],
      ['Region of the trees', 12]
    ] as const) {
      const { timing, problems } = answer(question, cell)
      expect([question, timing, problems.map(({ code }) => code)]).toEqual([question, {}, ['timing-answer']])
    }
  })
})

it('every rule has a name of its own', () => {
  const names = Object.values(ruleBook).map(({ name }) => name.toLowerCase())
  expect(new Set(names).size).toBe(names.length)
})

/** The round sheet, read from its rows as a crew reads it, and compared with the plan and the estimate. */
import { noDetails } from '../../src/details/detailsBook'
import type { Cell } from '../../shared/cells'
import { defaultRules, rulesWith } from '../../shared/rules'
import { readInventory } from '../../src/inventory/readInventory'
import { judgedOf } from '../../src/plan/judged'
import type { Plan } from '../../src/plan/plan'
import { planInventory } from '../../src/plan/planInventory'
import { estimatePlan } from '../../src/price/estimatePlan'
import { inventedRatesIn } from '../../src/price/rates'
import { firstVisit, someTrees } from '../../src/price/offers'
import { cautions } from '../../src/sheets/cautions'
import { pageRoom, pagesTaken } from '../../src/sheets/pageBreaks'
import { describeRoundSheet, type RoundSheetOptions } from '../../src/sheets/round-sheet/roundSheet'
import { reachOf } from '../../src/sheets/round-sheet/reach'
import { isFormula, type Content, type SheetDescription } from '../../src/sheets/sheet'
import { planOf, samplePlan, withClosedWindow } from './samplePlan'
import { formulasOf, precedents } from './sheetFormulas'
import { formatAt, promises, runningText } from './sheetTexts'
import { youngTrees } from './youngTrees'

interface ReadLine {
  readonly row: number
  readonly tree: string
  readonly cuts: readonly string[]
  readonly from: string
  readonly minutes: number
  readonly day: number
  readonly place: string
}

/** What stands on the lines of a sheet, with the day and the place that they stand under. */
function linesOf({ rows, page }: SheetDescription): ReadLine[] {
  const headers = rows[page.titleRow!]!.map(String)
  const at = (name: string) => headers.findIndex((header) => header.startsWith(name))
  const lines: ReadLine[] = []
  let [day, place] = [0, '']
  rows.slice(page.titleRow! + 1).forEach((row, index) => {
    const first = String(row[0])
    const opened = /^Day (\d+):/.exec(first)
    if (opened !== null) [day, place] = [Number(opened[1]), '']
    else if (first === '☐')
      lines.push({
        row: page.titleRow! + 1 + index,
        tree: String(row[at('Tree')]),
        cuts: row.slice(at('Cut 1'), at('Cut 3') + 1).filter((cell): cell is string => cell !== null),
        from: String(row[at('From')]),
        minutes: row[at('Crew min')] as number,
        day,
        place
      })
    else place = first.replace(/(, continued)?: \d+ trees?$/, '')
  })
  return lines
}

/** The ids in the lists before the lines, by the heading that they stand under. */
function listsOf({ rows, page }: SheetDescription): Map<string, string[]> {
  const lists = new Map<string, string[]>()
  let open: string[] | null = null
  for (const row of rows.slice(0, page.titleRow!)) {
    const text = String(row[0] ?? '')
    const heading = /^(Not on this round|Not judged|No cut now|Skip)/.exec(text)?.[1]
    if (heading !== undefined) lists.set(heading, (open = []))
    else open?.push(...(text.replace(/^.*?: /, '').match(/\b[A-Z]+\d+\b/g) ?? []))
  }
  return lists
}

const roundOf = (plan: Plan, options?: RoundSheetOptions) =>
  describeRoundSheet(plan, firstVisit(estimatePlan(plan)), options)

const plans: [string, Plan][] = [
  ['the sample', samplePlan()],
  ['120 young trees along streets', planOf(youngTrees(120, { start: 3 }))],
  ['90 young trees without a place', planOf(youngTrees(90, { start: 11, places: false }))],
  ['60 more', planOf(youngTrees(60, { start: 29 }))]
]

describe.each(plans)('%s', (_name, plan) => {
  const estimate = estimatePlan(plan)
  const sheet = describeRoundSheet(plan, firstVisit(estimate))
  const lines = linesOf(sheet)
  const lists = listsOf(sheet)
  const planned = new Map(plan.trees.map((tree) => [tree.tree.id, tree]))
  const cutsOf = (id: string) => planned.get(id)!.visits[0]!.cuts

  test('every tree stands once: on a line or in one list', () => {
    const all = [...lines.map(({ tree }) => tree), ...[...lists.values()].flat()]
    expect(all.sort()).toEqual(plan.trees.map(({ tree }) => tree.id).sort())
  })

  test('a tree is skipped only where all was judged and nothing is left to do or to look at', () => {
    for (const id of lists.get('Skip') ?? []) {
      const tree = planned.get(id)!
      expect([id, judgedOf(tree), tree.visits[0]!.cuts.length]).toEqual([id, 'all', 0])
      expect(tree.outcomes.filter(({ outcome }) => outcome === 'wait' || outcome === 'keep')).toEqual([])
    }
    for (const tree of plan.trees.filter(
      (each) => judgedOf(each) === 'none' || judgedOf(each) === 'no limbs'
    ))
      expect(lists.get('Not judged')).toContain(tree.tree.id)
  })

  test('a line has one to three cuts, those that must be made first, and says how many more there are', () => {
    for (const { tree, cuts } of lines) {
      const own = cutsOf(tree)
      const named = cuts.filter((text) => /: (back|broken|dead|ends|raise|remove|rubbing)/.test(text)).length
      expect([tree, named]).toEqual([tree, Math.min(3, own.length)])
      const musts = own.filter(({ must }) => must).length
      cuts.slice(0, named).forEach((text, at) => {
        expect([tree, text, text.startsWith('! ')]).toEqual([tree, text, at < musts])
      })
      const more = /\+(\d+)/.exec(cuts.join(' '))?.[1] ?? '0'
      expect([tree, Number(more)]).toEqual([tree, Math.max(0, own.length - 3)])
    }
  })

  test('the first cut on a line is the worst of those that must be made, otherwise of all', () => {
    for (const { tree, cuts } of lines) {
      const own = cutsOf(tree)
      const obliged = own.filter(({ obligation }) => obligation !== null)
      const rest = own.filter(({ obligation }) => obligation === null)
      const worst = obliged[0] ?? rest.reduce((most, cut) => (cut.priority > most.priority ? cut : most))
      expect(cuts[0]!.replace('! ', '')).toMatch(new RegExp(`^${worst.limb.id}[ :]`))
    }
  })

  test('minutes are the hours of the estimate, to the tenth', () => {
    for (const { tree, minutes } of lines) {
      const line = estimate.lines.find((each) => each.tree === tree && each.visit === 1)!
      expect([tree, Math.round(minutes * 10)]).toEqual([tree, Math.round(line.crewHours * 600)])
    }
  })

  test('nothing on the round is out of reach, and every tree that is says so', () => {
    const isHigh = (id: string) =>
      cutsOf(id).some((cut) => reachOf(cut, { rules: defaultRules, rates: estimate.rates }) === 'beyond')
    expect(lines.filter(({ tree }) => isHigh(tree))).toEqual([])
    for (const { tree, from } of lines)
      if (from === 'ground')
        for (const { work } of cutsOf(tree)) expect(work.height).toBeLessThanOrEqual(7 * 0.3048 + 1e-9)
  })

  test('a day holds no more than the productive hours, and each stands under its number', () => {
    const days = Math.max(0, ...lines.map(({ day }) => day))
    for (let day = 1; day <= days; day++) {
      const own = lines.filter((line) => line.day === day)
      const minutes = own.reduce((sum, line) => sum + line.minutes, 0)
      expect(own.length).toBeGreaterThan(0)
      if (own.length > 1) expect(minutes).toBeLessThanOrEqual(estimate.rates.dayHours * 60 + 1e-6)
    }
    expect(lines.map(({ day }) => day)).toEqual(lines.map(({ day }) => day).sort((a, b) => a - b))
  })

  test('the sums are formulas over the minutes below them, and the last one is that of all lines', () => {
    const formulas = formulasOf(sheet)
    const value = new Map<string, number>()
    const column = (sheet.rows[sheet.page.titleRow!] ?? []).length - 1
    const needed = (formula: string) =>
      precedents(formula, 0, [sheet]).map((cell) => cell.replace(/^.*!/, ''))
    for (const { row, minutes } of lines) value.set(`${String.fromCharCode(65 + column)}${row + 1}`, minutes)
    const pending = [...formulas]
    while (pending.length > 0) {
      const at = pending.findIndex(({ formula }) => needed(formula).every((cell) => value.has(cell)))
      expect(at).toBeGreaterThanOrEqual(0)
      const [{ address, formula, value: stored }] = pending.splice(at, 1) as [(typeof formulas)[number]]
      const sum = needed(formula).reduce((all, cell) => all + value.get(cell)!, 0)
      expect([address, Number(stored)]).toEqual([address, expect.closeTo(sum, 6)])
      value.set(address, sum)
    }
    const all = lines.reduce((sum, { minutes }) => sum + minutes, 0)
    const whole = sheet.rows.filter((row) => /^(Day 1:|All \d+ days:)/.test(String(row[0]))).at(-1)
    expect(whole === undefined ? 0 : (whole.at(-1) as { value: number }).value).toBeCloseTo(all, 6)
    expect(formulas.length > 0).toBe(lines.length > 0)
  })

  test('is set in 8 points or more, one page across', () => {
    sheet.rows.forEach((row, r) => {
      row.forEach((cell, c) => {
        if (cell !== null) expect([r, c, Number(formatAt(sheet, r, c).size) >= 8]).toEqual([r, c, true])
      })
    })
    const inches = sheet.widths.reduce((sum, width) => sum + width * 7 + 5, 0) / 96
    expect(inches).toBeLessThanOrEqual(11 - (2 * 28) / 72)
  })

  test('gives the cautions where it begins and on every page, and promises nothing', () => {
    const text = runningText(sheet)
    for (const caution of cautions) expect(text).toContain(caution)
    expect(sheet.page.footer).toContain('Wires: stop and call')
    expect(promises(text, cautions)).toEqual([])
  })
})

const worstOf = (plan: Plan, id: string): [boolean, number] => {
  const { cuts } = plan.trees.find(({ tree }) => tree.id === id)!.visits[0]!
  return [cuts.some(({ must }) => must), Math.max(...cuts.map(({ priority }) => priority))]
}

describe('the order of a round', () => {
  test('goes by streets, the worst trees of each first', () => {
    const plan = plans[1]![1]
    const lines = linesOf(roundOf(plan))
    const places = lines.map(({ place }) => place).filter((place, at, all) => place !== all[at - 1])
    expect(new Set(places).size).toBeGreaterThan(4)
    expect(places.filter((place, at) => places.indexOf(place) !== at)).toEqual(
      // A street that goes on in the next day stands below its name again.
      places.filter((place, at) => places[at - 1] === place)
    )
    lines.slice(1).forEach((line, at) => {
      const before = lines[at]!
      expect(plan.trees.find(({ tree }) => tree.id === line.tree)!.tree.site).toContain(line.place)
      if (before.place !== line.place) return
      const [[must, priority], [mustBefore, priorityBefore]] = [
        worstOf(plan, line.tree),
        worstOf(plan, before.tree)
      ]
      expect(Number(mustBefore)).toBeGreaterThanOrEqual(Number(must))
      if (must === mustBefore) expect(priorityBefore).toBeGreaterThanOrEqual(priority)
    })
  })

  test('goes by tags where no place is given: past those that must be dealt with, then past the others', () => {
    const plan = plans[2]![1]
    const lines = linesOf(roundOf(plan))
    const number = ({ tree }: ReadLine) => Number(tree.slice(1))
    const must = lines.filter(({ tree }) => worstOf(plan, tree)[0])
    const rest = lines.filter(({ tree }) => !worstOf(plan, tree)[0])
    expect(must.length).toBeGreaterThan(10)
    expect(rest.length).toBeGreaterThan(5)
    expect(lines.map(number)).toEqual([
      ...must.map(number).sort((a, b) => a - b),
      ...rest.map(number).sort((a, b) => a - b)
    ])
  })

  const placesFor = (sites: readonly string[]): string[] => {
    const rows = youngTrees(1, { start: 5 })
    const [headers = [], ...limbs] = rows
    const all = sites.flatMap((site, at) =>
      limbs.map((row, limb): Cell[] => [`Z${String(at + 1)}`, limb === 0 ? site : null, ...row.slice(2)])
    )
    return [...new Set(linesOf(roundOf(planOf([headers, ...all]))).map(({ place }) => place))]
  }

  test.each<[string, string[], string[]]>([
    ['zones', ['North', 'north', 'South', 'South'], ['North', 'South']],
    [
      'a zone before a comma',
      ['Zone A, bed 1', 'Zone A, bed 2', 'Zone B, bed 1', 'Zone B, bed 2'],
      ['Zone A', 'Zone B']
    ],
    ['numbered zones', ['Zone 1', 'Zone 1', 'Zone 2', 'Zone 2'], ['Zone 1', 'Zone 2']],
    ['house numbers before', ['1 Oak St', '3 Oak St', '12a Elm St', '14-16 Elm St'], ['Oak St', 'Elm St']],
    [
      'house numbers behind',
      ['Birkenweg 1', 'Birkenweg 3', 'Talstraße 12 b', 'Talstraße 14'],
      ['Birkenweg', 'Talstraße']
    ],
    [
      'a town before the street',
      ['Quarryville, Oak St 1', 'Quarryville, Oak St 3', 'Quarryville, Elm St 2', 'Quarryville, Elm St 4'],
      ['Quarryville, Oak St', 'Quarryville, Elm St']
    ],
    ['one place', ['Oak St', 'Oak St', 'Oak St'], ['Oak St']]
  ])('%s', (_name, sites, places) => {
    expect(placesFor(sites)).toEqual(places)
  })
})

/** Five invented trees: hours by the start values of the rates, minutes of cuts 1.5 up to 1 in, 3 up to 2 in. */
const byHand: Cell[][] = [
  'Tree | Location | Species | Trunk dia (in) | Height (ft) | Crown base (ft) | Life stage | Vigor | Limb | Role | Limb dia (in) | Stem dia (in) | Origin (ft) | Tip (ft) | Bearing | Live or dead'.split(' | '),
  ['H1', '1 Alder Row', 'Red maple (invented)', 3, 16, 4, 'young', 'good', 'A', 'leader', 2.5, null, 4, 16, null, 'live'],
  ['H1', null, null, null, null, null, null, null, 'B', null, 0.8, 2, 6, 9, 90, 'dead'],
  ['H2', '3 Alder Row', 'Red maple (invented)', 3, 20, 4, 'young', 'good', 'A', 'leader', 2.5, null, 4, 20, null, 'live'],
  ['H2', null, null, null, null, null, null, null, 'B', null, 1.1, 2, 12, 15, 225, 'dead'],
  ['H3', '5 Alder Row', 'Red maple (invented)', 3, 24, 4, 'young', 'good', 'A', 'leader', 2.5, null, 4, 24, null, 'live'],
  ['H3', null, null, null, null, null, null, null, 'B', null, 0.8, 2, 18, 20, 0, 'dead'],
  ['H4', '7 Alder Row', 'Red maple (invented)', 3, 16, 4, 'young', 'good', 'A', 'leader', 2.5, null, 4, 16, null, 'live'],
  ['H4', null, null, null, null, null, null, null, 'B', null, 0.5, 2, 6, 9, 90, 'live'],
  ['H5', '9 Alder Row', 'Red maple (invented)', 3, 16, 4, 'young', 'good', null, null, null, null, null, null, null, null],
  ['H6', '11 Alder Row', 'Red maple (invented)', 3, 16, 4, 'young', 'good', 'B', null, 'thick', 2, 6, 9, 90, 'live']
] // prettier-ignore

describe('a round worked by hand', () => {
  const plan = planOf(byHand)
  const sheet = roundOf(plan)

  // One of three persons with a pole: (3 + 1.5) / 3 = 1.5 minutes, and (3 + 3 × 1.3 above 10 ft) / 3 = 2.3.
  test('0.03 and 0.04 crew-hours are 1.8 and 2.4 crew-minutes, together 0.07 and 4.2', () => {
    expect(linesOf(sheet).map(({ tree, cuts, from, minutes }) => [tree, ...cuts, from, minutes])).toEqual([
      ['H1', "! B E 6': dead, remove", 'ground', 1.8],
      ['H2', "! B SW 12': dead, remove", 'pole', 2.4]
    ])
    const day = sheet.rows.find((row) => String(row[0]).startsWith('Day 1'))!
    expect(day[0]).toBe('Day 1: 2 trees, 0.07 of 7 crew-hours')
    expect(day.at(-1)).toMatchObject({ value: 4.2 })
    expect(sheet.rows.some((row) => row[0] === 'Alder Row: 2 trees')).toBe(true)
  })

  test('each other tree stands in the list of its reason', () => {
    const text = runningText(sheet)
    expect(text).toContain('Ladder or climb: see work order: H3.')
    expect(text).toContain('Next visit 2028: H4.')
    expect(text).toContain('No limbs listed: H5.')
    expect(text).toContain('Limbs not judged: H6.')
  })

  test.each([
    [1500, ['pole', 'pole']],
    [3700, ['ground', 'ground']]
  ])('the reach of a hand on the Rules sheet, %d mm, moves it', (handReach, from) => {
    const inventory = readInventory({ rows: byHand, sheet: 'Trees', top: 0, left: 0 })
    const rules = rulesWith({ handReach })
    const moved = roundOf(planInventory(inventory, { date: '2026-03-02', rules }))
    expect(linesOf(moved).map((line) => line.from)).toEqual(from)
    expect(runningText(moved)).toContain('Rule changed for this plan:')
  })

  test.each([
    [{ poleHeight: 3 }, ['ground']],
    [{ poleHeight: 6 }, ['ground', 'pole', 'pole']],
    [{ poleCut: 25 }, ['ground']],
    [{ poleHeight: 0 }, ['ground']]
  ])('the pole of the Rates sheet, %j, moves it', (own, from) => {
    const estimate = estimatePlan(plan, { ...inventedRatesIn['in-ft'], ...own })
    const moved = describeRoundSheet(plan, firstVisit(estimate))
    expect(linesOf(moved).map((line) => line.from)).toEqual(from)
    if ('poleHeight' in own && own.poleHeight === 0)
      expect(runningText(moved)).toContain('no pole is used (Rates sheet).')
  })

  test('keeps to what was ordered, and gives the day the hours of the rates', () => {
    const estimate = estimatePlan(plan, { ...inventedRatesIn['in-ft'], dayHours: 0.05 })
    const ordered = describeRoundSheet(plan, someTrees(estimate, new Set(['H2'])))
    expect(linesOf(ordered).map(({ tree }) => tree)).toEqual(['H2'])
    expect(runningText(ordered)).toContain('Work not in what was ordered: H1 and H3.')
    expect(linesOf(describeRoundSheet(plan, firstVisit(estimate))).map(({ day }) => day)).toEqual([1, 2])
  })

  test('is in the units of the plan, on its paper', () => {
    const metric = roundOf({ ...plan, system: 'cm-m' })
    expect(linesOf(metric).map(({ cuts }) => cuts[0])).toEqual([
      '! B E 1.8 m: dead, remove',
      '! B SW 3.7 m: dead, remove'
    ])
    expect([metric.page.paper, sheet.page.paper]).toEqual(['a4', 'letter'])
  })

  test('says that there is nothing to walk to, where that is so', () => {
    const none = roundOf(planOf([byHand[0]!, ...byHand.slice(5)]))
    expect(linesOf(none)).toEqual([])
    expect(runningText(none)).toContain('No tree of this plan has a cut that this round could make.')
  })
})

test('says whose it is, and which windows are closed', () => {
  const plan = withClosedWindow()
  const text = runningText(
    roundOf(plan, { details: { ...noDetails, client: 'Quarry trust (invented)', site: 'Mill road' } })
  )
  expect(text).toMatch(/Client: Quarry trust \(invented\)[ ·]+Site: Mill road .*Date: 2026-03-02/)
  expect(text).toContain('An invented window is closed.')
})

test('long tags and addresses take no more pages: a place that is named above is not named again', () => {
  const rows = youngTrees(500).map((row, at) =>
    at === 0 || row[1] === null
      ? row.map((cell, column) => (column === 0 && at > 0 ? `WEST-2026-${String(cell)}` : cell))
      : [`WEST-2026-${String(row[0])}`, `${String(row[1])} of the Long Name North`, ...row.slice(2)]
  )
  const sheet = roundOf(planOf(rows))
  const { heights, page } = sheet
  expect(sheet.rows[page.titleRow!]).toContain('Where')
  expect(sheet.rows.some((row) => /^\d+$/.test(String(row[2])))).toBe(true)
  expect(pagesTaken(heights, sheet.rows.length, page.titleRow!, pageRoom(page, [0]))).toBeLessThanOrEqual(12)
})

test.each(['in-ft', 'cm-m'] as const)('500 young trees take at most 12 pages in %s', (system) => {
  for (const start of [1, 2]) {
    const plan: Plan = { ...planOf(youngTrees(500, { start })), system }
    const sheet = roundOf(plan)
    const { heights, rows, page } = sheet
    expect(linesOf(sheet).length).toBeGreaterThan(350)
    expect(page.breaks).toBeUndefined()
    expect(pagesTaken(heights, rows.length, page.titleRow!, pageRoom(page, [0]))).toBeLessThanOrEqual(12)
  }
})

test('a row with two cuts in words of its own is as high as its words need', () => {
  const sheet = roundOf(plans[1]![1])
  const held = sheet.heights.filter(({ row }) => row > sheet.page.titleRow!)
  const heightOf = (row: number) => held.find((each) => row >= each.row && row < each.row + each.rows)!.points
  const long = linesOf(sheet).filter(({ cuts }) => cuts.length === 3 && cuts.some((text) => text.length > 48))
  const short = linesOf(sheet).filter(({ cuts }) => cuts.every((text) => text.length < 30))
  const cell = (content: Content) => isFormula(content)
  expect(short.length).toBeGreaterThan(3)
  for (const { row } of long)
    for (const { row: other } of short) expect(heightOf(row)).toBeGreaterThan(heightOf(other))
  expect(sheet.rows.flat().some(cell)).toBe(true)
})

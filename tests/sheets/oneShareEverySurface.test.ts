/** @jest-environment jsdom */
import { confidenceOf } from '../../src/plan/outlook'
import { noDetails } from '../../src/details/detailsBook'
import { cutPlan as cutPlanFunction } from '../../functions/cutPlan'
import type { Cell } from '../../shared/cells'
import { Money } from '../../shared/money'
import { defaultRules } from '../../shared/rules'
import { altText } from '../../src/drawing/altText'
import { planText } from '../../src/file/planText'
import type { Plan, TreePlan, Visit } from '../../src/plan/plan'
import { estimatePlan } from '../../src/price/estimatePlan'
import { describeClientReport } from '../../src/sheets/client-report/clientReport'
import { describeCutPlan } from '../../src/sheets/cut-plan/cutPlan'
import { describeEstimate } from '../../src/sheets/estimate/estimateSheet'
import type { SheetDescription } from '../../src/sheets/sheet'
import { specificationText } from '../../src/sheets/specification/specification'
import { describeWorkOrder } from '../../src/sheets/work-order/workOrder'
import { shownText } from '../../src/workbench/memory/shownText'
import { offerView } from '../../taskpane/estimate/offerView'
import { treeCard } from '../../taskpane/plan/treeCard'
import { wholeProgram } from '../../src/price/offers'
import { planOf, samplePlan } from './samplePlan'
import { formatAt } from './sheetTexts'

/** Young, fair vigor: 25 % × 0.5 = 12.5 % may be taken, the example of finding F6. Invented, in centimeters and meters. */
const rows: Cell[][] = [
  ['Tree', 'Species', 'Trunk dia (cm)', 'Height (m)', 'Crown base (m)', 'Life stage', 'Vigor'].concat([
    'Clearance (m)',
    'Limb',
    'Role',
    'Limb dia (cm)',
    'Stem dia (cm)',
    'Origin (m)',
    'Tip (m)'
  ]),
  ['M1', 'Sycamore', 22, 9, 1.5, 'young', 'fair', 2.44, 'A', 'leader', 15, null, 2, 9],
  ['M1', null, null, null, null, null, null, null, 'B', null, 11, 14, 2, 8],
  ['M1', null, null, null, null, null, null, null, 'C', null, 8, 13, 3, 7.5],
  ['M1', null, null, null, null, null, null, null, 'D', null, 7, 12, 3.5, 7.25]
]

/** As it is read: the space between a figure and its sign, which may not break, is one of style. */
const read = (text: string): string => text.replace(/[\s\u00a0]+%/g, '%').replace(/[\s\u00a0]+/g, ' ')

/** Every cell of a sheet as the spreadsheet shows it. */
function shown(sheet: SheetDescription): string {
  const cells = sheet.rows.flatMap((row, r) =>
    row.map((content, c) => {
      if (content === null || typeof content === 'boolean') return ''
      const format = String(formatAt(sheet, r, c).numberFormat ?? 'General')
      if (typeof content !== 'object') return shownText(content, format)
      return shownText('date' in content ? content.date : content.value, format)
    })
  )
  return read(cells.join(' '))
}

const noDrawings = {
  weigh: { weighedFor: () => [], confidenceOf },
  drawings: () => new Promise<never>(() => undefined)
}

function cardText(plan: Plan, tree: TreePlan): string {
  const card = treeCard(tree, {
    system: plan.system,
    rules: defaultRules,
    timing: [],
    goToRow: () => undefined,
    specificationOf: () => Promise.resolve(''),
    announce: () => undefined,
    ...noDrawings
  })
  card.open()
  return read(card.element.textContent)
}

function surfacesOf(plan: Plan): Record<string, string> {
  const estimate = estimatePlan(plan)
  const tree = plan.trees[0]!
  const cover = { ...noDetails, client: 'An invented client' }
  return {
    specification: read(specificationText(plan, wholeProgram(estimate))),
    'work order': shown(describeWorkOrder(plan, wholeProgram(estimate))),
    'client report': shown(describeClientReport(plan, wholeProgram(estimate), cover, { drawings: true })),
    'cut plan': shown(describeCutPlan(plan)),
    terminal: read(planText(plan, wholeProgram(estimate))),
    pane: cardText(plan, tree),
    drawing: read(altText(tree, tree.visits[0]!, 'after', plan.system, [], true))
  }
}

const plan = planOf(rows)
const surfaces = surfacesOf(plan)
const first = plan.trees[0]!.visits[0]!

describe('one share, one length, one money, one date, one list, one count', () => {
  test('the tree has several cuts under a ceiling of 12.5 %', () => {
    expect(first.allowedRemoval).toBeCloseTo(0.125, 12)
    expect(first.cuts.length).toBeGreaterThan(1)
  })

  test.each(Object.keys(surfaces))('the ceiling of 12.5 %% is never rounded up: %s', (name) => {
    const text = surfaces[name]!
    expect(text).toContain('12.5%')
    expect(text).not.toMatch(/(?<![\d.])13(\.0)?%/)
  })

  test.each(['cut plan', 'terminal', 'pane', 'drawing'])(
    'each cut has the same dose everywhere: %s',
    (name) => {
      for (const { dose } of first.cuts) {
        const tenths = (Math.round(dose * 1000) / 10).toFixed(1)
        const texts = [`${tenths}%`, `${tenths.replace('.0', '')}%`]
        expect(texts.some((text) => surfaces[name]!.includes(text))).toBe(true)
      }
    }
  )

  test.each(['specification', 'work order', 'client report', 'cut plan', 'terminal', 'pane', 'drawing'])(
    'the tip after a cut is a limit, the same everywhere and never rounded up: %s',
    (name) => {
      const tip = first.cuts.find(({ tipAfter }) => tipAfter !== null)!.tipAfter!
      expect(surfaces[name]).toContain((Math.floor(tip * 10 + 1e-6) / 10).toFixed(1).replace(/\.0$/, ''))
    }
  )

  test.each(['specification', 'work order', 'cut plan', 'terminal', 'pane'])(
    'the least lateral is never rounded down: %s',
    (name) => {
      const lateral = first.cuts.find(({ lateralMin }) => lateralMin !== null)!.lateralMin! / 10
      expect(surfaces[name]).toContain((Math.ceil(lateral * 10 - 1e-6) / 10).toFixed(1).replace(/\.0$/, ''))
    }
  )

  test.each(['work order', 'drawing'])('a clearance is never rounded down: %s', (name) => {
    expect(surfaces[name]).toContain('2.5 m')
    expect(surfaces[name]).not.toContain('2.4 m')
  })

  test('an amount is written alike', () => {
    const dear = estimatePlan(plan)
    const line = { ...dear.lines[0]!, price: new Money('12345.6') }
    const sums = { lines: [line], subtotal: line.price, tax: new Money(0), total: line.price }
    const offer = { ...wholeProgram(dear), ...sums }
    const pane = document.createElement('div')
    pane.append(...offerView(offer).filter((child) => child instanceof Node))
    expect(pane.textContent).toContain('12,345.60')
    expect(planText(plan, offer)).toContain('12,345.60')
    expect(shown(describeEstimate(offer, plan))).toContain('12,345.60')
    expect(shown(describeClientReport(plan, offer))).toContain('12,345.60')
  })

  test.each(['specification', 'work order', 'client report', 'cut plan', 'terminal'])(
    'the date is written alike: %s',
    (name) => {
      expect(surfaces[name]).toContain('2026-03-02')
    }
  )

  test('limbs are listed and counted alike', () => {
    // Raised and shortened at one visit, B is named once; nothing on C and D is worth its foliage.
    expect(surfaces['specification']).toContain('Limb B only;')
    expect(surfaces['specification']).toContain('1 tree')
    expect(surfaces['cut plan']).toContain('1 tree and 4 limbs')
    expect(surfaces['terminal']).toContain('1 tree and 4 limbs')
  })
})

describe('doses that stand beside their sum', () => {
  const sample = samplePlan()
  const sheet = describeCutPlan(sample)
  const table = sheet.tables[0]!.area
  const headers = sheet.rows[table.row] as string[]
  const body = sheet.rows.slice(table.row + 1, table.row + table.rows)
  const cell = (row: (typeof body)[number], header: string) => row[headers.indexOf(header)] as number
  const visits = new Map<string, typeof body>()
  for (const row of body) {
    const key = `${String(cell(row, 'Tree'))} ${String(cell(row, 'Visit'))}`
    visits.set(key, [...(visits.get(key) ?? []), row])
  }
  const tenths = (share: number) => Math.round(share * 1000)

  test('add up to it in the cut plan and never pass what is allowed', () => {
    expect(visits.size).toBeGreaterThan(15)
    for (const rows of visits.values()) {
      const sum = rows.reduce((all, row) => all + tenths(cell(row, 'Foliage removed')), 0)
      expect(sum).toBe(tenths(cell(rows[0]!, 'Foliage removed at the visit')))
      expect(sum).toBeLessThanOrEqual(tenths(cell(rows[0]!, 'Allowed removal')))
    }
  })

  test('add up to it in the terminal', () => {
    const visit =
      /Visit \d+, \d+: ([\d.]+) % of the foliage, ([\d.]+) % allowed\n([^]*?)(?=\n {2}Visit|\n {2}Limb |\n\n)/g
    const found = [...planText(sample, wholeProgram(estimatePlan(sample))).matchAll(visit)]
    expect(found.length).toBeGreaterThan(15)
    for (const [, dose, allowed, lines] of found) {
      const doses = [...lines!.matchAll(/^ {4}\S.* ([\d.]+) % +(?:[\d.]+(?: > [\d.]+)?)? +\d+ > \d+$/gm)]
      const sum = doses.reduce((all, [, each]) => all + Math.round(Number(each) * 10), 0)
      expect(sum).toBe(Math.round(Number(dose) * 10))
      expect(sum).toBeLessThanOrEqual(Math.round(Number(allowed) * 10))
    }
  })
})

test('LIMB.CUTPLAN keeps its public columns and exact numbers', () => {
  const [header, ...body] = cutPlanFunction(rows, 1) as unknown[][]
  expect(header).toEqual([
    'Tree',
    'Visit',
    'Limb',
    'Do',
    'Cut diameter (cm)',
    'Least lateral (cm)',
    'Foliage removed',
    'Foliage removed at the visit',
    'Allowed removal',
    'Priority now',
    'Priority at next visit',
    'Why'
  ])
  const now: Visit = first
  expect(body.map((row) => [row[2], row[6]])).toEqual(now.cuts.map(({ limb, dose }) => [limb.id, dose]))
})

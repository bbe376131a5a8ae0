/**
 * One rule of rounding, seen on the paper: a ceiling is never rounded up, the parts add up to the sum that is shown, and
 * a share reads the same wherever it is printed. The inventories are the sample and invented ones.
 */
import { writeXlsx } from 'hucre/xlsx'
import type { Cell } from '../../shared/cells'
import { describeStartRates } from '../../src/sheets/rates/ratesSheet'
import type * as pictures from './drawnPictures'
import { scratch, type Printed } from './plannedFile'
import {
  inAltTexts,
  inClientReport,
  inCutPlan,
  inReasons,
  inSpecification,
  inTerminal,
  inWorkOrder,
  type PrintedVisitShares
} from './printedShares'
import type { WrittenFile, WrittenSheet } from './writtenFile'

jest.mock('@resvg/resvg-js', () => jest.requireActual<typeof pictures>('./drawnPictures'))

const at = scratch()

/** Trees whose ceilings and doses are no whole percents: fair vigor halves, foliage already taken counts against it. */
function oddShares(): Cell[][] {
  const headers =
    'Tree,Species,Trunk dia (in),Height (ft),Crown base (ft),Life stage,Vigor,Foliage removed this season,Limb,Role,Limb dia (in),Stem dia (in),Origin (ft),Tip (ft),Included bark,Live or dead'
  const trees: Cell[][] = [
    ['U1', 'Red maple (invented)', 7, 30, 6, 'young', 'fair', null],
    ['U2', 'Pin oak (invented)', 9, 36, 8, 'young', 'fair', '6.25 %'],
    ['U3', 'Linden (invented)', 8, 33, 7, 'young', 'good', '3.7 %'],
    ['U4', 'Ginkgo (invented)', 12, 42, 10, 'medium', 'good', '10.04 %'],
    ['U5', 'Sycamore (invented)', 20, 55, 12, 'mature', 'fair', '1.46 %'],
    ['U6', 'Elm (invented)', 13, 44, 9, 'medium', 'fair', '0.55 %']
  ]
  const rows: Cell[][] = [headers.split(',')]
  for (const tree of trees) {
    const [trunk, height] = [Number(tree[2]), Number(tree[3])]
    const limb = (id: string, dia: number, stem: number | null, from: number, to: number, more: Cell[]) => {
      const own = [id, more[0] ?? null, dia * trunk, stem === null ? null : stem * trunk]
      rows.push([
        ...(id === 'A' ? tree : [tree[0]!, ...Array<Cell>(7).fill(null)]),
        ...own,
        from * height,
        to * height,
        more[1] ?? null,
        more[2] ?? 'live'
      ])
    }
    limb('A', 0.72, null, 0.22, 1, ['leader'])
    limb('B', 0.55, 0.68, 0.24, 0.96, [null, 'full'])
    limb('C', 0.41, 0.66, 0.27, 0.93, [null, 'partial'])
    limb('D', 0.33, 0.61, 0.31, 0.88, [])
    limb('E', 0.23, 0.55, 0.38, 0.8, [])
    limb('F', 0.17, 0.5, 0.42, 0.75, [])
    limb('G', 0.11, 0.6, 0.33, 0.5, [null, null, 'dead'])
  }
  return rows
}

/** Base by life stage times vigor (design, section 3), of the trees from which foliage was already taken this season. */
const laterCeilings: Readonly<Record<string, number>> = { U2: 0.125, U3: 0.25, U4: 0.2, U5: 0.05, U6: 0.1 }

/** Rates of an invented business: a tax, a minimum and a wage that leave fractions of the smallest unit everywhere. */
function oddRates(): Cell[][] {
  const own: Record<string, Cell> = {
    Tax: '8.25 %',
    'Wage of one person': 31.37,
    'Disposal by weight': 0.037,
    Mobilization: 133.33
  }
  return describeStartRates('in-ft').rows.map((row) =>
    row.map((cell, place): Cell => {
      const name = String(row[0])
      if (place === 1 && name in own) return own[name]!
      return typeof cell === 'object' ? null : cell
    })
  )
}

const inventories: [string, () => Promise<string | null>][] = [
  ['the sample', () => Promise.resolve(null)],
  [
    'odd shares and odd rates',
    async () =>
      at.put(
        'odd.xlsx',
        await writeXlsx({
          sheets: [
            { name: 'Trees', rows: oddShares() },
            { name: 'Rates', rows: oddRates() }
          ],
          namedRanges: [{ name: 'Limbwright_rates', range: "'Rates'!$A$1" }]
        })
      )
  ]
]

/** The number of a printed text; whole thousands may be set apart by commas. */
const number = (text: string): number =>
  Number(text.replace(/ ?%$/, '').replace(thousands, '').replace(',', '.'))
const thousands = /(?<=^\d{1,3}(?:,\d{3})*),(?=\d{3}(?:,\d{3})*(?:\.\d+)?$)/g

/** A printed amount as the JSON has it, without what sets thousands apart. */
const ungrouped = (amount: string): string => amount.replace(thousands, '')

/**
 * A share as a sentence writes it: a column of a sheet gives every share one decimal, so that they stand under each other,
 * and a sentence drops one that is 0. Nothing else may differ.
 */
const inSentence = (share: string): string => share.replace(/\.0(?= ?%$)/, '')
const sumOf = (texts: readonly string[]): number =>
  texts.reduce((sum, text) => sum + Math.round(number(text) * 1e4), 0) / 1e4

describe.each(inventories)('%s', (_name, put) => {
  let printed: Printed
  let text: string
  let file: WrittenFile
  let shares: PrintedVisitShares[]
  let heads: [tree: string, ceiling: string][]

  beforeAll(async () => {
    const path = await put()
    const args = path === null ? [] : [path]
    printed = JSON.parse((await at.run(...args, '--json', '--out', 'sums.xlsx')).out) as Printed
    text = (await at.run(...args)).out
    file = (await at.written('sums.xlsx'))!
    const terminal = inTerminal(text)
    heads = terminal.ceilings
    shares = [
      ...terminal.shares,
      ...inCutPlan(file.sheet('Cut plan')),
      ...inWorkOrder(file.sheet('Work order')),
      ...inSpecification(file.sheet('Specification')),
      ...inClientReport(file.sheet('Client report')),
      ...inAltTexts(file),
      ...inReasons(printed)
    ]
  })

  /** The ceiling of a visit. At later visits nothing counts against it that was taken before this plan. */
  const allowed = (tree: string, visit: number) =>
    (visit > 1 ? laterCeilings[tree] : undefined) ??
    printed.trees.find((each) => each.tree === tree)!.allowedRemoval
  const visitOf = (tree: string, visit: number) =>
    printed.trees.find((each) => each.tree === tree)!.visits.find((each) => each.visit === visit)!

  test('every surface was found to print its shares', () => {
    const wheres = new Map<string, number>()
    for (const { where } of shares) wheres.set(where, (wheres.get(where) ?? 0) + 1)
    const few = ['terminal', 'Cut plan', 'Work order', 'Specification', 'Client report', 'reason'].filter(
      (where) => (wheres.get(where) ?? 0) < 5
    )
    expect(few).toEqual([])
    expect(wheres.get('alt text of a chart') ?? 0).toBeGreaterThan(4)
    expect(wheres.get('alt text of a drawing') ?? 0).toBeGreaterThan(4)
    expect(heads.length).toBeGreaterThan(0)
  })

  test('a ceiling is never rounded up', () => {
    const raised = shares
      .filter(
        ({ tree, visit, ceiling }) => ceiling !== null && number(ceiling) / 100 > allowed(tree, visit) + 1e-9
      )
      .map(
        ({ where, tree, visit, ceiling }) =>
          `${where}, ${tree}: ${ceiling!} of ${String(allowed(tree, visit))}`
      )
    const inHeads = heads
      .filter(([tree, ceiling]) => number(ceiling) / 100 > allowed(tree, 1) + 1e-9)
      .map(([tree, ceiling]) => `terminal, ${tree}: ${ceiling} of ${String(allowed(tree, 1))}`)
    expect([...new Set([...raised, ...inHeads])]).toEqual([])
  })

  test('a ceiling is not lowered by more than a tenth of a percent either', () => {
    const low = shares.filter(
      ({ tree, visit, ceiling }) => ceiling !== null && number(ceiling) / 100 < allowed(tree, visit) - 0.00101
    )
    expect(low.map(({ where, tree, ceiling }) => `${where}, ${tree}: ${ceiling!}`)).toEqual([])
  })

  test('a ceiling reads the same on every surface', () => {
    const by = new Map<string, Set<string>>()
    const add = (tree: string, visit: number, ceiling: string) => {
      const key = `${tree}, ${String(allowed(tree, visit))}`
      by.set(key, (by.get(key) ?? new Set()).add(inSentence(ceiling)))
    }
    for (const { tree, visit, ceiling } of shares) if (ceiling !== null) add(tree, visit, ceiling)
    for (const [tree, ceiling] of heads) add(tree, 1, ceiling)
    expect(
      [...by]
        .filter(([, texts]) => texts.size > 1)
        .map(([tree, texts]) => `${tree}: ${[...texts].join(', ')}`)
    ).toEqual([])
  })

  test('the dose of a visit reads the same on every surface, and is the plan’s', () => {
    const by = new Map<string, Set<string>>()
    const wrong: string[] = []
    for (const { where, tree, visit, dose } of shares) {
      if (dose === null) continue
      const key = `${tree}, visit ${String(visit)}`
      by.set(key, (by.get(key) ?? new Set()).add(inSentence(dose)))
      const planned = printed.trees
        .find((each) => each.tree === tree)
        ?.visits.find((each) => each.visit === visit)
      if (Math.abs(number(dose) / 100 - (planned?.dose ?? 0)) > 0.00501)
        wrong.push(`${where}, ${key}: ${dose}`)
    }
    expect(wrong).toEqual([])
    expect(
      [...by].filter(([, texts]) => texts.size > 1).map(([key, texts]) => `${key}: ${[...texts].join(', ')}`)
    ).toEqual([])
  })

  test('no dose is printed above the ceiling beside it', () => {
    const above = shares.filter(
      ({ dose, ceiling }) => dose !== null && ceiling !== null && number(dose) > number(ceiling)
    )
    expect(
      above.map(({ where, tree, dose, ceiling }) => `${where}, ${tree}: ${dose!} of ${ceiling!}`)
    ).toEqual([])
  })

  test('the doses of the cuts add up to the dose of the visit', () => {
    const off = shares
      .filter(({ dose, cuts }) => dose !== null && cuts !== null && cuts.length > 0)
      .map(({ where, tree, visit, dose, cuts }) => {
        const sum = sumOf(cuts!.map(([, each]) => each))
        return sum === number(dose!)
          ? null
          : `${where}, ${tree}, visit ${String(visit)}: ${cuts!.map(([, each]) => each).join(' + ')} is not ${dose!}`
      })
      .filter((each) => each !== null)
    expect(off).toEqual([])
  })

  test('every cut of the plan is printed, with the dose that it has', () => {
    const lists = shares.filter(
      ({ where, cuts }) => cuts !== null && ['terminal', 'Cut plan'].includes(where)
    )
    expect(lists.length).toBeGreaterThan(9)
    const wrong = lists.flatMap(({ where, tree, visit, cuts }) => {
      const planned = visitOf(tree, visit).cuts
      if (planned.length !== cuts!.length)
        return [`${where}, ${tree}: ${String(cuts!.length)} of ${String(planned.length)} cuts`]
      return cuts!
        .filter(
          ([limb, dose]) =>
            !planned.some((cut) => cut.limb === limb && Math.abs(number(dose) / 100 - cut.dose) <= 0.01)
        )
        .map(([limb, dose]) => `${where}, ${tree}, ${limb}: ${dose}`)
    })
    expect(wrong).toEqual([])
  })

  test('the dose of a cut reads the same on every surface', () => {
    // A limb that is raised may be shortened at the same visit; the work order may have them the other way around.
    const by = new Map<string, Map<string, string>>()
    for (const { where, tree, visit, cuts } of shares)
      for (const [limb, dose] of cuts ?? []) {
        const key = `${tree}, visit ${String(visit)}, ${limb}`
        const doses = by.get(key) ?? new Map<string, string>()
        const told = [...(doses.get(where)?.split(', ') ?? []), inSentence(dose)].sort()
        by.set(key, doses.set(where, told.join(', ')))
      }
    expect(by.size).toBeGreaterThan(20)
    const differing = [...by].filter(([, texts]) => new Set(texts.values()).size > 1)
    expect(
      differing.map(([key, texts]) => `${key}: ${[...texts].map((each) => each.join(' ')).join(', ')}`)
    ).toEqual([])
  })

  /** Columns of a table whose header row holds these words, and its rows down to the first without a visit. */
  const row = (sheet: WrittenSheet, start: RegExp, column = 'A') =>
    sheet.cells.find((cell) => cell.column === column && start.test(cell.shown))?.row ?? NaN
  const shownAt = (sheet: WrittenSheet, column: string, line: number) =>
    sheet.at(`${column}${String(line)}`)?.shown ?? ''

  test('the lines of the estimate add up to its totals, in the terminal and in the JSON', () => {
    const { lines, subtotal, tax, total } = printed.estimate
    const cents = (amount: string) => Math.round(Number(amount) * 100)
    expect(lines.length).toBeGreaterThan(5)
    expect(lines.reduce((sum, { price }) => sum + cents(price), 0)).toBe(cents(subtotal))
    expect(cents(subtotal) + cents(tax)).toBe(cents(total))
    const table = text.slice(text.indexOf('\nESTIMATE\n')).split('\n')
    const amounts = table
      .filter((line) => /^\S+ +\d+ +\d{4} +\d+ /.test(line))
      .map((line) => line.trim().split(/ +/).at(-1)!)
    expect(amounts.map(ungrouped)).toEqual(lines.map(({ price }) => price))
    const named = (name: string) =>
      table
        .find((line) => line.startsWith(name))!
        .trim()
        .split(/ +/)
        .at(-1)
    const totals = [named('Subtotal'), named('Tax'), named('Total')].map((each) => each!)
    expect(totals.map(ungrouped)).toEqual([subtotal, tax, total])
  })

  test('every column of the Estimate sheet adds up as it is printed', () => {
    const sheet = file.sheet('Estimate')
    const top = sheet.cells.find(({ column, shown }) => column === 'B' && shown === 'Visit')!.row
    const bottom = row(sheet, /^Subtotal/)
    const lines = Array.from({ length: bottom - top - 1 }, (_none, index) => top + 1 + index).filter((line) =>
      /^\d+$/.test(shownAt(sheet, 'B', line))
    )
    expect(lines.length).toBe(printed.estimate.lines.length)
    // The rates stand beside the prices, from the ninth column on.
    const summed = sheet.cells.filter(
      ({ row, column, number: value }) => row === bottom && column < 'H' && value !== null
    )
    expect(summed.length).toBe(4)
    const off = summed
      .map(
        ({ column, shown }) =>
          [
            shownAt(sheet, column, top),
            sumOf(lines.map((line) => shownAt(sheet, column, line) || '0')),
            shown
          ] as const
      )
      .filter(([, sum, shown]) => sum !== number(shown))
      .map(([header, sum, shown]) => `${header}: ${String(sum)} printed as ${shown}`)
    expect(off).toEqual([])
  })

  test('the Estimate sheet, the report and the JSON print the same money', () => {
    const { subtotal, tax, total, lines } = printed.estimate
    const estimate = file.sheet('Estimate')
    const report = file.sheet('Client report')
    const last = (sheet: WrittenSheet, line: number) =>
      sheet.cells.filter((cell) => cell.row === line).at(-1)!.shown
    const ofSheet = [/^Subtotal/, /^Tax, /, /^Total/].map((name) =>
      shownAt(estimate, 'G', row(estimate, name))
    )
    const ofReport = [/^\d{4}, \d+ trees?, before tax/, /^Tax/, /^Price with tax/].map((name) =>
      last(report, row(report, name))
    )
    expect(ofSheet.map(ungrouped)).toEqual([subtotal, tax, total])
    expect(ofReport.map(ungrouped)).toEqual([subtotal, tax, total])
    expect(ungrouped(shownAt(estimate, 'A', 3))).toBe(total)
    const perTree = sumOf(lines.map(({ price }) => price))
    expect(perTree).toBe(Number(subtotal))
    expect(lines.length).toBeGreaterThan(0)
  })

  test('the table of the report adds up to what is offered', () => {
    const sheet = file.sheet('Client report')
    const { subtotal } = printed.estimate
    const bottom = row(sheet, /^All trees/)
    const ids = new Set(printed.trees.map(({ tree }) => tree))
    const trees = sheet.cells.filter(
      (cell) => cell.column === 'A' && cell.row < bottom && ids.has(cell.shown)
    )
    expect(trees.length).toBe(ids.size)
    expect(ungrouped(shownAt(sheet, 'G', bottom))).toBe(subtotal)
    const prices = trees.map((cell) => shownAt(sheet, 'G', cell.row)).filter((each) => each !== '')
    expect(prices.length).toBeGreaterThan(0)
    expect(sumOf(prices)).toBe(number(subtotal))
  })

  test('the hours of the trees of a day add up to the hours of the day', () => {
    const { cells } = file.sheet('Work order')
    const days: { sum: string[]; shown: string }[] = []
    for (const { shown } of cells) {
      const day = /^Day \d+, ([\d.]+) crew-hours/.exec(shown)?.[1]
      if (day !== undefined) days.push({ sum: [], shown: day })
      const hours = /, ([\d.]+) crew-hours, [\d,]+ (?:lb|kg) of brush/.exec(shown)?.[1]
      if (hours !== undefined) days.at(-1)!.sum.push(hours)
    }
    expect(days.length).toBeGreaterThan(0)
    expect(days.map(({ sum }) => sumOf(sum))).toEqual(days.map(({ shown }) => number(shown)))
  })
})

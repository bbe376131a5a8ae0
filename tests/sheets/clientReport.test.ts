import { wholeProgram } from '../../src/price/offers'
import { byUrgency } from '../../src/plan/plan'
import { estimatePlan } from '../../src/price/estimatePlan'
import { inventedRates } from '../../src/price/rates'
import { cautions, draftNotice, inventedRatesNotice } from '../../src/sheets/cautions'
import { noDetails, type JobDetails } from '../../src/details/detailsBook'
import { describeClientReport } from '../../src/sheets/client-report/clientReport'
import { ratioCourse } from '../../src/drawing/charts/ratioCourse'
import { sampleInventory } from '../../src/file/sampleInventory'
import { metricRows, planOf, samplePlan, withClosedWindow } from './samplePlan'
import { describeDocuments } from '../../src/sheets/describeDocuments'
import { withFreeNames } from '../../src/sheets/namedCells'
import { isFormula } from '../../src/sheets/sheet'
import { formatAt, hasFormula, linesOf, promises, runningText } from './sheetTexts'

const plan = samplePlan()
const estimate = estimatePlan(plan)
/** An invented client. */
const cover: JobDetails = {
  ...noDetails,
  client: 'Brickfield Offices (invented)',
  site: 'Mill road (invented)',
  date: '2026-03-02',
  validUntil: '2026-05-31'
}
const sheet = describeClientReport(plan, wholeProgram(estimate), cover)

/** The rows of headers, one a page of the table of trees. */
const headerRows = ({ rows }: typeof sheet): number[] =>
  rows.flatMap((cells, row) => (cells[0] === 'Tree' && cells[1] === 'Species, place' ? [row] : []))
const sumsRow = ({ rows }: typeof sheet): number => rows.findIndex(([first]) => first === 'All trees')
const [titleRow = -1] = headerRows(sheet)
const table = sheet.rows
  .slice(titleRow + 1, sumsRow(sheet))
  .filter((_, index) => !headerRows(sheet).includes(titleRow + 1 + index))
const headers = sheet.rows[titleRow]!.map((cell) => String(cell ?? ''))
const at = (header: string) => headers.indexOf(header)
/** The row that a text begins in the first column. */
const rowOf = ({ rows }: typeof sheet, text: string) =>
  rows.findIndex(([first]) => String(first ?? '').startsWith(text))

describe('the client report', () => {
  test('begins with its title and whom it is for; what is not known is a line to write on', () => {
    expect(sheet.rows[0]![0]).toBe('Client report')
    const row = (label: string) => sheet.rows.findIndex((cells) => cells[0] === label || cells[3] === label)
    expect(sheet.rows[row('Client')]).toContain(cover.client)
    expect(sheet.rows[row('Date')]).toContain('2026-03-02')
    expect(sheet.rows[row('Prices hold until')]).toContain('2026-05-31')
    expect(sheet.rows[row('Contact')]![1]).toBeNull()
    expect(formatAt(sheet, row('Contact'), 1).underline).toBeDefined()
    expect(formatAt(sheet, row('Client'), 1).underline).toBeUndefined()
    // The client and the site stand once above the text.
    const head = linesOf(sheet).slice(0, rowOf(sheet, 'What was found')).join(' ')
    for (const text of [cover.client, cover.site]) expect(head.split(text)).toHaveLength(2)
  })

  test('holds values only', () => {
    expect(sheet.rows.flat().some(hasFormula)).toBe(false)
    expect(sheet.tables).toEqual([])
  })

  test('says on its first page what was found, what is recommended, what happens otherwise, the price, and asks', () => {
    const parts = [
      'What was found',
      'What we recommend',
      'If nothing is done',
      'What it costs',
      'What you decide'
    ]
    const rows = parts.map((part) => rowOf(sheet, part))
    expect(rows).not.toContain(-1)
    expect(rows).toEqual([...rows].sort((a, b) => a - b))
    const firstPage = Math.min(...sheet.page.breaks!)
    const signed = linesOf(sheet).findIndex((line) => line.includes('Signature and date'))
    expect(signed).toBeGreaterThan(rows.at(-1)!)
    expect(signed).toBeLessThan(firstPage)
    for (const caution of cautions)
      expect(runningText({ ...sheet, rows: sheet.rows.slice(0, firstPage) })).toContain(caution)
  })

  test('says how many trees there are, need work, and are not measured', () => {
    const pruned = plan.trees.filter(({ visits }) => visits.some(({ cuts }) => cuts.length > 0)).length
    const text = runningText(sheet)
    expect(text).toContain(`15 trees and ${String(plan.inventory.limbCount)} limbs were looked at.`)
    expect(text).toContain(`${String(pruned)} of them need pruning`)
    expect(text).toContain('The limbs of 1 tree have not been measured yet.')
    expect(text).toContain(
      `The tree that needs it most is ${byUrgency(plan)[0]!.tree.id}, American elm, Mill road 1`
    )
  })

  test('tells of what is left alone what grows, and nothing of failing or falling', () => {
    const from = rowOf(sheet, 'If nothing is done')
    const text = runningText({ ...sheet, rows: sheet.rows.slice(from, rowOf(sheet, 'What it costs')) })
    const [, limb, tree, later, year] =
      /Limb (\S+) of (\S+) would be (\d+) % as thick as its stem by (\d+), against/.exec(text)!
    const planned = plan.trees.find((each) => each.tree.id === tree)!
    const course = ratioCourse(
      planned,
      planned.tree.limbs.find(({ id }) => id === limb)!,
      plan.rules!
    )!
    const then = course.unpruned.find((point) => String(point.year) === year)!
    expect(Math.round(then.ratio * 100)).toBe(Number(later))
    expect(runningText(sheet)).not.toMatch(/\b(fail|fall|collapse|danger|hazard)/i)
  })

  test('has one line per tree, the most urgent first, with work, urgency and price', () => {
    expect(new Set(table.map(([id]) => id))).toEqual(new Set(plan.trees.map(({ tree }) => tree.id)))
    const ranks = table.map((row) => ['high', 'medium', 'low', '–'].indexOf(String(row[at('Urgency')])))
    expect(ranks).not.toContain(-1)
    expect(ranks).toEqual([...ranks].sort((a, b) => a - b))
    for (const row of table) expect(String(row[at('Work')])).not.toBe('')
    const elm = table.find(([id]) => id === 'T03')!
    expect(elm[at('Work')]).toMatch(/^Shorten B, C; take off F/)
    for (const row of table) {
      const lines = estimate.lines.filter(({ tree }) => tree === row[0])
      const printed = lines.reduce((sum, { price }) => sum + price.toNumber(), 0)
      expect((row[at('Price')] as number | null) ?? 0).toBeCloseTo(printed, 6)
    }
    expect(sheet.rows[sumsRow(sheet)]!.at(-1)).toBeCloseTo(estimate.subtotal.toNumber(), 6)
    expect(formatAt(sheet, titleRow + 1, at('Price')).numberFormat).toBe('#,##0.00')
  })

  test.each(['By urgency', 'By place', 'By species'])(
    'adds the trees up %s, down to the same sum',
    (title) => {
      const from = rowOf(sheet, title)
      const to = sheet.rows.findIndex(([first], row) => row > from && first === 'All trees')
      const groups = sheet.rows.slice(from + 1, to)
      expect(groups.length).toBeGreaterThan(2)
      const sum = (column: number, rows: typeof groups) =>
        rows.reduce((all, row) => all + ((row[column] as number | null) ?? 0), 0)
      expect(sum(4, groups)).toBe(plan.trees.length)
      expect(sum(6, groups)).toBeCloseTo(estimate.subtotal.toNumber(), 6)
      expect(sheet.rows[to]![6]).toBe(estimate.subtotal.toNumber())
    }
  )

  test('costs by year, tax and total add up', () => {
    const taxed = estimatePlan(plan, { ...inventedRates, taxRate: '0.0825' })
    const report = describeClientReport(plan, wholeProgram(taxed), cover)
    const amounts = (label: RegExp) =>
      report.rows.filter((row) => label.test(String(row[0]))).map((row) => row.at(-1) as number)
    const years = amounts(/^\d{4}, \d+ trees?, before tax$/)
    expect(years).toHaveLength(3)
    expect(years.reduce((sum, part) => sum + part, 0)).toBeCloseTo(taxed.subtotal.toNumber(), 6)
    expect(amounts(/^Tax, 8\.25 %$/)).toEqual([taxed.tax.toNumber()])
    expect(amounts(/^Price with tax/)).toEqual([taxed.total.toNumber()])
    expect(taxed.tax.toNumber()).toBeGreaterThan(0)
  })

  test('gives every caution and promises nothing beside them', () => {
    const text = runningText(sheet)
    for (const caution of cautions) expect(text).toContain(caution)
    expect(promises(text, cautions)).toEqual([])
    expect(promises('This makes the tree safe.', cautions)).toEqual(['safe'])
  })

  test('explains its few words of the trade where they first come', () => {
    const text = runningText(sheet)
    expect(text).toContain('the main stem, the leader')
    expect(text).toContain('trapped in a union (included bark)')
    for (const word of ['codominant', 'subordinat', 'aspect ratio', 'dose', 'LCR', 'house rule', 'foremost'])
      expect(text.toLowerCase()).not.toContain(word)
  })

  test('says to the client that it is a draft while rates are invented, where prices and signatures stand', () => {
    const own = describeClientReport(plan, { ...wholeProgram(estimate), inventedRates: false }, cover)
    const said = (report: typeof sheet) => linesOf(report).filter((line) => line.includes(draftNotice))
    const from = rowOf(sheet, 'What you decide')
    const to = linesOf(sheet).findIndex((line) => line.includes('Signature and date'))
    expect(said({ ...sheet, rows: sheet.rows.slice(from, to) })).toHaveLength(1)
    expect(sheet.page.footer).toMatch(/ {2}Draft, no offer\. .*decides\.$/)
    expect([said(own), own.page.footer.includes('Draft')]).toEqual([[], false])
    // What the preparer has to do is no business of the client's.
    expect(runningText(sheet)).not.toContain(inventedRatesNotice)
  })

  test('says where cuts wait for the choice of the stem that leads', () => {
    // Two stems of T10 are too close to call.
    expect(runningText(sheet)).toMatch(/T10 Sycamore[^T]* No cut until the stem that leads is chosen/)
  })

  test('names what was left out and what was not inspected', () => {
    const text = runningText(sheet)
    expect(text).toContain('Left out until they are measured again: limbs of trees T13 and T14.')
    expect(text).toContain('Not inspected: roots')
  })

  test('offers boxes to tick and lines to sign', () => {
    const ticks = sheet.rows.filter(([first]) => first === '☐')
    expect(ticks.length).toBe(2)
    expect(runningText(sheet)).toContain('Other trees or fewer: they are priced again')
    expect(linesOf(sheet).some((line) => line.includes('Signature and date'))).toBe(true)
  })

  test('begins the table of trees on a page of its own, its headers at the head of each page', () => {
    const [headers = [], ...below] = sampleInventory
    const copies = Array.from({ length: 5 }, (_, copy) =>
      below.map(([tree = null, ...rest]) => [
        tree === null ? null : `${String(tree)}-${String(copy)}`,
        ...rest
      ])
    )
    const many = planOf([headers, ...copies.flat()])
    const long = describeClientReport(many, wholeProgram(estimatePlan(many)), cover)
    expect(long.page.breaks).toContain(rowOf(long, 'Tree by tree'))
    const further = headerRows(long).slice(1)
    expect(further.length).toBeGreaterThan(0)
    const within = long.page.breaks!.filter((row) => row > headerRows(long)[0]! && row < sumsRow(long))
    expect(within).toEqual(further)
  })

  test('comes in the order of reading: what to sign, table, terms', () => {
    const order = ['What it costs', 'Tree by tree', 'What this report assumes', 'Sources'].map((title) =>
      rowOf(sheet, title)
    )
    expect(order).not.toContain(-1)
    expect(order).toEqual([...order].sort((a, b) => a - b))
  })

  test('gives long names of trees and limbs whole', () => {
    const rows = metricRows(['South scaffold', null, 11, 14, 2, 8]).map((row, at) => [
      ...row,
      ['Bearing', null, 135][at] ?? null
    ])
    const named = planOf(rows)
    const report = describeClientReport(named, wholeProgram(estimatePlan(named)), cover, { drawings: true })
    expect(runningText(report)).toContain('South scaffold (south-east): shorten to a side branch')
    expect(formatAt(report, headerRows(report)[0]! + 1, 0).wrap).toBe(true)
  })

  test('is in meters on A4 for a metric inventory', () => {
    const metric = planOf(metricRows())
    Object.assign(metric.trees[0]!.tree, { clearance: 3 })
    const report = describeClientReport(metric, wholeProgram(estimatePlan(metric)), cover)
    expect(report.page.paper).toBe('a4')
    expect(runningText(report)).not.toMatch(/\d (ft|in)\b/)
  })

  test('of a plan without cuts says so and still closes', () => {
    const quiet = planOf(metricRows(['B', null, 3, 14, 2, 5]))
    const report = describeClientReport(quiet, wholeProgram(estimatePlan(quiet)), cover)
    const row = report.rows[headerRows(report)[0]! + 1]!
    expect(row).toContain('No cut now')
    const text = runningText(report)
    expect(text).toContain('By what was measured, it is not to be pruned at present.')
    expect(text).toContain('No work is planned, so nothing is priced or offered.')
    // Nothing to order: no sum of nothing, and nothing to sign.
    expect(text).not.toMatch(/0\.00|With tax|The tree that needs it most/i)
    expect(linesOf(report).some((line) => line.includes('Signature') || line.includes('☐'))).toBe(false)
  })

  test('names as the tree that needs it most one that is pruned, not one that has nothing to spare', () => {
    const rows = metricRows()
    const weak = metricRows(['B', null, 14, 14, 2, 8.9]).slice(1)
    weak[0]![6] = 'poor'
    const named = weak.map((row) => ['M2', ...row.slice(1)])
    const two = planOf([...rows, ...named])
    expect(byUrgency(two).map(({ tree }) => tree.id)).toEqual(['M2', 'M1'])
    const text = runningText(describeClientReport(two, wholeProgram(estimatePlan(two)), cover))
    expect(text).toContain('1 of them needs pruning')
    expect(text).toContain('Prune 1 tree in 2026')
    expect(text).not.toContain('The tree that needs it most is M2')
  })

  test('offers the first year and the program at what is paid, written as the table writes it', () => {
    const taxed = estimatePlan(plan, { ...inventedRates, taxRate: '0.19' })
    const text = runningText(describeClientReport(plan, wholeProgram(taxed), cover))
    const prices = taxed.lines.filter(({ year }) => year === 2026).map(({ price }) => price.toNumber())
    const before = Math.round(prices.reduce((sum, price) => sum + price, 0) * 100) / 100
    const found =
      /The work of 2026 only, as listed tree by tree at ([\d.,]+) USD before tax: ([\d.,]+) USD with tax\./.exec(
        text
      )!
    const [listed, paid] = found.slice(1).map((digits) => Number(digits.replaceAll(',', '')))
    expect(listed).toBe(before)
    expect(paid).toBeCloseTo(before * 1.19, 1)
    expect(found[1]).toMatch(/^\d,\d{3}\.\d\d$/)
    expect(text).toMatch(/All visits of the program: \d,\d{3}\.\d\d USD with tax; /)
  })

  test('where all the work is of one year, offers it once', () => {
    const one = planOf(
      metricRows(['B', null, 3, 14, 2, 5]).map((row, at) =>
        at === 2 ? [...row, 'dead'] : [...row, at === 0 ? 'Status' : null]
      )
    )
    const priced = estimatePlan(one)
    expect(new Set(priced.lines.map(({ year }) => year))).toEqual(new Set([2026]))
    const ticks = describeClientReport(one, wholeProgram(priced), cover).rows.filter(
      ([first]) => first === '☐'
    )
    expect(ticks.map((row) => row[1])).toEqual([
      expect.stringMatching(/^All the work, in 2026: [\d.,]+ USD with tax\.$/)
    ])
  })

  test('tells of a tree without limbs to measure them, also where no price can be given', () => {
    const rows = [metricRows()[0]!.slice(0, 7), ['M9', 'Cherry', null, 6, 1, 'young', 'good']]
    const bare = planOf(rows)
    const report = describeClientReport(bare, wholeProgram(estimatePlan(bare)), cover)
    const row = report.rows[headerRows(report)[0]! + 1]!
    expect(row).toContain('Measure its limbs first')
    expect(row).not.toContain('No cut now')
  })

  test('of a plan without trees has no table', () => {
    const none = { ...plan, trees: [] }
    const report = describeClientReport(none, wholeProgram(estimatePlan(none)), cover)
    expect(headerRows(report)).toEqual([])
  })
})

describe('a closed window', () => {
  test('is warned of where the client signs, and stands with the season of the work', () => {
    const closed = withClosedWindow()
    const report = linesOf(describeClientReport(closed, wholeProgram(estimate), cover))
    const at = report.flatMap((line, row) => (line.includes('An invented window is closed.') ? [row] : []))
    const row = (title: string) => report.findIndex((line) => line.startsWith(title))
    expect(at).toHaveLength(2)
    expect(at[0]).toBeGreaterThan(row('What you decide'))
    expect(at[0]).toBeLessThan(row('Tree by tree'))
    expect(at[1]).toBeGreaterThan(row('The season of the work'))
    expect(linesOf(sheet).some((line) => line.includes('have not been looked up yet'))).toBe(true)
  })
})

describe('a report written with its Estimate', () => {
  const offer = wholeProgram(estimate)
  const sheets = describeDocuments(['estimate', 'client-report'], plan, offer, cover)
  const report = sheets.find(({ kind }) => kind === 'client-report')!

  test('says at its head that it is older once the price changes there, and nothing else of it is a formula', () => {
    const formulas = report.rows.flat().filter(isFormula)
    expect(formulas).toHaveLength(1)
    expect(report.rows[0]).toContain(formulas[0])
    expect(formulas[0]!.formula).toContain(`Offer_total-${offer.total.toFixed(2)}`)
    expect(formulas[0]!.formula).toContain('older than the Estimate')
    expect(formulas[0]!.value).not.toContain('older')
  })

  test('looks at the Estimate that it was written with, where the workbook has another one', () => {
    const named = withFreeNames(sheets, new Set(['offer_total']))
    const { formula } = named.at(-1)!.rows.flat().find(isFormula)!
    expect(formula).toContain('Offer_total_2-')
    expect(named.flatMap(({ names = [] }) => names.map(({ name }) => name))).toContain('Offer_total_2')
  })
})

test('adds trees up by their zones where they have some', () => {
  const [headers = [], ...below] = sampleInventory
  const zoned = below.map((row, at) => [
    ...row,
    row[0] === null ? null : `Z${String(1 + (Math.floor(at / 20) % 3))}`
  ])
  const inZones = planOf([[...headers, 'Zone'], ...zoned])
  const offered = wholeProgram(estimatePlan(inZones))
  const report = describeClientReport(inZones, offered, cover)
  const from = rowOf(report, 'By zone')
  const to = report.rows.findIndex(([first], row) => row > from && first === 'All trees')
  const groups = report.rows.slice(from + 1, to)
  expect(groups.map(([name]) => name).sort()).toEqual(['zone Z1', 'zone Z2', 'zone Z3'])
  const sum = groups.reduce((all, row) => all + Math.round(100 * Number(row[6] ?? 0)), 0)
  expect(sum).toBe(Math.round(offered.subtotal.toNumber() * 100))
})

import { wholeProgram } from '../../src/price/offers'
import { byUrgency } from '../../src/plan/plan'
import { estimatePlan } from '../../src/price/estimatePlan'
import { inventedRates } from '../../src/price/rates'
import { cautions, draftNotice, inventedRatesNotice } from '../../src/sheets/cautions'
import { noDetails, type JobDetails } from '../../src/details/detailsBook'
import { describeClientReport } from '../../src/sheets/client-report/clientReport'
import { yearSpans } from '../../src/sheets/client-report/clientReportYears'
import { metricRows, planOf, samplePlan, withClosedWindow } from './samplePlan'
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
const years = headers.flatMap((header, column) => (/^\d{4}/.test(header) ? [column] : []))

/** What stands left of the numbers: the costs stand beside the cover and the summary. */
const leftText = (report: typeof sheet) =>
  runningText({ ...report, rows: report.rows.map((row) => row.slice(0, 6)) })

describe('the client report', () => {
  test('begins with its title and a cover; what is not known is a line to write on', () => {
    expect(sheet.rows[0]![0]).toBe('Client report')
    const row = (label: string) => sheet.rows.findIndex((cells) => cells[0] === label)
    expect(sheet.rows[row('Client')]).toContain(cover.client)
    expect(sheet.rows[row('Date')]).toContainEqual({ date: 46083 })
    expect(sheet.rows[row('Prices hold until')]).toContainEqual({ date: 46173 })
    expect(sheet.rows[row('Contact')]!.slice(0, 6).filter((cell) => cell !== null)).toEqual(['Contact'])
    expect(formatAt(sheet, row('Contact'), 3).underline).toBeDefined()
    expect(formatAt(sheet, row('Client'), 3).underline).toBeUndefined()
  })

  test('holds values only', () => {
    expect(sheet.rows.flat().some(hasFormula)).toBe(false)
    expect(sheet.tables).toEqual([])
  })

  test('says in its summary how many trees there are, need work, and are not measured', () => {
    const pruned = plan.trees.filter(({ visits }) => visits.some(({ cuts }) => cuts.length > 0)).length
    const text = runningText(sheet)
    expect(text).toContain(`15 trees and ${String(plan.inventory.limbCount)} limbs were looked at.`)
    expect(text).toContain(`${String(pruned)} of the trees need pruning`)
    expect(leftText(sheet)).toContain('The limbs of 1 tree have not been measured yet.')
    expect(text).toContain(
      `The tree that needs it most is ${byUrgency(plan)[0]!.tree.id}, American elm, Mill road 1`
    )
  })

  test('has one row per tree, most urgent first, with what, why, when and the price', () => {
    expect(table.map(([id]) => id)).toEqual(byUrgency(plan).map(({ tree }) => tree.id))
    for (const row of table) {
      expect(String(row[at('What and when')])).not.toBe('')
      expect(String(row[at('Why')])).not.toBe('')
    }
    const elm = table.find(([id]) => id === 'T03')!
    expect(elm[at('What and when')]).toMatch(/^Shorten limbs B and C that compete with the leader/)
    expect(elm[at('What and when')]).toMatch(/over the space to be kept clear \(14 ft\)/)
    expect(elm[at('What and when')]).toMatch(/In 2026 and 2029\.$/)
    expect(elm[at('Why')]).toMatch(/^Limb B is 90 % as thick as the stem beside it, with bark/)
  })

  test('prices stand under their years; across they add up to the tree, down to the estimate', () => {
    expect(years.length).toBe(yearSpans(estimate).length)
    const all = at('All visits')
    for (const row of table) {
      const across = years.reduce((sum, column) => sum + ((row[column] as number | null) ?? 0), 0)
      expect(across).toBeCloseTo((row[all] as number | null) ?? 0, 6)
      const lines = estimate.lines.filter(({ tree }) => tree === row[0])
      const printed = lines.reduce((sum, { price }) => sum + price.toNumber(), 0)
      expect(across).toBeCloseTo(printed, 6)
    }
    const sums = sheet.rows[sumsRow(sheet)]!
    expect(sums[0]).toBe('All trees')
    expect(sums[all]).toBeCloseTo(estimate.subtotal.toNumber(), 6)
    expect(formatAt(sheet, titleRow + 1, all).numberFormat).toBe('#,##0.00')
  })

  test('costs by year, whatever belongs to no tree, tax and total add up', () => {
    const taxed = estimatePlan(plan, { ...inventedRates, taxRate: '0.0825' })
    const report = describeClientReport(plan, wholeProgram(taxed), cover)
    const amountOf = (label: RegExp) =>
      report.rows
        .filter((row) => label.test(String(row[6])))
        .reduce((sum, row) => sum + (row.at(-1) as number), 0)
    const top = report.rows.findIndex((row) => String(row[6]).startsWith('What it costs'))
    const end = report.rows.findIndex((row) => row[6] === 'All visits before tax')
    const ofYears = report.rows.slice(top + 1, end)
    expect(ofYears.map((row) => row[6])).toEqual([2026, 2029, 2032])
    const parts = ofYears.reduce((sum, row) => sum + (row.at(-1) as number), 0)
    expect(parts).toBeCloseTo(taxed.subtotal.toNumber(), 6)
    expect(amountOf(/^All visits before tax$/)).toBe(taxed.subtotal.toNumber())
    expect(amountOf(/^Tax, 8\.25 %$/)).toBe(taxed.tax.toNumber())
    expect(amountOf(/^All visits with tax$/)).toBeCloseTo(taxed.total.toNumber(), 6)
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
    expect(text).toContain('Structural pruning means')
    expect(text).toContain('the leader (the main stem)')
    for (const word of ['codominant', 'subordinat', 'aspect ratio', 'dose of', 'included bark', 'LCR'])
      expect(text.toLowerCase()).not.toContain(word)
  })

  test('says to the client that it is a draft while rates are invented, where prices and signatures stand', () => {
    const own = describeClientReport(plan, { ...wholeProgram(estimate), inventedRates: false }, cover)
    const said = (report: typeof sheet) =>
      report.rows.flatMap((row, at) => (row[0] === draftNotice ? [at] : []))
    const approval = sheet.rows.findIndex((row) => row[0] === 'Approval')
    expect(said(sheet)).toEqual([1, approval + 1])
    expect(sheet.page.footer).toMatch(/\nDraft, not an offer\./)
    expect([said(own), own.page.footer.includes('Draft')]).toEqual([[], false])
    // What the preparer has to do is no business of the client's.
    expect(runningText(sheet)).not.toContain(inventedRatesNotice)
  })

  test('names what was left out and what was not inspected', () => {
    const text = runningText(sheet)
    expect(text).toContain('Left out until they are measured again: T13 (3 rows)')
    expect(text).toContain('Not inspected: roots')
  })

  test('offers boxes to tick and lines to sign', () => {
    const ticks = sheet.rows.filter(([first]) => first === '☐')
    expect(ticks.length).toBe(2)
    expect(runningText(sheet)).toContain('Other trees or fewer: they are priced again')
    expect(linesOf(sheet).some((line) => line.includes('Signature and date'))).toBe(true)
  })

  test('begins the table of trees on a page of its own, its headers at the head of each page', () => {
    expect(sheet.page.breaks).toContain(titleRow - 2)
    expect(sheet.page.orientation).toBe('landscape')
    const further = headerRows(sheet).slice(1)
    expect(further.length).toBeGreaterThan(0)
    for (const row of further) expect(sheet.page.breaks).toContain(row)
    const within = sheet.page.breaks!.filter((row) => row > titleRow && row < sumsRow(sheet))
    expect(within).toEqual(further)
  })

  test('comes in the order of reading: costs, table, terms, and at the end what is signed', () => {
    const row = (title: string) => linesOf(sheet).findIndex((line) => line.startsWith(title))
    const order = [row('In short'), row('Tree by tree'), row('What this report assumes'), row('Approval')]
    expect(order).not.toContain(-1)
    expect(order).toEqual([...order].sort((a, b) => a - b))
  })

  test('holds drawings where asked, over cells that are empty, and none otherwise', () => {
    expect(sheet.pictures).toBeUndefined()
    const drawn = describeClientReport(plan, wholeProgram(estimate), cover, { drawings: true })
    const pruned = plan.trees.filter(({ visits }) => visits.some(({ cuts }) => cuts.length > 0))
    expect(drawn.pictures!.length).toBe(pruned.length)
    for (const { area, alt } of [...drawn.pictures!, ...drawn.charts!]) {
      const cells = drawn.rows
        .slice(area.row, area.row + area.rows)
        .flatMap((row) => row.slice(area.column, area.column + area.columns))
      expect(cells.every((cell) => cell === null)).toBe(true)
      expect(area.column + area.columns).toBeLessThanOrEqual(drawn.widths.length)
      expect(alt).not.toBe('')
    }
  })

  test('gives long names of trees and limbs whole', () => {
    const rows = metricRows(['South scaffold', null, 11, 14, 2, 8]).map((row, at) => [
      ...row,
      ['Bearing', null, 135][at] ?? null
    ])
    const named = planOf(rows)
    const report = describeClientReport(named, wholeProgram(estimatePlan(named)), cover, { drawings: true })
    const row = report.rows.findIndex((cells) => cells[1] === 'South scaffold,')
    expect(report.rows[row]![0]).toBe(1)
    expect([report.rows[row + 1]![0], report.rows[row + 1]![1]]).toEqual([null, 'south-east'])
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
    expect(row).toContain('No cut now.')
    const text = runningText(report)
    expect(text).toContain('By what was measured, it is not to be pruned at present.')
    expect(text).toContain('No work is planned, so nothing is priced or offered.')
    // Nothing to order: no sum of nothing, and nothing to sign.
    expect(text).not.toMatch(/0\.00|With tax|What it costs|The tree that needs it most/i)
    expect(linesOf(report).some((line) => line.includes('Approval') || line.includes('☐'))).toBe(false)
  })

  test('names as the tree that needs it most one that is pruned, not one that has nothing to spare', () => {
    const rows = metricRows()
    const weak = metricRows(['B', null, 14, 14, 2, 8.9]).slice(1)
    weak[0]![6] = 'poor'
    const named = weak.map((row) => ['M2', ...row.slice(1)])
    const two = planOf([...rows, ...named])
    expect(byUrgency(two).map(({ tree }) => tree.id)).toEqual(['M2', 'M1'])
    const text = runningText(describeClientReport(two, wholeProgram(estimatePlan(two)), cover))
    expect(text).toContain(
      '1 of the trees needs pruning, in 2026. The tree that needs it most is M1, Sycamore.'
    )
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
    expect(row).toContain('Measure its limbs first.')
    expect(row).not.toContain('No cut now.')
  })

  test('of a plan without trees has no table', () => {
    const none = { ...plan, trees: [] }
    const report = describeClientReport(none, wholeProgram(estimatePlan(none)), cover)
    expect(headerRows(report)).toEqual([])
  })
})

describe('the years side by side', () => {
  test('are each of their own up to five, and the rest together beyond', () => {
    const line = estimate.lines[0]!
    const of = (...list: number[]) => ({ ...estimate, lines: list.map((year) => ({ ...line, year })) })
    expect(yearSpans(of(2028, 2026)).map(({ header }) => header)).toEqual(['2026', '2028'])
    expect(yearSpans(of(2026, 2027, 2028, 2029, 2030)).length).toBe(5)
    const many = yearSpans(of(2026, 2027, 2028, 2029, 2030, 2035))
    expect(many.map(({ header }) => header)).toEqual(['2026', '2027', '2028', '2029', '2030 and later'])
    expect(many.at(-1)).toMatchObject({ from: 2030, to: 2035 })
  })

  test('warns on its front and where the client signs of a window that is closed', () => {
    const closed = withClosedWindow()
    const report = linesOf(describeClientReport(closed, wholeProgram(estimate), cover))
    const at = report.flatMap((line, row) => (line.includes('An invented window is closed.') ? [row] : []))
    const row = (title: string) => report.findIndex((line) => line.startsWith(title))
    expect(at).toHaveLength(3)
    expect(at[0]).toBeLessThan(row('What this report assumes'))
    expect(at[1]).toBeGreaterThan(row('The season of the work'))
    expect(at[2]).toBeGreaterThan(row('Approval'))
    expect(linesOf(sheet).some((line) => line.includes('have not been looked up yet'))).toBe(true)
  })
})

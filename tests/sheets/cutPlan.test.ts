import { byUrgency } from '../../src/plan/plan'
import { planByRules } from '../../src/plan/rules/planByRules'
import { planInventory } from '../../src/plan/planInventory'
import { numberedCuts } from '../../src/drawing/form/limbsAtVisit'
import { printedPoints } from '../../src/sheets/printedLines'
import { cautions } from '../../src/sheets/cautions'
import { describeCutPlan } from '../../src/sheets/cut-plan/cutPlan'
import type { Content, SheetDescription } from '../../src/sheets/sheet'
import { metricRows, planOf, samplePlan } from './samplePlan'

const plan = samplePlan()
const sheet = describeCutPlan(plan)
const table = sheet.tables[0]!.area
const headers = sheet.rows[table.row]!.map(String)
const body = sheet.rows.slice(table.row + 1, table.row + table.rows)
const column = (header: string) => headers.indexOf(header)

function texts(description: SheetDescription): string[] {
  return description.rows.flat().filter((cell): cell is string => typeof cell === 'string')
}

function formatAt(description: SheetDescription, row: number, index: number) {
  return description.formats
    .filter(
      ({ area }) =>
        row >= area.row &&
        row < area.row + area.rows &&
        index >= area.column &&
        index < area.column + area.columns
    )
    .reduce<Record<string, unknown>>((all, { format }) => ({ ...all, ...format }), {})
}

describe('the cut plan as a sheet', () => {
  test('begins with its title and the day as a date serial; every caution stands on it, the first ones above', () => {
    expect(sheet.rows[0]![0]).toBe('Cut plan')
    // 2026-03-02 is day 46083 (from memory: 2026-01-01 is 46023).
    expect(sheet.rows.find(([label]) => label === 'Made for')![1]).toEqual({ date: 46083 })
    const above = sheet.rows.slice(0, table.row).flat().join(' ')
    for (const caution of cautions.slice(0, 2)) expect(above).toContain(caution)
    for (const caution of cautions) expect(texts(sheet)).toContain(caution)
  })

  test('has its table on the first screen, 28 rows of the usual height', () => {
    const points = (to: number) =>
      Array.from({ length: to }, (_none, at) => at).reduce(
        (sum, at) =>
          sum + (sheet.heights.find(({ row, rows }) => at >= row && at < row + rows)?.points ?? 15),
        0
      )
    expect(points(table.row + 4)).toBeLessThan(28 * 15)
    expect(table.row).toBeLessThan(12)
  })

  test('numbers each cut as its drawing does', () => {
    const expected = byUrgency(plan).flatMap(({ visits }) =>
      visits.flatMap((visit) => numberedCuts(visit).map(({ number }) => number))
    )
    expect(body.map((row) => row[column('Cut')])).toEqual(expected)
  })

  test('prints the table of cuts only, no header over another table, and no type under 8 points in either font', () => {
    const { rows, columns, titleRow } = sheet.page
    expect(titleRow).toBe(table.row)
    expect(rows).toBe(table.row + table.rows)
    expect(headers.slice(0, columns).at(-1)).toBe('Foliage removed')
    // 0.636 em of 11 points where the font is not there, and 5 pixels a column.
    const points = sheet.widths.slice(0, columns).reduce((sum, width) => sum + width * 0.636 * 11 + 3.75, 0)
    const scale = (792 - 56) / points
    for (let row = 0; row < rows!; row++)
      sheet.rows[row]!.slice(0, columns).forEach((cell, at) => {
        if (cell === null) return
        expect([row, at, Number(formatAt(sheet, row, at).size ?? 11) * scale >= 8]).toEqual([row, at, true])
      })
  })

  test('breaks no header inside a word', () => {
    headers.forEach((header, at) => {
      for (const word of header.split(' '))
        expect([word, printedPoints(word, 10, true) <= (sheet.widths[at]! * 7 - 2) * 0.75]).toEqual([
          word,
          true
        ])
    })
  })

  test('has one row for each planned cut, trees by urgency, then visit, then the order of the plan', () => {
    const expected = byUrgency(plan).flatMap(({ tree, visits }) =>
      visits.flatMap((visit) => visit.cuts.map((cut) => [tree.id, visit.visit, cut.limb.id]))
    )
    expect(expected.length).toBeGreaterThan(25)
    expect(body.map((row) => [row[column('Tree')], row[column('Visit')], row[column('Limb')]])).toEqual(
      expected
    )
  })

  test('gives diameters in inches and heights in feet where the inventory does, as numbers', () => {
    const [first] = byUrgency(plan)
    const [cut] = first!.visits[0]!.cuts.filter(({ kind, count }) => kind === 'reduce' && count === 1)
    if (cut === undefined) throw new Error('no reduction')
    const row = body[first!.visits[0]!.cuts.indexOf(cut)]!
    // To a tenth and rounded once, as the crew reads them on the work order.
    const tenth = (value: number) => Math.round(value * 10) / 10
    expect(row[column('Diameter of cut (in)')]).toBe(
      cut.cutDiameter === null ? null : tenth(cut.cutDiameter / 25.4)
    )
    expect(row[column('Height of cut (ft)')]).toBe(tenth(cut.cutHeight! / 0.3048))
    // A limit is never rounded up.
    expect(row[column('Tip after (ft)')]).toBe(Math.floor((cut.tipAfter! / 0.3048) * 10 + 1e-6) / 10)
    expect(row[column('Foliage removed')]).toBe(Math.round(cut.dose * 1000) / 1000)
    expect(row[column('Why')]).toBe(cut.reason)
  })

  test('never rounds the least lateral below what the cut asks for', () => {
    const cuts = byUrgency(plan).flatMap(({ visits }) => visits.flatMap((visit) => visit.cuts))
    const shown = body.map((row) => row[column('Least lateral to leave (in)')])
    cuts.forEach((cut, index) => {
      if (cut.lateralMin === null) expect(shown[index]).toBeNull()
      else expect(shown[index]).toBeGreaterThanOrEqual(cut.lateralMin / 25.4 - 1e-9)
    })
  })

  test('shows shares to a tenth of a percent, as sentences do, and ratios with two decimals', () => {
    const row = table.row + 1
    const tenths = '0.0%'
    expect(formatAt(sheet, row, column('Foliage removed at the visit')).numberFormat).toBe(tenths)
    expect(formatAt(sheet, row, column('Allowed removal')).numberFormat).toBe(tenths)
    expect(formatAt(sheet, row, column('Aspect ratio now')).numberFormat).toBe('0.00')
  })

  test('ticks large cuts in words and asks for a written reason on the largest', () => {
    const cuts = byUrgency(plan).flatMap(({ visits }) => visits.flatMap((visit) => visit.cuts))
    const marks = body.map((row) => row[column('Large cut')])
    const expected = cuts.map((cut) => (cut.needsReason ? '✓ needs a reason' : cut.marked ? '✓ large' : ''))
    expect(marks).toEqual(expected)
    expect(new Set(expected).size).toBe(3)
  })

  test('headers of the table are texts and no two are the same', () => {
    expect(headers.every((header) => header !== '' && header !== 'null')).toBe(true)
    expect(new Set(headers).size).toBe(headers.length)
  })

  test('names every tree without a cut and why', () => {
    const without = plan.trees.filter(({ visits }) => visits.every((visit) => visit.cuts.length === 0))
    // Nothing on T07 is worth a cut, which stem of T10 leads is too close to call, and T15 has no limbs listed.
    expect(without.map(({ tree }) => tree.id)).toEqual(['T07', 'T10', 'T15'])
    const start = sheet.rows.findIndex((row) => row[0] === 'Trees with no limbs listed')
    expect(sheet.rows[start + 2]![0]).toBe('T15')
    expect(sheet.rows[start + 2]![2]).toMatch(/No limbs are listed/)
    expect(texts(sheet).join('\n')).toContain('Trees with no cut')
  })

  test('lists every row that was not planned and every problem with its cell and remedy', () => {
    const all = texts(sheet).join('\n')
    for (const { cell, remedy } of plan.problems) {
      expect(all).toContain(cell)
      expect(all).toContain(remedy)
    }
    const start = sheet.rows.findIndex((row) => row[0] === 'Rows that could not be planned')
    const end = sheet.rows.findIndex((row) => row[0] === 'Checks of the inventory')
    const listed = sheet.rows.slice(start + 2, end)
    expect(plan.unplanned.length).toBeGreaterThan(2)
    for (const { cell, row } of plan.unplanned) {
      const named = listed.filter(
        ([at, , why]) =>
          at === cell.replace('Inventory!', '') ||
          new RegExp(`Rows [^.]*\\b${String(row)}\\b`).test(String(why))
      )
      expect([cell, named.length > 0]).toEqual([cell, true])
    }
  })

  test('says how every limb ends', () => {
    const remaining = plan.trees.flatMap(({ tree, outcomes }) =>
      outcomes.map(({ limb }) => `${tree.id} ${limb.id}`)
    )
    expect(remaining.length).toBeGreaterThan(0)
    const start = sheet.rows.findIndex((row) => row[0] === 'How every limb ends')
    const listed = sheet.rows.slice(start + 2).map((row) => `${String(row[0])} ${String(row[1])}`)
    for (const entry of remaining) expect(listed).toContain(entry)
    expect(typeof sheet.rows[start + 2]![2]).toBe('number')
  })

  test('below the tables no text is cut off by the cell beside it', () => {
    const rows = metricRows()
    for (const row of rows.slice(1))
      if (row[0] !== null && row[0] !== '') row[0] = `${String(row[0])} beside the old gate`
    for (const { rows: cells, charts, tables, widths } of [sheet, describeCutPlan(planOf(rows))]) {
      const [{ area }] = tables as [SheetDescription['tables'][number]]
      const drawn = charts?.map(({ labels }) => labels) ?? []
      const charted = (row: number) =>
        drawn.some((labels) => row >= labels.row && row < labels.row + labels.rows)
      const cut = cells.flatMap((row, at) =>
        row.slice(0, 2).filter((cell, index) => {
          const below = at >= area.row + area.rows && !charted(at)
          const beside = row[index + 1] ?? null
          return below && typeof cell === 'string' && beside !== null && cell.length > widths[index]!
        })
      )
      expect(cut).toEqual([])
    }
    const planned = planInventory(plan.inventory, { date: plan.date, ...planByRules(null) })
    const { rows: seasoned } = describeCutPlan(planned)
    const season = seasoned.findIndex((row) => row[0] === 'Season of the work')
    const trees = seasoned.slice(season + 2, season + 7).map((row) => row[1])
    expect(trees.join(' ').trim()).toContain('Trees T01, T02, T03, T04, T05, T06 and 7 more')
  })

  test('no row is wider than the sheet has columns', () => {
    expect(Math.max(...sheet.rows.map((row) => row.length))).toBe(sheet.widths.length)
  })

  test('fits one page across and repeats the headers', () => {
    expect(sheet.page).toMatchObject({ orientation: 'landscape', paper: 'letter', titleRow: table.row })
  })
})

describe('the cut plan of a metric inventory', () => {
  test('is in centimeters and meters, on A4', () => {
    const metric = describeCutPlan(planOf(metricRows()))
    const area = metric.tables[0]!.area
    const named = metric.rows[area.row]!.map(String)
    expect(named).toContain('Diameter of cut (cm)')
    expect(named).toContain('Height of cut (m)')
    expect(metric.page.paper).toBe('a4')
    expect(texts(metric).some((text) => text.startsWith('1 tree and 2 limbs, read from'))).toBe(true)
    const first = metric.rows[area.row + 1]!
    const diameter = first[named.indexOf('Diameter of cut (cm)')] as number
    expect(diameter).toBeGreaterThan(4)
    expect(diameter).toBeLessThan(11)
  })
})

describe('a plan without cuts', () => {
  const quiet = describeCutPlan(planOf(metricRows(['B', null, 3, 14, 2, 5])))

  test('has no table and says so', () => {
    expect(quiet.tables).toEqual([])
    expect(quiet.page.titleRow).toBeNull()
    expect(texts(quiet)).toContain('No cut is planned; the reasons stand below.')
  })

  test('gives the reason of the limb that comes first', () => {
    const start = quiet.rows.findIndex((row) => row[0] === 'Trees with no cut')
    expect(quiet.rows[start + 2]![2]).toMatch(/^Limb B comes first with priority 0\. ./)
  })
})

test('a text of the user that begins like a formula stays a text in the description', () => {
  const rows = metricRows()
  rows[1]![1] = '=HYPERLINK("x")'
  const cells: Content[] = describeCutPlan(planOf(rows)).rows.flat()
  expect(cells).toContain('=HYPERLINK("x")')
  expect(cells.some((cell) => typeof cell === 'object' && cell !== null && 'formula' in cell)).toBe(false)
})

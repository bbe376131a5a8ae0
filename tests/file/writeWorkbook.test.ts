import { columnLetters } from '../../shared/cells'
import { wholeProgram } from '../../src/price/offers'
import { readXlsx } from 'hucre/xlsx'
import { describeCutPlan } from '../../src/sheets/cut-plan/cutPlan'
import { describeEstimate } from '../../src/sheets/estimate/estimateSheet'
import type { SheetDescription } from '../../src/sheets/sheet'
import { estimatePlan } from '../../src/price/estimatePlan'
import { fileWidth, writeWorkbook } from '../../src/file/writeWorkbook'
import { metricRows, planOf, samplePlan } from '../sheets/samplePlan'

const plan = samplePlan()
const cutPlan = describeCutPlan(plan)
const estimate = describeEstimate(wholeProgram(estimatePlan(plan)), plan)

async function readBack(descriptions: SheetDescription[]) {
  return readXlsx(await writeWorkbook(descriptions), { readStyles: true })
}

/** The smallest description there is, with these cells. */
function small(rows: SheetDescription['rows']): SheetDescription {
  return {
    ...cutPlan,
    rows,
    formats: [],
    tables: [],
    heights: [],
    widths: [10],
    page: { ...cutPlan.page, titleRow: null }
  }
}

describe('a workbook of our documents', () => {
  test('has a sheet for each, found again by a name on its first cell', async () => {
    const { sheets, namedRanges } = await readBack([cutPlan, estimate])
    expect(sheets.map(({ name }) => name)).toEqual(['Cut plan', 'Estimate'])
    expect(namedRanges).toEqual(
      expect.arrayContaining([
        expect.objectContaining({ name: 'Limbwright_cut_plan', range: "'Cut plan'!$A$1" }),
        expect.objectContaining({ name: 'Limbwright_estimate', range: "'Estimate'!$A$1" })
      ])
    )
  })

  test('keeps two documents of a kind apart', async () => {
    const { sheets, namedRanges } = await readBack([cutPlan, cutPlan])
    expect(sheets.map(({ name }) => name)).toEqual(['Cut plan', 'Cut plan (2)'])
    expect(namedRanges).toContainEqual(
      expect.objectContaining({ name: 'Limbwright_cut_plan_2', range: "'Cut plan (2)'!$A$1" })
    )
    const names = sheets.flatMap(({ tables }) => tables?.map(({ name }) => name))
    expect(new Set(names).size).toBe(2)
  })

  test('quotes the sheet in the name of the repeated rows, as a name with a space needs', async () => {
    const bytes = await writeWorkbook([cutPlan])
    const { sheets } = await readXlsx(bytes)
    const row = cutPlan.page.titleRow! + 1
    expect(sheets[0]!.pageSetup!.printTitlesRow).toBe(`$${String(row)}:$${String(row)}`)
  })

  test('holds the table with its headers, the widths and the page', async () => {
    const sheet = (await readBack([cutPlan])).sheets[0]!
    const { area } = cutPlan.tables[0]!
    expect(sheet.tables).toHaveLength(1)
    expect(sheet.tables![0]!.range).toBe(
      `A${String(area.row + 1)}:${columnLetters(area.columns - 1)}${String(area.row + area.rows)}`
    )
    expect(sheet.tables![0]!.columns.map(({ name }) => name)).toEqual(cutPlan.rows[area.row])
    expect(sheet.columns!.map(({ width }) => width)).toEqual(cutPlan.widths.map(fileWidth))
    expect(sheet.pageSetup).toMatchObject({
      orientation: 'landscape',
      fitToWidth: 1,
      margins: { left: 28 / 72, right: 28 / 72, top: 30 / 72, bottom: 43 / 72 }
    })
    expect(sheet.freezePane).toMatchObject({ columns: 1 })
    expect(sheet.headerFooter!.oddFooter).toContain('Not a tree risk assessment')
  })

  test('stores formulas with the value they had', async () => {
    const sheet = (await readBack([estimate])).sheets[0]!
    const row = estimate.rows.findIndex((cells) => cells[0] === 'Subtotal')
    const cell = sheet.cells!.get(`${String(row)},6`)!
    const content = estimate.rows[row]![6] as { formula: string; value: number }
    expect(`=${cell.formula!}`).toBe(content.formula)
    expect(cell.formulaResult).toBe(content.value)
  })

  test('never turns a text into a formula, an error or a number', async () => {
    const texts = [
      '=1+1',
      '+1',
      '-1',
      '@x',
      '#N/A',
      '007',
      '1/2',
      'TRUE',
      "'quoted",
      '<b>&"',
      '_x0041_',
      '=T_x000d_1'
    ]
    const sheet = (await readBack([small(texts.map((text) => [text]))])).sheets[0]!
    expect(sheet.rows.map((row) => row[0])).toEqual(texts)
    for (const index of texts.keys()) {
      const cell = sheet.cells?.get(`${String(index)},0`)
      expect(cell?.formula).toBeUndefined()
      expect(cell?.type).not.toBe('error')
    }
    expect(sheet.cells!.get('0,0')!.style!.numFmt).toBe('@')
  })

  test('a species that begins like a formula reaches the file as text', async () => {
    const rows = metricRows()
    rows[1]![1] = '=cmd|x'
    const sheet = (await readBack([describeCutPlan(planOf(rows))])).sheets[0]!
    expect(sheet.rows.flat()).toContain('=cmd|x')
    expect([...sheet.cells!.values()].every(({ formula }) => formula === undefined)).toBe(true)
  })

  test('dates are serials in a date format', async () => {
    const sheet = (await readBack([cutPlan])).sheets[0]!
    const made = sheet.rows.find(([label]) => label === 'Made for')
    expect(made?.[1]).toEqual(new Date('2026-03-02T00:00:00Z'))
  })

  test('numbers keep their formats', async () => {
    const sheet = (await readBack([cutPlan])).sheets[0]!
    const row = cutPlan.tables[0]!.area.row + 1
    const column = (cutPlan.rows[row - 1] as string[]).indexOf('Foliage removed at the visit')
    const cell = sheet.cells!.get(`${String(row)},${String(column)}`)!
    expect(cell.style!.numFmt).toBe('0.0%')
    expect(typeof sheet.rows[row]![column]).toBe('number')
  })

  test('a line below an area is drawn under its last row only', async () => {
    const description = small([['a'], ['b']])
    const area = { row: 0, column: 0, rows: 2, columns: 1 }
    description.formats.push({ area, format: { bold: true, underline: '#123456' } })
    const cells = (await readBack([description])).sheets[0]!.cells!
    expect(cells.get('0,0')!.style!.border?.bottom).toBeUndefined()
    expect(cells.get('1,0')!.style!.border!.bottom).toMatchObject({ style: 'thin' })
    expect(cells.get('0,0')!.style!.font!.bold).toBe(true)
  })
})

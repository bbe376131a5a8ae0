import type { ConditionalRule } from 'hucre'
import { readXlsx, writeXlsx } from 'hucre/xlsx'
import { bookOf, unpackBook } from '../../src/file/file-library/unpackBook'
import type { BookContents } from '../../src/workbench/files/contents'
import { fromFile } from '../../src/workbench/files/fromFile'
import { openFile, plainContents } from '../../src/workbench/files/openFile'
import { saveFile } from '../../src/workbench/files/saveFile'
import type { Chart } from '../../src/workbench/book'
import { newSeries } from '../../src/workbench/host/chartSeries'
import { noExtras, plainExtras } from '../../src/workbench/grid/extras'
import { sampleInventory } from '../../src/file/sampleInventory'
import { isRefusal } from '../../shared/refusal'

/** A dot of one pixel. */
const png = 'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg=='

/** A chart of columns with a dashed line and bare points over them. */
function combination(): Chart {
  const labels = { row: 1, column: 0, rows: 3, columns: 1 }
  const values = { row: 1, column: 2, rows: 3, columns: 1 }
  const line = { ...newSeries('Ceiling', 'LineMarkers'), line: '#7A3E16', values, labels, markerSize: 8 }
  const inks = { markerFill: '#7A3E16', markerEdge: '#7A3E16' }
  return {
    id: 's1-chart1',
    sheetId: 's1',
    name: 'Dose',
    area: { row: 12, column: 0, rows: 15, columns: 3 },
    title: 'Dose',
    titleSize: 13,
    titleBold: true,
    textSize: 11,
    legend: true,
    legendPosition: 'Bottom',
    valueTitle: 'Share',
    valueFormat: '0%',
    valueMinimum: 0,
    alt: 'Dose by tree, in words.',
    series: [
      { ...newSeries('Dose', 'ColumnClustered'), fill: '#2C5A41', gapWidth: 60, values, labels },
      { ...line, ...inks, lineStyle: 'Dash', marker: 'Circle' },
      { ...line, ...inks, name: 'Goal', lineStyle: 'None', marker: 'Square' }
    ]
  }
}

/** A workbook with one of everything that the workbench keeps. */
function contents(): BookContents {
  const extras = noExtras()
  extras.sheets.set('s1', {
    ...plainExtras(),
    page: {
      breaks: [7, 30],
      orientation: 'Landscape',
      paperSize: 'A4',
      fitToWidth: 1,
      fitToHeight: null,
      titleRows: '$1:$1',
      printArea: '$A$1:$D$40',
      footerLeft: 'Left && right',
      footerCenter: '',
      footerRight: 'Page &P of &N'
    },
    validations: [
      {
        area: { row: 1, column: 1, rows: 5, columns: 1 },
        rule: { list: { inCellDropDown: true, source: 'young,medium,mature' } }
      },
      {
        area: { row: 1, column: 2, rows: 5, columns: 1 },
        rule: { decimal: { formula1: '0', formula2: '1', operator: 'Between' } }
      }
    ],
    charts: [combination()],
    pictures: [{ id: 'p', sheetId: 's1', image: png, left: 0, top: 30, width: 60, height: 45, alt: 'A dot' }]
  })
  return {
    name: 'test.xlsx',
    sheets: [
      {
        id: 's1',
        name: 'Cut plan',
        cellData: {
          0: {
            0: { v: 'Tree', t: 1, s: 'head' },
            1: { v: 'Stage', t: 1, s: 'head' },
            2: { v: 'Ratio', t: 1 }
          },
          1: {
            0: { v: 'T1', t: 1 },
            1: { v: 'young', t: 1 },
            2: { v: 0.5, t: 2, f: '=LIMB.ASPECTRATIO(4,8)' }
          },
          2: { 0: { v: '=not a formula', t: 1 }, 1: { v: 1, t: 3 }, 2: { v: 45000, t: 2, s: 'date' } },
          3: { 0: { v: '12', t: 1 }, 2: { v: '#VALUE!', t: 1, f: '=LIMB.ASPECTRATIO(-1,8)' } },
          5: { 4: { v: 0.25, t: 2, f: '=LIMB.ASPECTRATIO(A7:A8,B7:B8)' } },
          7: { 0: { s: 'head' } }
        },
        rowData: { 1: { h: 40, ia: 0 }, 2: { hd: 1 } },
        columnData: { 0: { w: 140 }, 2: { w: 70 } },
        mergeData: [{ startRow: 10, endRow: 11, startColumn: 0, endColumn: 1 }],
        freeze: { startRow: 1, startColumn: 1, ySplit: 1, xSplit: 1 },
        showGridlines: 0,
        tabColor: '#2C5A41'
      },
      { id: 's2', name: "Owner's sheet", cellData: {}, hidden: 1 }
    ],
    styles: {
      head: {
        bl: 1,
        fs: 14,
        bg: { rgb: '#D5E0D6' },
        cl: { rgb: '#1D2722' },
        ht: 2,
        tb: 3,
        bd: { b: { s: 1, cl: { rgb: '#8D9389' } } }
      },
      date: { n: { pattern: 'yyyy-mm-dd' } }
    },
    spills: new Map([
      ['s1', [{ area: { row: 5, column: 4, rows: 2, columns: 1 }, cells: { 6: { 4: { v: 0.75, t: 2 } } } }]]
    ]),
    conditionalFormats: new Map([
      [
        's1',
        [
          {
            id: 'c1',
            areas: [
              { row: 1, column: 2, rows: 3, columns: 1 },
              { row: 5, column: 2, rows: 1, columns: 1 }
            ],
            formula: '=LIMB.STANDING($C2)="competing"',
            look: { bold: true, color: '#7A3E16' }
          },
          {
            id: 'c2',
            areas: [{ row: 1, column: 0, rows: 5, columns: 1 }],
            formula: '=$A2="<b>&"',
            look: { italic: true, fill: '#F3D9B8' }
          }
        ]
      ]
    ]),
    tables: [
      {
        id: 't',
        name: 'Cuts',
        sheetId: 's1',
        area: { row: 0, column: 0, rows: 3, columns: 2 },
        style: 'TableStyleLight1',
        showFilter: false,
        banded: false
      }
    ],
    names: [{ name: 'Limbwright_cut_plan', formula: "='Cut plan'!$A$1", visible: false }],
    extras,
    activeSheet: 's1'
  }
}

async function there(): Promise<BookContents> {
  return fromFile(await unpackBook(await saveFile(contents())), 'test.xlsx')
}

describe('a workbook saved and opened again', () => {
  let back: BookContents
  beforeAll(async () => {
    back = await there()
  })
  const cell = (row: number, column: number) => back.sheets[0]?.cellData?.[row]?.[column]
  const look = (row: number, column: number) => back.styles[String(cell(row, column)?.s)]

  test('values keep their kind: texts that look like numbers or formulas stay texts', () => {
    expect(cell(1, 0)).toMatchObject({ v: 'T1', t: 1 })
    expect(cell(2, 0)).toEqual({ v: '=not a formula', t: 1 })
    expect(cell(3, 0)).toEqual({ v: '12', t: 1 })
    expect(cell(2, 1)).toMatchObject({ v: 1, t: 3 })
    expect(cell(2, 2)).toMatchObject({ v: 45000, t: 2 })
  })

  test('formulas come back as typed, with their values', () => {
    expect(cell(1, 2)).toMatchObject({ f: '=LIMB.ASPECTRATIO(4,8)', v: 0.5 })
    expect(cell(3, 2)).toMatchObject({ f: '=LIMB.ASPECTRATIO(-1,8)', v: '#VALUE!' })
  })

  test('a spilled formula stands in its first cell alone', () => {
    expect(cell(5, 4)).toMatchObject({ f: '=LIMB.ASPECTRATIO(A7:A8,B7:B8)', v: 0.25 })
    expect(cell(6, 4)).toBeUndefined()
  })

  test('the file holds the spilled values for readers that do not calculate', async () => {
    const file = await readXlsx(await saveFile(contents()))
    expect(file.sheets[0]?.rows[6]?.[4]).toBe(0.75)
  })

  test('looks come back: fonts, fills, edges, alignment, number formats, also on empty cells', () => {
    expect(look(0, 0)).toEqual({ ff: 'Calibri', ...contents().styles['head'] })
    expect(look(7, 0)).toEqual(look(0, 0))
    expect(look(2, 2)).toEqual(contents().styles['date'])
  })

  test('the shape of the sheet comes back', () => {
    const [first, second] = back.sheets
    expect(first?.freeze).toEqual({ startRow: 1, startColumn: 1, ySplit: 1, xSplit: 1 })
    expect(first?.columnData?.[0]).toMatchObject({ w: 140 })
    expect(first?.rowData).toEqual({ 1: { h: 40, ia: 0 }, 2: { hd: 1 } })
    expect(first?.mergeData).toEqual(contents().sheets[0]?.mergeData)
    expect(first).toMatchObject({ showGridlines: 0, tabColor: '#2C5A41', name: 'Cut plan', hidden: 0 })
    expect(second).toMatchObject({ name: "Owner's sheet", hidden: 1 })
  })

  test('tables, names, validation and page set-up come back', () => {
    expect(back.tables).toEqual([{ ...contents().tables[0], id: 'sheet1-table1', sheetId: 'sheet1' }])
    expect(back.names).toEqual(contents().names)
    const { page, validations } = back.extras.sheets.get('sheet1')!
    const before = contents().extras.sheets.get('s1')!
    expect(validations).toEqual(before.validations)
    expect(page).toEqual({ ...before.page, fitToHeight: 0, margins: expect.objectContaining({ left: 50.4 }) })
  })

  test('looks that follow the cells come back in their order, with their words for functions', () => {
    const before = contents().conditionalFormats.get('s1')!
    const after = back.conditionalFormats.get('sheet1')!
    expect(after.map(({ areas, formula, look }) => ({ areas, formula, look }))).toEqual(
      before.map(({ areas, formula, look }) => ({ areas, formula, look }))
    )
    expect(back.extras.sheets.get('sheet1')!.kept.conditionalRules).toBeUndefined()
  })

  test('a picture comes back with its size and its words', () => {
    const image = back.extras.sheets.get('sheet1')?.kept.images?.[0]
    expect(image).toMatchObject({ type: 'png', altText: 'A dot', width: 80, height: 60 })
    // 40 to 100 pixels down and 0 to 80 across, between rows that end at 20, 60, 80 and 100 and a column that ends at 140.
    // One corner: it keeps its size, whatever the columns under it.
    expect(image!.anchor).toEqual({ from: { row: 2, col: 0 } })
    expect(Buffer.from(image!.data).toString('base64')).toBe(png)
  })

  test('a chart of columns and lines comes back with its cells, its words and its forms', () => {
    const { charts } = back.extras.sheets.get('sheet1')!
    expect(charts).toEqual([{ ...combination(), id: 'sheet1-chart1', sheetId: 'sheet1' }])
  })

  test('the file holds the chart’s stored values and names its cells on its sheet', async () => {
    const [chart] = (await readXlsx(await saveFile(contents()))).sheets[0]!.charts!
    expect(chart!.kinds).toEqual(['bar', 'line'])
    expect(chart!.altText).toBe('Dose by tree, in words.')
    expect(chart!.series!.map(({ valuesRef, categoriesRef }) => [valuesRef, categoriesRef])).toEqual(
      Array(3).fill(["'Cut plan'!$C$2:$C$4", "'Cut plan'!$A$2:$A$4"])
    )
  })

  test('points stay points where no columns stand beside them', async () => {
    const points = contents()
    points.extras.sheets.get('s1')!.charts[0]!.series.splice(0, 2)
    const opened = fromFile(await unpackBook(await saveFile(points)), 'test.xlsx')
    const [series] = opened.extras.sheets.get('sheet1')!.charts[0]!.series
    expect([series!.name, series!.lineStyle]).toEqual(['Goal', 'None'])
  })

  test('a chart without words of its own gets its title for them', async () => {
    const without = contents()
    delete without.extras.sheets.get('s1')!.charts[0]!.alt
    const [chart] = (await readXlsx(await saveFile(without))).sheets[0]!.charts!
    expect(chart!.altText).toBe('Dose')
  })

  test('a second saving changes nothing more', async () => {
    const again = fromFile(await unpackBook(await saveFile(back)), 'test.xlsx')
    expect(again).toEqual(back)
  })
})

describe('opening files', () => {
  const bytes = (text: string) => new TextEncoder().encode(text)

  test('the sample inventory, saved and opened, holds the same cells', async () => {
    const saved = await saveFile(plainContents('Sample.xlsx', 'Inventory', sampleInventory))
    const opened = await openFile('Sample.xlsx', saved)
    if (isRefusal(opened)) throw new Error(opened.sentence)
    sampleInventory.forEach((row, r) =>
      row.forEach((value, c) => {
        const read = opened.contents.sheets[0]?.cellData?.[r]?.[c]
        expect(read?.v ?? null).toEqual(value === '' ? null : value)
      })
    )
    expect(opened.contents.sheets[0]?.freeze).toMatchObject({ ySplit: 1 })
  })

  test('a text that a file would read as a letter by its number stays as it was typed', async () => {
    const saved = await saveFile(plainContents('A.xlsx', 'A', [['_x0041_', 'plot_x4']]))
    const opened = await openFile('A.xlsx', saved)
    if (isRefusal(opened)) throw new Error(opened.sentence)
    expect(opened.contents.sheets[0]?.cellData?.[0]).toMatchObject({
      0: { v: '_x0041_' },
      1: { v: 'plot_x4' }
    })
  })

  test('a .csv becomes one sheet named after it, its first row frozen', async () => {
    const opened = await openFile('oaks.csv', bytes('Tree,Limb dia (in)\nT1,4.5\n'))
    if (isRefusal(opened)) throw new Error(opened.sentence)
    expect(opened.contents.sheets).toHaveLength(1)
    expect(opened.contents.sheets[0]).toMatchObject({ name: 'oaks', freeze: { ySplit: 1 } })
    expect(opened.contents.sheets[0]?.cellData?.[1]).toEqual({ 0: { v: 'T1', t: 1 }, 1: { v: 4.5, t: 2 } })
  })

  test('another kind of file, and a broken one, are refused in a sentence', async () => {
    expect(await openFile('oaks.pdf', bytes('x'))).toMatchObject({
      sentence: expect.stringContaining('oaks.pdf is neither')
    })
    expect(await openFile('oaks.xlsx', bytes('not a zip'))).toMatchObject({
      sentence: expect.stringContaining('oaks.xlsx could not be read')
    })
  })

  test('looks that follow the cells by other than a plain formula stay in the file, after those that the grid shows', async () => {
    const fill = { type: 'pattern', pattern: 'solid', bgColor: { rgb: 'F6DFC0' } } as const
    const style = { fill }
    const conditionalRules: ConditionalRule[] = [
      { type: 'cellIs', operator: 'greaterThan', formula: '5', priority: 1, range: 'A1:A9', style },
      { type: 'expression', formula: '$A1=2', priority: 3, range: 'A1:A9', style },
      { type: 'expression', formula: '$A1=1', priority: 2, range: 'B1:B9 D1:D9', style },
      { type: 'expression', formula: '$A1=3', priority: 4, range: 'A1:A9', style, stopIfTrue: true },
      {
        type: 'expression',
        formula: '$A1=4',
        priority: 5,
        range: 'A1:A9',
        style: { ...style, border: { bottom: { style: 'thin' } } }
      },
      {
        type: 'colorScale',
        priority: 6,
        range: 'C1:C9',
        colorScale: { cfvo: [{ type: 'min' }, { type: 'max' }], colors: ['FFFFFFFF', 'FFF6DFC0'] }
      }
    ]
    const ranked: ConditionalRule = { type: 'top10', priority: 7, range: 'E1:E9', style }
    const file = await writeXlsx({
      sheets: [{ name: 'A', rows: [[1]], conditionalRules: [...conditionalRules, ranked] }]
    })
    const opened = await openFile('a.xlsx', file)
    if (isRefusal(opened)) throw new Error(opened.sentence)
    // Its rank is not read, so that it cannot be kept as it was; the status line says so.
    expect(opened.remark).toContain('conditional formats by rank or average')
    const shown = opened.contents.conditionalFormats.get('sheet1')!
    expect(shown.map(({ formula, look }) => [formula, look])).toEqual([
      ['=$A1=1', { fill: '#F6DFC0' }],
      ['=$A1=2', { fill: '#F6DFC0' }]
    ])
    const again = (await readXlsx(await saveFile(opened.contents), { readStyles: true })).sheets[0]!
    const saved = [...again.conditionalRules!].sort((a, b) => a.priority - b.priority)
    expect(saved.map(({ type, formula, range }) => [type, formula, range])).toEqual([
      ['expression', '$A1=1', 'B1:B9 D1:D9'],
      ['expression', '$A1=2', 'A1:A9'],
      ['cellIs', '5', 'A1:A9'],
      ['expression', '$A1=3', 'A1:A9'],
      ['expression', '$A1=4', 'A1:A9'],
      ['colorScale', undefined, 'C1:C9']
    ])
    expect(saved.map(({ priority }) => priority)).toEqual([1, 2, 3, 4, 5, 6])
    expect(saved[3]!.stopIfTrue).toBe(true)
    expect(saved[4]!.style).toMatchObject({ border: { bottom: { style: 'thin' } } })
  })

  test('a protected sheet is known as protected and stays so in the file', async () => {
    const file = await writeXlsx({ sheets: [{ name: 'A', rows: [['x']], protection: { sheet: true } }] })
    const opened = await openFile('a.xlsx', file)
    if (isRefusal(opened)) throw new Error(opened.sentence)
    expect(opened.contents.extras.sheets.get('sheet1')?.protected).toBe(true)
    const again = await readXlsx(await saveFile(opened.contents))
    expect(again.sheets[0]?.protection).toBeDefined()
  })

  describe('with charts from elsewhere', () => {
    const chart = (type: 'pie' | 'line' | 'bar') => ({
      type,
      title: `A ${type} chart`,
      altText: `In words: ${type}`,
      series: [{ name: 'Oaks', values: 'B2:B4', categories: 'A2:A4', color: '336699' }],
      anchor: { from: { row: 6, col: 0 }, to: { row: 20, col: 6 } }
    })
    const rows = [
      ['Tree', 'Height'],
      ['T1', 12],
      ['T2', 9],
      ['T3', 7]
    ]
    const file = () =>
      writeXlsx({ sheets: [{ name: "Owner's trees", rows, charts: [chart('pie'), chart('line')] }] })

    test('keeps them, and says that it saves them in a plainer form', async () => {
      const opened = await openFile('a.xlsx', await file())
      if (isRefusal(opened)) throw new Error(opened.sentence)
      expect(opened.remark).toBe(
        'a.xlsx holds charts: the workbench does not show them and saves them in a plainer form.'
      )
      const saved = await readXlsx(await saveFile(opened.contents))
      const before = await readXlsx(await file())
      expect(saved.sheets[0]!.charts).toEqual(before.sheets[0]!.charts)
      expect(saved.sheets[0]!.charts).toHaveLength(2)
    })

    test('puts its own charts after them, each into its own part', async () => {
      const opened = await openFile('a.xlsx', await file())
      if (isRefusal(opened)) throw new Error(opened.sentence)
      opened.contents.extras.sheets.get('sheet1')!.charts.push({ ...combination(), sheetId: 'sheet1' })
      const saved = await readXlsx(await saveFile(opened.contents))
      expect(saved.sheets[0]!.charts!.map(({ title, kinds }) => [title, kinds])).toEqual([
        ['A pie chart', ['pie']],
        ['A line chart', ['line']],
        ['Dose', ['bar', 'line']]
      ])
    })

    test('says which kinds of charts it loses', async () => {
      const workbook = await readXlsx(await file())
      workbook.sheets[0]!.charts![0]!.kinds = ['radar']
      const opened = bookOf(workbook)
      expect(opened.lost).toEqual(['charts of a rarer kind'])
      expect(fromFile(opened, 'a.xlsx').extras.sheets.get('sheet1')!.kept.charts).toHaveLength(1)
    })
  })
})

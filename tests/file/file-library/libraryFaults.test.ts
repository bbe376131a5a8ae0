/**
 * What the file library cannot do, one test each, beside what is done instead. A first part that fails is good news: the
 * library has learned it, and the workaround named there can go.
 */
import JSZip from 'jszip'
import { readXlsx, writeXlsx, type WriteSheet } from 'hucre/xlsx'
import type { NamedRange, SheetChart } from 'hucre'
import { addedStyle } from '../../../src/file/file-library/addedStyle'
import type { BookSheet } from '../../../src/file/file-library/fileBook'
import { packBook } from '../../../src/file/file-library/packBook'
import { storedText, textAsItIs } from '../../../src/file/file-library/storedTexts'
import { bookOf, unpackBook } from '../../../src/file/file-library/unpackBook'
import { unpackValues } from '../../../src/file/file-library/unpackValues'
import { oddWorkbook, sheetPart as sheetPartOf, stylesPart } from '../oddWorkbooks'

/** A part of a packed file as its text. */
async function part(file: Uint8Array, name: string): Promise<string> {
  return (await JSZip.loadAsync(file)).file(name)!.async('string')
}

const theirs = (sheet: Partial<WriteSheet>, namedRanges: NamedRange[] = []) =>
  writeXlsx({ sheets: [{ name: 'Cut plan', ...sheet }], namedRanges })

const ours = (sheet: Partial<BookSheet>) =>
  packBook({
    sheets: [
      {
        name: 'Cut plan',
        freeze: { rows: 0, columns: 0 },
        gridlines: true,
        page: {},
        footer: '',
        ...sheet
      }
    ]
  })

const sheetPart = 'xl/worksheets/sheet1.xml'

describe('print areas and title rows', () => {
  const page = { printArea: '$A$1:$B$9', titleRows: '$1:$1' }

  test('the library writes them with the sheet unquoted, so that a name with a space is broken', async () => {
    const file = await theirs({ pageSetup: { printArea: page.printArea, printTitlesRow: page.titleRows } })
    const workbook = await part(file, 'xl/workbook.xml')
    expect(workbook).toContain('>Cut plan!$1:$1<')
    expect(workbook).toContain('>Cut plan!$A$1:$B$9<')
  })

  test('printNames writes them as names, quoted', async () => {
    const workbook = await part(await ours({ page }), 'xl/workbook.xml')
    expect(workbook).toContain(`<definedName name="_xlnm.Print_Titles" localSheetId="0">'Cut plan'!$1:$1<`)
    expect(workbook).toContain(`<definedName name="_xlnm.Print_Area" localSheetId="0">'Cut plan'!$A$1:$B$9<`)
    expect(workbook.match(/<definedName /g)).toHaveLength(2)
  })
})

describe('hidden names', () => {
  const name = { name: 'Limbwright_cut_plan', range: "'Cut plan'!$A$1" }

  test('the library writes none as hidden', async () => {
    const file = await theirs({}, [{ ...name, hidden: true } as NamedRange])
    expect(await part(file, 'xl/workbook.xml')).not.toContain('hidden')
  })

  test('and does not tell which are', async () => {
    const file = await theirs({}, [name])
    const zip = await JSZip.loadAsync(file)
    const workbook = await part(file, 'xl/workbook.xml')
    zip.file('xl/workbook.xml', workbook.replace('<definedName ', '<definedName hidden="1" '))
    const { namedRanges } = await readXlsx(await zip.generateAsync({ type: 'uint8array' }))
    expect(namedRanges).toEqual([name])
  })
})

describe('texts', () => {
  test('the library turns a text that reads like an error into the error', async () => {
    expect(await part(await theirs({ rows: [['#N/A']] }), sheetPart)).toContain('t="e"')
  })

  test('textAsItIs keeps it a text', async () => {
    const file = await ours({ cells: new Map([['0,0', textAsItIs('#N/A', undefined)]]) })
    expect(await part(file, sheetPart)).not.toContain('t="e"')
    expect(await unpackValues(file)).toMatchObject({ sheets: [{ rows: [['#N/A']] }] })
  })

  test('the library reads _x0041_ as an A and writes it as it is', async () => {
    const { sheets } = await readXlsx(await theirs({ rows: [['_x0041_']] }))
    expect(sheets[0]!.rows).toEqual([['A']])
  })

  test('storedText writes its first underscore by number', async () => {
    const texts = ['_x0041_', 'a_x000d_b', '_xyz_', 'plot_x4']
    const { sheets } = await readXlsx(await theirs({ rows: [texts.map(storedText)] }))
    expect(sheets[0]!.rows).toEqual([texts])
    expect(storedText('_xyz_')).toBe('_xyz_')
  })
})

describe('values by row', () => {
  const bold = { font: { bold: true } }
  const columns = [{ style: bold }, {}]
  const lookOf = async (cell: object) => {
    const file = await theirs({
      rows: [
        ['a', 'b'],
        [null, 'b']
      ],
      columns,
      cells: new Map([['1,0', cell]])
    })
    return (await readXlsx(file, { readStyles: true })).sheets[0]!.cells?.get('1,0')?.style
  }

  test('the library gives a cell without a look that of its column', async () => {
    expect(await lookOf({ value: 'a' })).toMatchObject(bold)
  })

  test('the library gives dates as moments; a workbook keeps serials, and a plan reads texts', async () => {
    const file = await theirs({ rows: [[new Date(Date.UTC(2027, 2, 1))]] })
    expect((await readXlsx(file, { readStyles: true })).sheets[0]!.rows[0]![0]).toBeInstanceOf(Date)
    expect((await unpackBook(file)).sheets[0]!.rows).toEqual([[46447]])
    expect(await unpackValues(file)).toMatchObject({ sheets: [{ rows: [['2027-03-01']] }] })
  })
})

describe('looks that follow the cells', () => {
  const rule = (style: object) =>
    ({ type: 'expression', priority: 1, formula: 'A1=1', range: 'A1:A9', style }) as const

  test('the library cannot write "not bold" or "not italic" in one', async () => {
    const file = await theirs({ conditionalRules: [rule({ font: { bold: false, italic: false } })] })
    const dxf = /<dxf>.*<\/dxf>/s.exec(await part(file, 'xl/styles.xml'))![0]
    expect(dxf).not.toMatch(/<[bi] /)
  })

  test('addedStyle does not ask for it', () => {
    expect(addedStyle({ bold: false, italic: false }, undefined, undefined)).toEqual({})
    expect(addedStyle({ bold: true, italic: null }, undefined, undefined)).toEqual({ font: { bold: true } })
  })

  test('the library writes the color of a fill where it is not read, unless it is told both', async () => {
    const red = { rgb: 'FF0000' }
    const fill = { type: 'pattern', pattern: 'solid', fgColor: red } as const
    const file = await theirs({ conditionalRules: [rule({ fill })] })
    expect(await part(file, 'xl/styles.xml')).not.toContain('bgColor')
    const added = await theirs({ conditionalRules: [rule(addedStyle({}, undefined, red))] })
    expect(await part(added, 'xl/styles.xml')).toContain('<bgColor rgb="FFFF0000"/>')
  })

  test('the library reads those by rank and by average without either', async () => {
    const file = await theirs({
      conditionalRules: [
        { ...rule({ font: { bold: true } }), type: 'top10' },
        rule({ font: { italic: true } })
      ]
    })
    const zip = await JSZip.loadAsync(file)
    const sheet = await part(file, sheetPart)
    zip.file(sheetPart, sheet.replace('type="top10"', 'type="top10" rank="3" bottom="1"'))
    const workbook = await readXlsx(await zip.generateAsync({ type: 'uint8array' }))
    const [ranked] = workbook.sheets[0]!.conditionalRules!
    expect(ranked).not.toHaveProperty('rank')
    expect(ranked).not.toHaveProperty('bottom')
    // So they are not written again as something else, and the loss is told.
    const book = bookOf(workbook)
    expect(book.lost).toEqual(['conditional formats by rank or average'])
    expect(book.sheets[0]!.rules.map(({ formula }) => formula)).toEqual(['A1=1'])
  })
})

describe('charts', () => {
  const rows = [
    ['T1', 12, 14],
    ['T2', 9, 14]
  ]
  const anchor = { from: { row: 4, col: 0 }, to: { row: 20, col: 6 } }
  const columns: SheetChart = {
    type: 'column',
    anchor,
    series: [
      { name: 'Height', values: 'B1:B2' },
      { name: 'Goal', values: 'C1:C2', type: 'line' } as SheetChart['series'][number]
    ]
  }

  test('the library writes one kind a chart and no stored values', async () => {
    const xml = await part(await theirs({ rows, charts: [columns] }), 'xl/charts/chart1.xml')
    expect(xml).toContain('<c:barChart>')
    expect(xml).not.toContain('<c:lineChart>')
    expect(xml).not.toContain('<c:numCache>')
  })

  test('fillRooms puts both kinds and the values into the room that the library made', async () => {
    const series = (drawn: 'columns' | 'line', column: number) => ({
      name: drawn,
      drawn,
      color: '#2c5a41',
      values: { row: 0, column, rows: 2, columns: 1 },
      labels: { row: 0, column: 0, rows: 2, columns: 1 },
      mark: null
    })
    const file = await ours({
      rows,
      kept: { charts: [{ type: 'pie', anchor, series: [{ name: 'Height', values: 'B1:B2' }] }] },
      charts: [
        {
          area: { row: 4, column: 0, rows: 16, columns: 6 },
          title: 'Heights',
          alt: 'Heights by tree.',
          valueTitle: 'ft',
          valueFormat: '0',
          sheet: 'Cut plan',
          series: [series('columns', 1), series('line', 2)],
          cellAt: (row, column) => rows[row]?.[column] ?? null
        }
      ]
    })
    expect(await part(file, 'xl/charts/chart1.xml')).toContain('<c:pieChart>')
    const own = await part(file, 'xl/charts/chart2.xml')
    expect(own).toMatch(/<c:barChart>.*<c:lineChart>/s)
    expect(own).toContain('<c:numCache>')
  })

  test('the library loses the rarer kinds, and the loss is told', async () => {
    const workbook = await readXlsx(await theirs({ rows, charts: [columns] }))
    workbook.sheets[0]!.charts![0]!.kinds = ['radar']
    expect(bookOf(workbook).lost).toEqual(['charts of a rarer kind'])
  })
})

describe('pictures', () => {
  const dot = Buffer.from(
    'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==',
    'base64'
  )

  test('the library places them between corners of cells only', async () => {
    const from = { row: 1, col: 1, rowOff: 9525, colOff: 9525 }
    const file = await theirs({
      images: [{ data: dot, type: 'png', anchor: { from, to: { row: 3, col: 3 } } }]
    })
    const drawing = await part(file, 'xl/drawings/drawing1.xml')
    expect(drawing).toContain('<xdr:colOff>0</xdr:colOff>')
    expect(drawing).not.toContain('9525')
  })
})

describe('what only has a look', () => {
  const blanks = sheetPartOf(
    '<row r="1"><c r="A1" s="1"><v>0.05</v></c></row><row r="3"><c r="C3" s="1"/></row>'
  )
  const parts = { [sheetPart]: blanks, 'xl/styles.xml': stylesPart('0%') }

  test('the library gives the rectangle around it, and a share without its format', async () => {
    const [sheet] = (await readXlsx(await oddWorkbook(parts))).sheets
    expect(sheet?.rows).toEqual([
      [0.05, null, null],
      [null, null, null],
      [null, null, null]
    ])
    expect(sheet?.cells).toBeUndefined()
  })

  test('unpackValues leaves it out, and gives the share as it is shown', async () => {
    const book = await unpackValues(await oddWorkbook(parts))
    expect('sheets' in book && book.sheets[0]?.rows).toEqual([['5 %']])
  })
})

describe('a chart that fills a sheet', () => {
  const workbook = `<workbook xmlns:r="r"><sheets><sheet name="Survey" sheetId="1" r:id="rId1"/><sheet name="Chart" sheetId="2" r:id="rId9"/></sheets></workbook>`
  const type = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships'
  const relationships = `<Relationships><Relationship Id="rId1" Type="${type}/worksheet" Target="worksheets/sheet1.xml"/><Relationship Target="chartsheets/sheet1.xml" Type="${type}/chartsheet" Id="rId9"/></Relationships>`
  const parts = { 'xl/workbook.xml': workbook, 'xl/_rels/workbook.xml.rels': relationships }

  test('makes the library refuse the workbook', async () => {
    await expect(readXlsx(await oddWorkbook(parts))).rejects.toThrow(
      /missing worksheet file for sheet "Chart"/
    )
  })

  test('is passed over by unpackValues', async () => {
    const book = await unpackValues(await oddWorkbook(parts))
    expect('sheets' in book && book.sheets.map(({ name }) => name)).toEqual(['Survey'])
  })
})

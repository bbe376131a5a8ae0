import { unpackValues } from '../../../src/file/file-library/unpackValues'
import { valuesPackage } from '../../../src/file/file-library/valuesPackage'
import { oddWorkbook, sheetPart, stylesPart } from '../oddWorkbooks'

const sheet1 = 'xl/worksheets/sheet1.xml'

async function sheetOf(parts: Parameters<typeof oddWorkbook>[0]) {
  const book = await unpackValues(await oddWorkbook(parts))
  if ('unreadable' in book) throw new Error(book.unreadable)
  const [sheet] = book.sheets
  if (sheet === undefined) throw new Error('No sheet')
  return sheet
}

const inRow = (...cells: string[]) => `<row r="1">${cells.join('')}</row>`

describe('the cells of a sheet', () => {
  test('of every type have their values', async () => {
    const cells = [
      '<c r="A1" t="inlineStr"><is><t>in the cell</t></is></c>',
      '<c r="B1" t="inlineStr"><is><r><t>in </t></r><r><t>runs</t></r></is></c>',
      '<c r="C1" t="s"><v>0</v></c>',
      '<c r="D1" t="b"><v>1</v></c>',
      '<c r="E1" t="e"><v>#REF!</v></c>',
      '<c r="F1" t="str"><f>"T"&amp;1</f><v>T1</v></c>',
      '<c r="G1"><f>12.88/PI()</f><v>4.1</v></c>',
      '<c r="H1" t="d"><v>2026-03-01T00:00:00</v></c>',
      '<c r="I1" t="b"><f>1=2</f><v>0</v></c>',
      '<c r="J1" t="n"><v>-0.5</v></c>'
    ]
    expect((await sheetOf({ [sheet1]: sheetPart(inRow(...cells)) })).rows).toEqual([
      ['in the cell', 'in runs', 'Tree', true, '#REF!', 'T1', 4.1, '2026-03-01', false, -0.5]
    ])
  })

  test('may have no address of their own', async () => {
    const rows =
      '<row><c t="b"><v>1</v></c><c/><c s="0"/><c><v>4</v></c></row><row/><row><c><v>5</v></c></row>'
    expect((await sheetOf({ [sheet1]: sheetPart(rows) })).rows).toEqual([
      [true, null, null, 4],
      [null, null, null, null],
      [5, null, null, null]
    ])
  })

  test('show a formula that was left without a result, and a blank where the result is one', async () => {
    const cells = [
      '<c r="A1"><f>12.88/PI()</f><v/></c>',
      '<c r="B1"><f>A1*2</f></c>',
      '<c r="C1"><f t="shared" si="0"/></c>',
      '<c r="D1" t="str"><f>IF(1,"")</f><v></v></c>'
    ]
    expect((await sheetOf({ [sheet1]: sheetPart(inRow(...cells)) })).rows).toEqual([
      ['=12.88/PI()', '=A1*2', '=…', null]
    ])
  })

  test('may have a prefix for their namespace', async () => {
    const part = `<x:worksheet xmlns:x="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><x:sheetData><x:row r="1"><x:c r="A1" s="1"/><x:c r="B1" s="1"><x:v>0.05</x:v></x:c></x:row></x:sheetData></x:worksheet>`
    const sheet = await sheetOf({ [sheet1]: part, 'xl/styles.xml': stylesPart('0%') })
    expect(sheet.rows).toEqual([[null, '5 %']])
  })

  test('have their days as texts, also where the workbook counts them from 1904', async () => {
    const parts = {
      [sheet1]: sheetPart(inRow('<c r="A1" s="1"><v>44620</v></c>')),
      'xl/styles.xml': stylesPart('dd/mm/yyyy')
    }
    expect((await sheetOf(parts)).rows).toEqual([['2022-02-28']])
    const workbook = `<workbook xmlns:r="r"><workbookPr date1904="1"/><sheets><sheet name="S" sheetId="1" r:id="rId1"/></sheets></workbook>`
    expect((await sheetOf({ ...parts, 'xl/workbook.xml': workbook })).rows).toEqual([['2026-03-01']])
  })
})

describe('a number shown as a percentage', () => {
  const shown = async (number: string, format: string | number, type = '') => {
    const cell = `<c r="A1" s="1"${type}><v>${number}</v></c>`
    const parts = { [sheet1]: sheetPart(inRow(cell)), 'xl/styles.xml': stylesPart(format) }
    return (await sheetOf(parts)).rows[0]?.[0]
  }

  test.each([
    ['0.05', 9, '5 %'],
    ['0.07', 10, '7 %'],
    ['0.005', '0.0%', '0.5 %'],
    ['1', '0 %', '100 %'],
    ['-0.125', '0.0%;[Red]-0.0%', '-12.5 %'],
    ['0.28999999999999998', '0%', '29 %'],
    ['5.0000000000000003E-2', '0%', '5 %'],
    ['0', '0%', '0 %']
  ])('%s as %s is the text %s', async (number, format, text) => {
    expect(await shown(number, format)).toBe(text)
  })

  test('is none where the sign is a literal, and none of a text', async () => {
    expect(await shown('5', '0&quot; %&quot;')).toBe(5)
    expect(await shown('5', '0\\%')).toBe(5)
    expect(await shown('0', 9, ' t="s"')).toBe('Tree')
    expect(await shown('1', 9, ' t="b"')).toBe(true)
  })

  test('may be the result of a formula, and its type may be written out', async () => {
    const cells = ['<c r="A1" s="1" t="n"><v>0.3</v></c>', '<c r="B1" s="1"><f>0.15</f><v>0.15</v></c>']
    const parts = { [sheet1]: sheetPart(inRow(...cells)), 'xl/styles.xml': stylesPart('0%') }
    expect((await sheetOf(parts)).rows).toEqual([['30 %', '15 %']])
  })

  test('is not taken for its neighbor where cells have no address', async () => {
    const cells = '<c s="1"/><c s="0"><v>5</v></c><c s="1"><v>0.5</v></c>'
    const parts = { [sheet1]: sheetPart(`<row>${cells}</row>`), 'xl/styles.xml': stylesPart('0%') }
    expect((await sheetOf(parts)).rows).toEqual([[null, 5, '50 %']])
  })
})

describe('what a person hid or merged', () => {
  test('comes with the sheet, filtered rows too', async () => {
    const rows = [
      '<row r="1"><c r="A1"><v>1</v></c><c r="C1"><v>3</v></c></row>',
      '<row r="2" hidden="1"><c r="A2"><v>2</v></c></row>',
      '<row r="3" hidden="true"/>',
      '<row r="4"><c r="A4"><v>4</v></c></row>'
    ]
    const columns = '<cols><col min="2" max="2" hidden="1"/><col min="4" max="16384" hidden="1"/></cols>'
    const merges = '<autoFilter ref="A1:C4"/><mergeCells><mergeCell ref="A1:B4"/></mergeCells>'
    const sheet = await sheetOf({ [sheet1]: sheetPart(rows.join(''), columns, merges) })
    expect([...sheet.hiddenRows]).toEqual([1, 2])
    expect([...sheet.hiddenColumns]).toEqual([1])
    expect(sheet.merges).toEqual([{ top: 0, left: 0, bottom: 3, right: 1 }])
  })
})

describe('a sheet of blanks that have looks', () => {
  test('costs nothing and moves no cell, wherever the pieces of the file end', async () => {
    const row = (number: number, value: string) =>
      `<row r="${String(number)}" s="0"><c r="A${String(number)}" s="0"/><c r="B${String(number)}" s="0">${value}</c></row>`
    const rows = Array.from({ length: 60_000 }, (_, at) =>
      row(at + 1, at % 20_000 === 0 ? `<v>${String(at)}</v>` : '')
    )
    const sheet = await sheetOf({ [sheet1]: sheetPart(rows.join('')) })
    expect(sheet.rows).toHaveLength(40_001)
    expect(sheet.rows.filter((cells) => cells.some((cell) => cell !== null))).toEqual([
      [null, 0],
      [null, 20_000],
      [null, 40_000]
    ])
  })
})

describe('a workbook with more text than fits into memory', () => {
  test('is given up while it is unpacked, whatever part the text is in; blank cells do not count', async () => {
    const cells = (inside: string) => `<row r="1">${`<c r="A1">${inside}</c>`.repeat(1000)}</row>`
    const most = 5000
    const texts = await oddWorkbook({ 'xl/sharedStrings.xml': 'x'.repeat(most) })
    await expect(valuesPackage(texts, most)).rejects.toMatchObject({ fault: 'too large' })
    const filled = await oddWorkbook({ [sheet1]: sheetPart(cells('<v>1</v>')) })
    await expect(valuesPackage(filled, most)).rejects.toMatchObject({ fault: 'too large' })
    const blank = await oddWorkbook({ [sheet1]: sheetPart(cells('')) })
    expect((await valuesPackage(blank, most)).bytes.length).toBeLessThan(2 * most)
  })
})

import { existsSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { writeXlsx } from 'hucre/xlsx'
import { describeCutPlan } from '../../src/sheets/cut-plan/cutPlan'
import { writeWorkbook } from '../../src/file/writeWorkbook'
import { samplePlan } from '../sheets/samplePlan'
import { commandRun } from './commandRun'
import { compoundFile, oddWorkbook, sheetPart, sheetText, withStatedSize } from './oddWorkbooks'

const folder = mkdtempSync(join(tmpdir(), 'limbwright-'))
afterAll(() => {
  rmSync(folder, { recursive: true })
})

/** The sentence with which the command line refuses these bytes; fails where it does anything else. */
async function refused(name: string, bytes: Uint8Array): Promise<string> {
  writeFileSync(join(folder, name), bytes)
  const { code, out, failures } = await commandRun(folder, '2027-03-01', [
    name,
    '--out',
    'plan.xlsx',
    '--json'
  ])
  expect({ code, out, sentences: failures.length }).toEqual({ code: 2, out: '', sentences: 1 })
  expect(existsSync(join(folder, 'plan.xlsx'))).toBe(false)
  expect(failures[0]).not.toContain('\n')
  return failures[0] ?? ''
}

const sheet1 = 'xl/worksheets/sheet1.xml'
const megabytes = (count: number) => new Uint8Array(count << 20).fill(32)

describe('a workbook that cannot be used ends in one sentence', () => {
  const why = async (bytes: Uint8Array) =>
    /could not be read as a workbook \((.*)\): save it again as \.xlsx/.exec(
      await refused('trees.xlsx', bytes)
    )?.[1]

  test('a text, and an empty file', async () => {
    expect(await why(Buffer.from('Tree,Limb\nT1,B'))).toBe('it is no .xlsx file, whatever its name says')
    expect(await why(new Uint8Array(0))).toBe('it is no .xlsx file, whatever its name says')
  })

  test('with a password', async () => {
    const encryption = { password: 'invented', spinCount: 10 }
    const sheets = [{ name: 'Trees', rows: [['Tree', 'Limb']] }]
    expect(await why(await writeXlsx({ sheets, encryption }))).toBe('it is protected by a password')
    expect(await why(compoundFile('EncryptedPackage'))).toBe('it is protected by a password')
  })

  test('an older .xls under a new name', async () => {
    expect(await why(compoundFile('Workbook'))).toMatch(/^it is a workbook of the older kind \.xls/)
  })

  test('cut off anywhere', async () => {
    const bytes = await oddWorkbook()
    for (const share of [0.02, 0.3, 0.9, 0.999])
      expect(await why(bytes.subarray(0, bytes.length * share))).toMatch(/missing or damaged|no \.xlsx file/)
  })

  test('with a byte changed', async () => {
    const bytes = Uint8Array.from(await oddWorkbook())
    bytes[200] = (bytes[200] ?? 0) ^ 0xff
    expect(await why(bytes)).toBe('a part of it is missing or damaged')
  })

  test('that unpacks to gigabytes, by its directory', async () => {
    const part = await oddWorkbook({ 'xl/media/blank.png': megabytes(1) })
    expect(await why(withStatedSize(part, 0x7fffffff, 1000))).toBe('it unpacks to more than fits into memory')
  })

  test('that unpacks to more than its directory says', async () => {
    const part = await oddWorkbook({ [sheet1]: megabytes(8) })
    expect(await why(withStatedSize(part, 100_000, 100_000))).toBe('a part of it is missing or damaged')
  })

  test('with entities that grow', async () => {
    const entities = '<!DOCTYPE x [<!ENTITY a "aaaaaaaaaa"><!ENTITY b "&a;&a;&a;&a;&a;&a;&a;&a;">]>'
    const part = sheetPart('<row r="1"><c r="A1" t="inlineStr"><is><t>&b;</t></is></c></row>')
    expect(await why(await oddWorkbook({ [sheet1]: entities + part }))).toBe(
      'it declares entities of its own, which no workbook does'
    )
  })

  test('without the part of a sheet', async () => {
    expect(await why(await oddWorkbook({ [sheet1]: null }))).toBe('its sheet “Survey” is missing')
  })

  test('without its list of parts, or with one that is no XML', async () => {
    expect(await why(await oddWorkbook({ '[Content_Types].xml': null }))).toMatch(/missing/)
    expect(await why(await oddWorkbook({ 'xl/workbook.xml': '<workbook><sheets>' }))).toBe(
      'a part of it is missing or damaged'
    )
  })

  test('with a cell of megabytes', async () => {
    const cell = (text: string) => `<row r="1"><c r="B1" t="inlineStr"><is><t>${text}</t></is></c></row>`
    const part = await oddWorkbook({ [sheet1]: sheetPart(cell('x'.repeat(10_000_000))) })
    expect(await why(part)).toBe('Survey!B1 holds more than 32,767 characters')
  })

  test('with a cell in the last corner of its sheet', async () => {
    const rows =
      '<row r="1"><c r="A1"><v>1</v></c></row><row r="1048576"><c r="XFD1048576"><v>1</v></c></row>'
    expect(await why(await oddWorkbook({ [sheet1]: sheetPart(rows) }))).toBe(
      'sheet “Survey” has cells as far away as XFD1048576'
    )
  })

  test('empty, or of nothing but what a plan wrote', async () => {
    const empty = await oddWorkbook({ [sheet1]: sheetPart('<row r="1"><c r="A1" s="1"/></row>') })
    expect(await refused('trees.xlsx', empty)).toMatch(/trees\.xlsx is empty: /)
    const written = await writeWorkbook([describeCutPlan(samplePlan())])
    expect(await refused('trees.xlsx', written)).toMatch(/holds nothing but sheets that a plan wrote: /)
  })

  test('under the name .csv, or as any other file', async () => {
    expect(await refused('trees.csv', await oddWorkbook())).toMatch(/trees\.csv holds no text/)
    expect(await refused('empty.csv', new Uint8Array(0))).toMatch(/empty\.csv is empty/)
    expect(await refused('trees.pdf', Buffer.from('%PDF'))).toMatch(/neither \.xlsx nor \.csv/)
  })

  test('and a file too large to be looked at, or that is none', async () => {
    expect(readdirSync('/dev')).toContain('null')
    const { failures } = await commandRun('/dev', '2027-03-01', ['null'])
    expect(failures).toEqual([expect.stringMatching(/^\/dev\/null is no file: /)])
  })
})

describe('a large workbook of a small survey is read', () => {
  const read = async (bytes: Uint8Array) => {
    writeFileSync(join(folder, 'large.xlsx'), bytes)
    const { out, failures } = await commandRun(folder, '2027-03-01', ['large.xlsx', '--json'])
    expect(failures).toEqual([])
    return (JSON.parse(out) as { trees: { tree: string }[] }).trees.map(({ tree }) => tree)
  }

  test('with looks down to the last row', async () => {
    const zip = await oddWorkbook()
    expect(await read(zip)).toEqual(['T1'])
    // Every fifth row, and the last one there is.
    const blanks = Array.from({ length: 209_715 }, (_, at) => {
      const row = String(5 * at + 6)
      return `<row r="${row}"><c r="A${row}" s="1"/><c r="B${row}" s="1"/></row>`
    })
    expect(blanks.at(-1)).toContain('r="1048576"')
    const part = await sheetText(zip)
    const long = part.replace('</sheetData>', `${blanks.join('')}</sheetData>`)
    expect(await read(await oddWorkbook({ [sheet1]: long }))).toEqual(['T1'])
  })

  test('with a sheet by an odd name', async () => {
    const name = `It's "a" <survey> & №1 – 樹 🌳`
    const rows = 'Tree | Height (ft) | Limb\nT1 | 30 | A'
    expect(await read(await oddWorkbook({}, [{ name, rows }]))).toEqual(['T1'])
  })
})

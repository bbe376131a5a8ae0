import { readXlsx } from 'hucre/xlsx'
import { columns } from '../../../shared/columns'
import { decodeText } from '../../../src/file/csvFile'
import { canonicalFile } from './canonicalFile'
import { askedAt, splitAddress, type Printed } from './commandOutput'
import { csvBytes } from './csvFile'
import { decoys } from './decoys'
import { headers } from './headers'
import { inventories } from './inventories'
import { areas, isLeftOutAloud, isTold, strayRemedies } from './spokenOf'
import { workbookBytes } from './workbookBytes'
import { sheetSources } from './workbookFile'

const fields = new Set<string>(columns.map(({ field }) => field))
const folded = (header: string) => header.toLowerCase().replace(/\s+/g, ' ').trim()

describe('the table of headers', () => {
  test('holds at least 450 phrasings, and some of each language for every measure a limb needs', () => {
    expect(headers.length).toBeGreaterThanOrEqual(450)
    for (const language of ['en', 'de', 'fr', 'es'])
      for (const field of [
        'tree',
        'height',
        'crownBase',
        'limb',
        'diameter',
        'stem',
        'origin',
        'tip',
        'bark'
      ])
        expect(
          headers.filter((each) => each.language === language && each.field === field).length
        ).toBeGreaterThanOrEqual(6)
  })

  test('names fields that exist, every one of them, each phrasing once', () => {
    expect(headers.filter(({ field }) => !fields.has(field))).toEqual([])
    expect([...fields].filter((field) => !headers.some((each) => each.field === field))).toEqual([])
    const keys = headers.map(({ language, context, header }) => `${language} ${context ?? ''} ${header}`)
    expect(keys.filter((key, at) => keys.indexOf(key) !== at)).toEqual([])
  })

  test('knows a girth for trunk, limb and stem', () => {
    const girths = new Set(headers.filter(({ measure }) => measure === 'girth').map(({ field }) => field))
    expect([...girths].sort()).toEqual(['diameter', 'stem', 'trunk'])
  })
})

describe('the table of decoys', () => {
  test('holds at least 160, each once', () => {
    expect(decoys.length).toBeGreaterThanOrEqual(160)
    const keys = decoys.map(({ language, header }) => `${language} ${folded(header)}`)
    expect(keys.filter((key, at) => keys.indexOf(key) !== at)).toEqual([])
  })

  test('tempts with fields that exist and contradicts no phrasing', () => {
    expect(decoys.filter(({ tempts }) => tempts !== null && !fields.has(tempts))).toEqual([])
    const known = new Set(headers.map(({ language, header }) => `${language} ${folded(header)}`))
    expect(decoys.filter(({ language, header }) => known.has(`${language} ${folded(header)}`))).toEqual([])
  })
})

describe('the inventories', () => {
  test('are at least 64, each of another shape', () => {
    expect(inventories.length).toBeGreaterThanOrEqual(64)
    expect(new Set(inventories.map(({ shape }) => shape)).size).toBe(inventories.length)
  })

  test.each(inventories.map((each) => [each.shape, each] as const))(
    '%s: a file that opens, on sheets that exist',
    async (_shape, { file, expected }) => {
      if (file.kind === 'csv') {
        expect(decodeText(csvBytes(file))).toBe(file.text)
        expect(Object.keys(expected.columns)).toEqual([''])
      } else {
        const { sheets } = await readXlsx(await workbookBytes(file))
        expect(sheets.map(({ name }) => name)).toEqual(file.sheets.map(({ name }) => name))
        expect(sheets.map(({ rows }) => rows.length)).toEqual(
          file.sheets.map((sheet) => sheetSources(sheet).length)
        )
        const names = file.sheets.map(({ name }) => name)
        for (const sheet of Object.keys(expected.columns)) expect(names).toContain(sheet)
      }
      const limbs = expected.trees.reduce((sum, tree) => sum + Math.max(1, tree.limbs.length), 0)
      expect(canonicalFile(expected).text.split('\n')).toHaveLength(limbs + 1)
    }
  )
})

describe('what the checks take for a sentence about a cell', () => {
  const saying = (cell: string, message: string, remedy = ''): Printed => ({
    trees: [],
    unplanned: [],
    estimate: {},
    problems: [{ code: 'any', cell, message, remedy }]
  })

  test('an address with or without its sheet', () => {
    expect(splitAddress("'Zone 1'!$B$4:B9")).toEqual({ sheet: 'Zone 1', cell: 'B4' })
    expect(splitAddress('B4')).toEqual({ sheet: '', cell: 'B4' })
    expect(areas('B2:C9 and AA10')).toHaveLength(2)
  })

  test('a question at a header, but not one that is only quoted, and not at another header', () => {
    expect(askedAt(saying('J1', 'Is J the stem?'), '', 'J1')).toBe(true)
    expect(askedAt(saying('J1', 'The column “Dead?” is not used.'), '', 'J1')).toBe(false)
    expect(askedAt(saying('J1', 'Is J the stem?'), '', 'K1')).toBe(false)
    expect(askedAt(saying('Limbs!J1', 'Is J the stem?'), 'Trees', 'J1')).toBe(false)
  })

  test('a kind of fault at a cell within the range that is named', () => {
    expect(isTold(saying('G2:G40', '12 diameters are missing.'), 'G5', 'missing')).toBe(true)
    expect(isTold(saying('G2:G40', '12 diameters are missing.'), 'H5', 'missing')).toBe(false)
    expect(isTold(saying('G2:G40', '12 diameters are dates.'), 'G5', 'missing')).toBe(false)
  })

  test('rows left out, by number or by range, and whole sheets', () => {
    const rows = saying('', 'Rows 4, 7 and 9 to 11 hold totals and were left out.')
    expect(['4', '7', '10'].map((row) => isLeftOutAloud(rows, row, 'total'))).toEqual([true, true, true])
    expect(['5', '8', '12'].map((row) => isLeftOutAloud(rows, row, 'total'))).toEqual([false, false, false])
    expect(isLeftOutAloud(saying('', 'The sheet Prices holds no trees.'), 'Prices!', 'sheet')).toBe(true)
    expect(isLeftOutAloud(saying('', 'The sheet Prices holds no trees.'), 'Lists!', 'sheet')).toBe(false)
  })

  test('a remedy that sends to a cell of another column', () => {
    expect(strayRemedies(saying('I2', 'The stem is missing at I2.', 'Type it in A2.'))).toHaveLength(1)
    expect(strayRemedies(saying('I2', 'The stem is missing at I2.', 'Type it in I2.'))).toEqual([])
  })
})

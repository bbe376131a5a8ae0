import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { readXlsx, writeXlsx, type WriteSheet } from 'hucre/xlsx'
import { readSheets } from '../../src/inventory/readSheets'
import type { SheetCells } from '../../src/inventory/survey/sheetCells'
import { readPlannedFile } from '../../src/file/readPlannedFile'
import { sampleInventory } from '../../src/file/sampleInventory'
import { writeWorkbook } from '../../src/file/writeWorkbook'
import { isRefusal } from '../../shared/refusal'
import { describeCutPlan } from '../../src/sheets/cut-plan/cutPlan'
import { samplePlan } from '../sheets/samplePlan'

async function workbook(sheets: WriteSheet[], namedRanges?: { name: string; range: string }[]) {
  return { name: 'trees.xlsx', bytes: await writeXlsx({ sheets, namedRanges }) }
}

async function read(from: Parameters<typeof readPlannedFile>[0]): Promise<readonly SheetCells[]> {
  const file = await readPlannedFile(from)
  if (isRefusal(file)) throw new Error(file.sentence)
  return file.sheets
}

async function refused(from: Parameters<typeof readPlannedFile>[0]): Promise<string> {
  const file = await readPlannedFile(from)
  return isRefusal(file) ? file.sentence : 'not refused'
}

const headers = ['Tree', 'Limb', 'Limb dia (in)']

describe('the sheets of a workbook', () => {
  test('are the sample inventory, cell by cell, when that was saved', async () => {
    const [sheet] = await read(await workbook([{ name: 'Inventory', rows: sampleInventory }]))
    expect(sheet).toMatchObject({ rows: sampleInventory, name: 'Inventory', top: 0, left: 0, hidden: false })
  })

  test('all come, with their titles and blanks, wherever the inventory stands', async () => {
    const rows = [['Survey of invented trees'], [], [null, ...headers], [null, 'T1', 'B', 3]]
    const sheets = await read(
      await workbook([
        { name: 'Read me', rows: [['Nothing here']] },
        { name: 'Limbs', rows }
      ])
    )
    expect(sheets.map(({ name }) => name)).toEqual(['Read me', 'Limbs'])
    expect(sheets[1]?.rows[3]).toEqual([null, 'T1', 'B', 3])
    expect(readSheets(sheets).matches.map(({ header }) => header)).toEqual(headers)
  })

  test('have dates as texts, formulas as their values and errors as their text', async () => {
    const cells = new Map([
      ['1,2', { formula: 'A9*2', formulaResult: 6.5, value: null }],
      ['2,2', { value: '#N/A' }],
      ['1,3', { value: 46083, style: { numFmt: 'yyyy-mm-dd' } }]
    ])
    const rows = [
      [...headers, 'Last pruned'],
      ['T1', 'B'],
      ['T1', 'C']
    ]
    const [sheet] = await read(await workbook([{ name: 'Limbs', rows, cells }]))
    expect(sheet?.rows[1]).toEqual(['T1', 'B', 6.5, '2026-03-02'])
    expect(sheet?.rows[2]).toEqual(['T1', 'C', '#N/A', null])
  })

  test('that are hidden come last and marked', async () => {
    const sheets = await read(
      await workbook([
        { name: 'Old', rows: [headers, ['T1', 'B', 1]], hidden: true },
        { name: 'New', rows: [headers, ['T1', 'B', 2]] }
      ])
    )
    expect(sheets.map(({ name, hidden }) => [name, hidden])).toEqual([
      ['New', false],
      ['Old', true]
    ])
  })

  test('never hold the cut plan that we wrote ourselves', async () => {
    const { sheets } = await readXlsx(await writeWorkbook([describeCutPlan(samplePlan())]))
    const own = sheets.map(({ name, rows }) => ({ name, rows }))
    const names = [{ name: 'Limbwright_cut_plan', range: "'Cut plan'!$A$1" }]
    const book = await workbook([...own, { name: 'Limbs', rows: [headers] }], names)
    expect((await read(book)).map(({ name }) => name)).toEqual(['Limbs'])
  })
})

describe('a file of separated values', () => {
  test.each(['.csv', '.TSV', '.txt'])('is a sheet named after the file, %s', async (ending) => {
    const bytes = new TextEncoder().encode('Tree,Limb,Limb dia (in)\nT1,B,3')
    expect(await read({ name: `north side${ending}`, bytes })).toEqual([
      { name: 'north side', rows: [headers, ['T1', 'B', 3]], top: 0, left: 0 }
    ])
  })

  test('keeps the rows of the file below a line that names the separator', async () => {
    const bytes = new TextEncoder().encode('sep=;\nTree;Limb\nT1;B')
    expect(await read({ name: 'trees.csv', bytes })).toMatchObject([
      {
        top: 1,
        rows: [
          ['Tree', 'Limb'],
          ['T1', 'B']
        ]
      }
    ])
  })
})

describe('a file that cannot be used is refused in one sentence', () => {
  const folder = mkdtempSync(join(tmpdir(), 'limbwright-'))
  afterAll(() => {
    rmSync(folder, { recursive: true })
  })

  test('missing', async () => {
    expect(await refused(join(folder, 'none.xlsx'))).toMatch(/^There is no file .*none\.xlsx: check its name/)
  })

  test('a folder', async () => {
    expect(await refused(folder)).toMatch(/is a folder/)
  })

  test('of another kind', async () => {
    const path = join(folder, 'trees.pdf')
    writeFileSync(path, 'x')
    expect(await refused(path)).toMatch(/neither \.xlsx nor \.csv/)
  })

  test('with the right ending and the wrong content', async () => {
    const path = join(folder, 'trees.xlsx')
    writeFileSync(path, 'This is no workbook.')
    const sentence = await refused(path)
    expect(sentence).toMatch(/could not be read as a workbook.*save it again as \.xlsx/)
    expect(sentence).not.toContain('\n')
  })
})

import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { writeXlsx, type WriteSheet } from 'hucre/xlsx'
import { readInventory } from '../../src/inventory/readInventory'
import { findInventory } from '../../src/inventory/findInventory'
import { readTableFile } from '../../src/file/readTableFile'
import { sampleInventory } from '../../src/file/sampleInventory'
import { writeWorkbook } from '../../src/file/writeWorkbook'
import type { CellBlock } from '../../shared/cells'
import { isRefusal } from '../../shared/refusal'
import { describeCutPlan } from '../../src/sheets/cut-plan/cutPlan'
import { samplePlan } from '../sheets/samplePlan'

async function workbook(sheets: WriteSheet[], namedRanges?: { name: string; range: string }[]) {
  return { name: 'trees.xlsx', bytes: await writeXlsx({ sheets, namedRanges }) }
}

async function read(from: Parameters<typeof readTableFile>[0]): Promise<CellBlock> {
  const block = await readTableFile(from)
  if (isRefusal(block)) throw new Error(block.sentence)
  return block
}

async function refused(from: Parameters<typeof readTableFile>[0]): Promise<string> {
  const block = await readTableFile(from)
  return isRefusal(block) ? block.sentence : 'not refused'
}

const headers = ['Tree', 'Limb', 'Limb dia (in)']

describe('the inventory in a workbook', () => {
  test('is the sample inventory, cell by cell, when that was saved', async () => {
    const block = await read(await workbook([{ name: 'Inventory', rows: sampleInventory }]))
    expect(block).toEqual({ rows: sampleInventory, sheet: 'Inventory', top: 0, left: 0 })
    expect(readInventory(block).trees).toHaveLength(15)
  })

  test('is found behind other sheets, below a title and away from the edge', async () => {
    const rows = [['Survey of invented trees'], [], [null, ...headers], [null, 'T1', 'B', 3]]
    const block = await read(
      await workbook([
        { name: 'Read me', rows: [['Nothing here']] },
        { name: 'Limbs', rows }
      ])
    )
    expect(block).toEqual({
      rows: [headers, ['T1', 'B', 3]],
      sheet: 'Limbs',
      top: 2,
      left: 1
    })
  })

  test('comes with dates as texts, formulas as their values and errors as their text', async () => {
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
    const block = await read(await workbook([{ name: 'Limbs', rows, cells }]))
    expect(block.rows[1]).toEqual(['T1', 'B', 6.5, '2026-03-02'])
    expect(block.rows[2]).toEqual(['T1', 'C', '#N/A', null])
  })

  test('is not looked for on a hidden sheet while a visible one has it', async () => {
    const block = await read(
      await workbook([
        { name: 'Old', rows: [headers, ['T1', 'B', 1]], hidden: true },
        { name: 'New', rows: [headers, ['T1', 'B', 2]] }
      ])
    )
    expect(block.sheet).toBe('New')
  })

  test('is never the cut plan that we wrote ourselves', async () => {
    const bytes = await writeWorkbook([describeCutPlan(samplePlan())])
    const block = await read({ name: 'plan.xlsx', bytes })
    expect(block.rows).toEqual([])
  })

  test('without headers anywhere comes as the first filled sheet, so that the reading can say so', async () => {
    const block = await read(
      await workbook([
        { name: 'Empty', rows: [] },
        { name: 'Letters', rows: [[], ['a', 'b']] }
      ])
    )
    expect(block).toEqual({ rows: [['a', 'b']], sheet: 'Letters', top: 1, left: 0 })
    expect(readInventory(block).problems.map(({ code }) => code)).toContain('no-headers')
  })

  test('keeps blank rows between trees and drops those at the end', () => {
    const rows = [headers, ['T1', 'B', 3], [null, '', ' '], ['T2', 'B', 4], [null, null, null]]
    expect(findInventory([{ name: 'S', rows }]).rows).toHaveLength(4)
  })
})

describe('a file of separated values', () => {
  test('is named after the file', async () => {
    const bytes = new TextEncoder().encode('Tree,Limb,Limb dia (in)\nT1,B,3')
    expect(await read({ name: 'north side.csv', bytes })).toEqual({
      rows: [headers, ['T1', 'B', 3]],
      sheet: 'north side',
      top: 0,
      left: 0
    })
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

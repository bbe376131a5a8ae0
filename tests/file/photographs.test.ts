/** Photographs of trees on their pages of the client report: in their rows of a workbook, or in files that it names. */
import { mkdirSync, mkdtempSync, readFileSync, symlinkSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { readXlsx, writeXlsx } from 'hucre/xlsx'
import type { Cell } from '../../shared/cells'
import { sampleInventory } from '../../src/file/sampleInventory'
import { inventedJpeg, inventedPng } from '../pictures/invented'
import { commandRun } from './commandRun'

const today = '2026-03-02'

let base: string
let folder: string
beforeEach(() => {
  base = mkdtempSync(join(tmpdir(), 'limbwright-shown-'))
  folder = join(base, 'job')
  mkdirSync(folder)
  writeFileSync(join(folder, 'all.json'), JSON.stringify({ treePages: 'all' }))
})

const run = (...args: string[]) =>
  commandRun(folder, today, [
    '--date',
    today,
    '--details',
    'all.json',
    '--documents',
    'client-report',
    ...args
  ])

const put = (name: string, bytes: Uint8Array): void => {
  writeFileSync(join(folder, name), bytes)
}

/** The trees of which a photograph stands in a written report. */
async function shown(name: string): Promise<string[]> {
  const { sheets } = await readXlsx(readFileSync(join(folder, name)))
  const images = sheets.find((sheet) => sheet.name === 'Client report')?.images ?? []
  return images
    .flatMap(({ altText }) =>
      [...(altText ?? '').matchAll(/Photograph of tree (\w+)\./g)].map(([, id]) => id!)
    )
    .sort()
}

const firstRow = (tree: string): number => sampleInventory.findIndex(([id]) => id === tree)

/** The sample as a text file with one column more, filled in the first row of each tree named. */
function inventory(name: string, header: string, files: Record<string, string>): void {
  const rows = sampleInventory.map((row, at): Cell[] => {
    const tree = String(row[0])
    const file = at === firstRow(tree) ? (files[tree] ?? '') : ''
    return [...row, at === 0 ? header : file]
  })
  const quoted = (cell: Cell): string => (cell === null ? '' : `"${String(cell).replaceAll('"', '""')}"`)
  writeFileSync(join(folder, name), rows.map((row) => row.map(quoted).join(',')).join('\n'))
}

async function workbook(
  name: string,
  images: { data: Uint8Array; type: 'png' | 'jpeg' | 'gif'; row: number; to?: number }[]
): Promise<void> {
  const sheet = {
    name: 'Trees',
    rows: sampleInventory.map((row) => [...row]),
    images: images.map(({ row, to = row + 1, ...image }) => ({
      ...image,
      anchor: { from: { row, col: 18 }, to: { row: to, col: 19 } },
      width: 80,
      height: 60
    }))
  }
  put(name, new Uint8Array(await writeXlsx({ sheets: [sheet] })))
}

test('a picture in a row of a tree, or over the row of one of its limbs, stands on the page of the tree', async () => {
  await workbook('trees.xlsx', [
    { data: inventedPng(80, 60), type: 'png', row: firstRow('T01') },
    { data: inventedJpeg, type: 'jpeg', row: firstRow('T03') + 2 },
    // It begins above the first tree and reaches into it: T01 has one already.
    { data: inventedPng(60, 80), type: 'png', row: 0, to: 2 }
  ])
  const { code, out } = await run('trees.xlsx', '--out', 'plan.xlsx')
  expect([code, out.includes('photograph')]).toEqual([0, false])
  expect(await shown('plan.xlsx')).toEqual(['T01', 'T03'])
  // The inventory goes with its pictures: the workbook that was written shows them again.
  expect(await run('plan.xlsx', '--out', 'again.xlsx')).toMatchObject({ code: 0 })
  expect(await shown('again.xlsx')).toEqual(['T01', 'T03'])
})

test.each(['Photo', 'Picture', 'Foto', 'photo (fichier)', 'Imagen', 'Fotografía', 'Bild-Nr.'])(
  'a file that a column “%s” names is found beside the inventory or in a folder of it',
  async (header) => {
    mkdirSync(join(folder, 'pictures'))
    put('a b.JPG', inventedJpeg)
    put('pictures/three.png', inventedPng(30, 40))
    put('IMG_0101.jpg', inventedJpeg)
    const files = {
      T01: 'a b.JPG',
      T03: 'pictures\\three.png',
      T05: 'IMG_0101',
      T13: ' "pictures/three.png"; x.png'
    }
    inventory('trees.csv', header, files)
    const { out } = await run('trees.csv', '--out', 'plan.xlsx')
    expect(out).not.toContain('photograph')
    expect(await shown('plan.xlsx')).toEqual(['T01', 'T03', 'T05', 'T13'])
  }
)

test('nothing outside the folder of the inventory is opened, and nothing is fetched', async () => {
  writeFileSync(join(base, 'secret.png'), inventedPng(30, 40))
  symlinkSync(join(base, 'secret.png'), join(folder, 'link.png'))
  inventory('trees.csv', 'Photo', {
    T01: '../secret.png',
    T03: join(base, 'secret.png'),
    T05: 'link.png',
    T13: 'pictures/../../secret.png',
    T11: 'https://example.com/tree.png'
  })
  const { code, out } = await run('trees.csv', '--out', 'plan.xlsx')
  expect(code).toBe(0)
  expect(await shown('plan.xlsx')).toEqual([])
  expect(out.replace(/\s+/g, ' ')).toMatch(
    /Of 4 photographs each lies outside the folder of the file that names it/
  )
  expect(out.replace(/\s+/g, ' ')).toContain('is an address and no file; nothing is fetched')
})

test('what cannot be used is told once a cause, and the pages are made without', async () => {
  put('short.png', inventedPng(30, 40).subarray(0, 60))
  put('note.jpg', new Uint8Array(Buffer.from('a note')))
  put('wide.png', inventedPng(3, 4, [0, 0, 0], { width: 20_000, height: 4 }))
  const files = {
    T01: 'short.png',
    T02: 'note.jpg',
    T03: 'wide.png',
    T05: 'gone.jpg',
    T11: 'gone too',
    T13: 'nowhere.png'
  }
  inventory('trees.csv', 'Photo', files)
  const { code, out } = await run('trees.csv', '--out', 'plan.xlsx')
  const said = out.replace(/\s+/g, ' ')
  expect([code, await shown('plan.xlsx')]).toEqual([0, []])
  expect(said).toContain('The photograph short.png of tree T01 is damaged; its page in the report has none.')
  expect(said).toContain('The photograph note.jpg of tree T02 is neither PNG nor JPEG')
  expect(said).toContain('The photograph wide.png of tree T03 has more than 10,000 pixels on a side')
  expect(said.match(/is not there/g)).toHaveLength(1)
})

test('no word about photographs where no report is written', async () => {
  inventory('trees.csv', 'Photo', { T01: 'gone.jpg' })
  const { out } = await commandRun(folder, today, [
    'trees.csv',
    '--date',
    today,
    '--documents',
    'estimate',
    '--out',
    'e.xlsx'
  ])
  expect(out).not.toContain('photograph')
})

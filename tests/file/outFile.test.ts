import {
  chmodSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync
} from 'node:fs'
import { execFileSync } from 'node:child_process'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import JSZip from 'jszip'
import { isRefusal } from '../../shared/refusal'
import { whyNotWritable, writeOut } from '../../src/file/outFile'
import { commandRun } from './commandRun'

let folder: string
beforeEach(() => (folder = mkdtempSync(join(tmpdir(), 'limbwright-'))))
afterEach(() => rmSync(folder, { recursive: true }))

/** One document is enough here, and the quickest to write. */
const run = (...args: string[]) => commandRun(folder, '2026-03-02', [...args, '--documents', 'cut-plan'])

/** The file as another program would save it: only the name of the program is another. */
async function savedElsewhere(path: string): Promise<void> {
  const zip = await JSZip.loadAsync(readFileSync(path))
  const properties = await zip.file('docProps/app.xml')!.async('string')
  zip.file('docProps/app.xml', properties.replace(/<Application>[^<]*/, '<Application>A spreadsheet'))
  writeFileSync(path, await zip.generateAsync({ type: 'nodebuffer' }))
}

test('a plan that another program saved since is replaced with --force only', async () => {
  await run('--out', 'plan.xlsx')
  const path = join(folder, 'plan.xlsx')
  await savedElsewhere(path)
  const edited = readFileSync(path)
  const refused = await run('--out', 'plan.xlsx')
  expect(refused.code).toBe(2)
  expect(refused.failures).toEqual([
    `${path} was saved by another program since, perhaps with changes of yours: name another file for the plan, or add --force to replace it.`
  ])
  expect(readFileSync(path).equals(edited)).toBe(true)
  expect((await run('--out', 'plan.xlsx', '--force')).code).toBe(0)
  expect(readFileSync(path).equals(edited)).toBe(false)
})

test('a text that is no workbook is replaced with --force only', async () => {
  const path = join(folder, 'plan.xlsx')
  writeFileSync(path, 'letters to keep')
  expect((await run('--out', 'plan.xlsx')).failures[0]).toContain('is no plan of ours')
  expect(readFileSync(path, 'utf8')).toBe('letters to keep')
  expect((await run('--out', 'plan.xlsx', '--force')).code).toBe(0)
})

test('the inventory is never replaced, through a link or with --force either', async () => {
  const path = join(folder, 'trees.xlsx')
  writeFileSync(path, 'anything')
  symlinkSync(path, join(folder, 'link.xlsx'))
  for (const out of ['trees.xlsx', 'link.xlsx', './trees.xlsx'])
    expect((await run('trees.xlsx', '--out', out, '--force')).failures[0]).toContain(
      'is the inventory itself'
    )
})

test('a pipe or a folder is not written to, and nothing waits for it', async () => {
  execFileSync('mkfifo', [join(folder, 'pipe.xlsx')])
  for (const path of [join(folder, 'pipe.xlsx'), folder]) {
    const refused = await whyNotWritable(path, null, true)
    expect(refused?.sentence).toContain('is no file that can be replaced')
  }
})

test('where the write fails, what was there stays and nothing is left beside it', async () => {
  const path = join(folder, 'plan.xlsx')
  writeFileSync(path, 'the plan before')
  // What does not fit: bytes that cannot be taken at all.
  const unwritten = await writeOut(join(path, 'below a file.xlsx'), new Uint8Array(1))
  expect(isRefusal(unwritten)).toBe(true)
  if (process.getuid?.() !== 0) {
    chmodSync(folder, 0o500)
    expect(isRefusal(await writeOut(path, new Uint8Array(1)))).toBe(true)
    chmodSync(folder, 0o700)
  }
  expect(readFileSync(path, 'utf8')).toBe('the plan before')
  expect(readdirSync(folder)).toEqual(['plan.xlsx'])
})

test('the whole file is there or the former one: it is written beside and then named', async () => {
  const path = join(folder, 'plan.xlsx')
  writeFileSync(path, 'before')
  expect(await writeOut(path, new TextEncoder().encode('after'))).toBeNull()
  expect(readFileSync(path, 'utf8')).toBe('after')
  expect(readdirSync(folder)).toEqual(['plan.xlsx'])
})

import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { gzipSync } from 'node:zlib'
import { script } from '../../tools/build'

const folder = join(__dirname, '../../taskpane')
const page = readFileSync(join(folder, 'taskpane.html'), 'utf8')

test('the page names its language, its title and its place for the pane, and has one place for the scripts', () => {
  expect(page).toContain('<html lang="en">')
  expect(page).toContain('<title>Limbwright</title>')
  expect(page.split('id="pane"')).toHaveLength(2)
  expect(page.split('<!-- scripts -->')).toHaveLength(2)
})

test('the page itself fetches nothing but its own style', () => {
  expect([...page.matchAll(/(?:src|href)="([^"]*)"/g)].map(([, address]) => address)).toEqual([
    'taskpane.css'
  ])
})

test('no file of the pane asks through dialogs that throw in an add-in', () => {
  for (const name of readdirSync(folder).filter((file) => file.endsWith('.ts')))
    expect([name, /\b(?:alert|confirm|prompt)\(/.test(readFileSync(join(folder, name), 'utf8'))]).toEqual([
      name,
      false
    ])
})

test('the pane’s own script stays under 100 KB compressed; engine, documents and drawings come later', async () => {
  const out = mkdtempSync(join(tmpdir(), 'limbwright-'))
  try {
    const file = join(out, 'taskpane.js')
    await script(join(folder, 'main.ts'), file)
    const built = readFileSync(file)
    expect(built.length).toBeGreaterThan(10_000)
    expect(gzipSync(built).length).toBeLessThan(100_000)
    expect(built.toString()).toContain('import("./documents.js")')
    expect(built.toString()).not.toContain('A qualified arborist on site decides every cut.')
  } finally {
    rmSync(out, { recursive: true })
  }
})

/** The page for administrators names options, files, sets and addresses: each is what the build and the manifest have. */
import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { JSDOM } from 'jsdom'
import { checkedOffice } from '../../tools/manifest'
import { serverPolicy } from '../../tools/pane'
import { usage } from '../../tools/build'
import { buildForTest } from '../build/addin'

const root = join(__dirname, '../..')
const read = (file: string): string => readFileSync(join(root, file), 'utf8')
const page = read('docs/deployment.md')

test('its options are those of the build', () => {
  const named = new Set([...page.matchAll(/`(--\w+)`/g)].map(([, option]) => option))
  expect([...named].sort()).toEqual([...usage.matchAll(/^ {2}(--\w+)/gm)].map(([, option]) => option).sort())
})

test('its requirement sets are those of the manifest', () => {
  const { document } = new JSDOM(read('manifest.xml'), { contentType: 'text/xml' }).window
  const sets = [...document.getElementsByTagName('Set')].map(
    (set) => `${set.getAttribute('Name')} ${set.getAttribute('MinVersion')}`
  )
  const named = [...page.matchAll(/`(\w+)` (1\.\d+)/g)].map(([, name, version]) => `${name} ${version}`)
  expect(named.sort()).toEqual(sets.sort())
})

test('every address of office.js is one that the build takes', () => {
  const named = [...page.matchAll(/`(https:[^`]*office\.js)`/g)].map(([, address = '']) => address)
  expect(new Set(named).size).toBe(4)
  for (const address of named) {
    expect(checkedOffice(address)).toBe(address)
    expect(serverPolicy(address)).toContain(new URL(address).origin)
  }
})

test('the files that it names are built, and each type of file has its line', async () => {
  const built = readdirSync(await buildForTest(), { recursive: true, encoding: 'utf8' })
  const named = [...page.matchAll(/`([\w-]+\.(?:xml|txt|json))`/g)].map(([, file]) => file)
  expect(new Set(named)).toEqual(new Set(['manifest.xml', 'functions.json', 'content-policy.txt']))
  for (const file of named) expect(built).toContain(file)
  const types = new Set(built.flatMap((file) => /\.(?!txt)\w+$/.exec(file)?.[0] ?? []))
  for (const type of types) expect(page).toContain(`\`${type}\` as `)
}, 60000)

/** SECURITY.md names the checks that hold its promises: each is there. */
import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'

const root = join(__dirname, '../..')
const page = readFileSync(join(root, 'SECURITY.md'), 'utf8')

test('every check that the page names is there', () => {
  const named = [...page.matchAll(/`(tests\/[^`]+)`/g)]
    .map(([, path = '']) => path)
    .filter((path) => path !== 'tests/')
  expect(named.length).toBeGreaterThan(8)
  expect(named.filter((path) => !existsSync(join(root, path)))).toEqual([])
})

test('every promise names a check', () => {
  const promises = page
    .split('\n## ')
    .filter((part) => !/^(# Security|What it handles|What is not promised)/.test(part))
  expect(promises.length).toBeGreaterThan(4)
  expect(promises.filter((part) => !part.includes('`tests/')).map((part) => part.split('\n')[0])).toEqual([])
})

/** CONTRIBUTING.md names files, nouns and functions: each of them exists, and each noun stands where the map has it. */
import { execFileSync } from 'node:child_process'
import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import packageJson from '../../package.json'

const root = join(__dirname, '../..')
const read = (file: string): string => readFileSync(join(root, file), 'utf8')
const page = read('CONTRIBUTING.md')

/** What stands in backquotes outside the examples, which name what does not exist yet. */
const named = [...page.replace(/^```[^]*?^```/gm, '').matchAll(/`([^`]+)`/g)].map(([, text]) => text!)

/** Made up in an example of the page. */
const invented = ['underneath', 'rules.leastRise', "use: 'record'", 'tests/functions/upperthird.test.ts']

const sources = execFileSync('git', ['ls-files', '-co', '--exclude-standard'], {
  cwd: root,
  encoding: 'utf8'
})
  .split('\n')
  .filter((file) => /^(shared|src|functions|tests)\/.*\.ts$/.test(file) && existsSync(join(root, file)))
  .map(read)
  .join('\n')

const isPath = (text: string): boolean =>
  /^[\w./-]+$/.test(text) && (/\/$/.test(text) || /\/.*\.\w+$/.test(text))

test('every file and folder that is named exists', () => {
  const paths = named.filter(isPath)
  expect(paths.length).toBeGreaterThan(40)
  expect(paths.filter((path) => !invented.includes(path) && !existsSync(join(root, path)))).toEqual([])
})

test('every name stands in the sources', () => {
  const names = named.filter((text) => /^[A-Za-z]\w+(\.\w+)?$/.test(text) && !isPath(text))
  expect(names.length).toBeGreaterThan(60)
  const unknown = names
    .filter((name) => !invented.includes(name))
    .flatMap((name) => name.split('.'))
    .filter((word) => !new RegExp(`\\b${word}\\b`).test(sources))
  expect(unknown).toEqual([])
})

test('every command is one of the package', () => {
  const commands = named.flatMap((text) => /^npm run (\w+)$/.exec(text)?.[1] ?? [])
  expect(commands.length).toBeGreaterThan(2)
  expect(commands.filter((command) => !(command in packageJson.scripts))).toEqual([])
})

const map = [...page.matchAll(/^\| (`[^|]+`) +\|[^|]+\| `([^`]+)` +\|$/gm)].flatMap(([, nouns, file]) =>
  [...nouns!.matchAll(/`(\w+)`/g)].map(([, noun]) => [noun!, file!] as const)
)

test('the map has its nouns', () => {
  expect(map.length).toBeGreaterThan(25)
})

test.each(map)('%s stands in %s', (noun, file) => {
  expect(read(file)).toMatch(new RegExp(`^export (interface|type|class) ${noun}\\b`, 'm'))
})

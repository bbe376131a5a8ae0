/**
 * Runs every check that draws its cases at random for long, from a seed of its own: `npm run fuzz`, or only those whose
 * path holds one of the words behind it: `npm run fuzz -- whole solver`. It prints the seed; PROPERTY_SEED=that number
 * runs the same cases again.
 */
import { spawnSync } from 'node:child_process'
import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'

const root = join(__dirname, '..')

/** The checks that read the seed, or that do more where FUZZ is full. */
const drawing = /PROPERTY_SEED|\bFUZZ\b|from 'fast-check'/

const wanted = process.argv.slice(2)

const files = readdirSync(join(root, 'tests'), { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('.test.ts'))
  .map((name) => join('tests', name))
  .filter((file) => wanted.length === 0 || wanted.some((word) => file.includes(word)))
  .filter((file) => drawing.test(readFileSync(join(root, file), 'utf8')))

if (files.length === 0) {
  console.log(`No check that draws its cases has ${wanted.join(' or ')} in its path.`)
  process.exit(1)
}

const seed = process.env.PROPERTY_SEED ?? String(Math.floor(Math.random() * 2 ** 31))
const part = wanted.length === 0 ? '' : ` -- ${wanted.join(' ')}`
const again = `PROPERTY_SEED=${seed} npm run fuzz${part}`
console.log(`${files.join('\n')}\n${files.length} files, seed ${seed}; run the same again with ${again}`)

const jest = join(root, 'node_modules', 'jest', 'bin', 'jest.js')
const { status } = spawnSync(
  process.execPath,
  [jest, '--testTimeout=1800000', '--runTestsByPath', ...files],
  {
    cwd: root,
    stdio: 'inherit',
    env: { ...process.env, FUZZ: 'full', PROPERTY_SEED: seed }
  }
)
if (status !== 0) console.log(`Something failed. The same cases run again with ${again}`)
process.exitCode = status ?? 1

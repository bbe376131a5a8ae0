/**
 * Runs every check that draws its cases at random for long, from a seed of its own: `npm run fuzz`, or only those whose
 * path holds one of the words behind it: `npm run fuzz -- whole solver`. It prints the seed; PROPERTY_SEED=that number
 * runs the same cases again. The drawn shapes of inventories (`npm run fuzz -- shapes`) run in parts, tell how far they
 * are, and go on where they were stopped when they are run with the same seed; FUZZ_SHARE=0.1 draws a tenth of them.
 */
import { spawnSync } from 'node:child_process'
import { mkdirSync, readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { buildSync } from 'esbuild'

const root = join(__dirname, '..')
const shapes = join('tests', 'inventory', 'shapes', 'shapes.test.ts')

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
const words = wanted.length === 0 ? '' : ` -- ${wanted.join(' ')}`
const again = `PROPERTY_SEED=${seed} npm run fuzz${words}`
console.log(`${files.join('\n')}\n${files.length} files, seed ${seed}; run the same again with ${again}`)

/** Bundled, as the add-in runs the same code, and without the test runner, which a part of the time would go into. */
function runShapes(): boolean {
  const folder = join(root, 'build', 'fuzz')
  mkdirSync(folder, { recursive: true })
  const outfile = join(folder, 'shapes.cjs')
  buildSync({
    entryPoints: [join(root, 'tests', 'inventory', 'shapes', 'atLength', 'main.ts')],
    outfile,
    bundle: true,
    platform: 'node',
    target: 'node20',
    logLevel: 'error'
  })
  const kept = join(folder, `shapes-${seed}.json`)
  const { status } = spawnSync(process.execPath, [outfile, seed, kept, process.env.FUZZ_SHARE ?? '1'], {
    stdio: 'inherit'
  })
  return status === 0
}

function runJest(checks: readonly string[]): boolean {
  const jest = join(root, 'node_modules', 'jest', 'bin', 'jest.js')
  const { status } = spawnSync(
    process.execPath,
    [jest, '--testTimeout=1800000', '--runTestsByPath', ...checks],
    {
      cwd: root,
      stdio: 'inherit',
      env: { ...process.env, FUZZ: 'full', PROPERTY_SEED: seed }
    }
  )
  return status === 0
}

const others = files.filter((file) => file !== shapes)
const passed = [
  ...(others.length > 0 ? [runJest(others)] : []),
  ...(files.includes(shapes) ? [runShapes()] : [])
]
if (passed.includes(false)) {
  console.log(`Something failed. The same cases run again with ${again}`)
  process.exitCode = 1
}

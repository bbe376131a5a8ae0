/**
 * The drawn shapes at length, in parts that each have a seed of their own: `npm run fuzz -- shapes`. What fails stops
 * nothing; each kind of fault is told with its smallest shape. Where a run was stopped, the same seed goes on behind the
 * last part that was finished, as long as the program is the same.
 */
import { createHash } from 'node:crypto'
import { existsSync, readFileSync, writeFileSync } from 'node:fs'
import { properties } from '../properties'
import { told, type Failure } from './failures'
import { runPart, type Part, type PartDone } from './part'

const partSize = 1000

/** What is done of a run, as it is kept on the disk. */
interface Run {
  readonly program: string
  readonly done: PartDone[]
  readonly failures: Failure[]
}

const [seedText = '1', keptAt = '', share = '1'] = process.argv.slice(2)
const seed = Number(seedText)
const program = createHash('sha256').update(readFileSync(__filename)).update(share).digest('hex')

/** A share of what is drawn at length, the properties in turn, so that each has begun early. */
function partsOf(wanted: number): Part[] {
  const sizes = properties.map(({ long }) => {
    const drawn = Math.max(1, Math.round(long * wanted))
    return Array.from({ length: Math.ceil(drawn / partSize) }, (_none, at) =>
      Math.min(partSize, drawn - at * partSize)
    )
  })
  const parts: Part[] = []
  const longest = Math.max(...sizes.map(({ length }) => length))
  for (let turn = 0; turn < longest; turn++)
    properties.forEach((property, at) => {
      const size = sizes[at]?.[turn]
      if (size !== undefined) parts.push({ property, size, seed: (seed + 7919 * parts.length) % 2 ** 31 })
    })
  return parts
}

function begun(): Run {
  const fresh: Run = { program, done: [], failures: [] }
  if (!existsSync(keptAt)) return fresh
  const kept = JSON.parse(readFileSync(keptAt, 'utf8')) as Run
  return kept.program === program ? kept : fresh
}

const sum = (done: readonly PartDone[], of: keyof PartDone): number =>
  done.reduce((all, part) => all + part[of], 0)

const run = begun()
const parts = partsOf(Number(share))
if (run.done.length > 0) console.log(`Going on behind part ${String(run.done.length)}.`)
for (const [at, part] of parts.entries()) {
  if (at < run.done.length) continue
  run.done.push(runPart(part, run.failures))
  writeFileSync(keptAt, JSON.stringify(run))
  const figures = [
    `part ${String(at + 1)} of ${String(parts.length)}`,
    `${sum(run.done, 'cases').toLocaleString('en-US')} cases`,
    `${(sum(run.done, 'seconds') / 60).toFixed(1)} min`,
    `slowest ${Math.max(...run.done.map(({ slowest }) => slowest)).toFixed(0)} ms`,
    `${String(run.failures.length)} failures`
  ]
  console.log(`${figures.join(', ')}; ${part.property.name}`)
}
for (const failure of run.failures) console.log(`\n${told(failure)}`)
console.log(
  `\nSeed ${String(seed)}: ${sum(run.done, 'cases').toLocaleString('en-US')} cases in ${(sum(run.done, 'seconds') / 60).toFixed(1)} min, ${String(run.failures.length)} failures.`
)
process.exitCode = run.failures.length > 0 ? 1 : 0

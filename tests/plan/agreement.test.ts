/**
 * The plan against the plain reference of `reference/`: the model written a second time from its description, apart from
 * the engine, and every choice tried one by one. Trees are drawn at random and go in as cells, in both systems of units.
 */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { defaultRules } from '../../shared/rules'
import { runCommandLine } from '../../src/file/commandLine'
import { bundled } from './reference/bundle'
import { differences } from './reference/compare'
import { drawTree, inventoryRows, type DrawnTree, type Units } from './reference/draw'
import { day, enginePlan, planRows, type PrintedTree } from './reference/enginePlan'
import { LeaderToBeRanked } from './reference/leader'
import { planReference, type ReferencePlan } from './reference/planReference'
import { TooManyChoices } from './reference/visits'

const full = process.env['FUZZ'] === 'full'
const seed = Number(process.env['PROPERTY_SEED'] ?? 20270401)
const trees = full ? 2400 : 360
jest.setTimeout(full ? 1_800_000 : 240_000)

const systems: readonly Units[] = ['in-ft', 'cm-m']

/** The reference's plan; null where there are too many choices to try, or several rows that may lead. */
function referencePlan(tree: Parameters<typeof planReference>[0]): ReferencePlan | null {
  try {
    return planReference(tree, day, defaultRules)
  } catch (error) {
    if (error instanceof TooManyChoices || error instanceof LeaderToBeRanked) return null
    throw error
  }
}

/** What differs, with what is needed to draw the tree again; where choices tie, another one of them is as good. */
function off(at: number, engine: PrintedTree, reference: ReferencePlan): string[] {
  const tied = reference.visits.some(({ ties }) => ties > 0)
  const found = differences(engine, reference)
  return tied && engine.visits[0]!.objective - reference.visits[0]!.objective < 1e-3
    ? []
    : found.map((each) => `tree ${at} of PROPERTY_SEED=${seed}: ${each}`)
}

function drawn(at: number): DrawnTree {
  return drawTree(`T${at}`, seed + at * 7919)
}

/** What the drawn trees came to, so that the checks cannot become empty. */
interface Seen {
  trees: number
  kinds: Set<string>
  outcomes: Set<string>
  later: number
}

function note(seen: Seen, { visits, outcomes }: PrintedTree): void {
  seen.trees++
  seen.later += visits.length - 1
  for (const { cuts } of visits)
    for (const { kind, obligation } of cuts) seen.kinds.add(`${obligation ?? 'structure'} ${kind}`)
  for (const { outcome, heldBy } of outcomes)
    seen.outcomes.add(heldBy === null ? outcome : `${outcome} ${heldBy}`)
}

describe('the plan and the plain reference', () => {
  it(`agree on ${trees} drawn trees, every cut, outcome and year (seed ${seed})`, () => {
    const seen: Seen = { trees: 0, kinds: new Set(), outcomes: new Set(), later: 0 }
    const found: string[] = []
    let tried = 0
    for (let at = 0; seen.trees < trees; at++) {
      tried++
      const { inventory, printed } = enginePlan([drawn(at)], systems[at % 2]!)
      // A row that is refused is no matter of this check.
      const reference = printed.unplanned.length > 0 ? null : referencePlan(inventory.trees[0]!)
      if (reference === null) continue
      note(seen, printed.trees[0]!)
      found.push(...off(at, printed.trees[0]!, reference))
    }
    expect(found).toEqual([])
    expect(tried).toBeLessThan(1.3 * trees)
    expect([...seen.kinds].sort()).toEqual([
      'broken reduce',
      'broken remove',
      'clearance raise',
      'clearance reduce',
      'clearance remove',
      'dead remove',
      'rubbing reduce',
      'rubbing remove',
      'structure reduce',
      'structure remove',
      'temporary remove'
    ])
    expect([...seen.outcomes].sort()).toEqual([
      'done',
      'expected',
      'keep',
      'removed',
      'settled',
      'wait allowance',
      'wait inspect first',
      'wait leader'
    ])
    expect(seen.later).toBeGreaterThan(trees / 4)
  })

  it(`agree on what the command line prints of inventories of several trees, with their years drawn together (seed ${seed})`, async () => {
    const folder = mkdtempSync(join(tmpdir(), 'limbwright-agreement-'))
    const found: string[] = []
    let [compared, moved] = [0, 0]
    for (let part = 0; compared < trees / 8; part++) {
      const at = 1_000_000 + part * 5
      const units = systems[part % 2]!
      const rows = inventoryRows(
        [0, 1, 2, 3, 4].map((each) => drawn(at + each)),
        units
      )
      const file = join(folder, `${part}.csv`)
      writeFileSync(file, rows.map((row) => row.map((cell) => cell ?? '').join(',')).join('\n'))
      const out: string[] = []
      await runCommandLine([file, '--json', '--date', day], {
        out: (text) => out.push(text),
        fail: (sentence) => found.push(sentence),
        today: day,
        folder
      })
      const printed = JSON.parse(out.join('\n')) as { trees: PrintedTree[]; unplanned: unknown[] }
      const references = planRows(rows).inventory.trees.map(referencePlan)
      if (references.includes(null) || printed.unplanned.length > 0) continue
      const own = references.filter((each) => each !== null)
      const together = bundled(own)
      together.forEach((reference, place) => {
        compared++
        if (reference.visits.some(({ year }, visit) => year !== own[place]!.visits[visit]!.year)) moved++
        found.push(...off(at + place, printed.trees[place]!, reference))
      })
    }
    rmSync(folder, { recursive: true })
    expect(found).toEqual([])
    expect(moved).toBeGreaterThan(0)
  })
})

import { canonicalFile } from './canonicalFile'
import {
  askedAt,
  planFile,
  planned,
  removeFolder,
  splitAddress,
  unquoted,
  type Printed,
  type PrintedTree
} from './commandOutput'
import type { Expected, ExpectedTree } from './expected'
import { inventories } from './inventories'
import { isLeftOutAloud, isTold, strayRemedies } from './spokenOf'

afterAll(removeFolder)

/** Ids compare as people read them: `Limb 1|1` allows both, `*` any. */
const sameId = (wanted: string, got: string) =>
  wanted === '*' || wanted.split('|').some((each) => each.trim().toLowerCase() === got.trim().toLowerCase())

interface Wanted {
  column: string
  fields: string[]
  unit: string | null
  girth: boolean
}

/** `C trunk cm girth` taken apart; a last part `...` allows columns that are not named. */
function wantedColumns(list: string): { wanted: Wanted[]; others: boolean } {
  const parts = list.split(';').map((part) => part.trim())
  const wanted = parts
    .filter((part) => part !== '...' && part !== '')
    .map((part) => {
      const [column = '', fields = '', ...rest] = part.split(' ')
      const girth = rest.includes('girth')
      return { column, fields: fields.split('|'), unit: rest.find((word) => word !== 'girth') ?? null, girth }
    })
  return { wanted, others: parts.includes('...') }
}

function checkColumns({ columns }: Printed, sheet: string, list: string): void {
  const { wanted, others } = wantedColumns(list)
  const printed = (columns ?? []).filter((each) => sheet === '' || each.sheet === sheet)
  const meant = printed.map((each) => {
    const girth = /^(trunk|limb|stem)Girth$/.exec(each.field ?? '')?.[1]
    const field = girth === undefined ? (each.field ?? '-') : girth === 'limb' ? 'diameter' : girth
    return { ...each, field, girth: girth !== undefined || each.measure === 'girth' }
  })
  for (const { column, fields, unit, girth } of wanted) {
    const here = meant.filter((each) => each.column === column)
    const found = here.find(({ field }) => fields.includes(field))
    if (found === undefined && fields.includes('-') && here.every(({ field }) => field === '-')) continue
    expect({ column, fields: here.map(({ field }) => field) }).toEqual({
      column,
      fields: expect.arrayContaining([
        expect.stringMatching(new RegExp(`^(${fields.join('|')})$`))
      ]) as unknown
    })
    expect({ column, girth: found?.girth }).toEqual({ column, girth })
    if (unit !== null) expect({ column, unit: found?.unit }).toEqual({ column, unit })
  }
  const allowed = (column: string, field: string) =>
    field === '-' || wanted.some((each) => each.column === column && each.fields.includes(field))
  const strangers = others ? [] : meant.filter(({ column, field }) => !allowed(column, field))
  expect(strangers.map(({ column, header, field }) => ({ column, header, field }))).toEqual([])
}

function expectClose(got: unknown, wanted: unknown): void {
  if (typeof wanted === 'number' && typeof got === 'number')
    expect(Math.abs(got - wanted)).toBeLessThanOrEqual(1e-6 * Math.max(1, Math.abs(wanted)))
  else expect(got).toEqual(wanted)
}

/** The plan of one tree is the one that its canonical row gives. */
function checkTree(got: PrintedTree, wanted: PrintedTree, meant: ExpectedTree): void {
  expectClose(got.liveCrownRatio, wanted.liveCrownRatio)
  expectClose(got.allowedRemoval, wanted.allowedRemoval)
  expect(got.visits.map(({ cuts }) => cuts.length)).toEqual(wanted.visits.map(({ cuts }) => cuts.length))
  got.visits.forEach(({ cuts }, visit) => {
    cuts.forEach((cut, at) => {
      const other = wanted.visits[visit]!.cuts[at]!
      const limb = meant.limbs.find(({ id }) => (id.split('|')[0] ?? '') === other.limb)
      expect(sameId(limb?.id ?? other.limb, cut.limb) || other.limb.startsWith('any ')).toBe(true)
      expect(cut.kind).toBe(other.kind)
      for (const key of ['share', 'cutDiameterMm', 'aspectRatio', 'priority'] as const)
        expectClose(cut[key], other[key])
    })
  })
}

/** The ratios that the first visit's cuts show, by the plain division of what was measured; how many there were. */
function checkRatios(plan: Printed, trees: readonly ExpectedTree[]): number {
  let seen = 0
  plan.trees.forEach(({ visits }, at) => {
    for (const cut of visits.find(({ visit }) => visit === 1)?.cuts ?? []) {
      const limb = trees[at]?.limbs.find(({ id }) => sameId(id, cut.limb))
      if (limb === undefined || limb.diameter === null || limb.stem === null) continue
      expectClose(cut.aspectRatio, limb.diameter / limb.stem)
      seen++
    }
  })
  return seen
}

function mostRatios({ trees, ratios }: Expected): number {
  const full = trees.flatMap(({ limbs }) =>
    limbs.filter(({ diameter, stem }) => diameter !== null && stem !== null)
  )
  return ratios ?? Math.min(2, full.length)
}

const named = inventories.map((each, at) => [`${String(at + 1)}: ${each.shape}`, each] as const)

describe.each(named)('%s', (_shape, { file, expected }) => {
  const { trees } = expected
  const read = () => planned(file, expected.args)

  test('its columns', async () => {
    const { plan } = await read()
    for (const [sheet, list] of Object.entries(expected.columns)) checkColumns(plan, sheet, list)
  })

  test('its trees and limbs', async () => {
    const { plan } = await read()
    const got = plan.trees.map(({ tree }) => tree)
    const missing = trees.filter(({ id }, at) => !sameId(id, got[at] ?? ''))
    expect({ got, missing: missing.map(({ id }) => id) }).toEqual({ got, missing: [] })
    // Every row of a limb counts, a leader's too, also where the limb could not be judged.
    const limbs = trees.reduce((sum, tree) => sum + tree.limbs.length, 0)
    expect(plan.summary).toMatchObject({ trees: trees.length, limbs })
    expect(plan.trees).toHaveLength(trees.length)
  })

  test('its ratios, and the plan of the same trees in our own shape', async () => {
    const { code, plan } = await read()
    const { plan: canonical } = await planned(canonicalFile(expected))
    expect(code).toBe(expected.exit ?? 0)
    expect(checkRatios(plan, trees)).toBeGreaterThanOrEqual(mostRatios(expected))
    expect(plan.trees).toHaveLength(canonical.trees.length)
    plan.trees.forEach((tree, at) => {
      checkTree(tree, canonical.trees[at]!, trees[at]!)
    })
    const prices = ({ estimate }: Printed) => (estimate.budgetFigures ?? []).map(({ price }) => price)
    expect(prices(plan)).toEqual(prices(canonical))
  })

  test('what is asked, told and left out, on one screen', async () => {
    const { code, plan } = await read()
    expect(code).toBe(expected.exit ?? 0)
    const { asked = [], mayAsk = [], told = [], leftOut = {} } = expected
    for (const address of asked) {
      const places = address.split('|').map(splitAddress)
      expect({ address, asked: places.some(({ sheet, cell }) => askedAt(plan, sheet, cell)) }).toEqual({
        address,
        asked: true
      })
    }
    for (const [cell, kind] of told)
      expect({ cell, kind, told: isTold(plan, cell, kind) }).toEqual({ cell, kind, told: true })
    for (const [rows, kind] of Object.entries(leftOut))
      expect({ rows, kind, told: isLeftOutAloud(plan, rows, kind) }).toEqual({ rows, kind, told: true })
    const asking = plan.problems.filter(({ message, remedy }) => unquoted(message + remedy).includes('?'))
    expect(asking.length).toBeLessThanOrEqual(asked.length + mayAsk.length + told.length + 2)
    expect(plan.problems.length).toBeLessThanOrEqual(25)
    expect(strayRemedies(plan)).toEqual([])
  })

  if (expected.notJudged !== undefined)
    test('what could not be judged is called so', async () => {
      const { plan } = await read()
      const unplanned = plan.unplanned.map(({ tree }) => tree)
      for (const id of expected.notJudged ?? []) expect(unplanned.some((each) => sameId(id, each))).toBe(true)
      if (expected.exit !== 3) return
      const { out } = await planFile(file, expected.args ?? [])
      expect(out).not.toMatch(/No cut\b/)
    })
})

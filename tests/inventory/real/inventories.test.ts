import { canonicalFile } from './canonicalFile'
import { checkColumns } from './checkColumns'
import { checkRatios, checkTree, mostRatios, sameId } from './checkPlan'
import {
  askedAt,
  planFile,
  planned,
  removeFolder,
  splitAddress,
  unquoted,
  type Printed
} from './commandOutput'
import { inventories } from './inventories'
import { isLeftOutAloud, isTold, strayRemedies } from './spokenOf'

afterAll(removeFolder)

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

import { canonicalFile } from '../canonicalFile'
import { checkColumns } from '../checkColumns'
import { checkRatios, checkTree, mostRatios, sameId } from '../checkPlan'
import { planned } from '../commandOutput'
import type { RealInventory } from '../expected'
import { isLeftOutAloud, isTold, strayRemedies } from '../spokenOf'

/** That an inventory is read as a careful person reads it, and what was doubtful or left out is told. */
export function checkInventory({ file, expected }: RealInventory): void {
  const { trees, told = [], leftOut = {} } = expected

  test('is read as a careful person reads it', async () => {
    const { code, plan } = await planned(file, expected.args)
    const { plan: canonical } = await planned(canonicalFile(expected))
    const got = plan.trees.map(({ tree }) => tree)
    const missing = trees.filter(({ id }, at) => !sameId(id, got[at] ?? ''))
    expect({ got, missing: missing.map(({ id }) => id) }).toEqual({ got, missing: [] })
    expect(plan.trees).toHaveLength(trees.length)
    for (const [sheet, list] of Object.entries(expected.columns)) checkColumns(plan, sheet, list)
    expect(code).toBe(expected.exit ?? 0)
    expect(checkRatios(plan, trees)).toBeGreaterThanOrEqual(expected.exit === 3 ? 0 : mostRatios(expected))
    plan.trees.forEach((tree, at) => {
      checkTree(tree, canonical.trees[at]!, trees[at]!)
    })
  })

  test('says what a person would want to know', async () => {
    const { plan } = await planned(file, expected.args)
    for (const [cell, kind] of told)
      expect({ cell, kind, told: isTold(plan, cell, kind) }).toEqual({ cell, kind, told: true })
    for (const [rows, kind] of Object.entries(leftOut))
      expect({ rows, kind, told: isLeftOutAloud(plan, rows, kind) }).toEqual({ rows, kind, told: true })
    expect(plan.problems.length).toBeLessThanOrEqual(25)
    expect(strayRemedies(plan)).toEqual([])
  })
}

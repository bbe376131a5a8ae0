// Pending: what the reader does not do yet. Run by `npx jest --testMatch '**/further.pending.ts'`.
import { meaningOf, meaningOfDecoy } from '../../headers/oneColumn'
import { canonicalFile } from '../canonicalFile'
import { checkColumns } from '../checkColumns'
import { checkRatios, checkTree, mostRatios, sameId } from '../checkPlan'
import { planned, removeFolder } from '../commandOutput'
import { isLeftOutAloud, isTold, strayRemedies } from '../spokenOf'
import { inventories2 } from '.'
import { moreDecoys } from './moreDecoys'
import { moreHeaders } from './moreHeaders'

afterAll(removeFolder)

describe.each(Object.entries(inventories2))('%s', (_name, { file, expected }) => {
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
})

test.each(moreHeaders.map((phrasing) => [phrasing.language, phrasing.header, phrasing] as const))(
  'a header in %s: “%s”',
  (_language, _header, phrasing) => {
    const meaning = meaningOf(phrasing)
    expect({ field: meaning?.field, girth: meaning?.girth }).toEqual({
      field: phrasing.field,
      girth: phrasing.measure === 'girth'
    })
    if (phrasing.unit !== null) expect(meaning?.unit).toBe(phrasing.unit)
  }
)

test.each(moreDecoys.map((decoy) => [decoy.language, decoy.header, decoy] as const))(
  'no field in %s: “%s”',
  (_language, _header, decoy) => {
    const meaning = meaningOfDecoy(decoy)
    if (decoy.ambiguous && meaning?.field !== null) expect(meaning?.confidence).toBe('likely')
    else expect(meaning?.field ?? null).toBeNull()
  }
)

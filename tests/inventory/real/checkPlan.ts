import type { Printed, PrintedTree } from './commandOutput'
import type { Expected, ExpectedTree } from './expected'

/** Ids compare as people read them: `Limb 1|1` allows both, `*` any. */
export const sameId = (wanted: string, got: string) =>
  wanted === '*' || wanted.split('|').some((each) => each.trim().toLowerCase() === got.trim().toLowerCase())

function expectClose(got: unknown, wanted: unknown): void {
  if (typeof wanted === 'number' && typeof got === 'number')
    expect(Math.abs(got - wanted)).toBeLessThanOrEqual(1e-6 * Math.max(1, Math.abs(wanted)))
  else expect(got).toEqual(wanted)
}

/** The plan of one tree is the one that its canonical row gives. */
export function checkTree(got: PrintedTree, wanted: PrintedTree, meant: ExpectedTree): void {
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
export function checkRatios(plan: Printed, trees: readonly ExpectedTree[]): number {
  let seen = 0
  plan.trees.forEach(({ visits }, at) => {
    for (const cut of visits.find(({ visit }) => visit === 1)?.cuts ?? []) {
      // Limbs without an id of their own are told apart by nothing else: one of them has to fit.
      const ratios = (trees[at]?.limbs ?? [])
        .filter(({ id }) => sameId(id, cut.limb))
        .flatMap(({ diameter, stem }) => (diameter === null || stem === null ? [] : [diameter / stem]))
      if (ratios.length === 0) continue
      const [nearest] = ratios.sort(
        (one, other) => Math.abs(one - (cut.aspectRatio ?? 0)) - Math.abs(other - (cut.aspectRatio ?? 0))
      )
      expectClose(cut.aspectRatio, nearest)
      seen++
    }
  })
  return seen
}

/** How many ratios the first visit has to show. */
export function mostRatios({ trees, ratios }: Expected): number {
  const full = trees.flatMap(({ limbs }) =>
    limbs.filter(({ diameter, stem }) => diameter !== null && stem !== null)
  )
  return ratios ?? Math.min(2, full.length)
}

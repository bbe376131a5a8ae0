import type { Visit } from '../../src/plan/plan'

/** The dose of a visit as it is printed: the sum of its cuts' doses, each to a tenth of a percent, and no more than is allowed. */
export function printedDose({ cuts, allowedRemoval }: Visit): number {
  const tenths = cuts.reduce((sum, { dose }) => sum + Math.round(dose * 1000), 0)
  return Math.min(tenths, Math.floor(allowedRemoval * 1000 + 1e-6)) / 1000
}

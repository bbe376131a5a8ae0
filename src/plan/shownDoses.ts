import { rounded, shownParts, wholeUnits } from '../../shared/words/rounding'
import type { Cut, Visit } from './plan'

/** Doses are shown to a tenth of a percent. */
const perWhole = 1000

/** The doses of a visit as they are shown, 0 to 1: the cuts' add up to the visit's, which never passes what is allowed. */
export interface ShownDoses {
  readonly allowed: number
  readonly visit: number
  /** In the order of the visit's cuts. */
  readonly cuts: readonly number[]
}

/** A visit is a value, and every surface asks for the same doses. */
const known = new WeakMap<Visit, ShownDoses>()

export function shownDoses(visit: Visit): ShownDoses {
  let doses = known.get(visit)
  if (doses === undefined) known.set(visit, (doses = dosesOf(visit)))
  return doses
}

function dosesOf({ cuts, allowedRemoval }: Visit): ShownDoses {
  const most = wholeUnits(allowedRemoval, perWhole, 'at most')
  const { parts, sum } = shownParts(
    cuts.map(({ dose }) => dose),
    perWhole,
    most
  )
  return { allowed: most / perWhole, visit: sum / perWhole, cuts: parts.map((part) => part / perWhole) }
}

/** The dose of one cut as it is shown among the others of its visit. */
export function shownDose(visit: Visit, cut: Cut): number {
  return shownDoses(visit).cuts[visit.cuts.indexOf(cut)] ?? rounded(cut.dose, 3)
}

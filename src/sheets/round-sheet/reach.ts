import type { Rules } from '../../../shared/rules'
import { atMost } from '../../formulas/boundary'
import type { Cut } from '../../plan/plan'
import type { Rates } from '../../price/rates'

/** How a cut is come at; "look" where no height was measured, "beyond" where it takes a ladder or a climb. */
export type Reach = 'ground' | 'pole' | 'look' | 'beyond'

const order: readonly Reach[] = ['ground', 'pole', 'look', 'beyond']

/** The highest place of a cut in m: several small cuts reach up to the limb's tip. Null where it was not measured. */
function heightOf({ kind, count, limb, work }: Cut): number | null {
  return kind === 'reduce' && count > 1 ? (limb.tip ?? work.height) : work.height
}

/** How far one reaches from the ground: by hand by the rules, with a pole by the rates that the price goes by too. */
export interface Reaching {
  readonly rules: Pick<Rules, 'handReach'>
  /** In m and mm. */
  readonly rates: Pick<Rates, 'poleHeight' | 'poleCut'>
}

/** How a cut is come at. */
export function reachOf(cut: Cut, { rules, rates }: Reaching): Reach {
  const meters = heightOf(cut)
  if (meters === null) return 'look'
  if (atMost(meters * 1000, rules.handReach)) return 'ground'
  const isPole = atMost(meters, rates.poleHeight) && atMost(cut.work.diameter, rates.poleCut)
  return isPole ? 'pole' : 'beyond'
}

/** How a tree is come at: by what the hardest of its cuts takes. */
export function reachOfAll(cuts: readonly Cut[], reaching: Reaching): Reach {
  return cuts.reduce<Reach>((most, cut) => {
    const reach = reachOf(cut, reaching)
    return order.indexOf(reach) > order.indexOf(most) ? reach : most
  }, 'ground')
}

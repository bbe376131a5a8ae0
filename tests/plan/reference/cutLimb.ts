import { losing } from './growth'
import type { LimbNow, Taken, TreeNow } from './model'

/** What a cut leaves of a limb that stays. */
export function withCut({ rules }: TreeNow, limb: LimbNow, cut: Taken): LimbNow {
  const after = { ...limb, ...losing(rules, limb, cut.share) }
  if (cut.kind === 'raise')
    return { ...after, lowest: cut.height ?? limb.lowest, observedFrom: cut.height ?? limb.lowest }
  return { ...after, tip: cut.tipAfter ?? limb.tip, shortened: true, shortenedInPlan: true }
}

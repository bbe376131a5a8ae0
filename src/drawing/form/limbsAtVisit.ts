import type { Limb } from '../../inventory/inventory'
import type { Cut, TreePlan, Visit } from '../../plan/plan'
import { ratioAsSurveyed } from '../../plan/unionStem'

/** A cut with its number in the drawing, counted from 1 in the order of work. */
export interface NumberedCut {
  number: number
  cut: Cut
}

/** A limb that is there when the visit begins. Heights in m. */
export interface PresentLimb {
  limb: Limb
  origin: number
  /** Tip height at the beginning of the visit. */
  tip: number
  /** Share of the surveyed rise that earlier cuts left. */
  left: number
  aspectRatio: number | null
  /** What shortens it or takes it off; a raising where nothing else is done. */
  cut: NumberedCut | null
  /** A raising beside another cut. */
  raised: NumberedCut | null
  /** Comes off with its parent, without a cut of its own. */
  goes: boolean
}

export interface LimbsAtVisit {
  present: PresentLimb[]
  /** Ids of limbs that lack a diameter, an origin or a tip. */
  notDrawn: string[]
}

/** The cuts of a visit in the order of the plan: obligations first, then the most urgent limb. */
export function numberedCuts(visit: Visit): NumberedCut[] {
  return visit.cuts.map((cut, index) => ({ number: index + 1, cut }))
}

interface Past {
  tips: Map<Limb, number>
  gone: Set<Limb>
}

/** What the visits before this one changed. */
function pastOf(plan: TreePlan, visit: Visit | null): Past {
  const past: Past = { tips: new Map(), gone: new Set() }
  for (const earlier of plan.visits) {
    if (visit === null || earlier.visit >= visit.visit) break
    for (const cut of earlier.cuts)
      if (cut.kind === 'remove') past.gone.add(cut.limb)
      else if (cut.kind === 'reduce' && cut.endsAt !== null) past.tips.set(cut.limb, cut.endsAt)
    for (const state of earlier.limbs) if (state.decision === 'remove') past.gone.add(state.limb)
  }
  return past
}

function ratioOf(plan: TreePlan, limb: Limb, visit: Visit | undefined): number | null {
  const state = visit?.limbs.find((each) => each.limb === limb)
  return state === undefined ? ratioAsSurveyed(plan.tree, limb) : state.aspectRatio
}

/** The limbs on a tree when a visit begins, the leader left out; without a visit, as they were surveyed. */
export function limbsAtVisit(plan: TreePlan, visit: Visit | null): LimbsAtVisit {
  const past = pastOf(plan, visit)
  const numbered = visit === null ? [] : numberedCuts(visit)
  const raises = new Map(
    numbered.flatMap((each) => (each.cut.kind === 'raise' ? [[each.cut.limb, each]] : []))
  )
  const cuts = new Map(numbered.flatMap((each) => (each.cut.kind === 'raise' ? [] : [[each.cut.limb, each]])))
  const found: LimbsAtVisit = { present: [], notDrawn: [] }
  for (const limb of plan.tree.limbs) {
    if (limb === plan.leader.limb || past.gone.has(limb)) continue
    const { diameter, origin, tip } = limb
    if (diameter === null || origin === null || tip === null || !(diameter > 0)) {
      found.notDrawn.push(limb.id)
      continue
    }
    const now = past.tips.get(limb) ?? tip
    const raise = raises.get(limb) ?? null
    const cut = cuts.get(limb) ?? raise
    const decided = visit?.limbs.find((each) => each.limb === limb)?.decision
    found.present.push({
      limb,
      origin,
      tip: now,
      left: tip === origin ? 1 : Math.min(1, Math.max(0.1, (now - origin) / (tip - origin))),
      aspectRatio: ratioOf(plan, limb, visit ?? plan.visits[0]),
      cut,
      raised: cut === raise ? null : raise,
      goes: cut === null && decided === 'remove'
    })
  }
  return found
}

/** The first pass of a visit: what has to be done, each under the allowance that is left (design, section 3). */
import { mayBeRemoved, removal } from './options'
import { withCut } from './cutLimb'
import { heightToClear, isInClearance } from './hanging'
import { isTakenAway, keepsCrownRatio } from './limits'
import { carriersOf, type Duty, type LimbNow, type Option, type Taken, type TreeNow } from './model'
import { atMost, over } from './near'
import { grown, projectedRatio } from './growth'
import { lateralPart, next, placeOn, reductions } from './reductions'

export type Hold = 'allowance' | 'crown ratio' | 'size' | 'inspect first'

/** An obligation that is not met, or not wholly, and what holds it. */
export interface Waiting {
  readonly at: number
  readonly obligation: Duty
  readonly heldBy: Hold
}

export interface Obliged {
  readonly taken: readonly Taken[]
  readonly waiting: readonly Waiting[]
  readonly left: number
  /** Limbs whose break, or what they rubbed on, was seen to. */
  readonly corrected: readonly number[]
}

type Duties = (tree: TreeNow, so: Obliged) => Obliged

export function obligations(tree: TreeNow, allowed: number): Obliged {
  const duties: Duties[] = [dead, broken, rubbing, clearance, temporary]
  const nothing: Obliged = { taken: [], waiting: [], left: allowed, corrected: [] }
  return duties.reduce((so, duty) => duty(tree, so), nothing)
}

function isStanding(tree: TreeNow, so: Obliged, limb: LimbNow): boolean {
  return !limb.gone && !isTakenAway(tree.limbs, so.taken, limb)
}

function live(tree: TreeNow, so: Obliged): LimbNow[] {
  return tree.limbs.filter((limb) => !limb.limb.dead && isStanding(tree, so, limb))
}

function isCut({ taken }: Obliged, limb: LimbNow): boolean {
  return taken.some(({ at }) => at === limb.at)
}

function make(so: Obliged, limb: LimbNow, option: Option, obligation: Duty): Obliged {
  const { at } = limb
  return {
    ...so,
    taken: [...so.taken, { ...option, at, obligation }],
    waiting: so.waiting.filter((waiting) => waiting.at !== at),
    left: so.left - option.dose
  }
}

function wait(so: Obliged, { at }: LimbNow, obligation: Duty, heldBy: Hold): Obliged {
  return {
    ...so,
    waiting: [...so.waiting.filter((waiting) => waiting.at !== at), { at, obligation, heldBy }]
  }
}

/** What goes with the limb that carries it is not cut before by itself. */
function carriersFirst(tree: TreeNow, limbs: readonly LimbNow[]): LimbNow[] {
  return [...limbs].sort((a, b) => carriersOf(tree.limbs, a).length - carriersOf(tree.limbs, b).length)
}

/** Dead wood: no dose. */
function dead(tree: TreeNow, so: Obliged): Obliged {
  return tree.limbs
    .filter(({ gone, limb }) => limb.dead && !gone)
    .reduce((done, limb) => make(done, limb, { ...removal(tree, limb), dose: 0 }, 'dead'), so)
}

/** Broken wood: to the highest lateral or sound limb below the break, or off where there is none. */
function broken(tree: TreeNow, so: Obliged): Obliged {
  return carriersFirst(tree, live(tree, so))
    .filter(({ limb, corrected }) => limb.broken && !corrected)
    .reduce((done, limb) => {
      if (!isStanding(tree, done, limb)) return done
      if (limb.limb.decay) return wait(done, limb, 'broken', 'inspect first')
      const made = make(done, limb, toSoundWood(tree, limb), 'broken')
      return { ...made, corrected: [...made.corrected, limb.at] }
    }, so)
}

function toSoundWood(tree: TreeNow, limb: LimbNow): Option {
  const { origin, tip } = limb
  const { lateralHeight, lateral, cut: measuredCut } = limb.limb
  const children = tree.limbs
    .filter(({ parent, gone, limb: { dead } }) => parent === limb.at && !gone && !dead)
    .filter(({ limb: child }) => !child.broken && !child.decay)
    .map(({ at, origin: height, diameter, tip: top }) => ({
      at: at as number | null,
      height,
      diameter: diameter as number | null,
      tip: top as number | null
    }))
  const own = {
    at: null,
    height: lateralHeight ?? 0,
    diameter: measuredCut === null ? lateral : null,
    tip: null
  }
  const [highest] = [...(lateralHeight === null ? [] : [own]), ...children]
    .filter(({ height }) => height > origin && height < tip)
    .sort((a, b) => b.height - a.height)
  if (highest === undefined) return { ...removal(tree, limb), dose: 0 }
  const place = placeOn(limb, highest.height)
  const cut = limb.diameter * (1 - place)
  const part = lateralPart(tree.rules, cut)
  const lambda = Math.min(1, highest.diameter === null ? part : highest.diameter / cut)
  const tipAfter =
    highest.tip === null
      ? tip - (1 - lambda) * (tip - highest.height)
      : Math.min(tip, Math.max(highest.tip, highest.height))
  const share = (1 - place) ** 2
  return {
    kind: 'reduce',
    share,
    count: 1,
    cutDiameter: cut,
    height: highest.height,
    distance: null,
    lateralMin: cut * part,
    tipAfter,
    dose: 0,
    cutAt: place,
    endsAt: place,
    lateralAt: highest.at,
    ...next(tree, limb, share, tipAfter, true)
  }
}

/** Of rubbing limbs the thickest stays, and of equals the first; one that was marked alone rubs on what is not listed. */
function rubbing(tree: TreeNow, so: Obliged): Obliged {
  const marked = tree.limbs.filter(({ limb }) => limb.rubbing)
  const open = marked.filter(
    (limb) => isStanding(tree, so, limb) && !limb.corrected && !so.corrected.includes(limb.at)
  )
  const thickest = open.reduce<LimbNow | null>(
    (top, limb) => (top === null || limb.diameter > top.diameter ? limb : top),
    null
  )
  const lesser = marked.length === 1 ? open : open.filter((limb) => limb !== thickest && open.length > 1)
  const done = [...lesser]
    .reverse()
    .sort((a, b) => a.diameter - b.diameter)
    .reduce((before, limb) => {
      if (!isStanding(tree, before, limb) || isCut(before, limb)) return before
      if (limb.limb.decay) return wait(before, limb, 'rubbing', 'inspect first')
      const after = removeOrShorten(tree, before, limb, 'rubbing', marked.length === 1 ? 'least' : 'most')
      if (!isCut(after, limb)) return after
      const waiting = after.waiting.filter(({ at }) => at !== limb.at)
      return { ...after, waiting, corrected: [...after.corrected, limb.at] }
    }, so)
  const settled = lesser.every((limb) => !isStanding(tree, done, limb) || done.corrected.includes(limb.at))
  return settled && thickest !== null && marked.length > 1
    ? { ...done, corrected: [...done.corrected, thickest.at] }
    : done
}

/** Removed where it may be and the crown ratio is kept; otherwise the largest reduction that fits, or the least; otherwise it waits. */
function removeOrShorten(
  tree: TreeNow,
  so: Obliged,
  limb: LimbNow,
  obligation: Duty,
  by: 'most' | 'least' = 'most'
): Obliged {
  const now = standingNow(tree, so)
  const mayGo = mayBeRemoved(now, limb)
  const off = removal(tree, limb)
  if (mayGo && keepsRatioWithout(tree, so, limb))
    return atMost(off.dose, so.left)
      ? make(so, limb, off, obligation)
      : wait(so, limb, obligation, 'allowance')
  const hold: Hold = mayGo ? 'crown ratio' : 'size'
  const all = reductions(now, limb)
  const fitting = all.filter(({ dose }) => atMost(dose, so.left)).at(by === 'most' ? -1 : 0)
  if (fitting === undefined) return wait(so, limb, obligation, all.length > 0 ? 'allowance' : hold)
  return wait(make(so, limb, fitting, obligation), limb, obligation, hold)
}

/** The tree as the cuts made so far leave it. */
function standingNow(tree: TreeNow, so: Obliged): TreeNow {
  const limbs = tree.limbs.map((limb) => {
    const cuts = so.taken.filter(({ at, kind }) => at === limb.at && kind !== 'remove')
    const now = cuts.reduce((cut, each) => withCut(tree, cut, each), limb)
    return { ...now, gone: !isStanding(tree, so, limb) }
  })
  return { ...tree, limbs }
}

function keepsRatioWithout(tree: TreeNow, so: Obliged, limb: LimbNow): boolean {
  if (limb.parent !== null) return true
  return keepsCrownRatio(tree, [...so.taken, { ...removal(tree, limb), at: limb.at, obligation: null }])
}

/** Clearance, the lowest foliage first: raise, or remove, or reduce as the first step of a removal. */
function clearance(tree: TreeNow, so: Obliged): Obliged {
  return live(tree, so)
    .filter((limb) => isInClearance(tree, limb))
    .sort((a, b) => a.lowest - b.lowest || a.at - b.at)
    .reduce((done, limb) => {
      if (!isStanding(tree, done, limb) || isCut(done, limb)) return done
      if (limb.limb.decay) return wait(done, limb, 'clearance', 'inspect first')
      const raise = raising(tree, limb)
      if (raise === null) return removeOrShorten(tree, done, limb, 'clearance')
      return atMost(raise.dose, done.left)
        ? make(done, limb, raise, 'clearance')
        : wait(done, limb, 'clearance', 'allowance')
    }, so)
}

function raising(tree: TreeNow, limb: LimbNow): Option | null {
  const to = heightToClear(tree) ?? 0
  const share = limb.tip > limb.lowest ? (to - limb.lowest) / (limb.tip - limb.lowest) : Infinity
  if (over(share, tree.rules.raiseUpTo)) return null
  return {
    kind: 'raise',
    share,
    // Its side branches are as thick together as a cut that takes as much, and each at most 2 in (silent in the design).
    count: Math.max(1, Math.ceil((limb.diameter * Math.sqrt(share)) ** 2 / tree.rules.smallCuts ** 2 - 1e-6)),
    cutDiameter: null,
    height: to,
    distance: null,
    lateralMin: null,
    tipAfter: null,
    dose: share * tree.shares[limb.at]!,
    cutAt: 1,
    endsAt: 1,
    lateralAt: null,
    ...next(tree, limb, share)
  }
}

/** Temporary limbs that would pass 50.8 mm or a ratio of 0.5 by the next visit. */
function temporary(tree: TreeNow, so: Obliged): Obliged {
  const { rules } = tree
  return carriersFirst(tree, live(tree, so))
    .filter(({ limb }) => limb.role === 'temporary')
    .filter(
      (limb) =>
        over(projectedRatio(tree, limb), rules.temporaryRatio) ||
        over(grown(tree, limb, tree.interval).diameter, rules.temporaryCut)
    )
    .reduce((done, limb) => {
      const raise = done.taken.find(({ at, kind }) => at === limb.at && kind === 'raise')
      if (raise !== undefined) return offRatherThanRaised(tree, done, limb, raise)
      const isSeenTo = isCut(done, limb) || done.waiting.some(({ at }) => at === limb.at)
      if (!isStanding(tree, done, limb) || isSeenTo) return done
      if (limb.limb.decay) return wait(done, limb, 'temporary', 'inspect first')
      const off = removal(tree, limb)
      if (!keepsRatioWithout(tree, done, limb)) return wait(done, limb, 'temporary', 'crown ratio')
      return atMost(off.dose, done.left)
        ? make(done, limb, off, 'temporary')
        : wait(done, limb, 'temporary', 'allowance')
    }, so)
}

/** A temporary limb that was raised and is due comes off instead, where what is left of it fits. */
function offRatherThanRaised(tree: TreeNow, so: Obliged, limb: LimbNow, raise: Taken): Obliged {
  const off = removal(tree, limb)
  const more = off.dose - raise.dose
  if (!isStanding(tree, so, limb) || !atMost(more, so.left) || !keepsRatioWithout(tree, so, limb)) return so
  const taken = so.taken.map((each) =>
    each === raise ? { ...off, at: limb.at, obligation: 'temporary' as const } : each
  )
  return { ...so, taken, left: so.left - more }
}

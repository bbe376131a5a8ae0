/** The first pass of a visit: what has to be done, each under the allowance that is left (design, section 3). */
import { next, leastLateral, mayBeRemoved, reductions, removal } from './options'
import { heightToClear, isInClearance, lowestFoliage } from './hanging'
import { isTakenAway } from './limits'
import type { Duty, LimbNow, Option, Taken, TreeNow } from './model'
import { atMost, over } from './near'
import { grown, projectedRatio } from './growth'

export type Hold = 'allowance' | 'size' | 'inspect first'

export interface Waiting {
  readonly at: number
  readonly obligation: Duty
  readonly heldBy: Hold
}

export interface Obliged {
  readonly taken: readonly Taken[]
  readonly waiting: readonly Waiting[]
  readonly left: number
}

/** What a duty asks for of a limb: what would meet it, the best first, of which the first that fits is done. */
interface Asked {
  readonly limb: LimbNow
  readonly obligation: Duty
  readonly choices: readonly Option[]
}

export function obligations(tree: TreeNow, allowed: number): Obliged {
  const duties = [dead, broken, rubbing, clearance, temporary]
  return duties.reduce<Obliged>(
    (before, duty) => duty(tree).reduce((so, asked) => meet(tree, so, asked), before),
    { taken: [], waiting: [], left: allowed }
  )
}

/** A limb that does not fit waits, and the next is tried. */
function meet(tree: TreeNow, so: Obliged, { limb, obligation, choices }: Asked): Obliged {
  const { at } = limb
  if (so.taken.some((cut) => cut.at === at) || isTakenAway(tree.limbs, so.taken, limb)) return so
  const wait = (heldBy: Hold): Obliged => ({ ...so, waiting: [...so.waiting, { at, obligation, heldBy }] })
  if (limb.limb.decay && !limb.limb.dead) return wait('inspect first')
  if (choices.length === 0) return wait('size')
  const fits = choices.find(({ dose }) => atMost(dose, so.left))
  if (fits === undefined) return wait('allowance')
  const taken: Taken = { ...fits, at, obligation, dose: doseBeside(tree, so.taken, limb, fits) }
  return { ...so, taken: [...so.taken, taken], left: so.left - taken.dose }
}

/** What limbs on it lost before at this visit is not counted twice. */
function doseBeside(tree: TreeNow, taken: readonly Taken[], limb: LimbNow, option: Option): number {
  if (option.kind !== 'remove') return option.dose
  const on = (at: number): boolean => {
    const parent = tree.limbs.find((each) => each.at === at)?.parent ?? null
    return parent !== null && (parent === limb.at || on(parent))
  }
  return taken.filter(({ at }) => on(at)).reduce((dose, cut) => dose - cut.dose, option.dose)
}

function standing(tree: TreeNow): LimbNow[] {
  return tree.limbs.filter(({ gone }) => !gone)
}

function live(tree: TreeNow): LimbNow[] {
  return standing(tree).filter(({ limb }) => !limb.dead)
}

/** Dead wood: no dose. */
function dead(tree: TreeNow): Asked[] {
  return standing(tree)
    .filter(({ limb }) => limb.dead)
    .map((limb) => ({ limb, obligation: 'dead', choices: [{ ...removal(tree, limb), dose: 0 }] }))
}

/** Broken wood: to the highest lateral or sound limb below the break, or off where there is none. */
function broken(tree: TreeNow): Asked[] {
  return live(tree)
    .filter(({ limb, cutBefore }) => limb.broken && !cutBefore)
    .map((limb) => ({ limb, obligation: 'broken', choices: [toSoundWood(tree, limb)] }))
}

function toSoundWood(tree: TreeNow, limb: LimbNow): Option {
  const { origin, tip } = limb
  const children = live(tree)
    .filter(({ parent, limb: child }) => parent === limb.at && !child.broken && !child.decay)
    .map((child) => ({ height: child.origin, diameter: child.diameter as number | null }))
  const lateral = limb.limb.lateralHeight
  const below = [...children, ...(lateral === null ? [] : [{ height: lateral, diameter: limb.limb.lateral }])]
    .map((each) => ({ ...each, place: tip === origin ? -1 : (each.height - origin) / (tip - origin) }))
    .filter(({ place }) => place > 0 && place < 1)
    .sort((a, b) => b.place - a.place)[0]
  if (below === undefined) return { ...removal(tree, limb), dose: 0 }
  const cut = limb.diameter * (1 - below.place)
  const least = leastLateral(tree.rules, cut)
  const left = Math.min(1, (below.diameter ?? least) / cut)
  const tipAfter = origin + (tip - origin) * (1 - (1 - left) * (1 - below.place))
  const share = (1 - below.place) ** 2
  return {
    kind: 'reduce',
    share,
    count: 1,
    cutDiameter: cut,
    height: tip > origin ? below.height : null,
    distance: null,
    lateralMin: least,
    tipAfter,
    dose: 0,
    endsAt: below.place,
    ...next(tree, limb, share, tipAfter, true)
  }
}

/** Of rubbing limbs the thickest stays; one alone rubs on what is not listed. */
function rubbing(tree: TreeNow): Asked[] {
  const flagged = tree.limbs.filter(({ limb }) => limb.rubbing && !limb.dead)
  const thickest = flagged.reduce<LimbNow | null>(
    (top, limb) => (top === null || over(limb.firstDiameter, top.firstDiameter) ? limb : top),
    null
  )
  return flagged
    .filter((limb) => !limb.gone && !limb.cutBefore && (flagged.length === 1 || limb !== thickest))
    .map((limb) => ({
      limb,
      obligation: 'rubbing',
      choices: mayBeRemoved(tree, limb) ? [removal(tree, limb)] : largestFirst(tree, limb)
    }))
}

function largestFirst(tree: TreeNow, limb: LimbNow): Option[] {
  return [...reductions(tree, limb)].reverse()
}

/** Clearance, the lowest foliage first: raise, or remove, or reduce as the first step of a removal. */
function clearance(tree: TreeNow): Asked[] {
  return live(tree)
    .filter((limb) => isInClearance(tree, limb))
    .sort((a, b) => lowestFoliage(tree, a) - lowestFoliage(tree, b) || a.at - b.at)
    .map((limb) => ({ limb, obligation: 'clearance', choices: clearing(tree, limb) }))
}

function clearing(tree: TreeNow, limb: LimbNow): Option[] {
  const raise = raising(tree, limb)
  if (raise !== null) return [raise]
  return mayBeRemoved(tree, limb) ? [removal(tree, limb)] : largestFirst(tree, limb)
}

function raising(tree: TreeNow, limb: LimbNow): Option | null {
  const from = lowestFoliage(tree, limb)
  const to = heightToClear(tree) ?? 0
  const share = limb.tip > from ? (to - from) / (limb.tip - from) : Infinity
  if (over(share, tree.rules.raiseUpTo)) return null
  return {
    kind: 'raise',
    share,
    count: 1,
    cutDiameter: null,
    height: to,
    distance: null,
    lateralMin: null,
    tipAfter: null,
    dose: share * tree.shares[limb.at]!,
    endsAt: 1,
    ...next(tree, limb, share)
  }
}

/** Temporary limbs that would pass 50.8 mm or a ratio of 0.5 by the next visit. */
function temporary(tree: TreeNow): Asked[] {
  const { rules } = tree
  return live(tree)
    .filter(({ limb }) => limb.role === 'temporary')
    .filter((limb) => {
      const ratio = projectedRatio(tree, limb)
      return over(ratio, rules.temporaryRatio) || over(projectedDiameter(tree, limb), rules.temporaryCut)
    })
    .map((limb) => ({ limb, obligation: 'temporary', choices: [removal(tree, limb)] }))
}

function projectedDiameter(tree: TreeNow, limb: LimbNow): number {
  return grown(tree, limb, tree.interval).diameter
}

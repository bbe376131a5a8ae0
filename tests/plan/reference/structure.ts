/** The second pass of a visit, by trying every choice there is (design, section 3). */
import { firstOrder, type LimbNow, type Option, type Taken, type TreeNow } from './model'
import { crownBaseAfter, isTakenAway, keepsCrownRatio, lowerFoliage } from './limits'
import { partLeft } from './growth'
import { withCut } from './cutLimb'
import { atLeast, atMost } from './near'
import { ratioNow } from './options'
import type { Obliged } from './obligations'
import { standing } from './priority'
import { next } from './reductions'
import { isCandidate, offered } from './worth'

export interface Question {
  /** The tree with its obligations met. */
  readonly tree: TreeNow
  readonly obliged: Obliged
  /** The limbs with what is offered for each; retaining it is offered always. */
  readonly limbs: readonly { readonly limb: LimbNow; readonly options: readonly Option[] }[]
  /** Competing leaders of which no more than so many may be cut, or null. */
  readonly leaders: { readonly at: readonly number[]; readonly most: number } | null
  /** The priority that each row comes to by the next visit where nothing more is done. */
  readonly without: readonly number[]
}

export interface Answer {
  readonly taken: readonly Taken[]
  readonly objective: number
  readonly dose: number
  /** Other choices that come to the same. */
  readonly ties: number
}

/** A stem of a multi-stem tree is not shortened for another one. */
export function isStem({ form, rules }: TreeNow, { parent, origin }: LimbNow): boolean {
  return form === 'multi-stem' && parent === null && origin * 1000 < rules.multiStemBelow - 1e-6
}

export function isLive({ gone, limb }: LimbNow): boolean {
  return !gone && !limb.dead
}

/** The limbs of the second pass: those with a claim that nothing stands against. */
function isOpen(tree: TreeNow, { taken }: Obliged, limb: LimbNow): boolean {
  return (
    isLive(limb) &&
    !limb.limb.decay &&
    !tree.inDoubt &&
    !isStem(tree, limb) &&
    !isTakenAway(tree.limbs, taken, limb) &&
    taken.every(({ at, kind }) => at !== limb.at || kind === 'raise') &&
    isCandidate(tree, limb)
  )
}

/** Competing or codominant, and in the top quarter of the tree. */
function isCompetingLeader(tree: TreeNow, limb: LimbNow): boolean {
  const place = standing(tree, ratioNow(limb), limb.limb.bark)
  return (
    !isStem(tree, limb) &&
    (place === 'competing' || place === 'codominant') &&
    atLeast(limb.tip, tree.height * tree.rules.leaderReach)
  )
}

/** Of more than three competing leaders half are cut at the first visit. */
function competingLeaders(tree: TreeNow): Question['leaders'] {
  const at = firstOrder(tree.limbs)
    .filter((limb) => isCompetingLeader(tree, limb))
    .map((limb) => limb.at)
  if (tree.slot > 0 || at.length <= tree.rules.leadersAtOnce) return null
  return { at, most: Math.ceil(at.length / 2) }
}

export function question(before: TreeNow, obliged: Obliged): Question {
  const tree = withCuts(before, obliged)
  const without: number[] = []
  for (const limb of tree.limbs) without[limb.at] = next(tree, limb).nextPriority
  return {
    tree,
    obliged,
    limbs: tree.limbs
      .filter(({ at }) =>
        isOpen(
          before,
          obliged,
          before.limbs.find((each) => each.at === at)!
        )
      )
      .map((limb) => ({
        limb,
        // The limb to which a broken one is cut back stays.
        options: offered(tree, limb).filter(
          ({ kind }) => kind !== 'remove' || obliged.taken.every(({ lateralAt }) => lateralAt !== limb.at)
        )
      })),
    leaders: competingLeaders(before),
    without
  }
}

/** The tree once its obligations are met, on the day of the visit. */
function withCuts(tree: TreeNow, { taken, corrected }: Obliged): TreeNow {
  const limbs = tree.limbs.map((limb) => {
    const gone = limb.gone || isTakenAway(tree.limbs, taken, limb)
    const cuts = taken.filter(({ at, kind }) => at === limb.at && kind !== 'remove')
    const cut = cuts.reduce((now, each) => withCut(tree, now, each), limb)
    return { ...cut, gone, corrected: limb.corrected || corrected.includes(limb.at) }
  })
  const shares: number[] = []
  for (const limb of limbs)
    shares[limb.at] = isLive(limb) ? tree.full[limb.at]! * partLeft(tree.rules, limb) : 0
  return { ...tree, limbs, shares, crownBaseNow: crownBaseAfter(tree, taken) }
}

/** What is to be least: the sum of the squares of the next priorities of the limbs that live. */
export function objective({ tree, without }: Question, chosen: readonly Taken[]): number {
  return tree.limbs
    .filter(isLive)
    .map((limb) => nextPriorityOf(tree, without, chosen, limb) ** 2)
    .reduce((total, each) => total + each, 0)
}

/** 0 for a limb that goes, by itself or with the one that carries it. */
export function nextPriorityOf(
  tree: TreeNow,
  without: readonly number[],
  chosen: readonly Taken[],
  limb: LimbNow
): number {
  if (isTakenAway(tree.limbs, chosen, limb)) return 0
  return chosen.find(({ at }) => at === limb.at)?.nextPriority ?? without[limb.at]!
}

/** Live cuts, several small ones counting once, dead wood not at all. */
function countsAsCut({ obligation }: Taken): boolean {
  return obligation !== 'dead'
}

/** The choice is allowed: dose, number of cuts, competing leaders, and what the tree has to keep. */
export function isAllowed(asked: Question, chosen: readonly Taken[]): boolean {
  const { tree, obliged, leaders } = asked
  const all = [...obliged.taken, ...chosen]
  if (chosen.length === 0) return true
  return (
    atMost(doseOfChoice(chosen), obliged.left) &&
    all.filter(countsAsCut).length <= tree.rules.cutsPerVisit &&
    leadersAmong(leaders, chosen) <= leadersLeft(asked) &&
    keepsLaterals(asked, chosen) &&
    keepsCrownRatio({ ...tree, crownBase: tree.crownBaseNow }, chosen) &&
    keepsLowerFoliage(asked, chosen)
  )
}

function leadersAmong(leaders: Question['leaders'], taken: readonly Taken[]): number {
  return taken.filter(({ at }) => leaders?.at.includes(at)).length
}

/** How many competing leaders structure may cut: what the obligations leave of the half. */
export function leadersLeft({ leaders, obliged }: Question): number {
  return leaders === null ? Infinity : Math.max(0, leaders.most - leadersAmong(leaders, obliged.taken))
}

/** A limb to which another one is cut back stays. */
export function keepsLaterals({ obliged }: Question, chosen: readonly Taken[]): boolean {
  const laterals = [...obliged.taken, ...chosen].map(({ lateralAt }) => lateralAt)
  return chosen.every(({ at, kind }) => kind !== 'remove' || !laterals.includes(at))
}

/** What a choice takes of the tree. */
function doseOfChoice(chosen: readonly Taken[]): number {
  return chosen.reduce((total, { dose }) => total + dose, 0)
}

/** Half of the foliage stays in the lower two-thirds of the crown, or as much as was there. */
function keepsLowerFoliage({ tree }: Question, chosen: readonly Taken[]): boolean {
  const before = lowerFoliage(tree, [])
  return lowerFoliage(tree, chosen) >= Math.min(tree.rules.lowerFoliageGoal, before) - 1e-9
}

/** How many choices there are to try. */
export function choicesOf({ limbs }: Question): number {
  return limbs.reduce((product, { options }) => product * (options.length + 1), 1)
}

/** Every choice: an option a limb or none, and none on a limb that goes with the one that carries it. */
export function everyChoice({ tree, limbs }: Question): Taken[][] {
  const carriersFirst = [...limbs].sort((a, b) => depth(tree, a.limb) - depth(tree, b.limb))
  return carriersFirst.reduce<Taken[][]>(
    (choices, { limb, options }) =>
      choices.flatMap((chosen) =>
        isTakenAway(tree.limbs, chosen, limb)
          ? [chosen]
          : [chosen, ...options.map((option) => [...chosen, { ...option, at: limb.at, obligation: null }])]
      ),
    [[]]
  )
}

function depth(tree: TreeNow, limb: LimbNow): number {
  const parent = tree.limbs.find(({ at }) => at === limb.parent)
  return parent === undefined ? 0 : 1 + depth(tree, parent)
}

/** The best choice: the least objective, then the lower dose, then fewer cuts, then the inventory's order. */
export function bestChoice(asked: Question): Answer {
  const answers = everyChoice(asked)
    .filter((chosen) => isAllowed(asked, chosen))
    .map((taken) => ({ taken, objective: objective(asked, taken), dose: doseOfChoice(taken) }))
  const places = (taken: readonly Taken[]) => taken.reduce((total, { at }) => total + at, 0)
  answers.sort(
    (a, b) =>
      differ(a.objective, b.objective) ||
      differ(a.dose, b.dose) ||
      a.taken.length - b.taken.length ||
      places(a.taken) - places(b.taken)
  )
  const best = answers[0]!
  return {
    ...best,
    ties: answers.filter((other) => differ(other.objective, best.objective) === 0).length - 1
  }
}

function differ(a: number, b: number): number {
  return Math.abs(a - b) <= 1e-9 * Math.max(1, Math.abs(a), Math.abs(b)) ? 0 : a - b
}

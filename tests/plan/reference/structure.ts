/** The second pass of a visit, by trying every choice there is (design, section 3). */
import { firstOrder, type LimbNow, type Option, type Taken, type TreeNow } from './model'
import { isTakenAway, keepsLimits } from './limits'
import { next, ratioNow } from './options'
import type { Obliged } from './obligations'
import { atMost } from './near'
import { competes } from './priority'
import { isCandidate, offered } from './worth'

export interface Question {
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

/** The limbs of the second pass: those with a claim that nothing stands against. */
function isOpen(tree: TreeNow, { taken }: Obliged, limb: LimbNow): boolean {
  return (
    !limb.gone &&
    !limb.limb.dead &&
    !limb.limb.decay &&
    !tree.inDoubt &&
    !isStem(tree, limb) &&
    !isTakenAway(tree.limbs, taken, limb) &&
    taken.every(({ at, kind }) => at !== limb.at || kind === 'raise') &&
    isCandidate(tree, limb)
  )
}

/** Of more than three competing leaders half are cut at the first visit. */
function competingLeaders(tree: TreeNow): Question['leaders'] {
  const at = firstOrder(tree.limbs)
    .filter((limb) => !isStem(tree, limb) && competes(tree, ratioNow(limb)))
    .map((limb) => limb.at)
  if (tree.slot > 0 || at.length <= tree.rules.leadersAtOnce) return null
  return { at, most: Math.ceil(at.length / 2) }
}

export function question(tree: TreeNow, obliged: Obliged): Question {
  const raised = afterRaising(tree, obliged)
  const without: number[] = []
  for (const limb of raised.limbs) without[limb.at] = next(raised, limb).nextPriority
  return {
    tree: raised,
    obliged,
    limbs: raised.limbs
      .filter((limb) => isOpen(tree, obliged, limb))
      .map((limb) => ({ limb, options: offered(raised, limb) })),
    leaders: competingLeaders(tree),
    without
  }
}

/** A raised limb has lost some of its foliage when the second pass looks at it. */
function afterRaising(tree: TreeNow, { taken }: Obliged): TreeNow {
  const raised = new Map(taken.flatMap((cut) => (cut.kind === 'raise' ? [[cut.at, cut]] : [])))
  return {
    ...tree,
    shares: tree.shares.map((share, at) => share * (1 - (raised.get(at)?.share ?? 0))),
    limbs: tree.limbs.map((limb) => {
      const cut = raised.get(limb.at)
      if (cut === undefined) return limb
      return { ...limb, losses: [...limb.losses, { share: cut.share, years: 0 }], raisedTo: cut.height }
    })
  }
}

/** What is to be least: the sum of the squares of the next priorities of the limbs that live. */
export function objective({ tree, without }: Question, taken: readonly Taken[]): number {
  return tree.limbs
    .filter(({ gone, limb }) => !gone && !limb.dead)
    .map((limb) => nextPriorityOf(tree, without, taken, limb) ** 2)
    .reduce((total, each) => total + each, 0)
}

/** 0 for a limb that goes, by itself or with the one that carries it. */
export function nextPriorityOf(
  tree: TreeNow,
  without: readonly number[],
  taken: readonly Taken[],
  limb: LimbNow
): number {
  if (isTakenAway(tree.limbs, taken, limb)) return 0
  const cut = taken.find(({ at, kind }) => at === limb.at && kind === 'reduce')
  return cut?.nextPriority ?? without[limb.at]!
}

/** Live cuts, several small ones counting once, dead wood not at all. */
function countsAsCut({ obligation }: Taken): boolean {
  return obligation !== 'dead'
}

/** The choice is allowed: dose, number of cuts, competing leaders, and what the tree has to keep. */
export function isAllowed({ tree, obliged, leaders }: Question, chosen: readonly Taken[]): boolean {
  const dose = chosen.reduce((total, cut) => total + cut.dose, 0)
  const all = [...obliged.taken, ...chosen]
  if (chosen.length === 0) return true
  return (
    atMost(dose, obliged.left) &&
    all.filter(countsAsCut).length <= tree.rules.cutsPerVisit &&
    (leaders === null || all.filter(({ at }) => leaders.at.includes(at)).length <= leaders.most) &&
    keepsLimits(tree, obliged.taken, all)
  )
}

/** How many choices there are to try. */
export function choicesOf({ limbs }: Question): number {
  return limbs.reduce((product, { options }) => product * (options.length + 1), 1)
}

/** Every choice: an option a limb or none, and none on a limb that goes with the one that carries it. */
export function everyChoice({ tree, limbs, obliged }: Question): Taken[][] {
  const carriersFirst = [...limbs].sort((a, b) => depth(tree, a.limb) - depth(tree, b.limb))
  return carriersFirst.reduce<Taken[][]>(
    (choices, { limb, options }) =>
      choices.flatMap((chosen) =>
        isTakenAway(tree.limbs, [...obliged.taken, ...chosen], limb)
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
    .map((taken) => ({
      taken,
      objective: objective(asked, [...asked.obliged.taken, ...taken]),
      dose: taken.reduce((total, cut) => total + cut.dose, 0)
    }))
  answers.sort(
    (a, b) =>
      differ(a.objective, b.objective) ||
      differ(a.dose, b.dose) ||
      a.taken.length - b.taken.length ||
      differ(
        a.taken.reduce((total, cut) => total + cut.at, 0),
        b.taken.reduce((total, cut) => total + cut.at, 0)
      )
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

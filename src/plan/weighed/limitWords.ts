import { ratio as ratioText } from '../../../shared/words/figures'
import { listed, namedLimbs } from '../../../shared/words/lists'
import { ceilingPercent, percent } from '../../../shared/words/percent'
import { cutOf, type CutsChosen, type VisitChoice } from '../chooseForVisit'
import { doseUnits, weighCuts } from '../families'
import type { GrowingLimb } from '../growingLimb'
import type { Obligation } from '../obligation'
import type { PossibleCut } from '../possibleCut'
import type { VisitConditions } from '../visitConditions'
import { cutWords, type SeenLimb } from './seenLimb'

/** What of the tree stands against a cut that is worth making by itself. */
type LimitBroken = 'allowance' | 'cuts' | 'leaders' | 'lower' | 'crown ratio'

/** The limit that a cut would break if it were made beside the cuts chosen for the other limbs; null where it breaks none. */
function limitBroken({ assessed, choice }: SeenLimb, cut: PossibleCut): LimitBroken | null {
  const { limits, crown } = choice
  let units = Math.round(cut.dose * doseUnits)
  let cuts = 1
  let leaders = assessed.leads ? 1 : 0
  let holders = 0
  let lower = 0
  for (const each of choice.assessed) {
    const { limb } = each
    const made = limb === assessed.limb ? cut : cutOf(choice, limb)
    if (made === undefined) continue
    if (limb !== assessed.limb) {
      units += Math.round(made.dose * doseUnits)
      cuts++
      if (each.leads) leaders++
    }
    if (limb.parent !== null) continue
    const holds = crown.holders.has(limb)
    const [weighed] = weighCuts({ ...each, cuts: [made] }, crown.lower, holds)
    lower += weighed?.lower ?? 0
    if (weighed?.raises === true) holders++
  }
  if (units > limits.units) return 'allowance'
  if (cuts > limits.cuts) return 'cuts'
  if (leaders > limits.leaders) return 'leaders'
  if (holders >= limits.holders) return 'crown ratio'
  return limits.lower + lower < -1e-9 ? 'lower' : null
}

const first: Record<Exclude<Obligation, 'dead'>, string> = {
  broken: 'broken wood',
  rubbing: 'rubbing limbs',
  clearance: 'the clearance',
  temporary: 'temporary limbs'
}

/** Where the allowance goes: "12 % goes first to the clearance", "6 % goes to limbs B and C, where it lowers the priorities more". */
function whereItGoes(choice: Pick<VisitChoice, keyof CutsChosen | 'pass'>, limb: GrowingLimb): string[] {
  const goes: string[] = []
  let obliged = 0
  const kinds = new Set<string>()
  for (const { cut, obligation } of choice.pass.made) {
    if (!(cut.dose > 0)) continue
    obliged += cut.dose
    kinds.add(first[obligation])
  }
  if (obliged > 0) goes.push(`${percent(obliged)} goes first to ${listed([...kinds])}`)
  let chosen = 0
  const others: { readonly id: string }[] = []
  for (const other of choice.limbsCut) {
    if (other === limb) continue
    chosen += cutOf(choice, other)?.dose ?? 0
    others.push(other.surveyed)
  }
  if (chosen > 0)
    goes.push(`${percent(chosen)} goes to ${namedLimbs(others)}, where it lowers the priorities more`)
  return goes
}

/** What is left of the allowance for a limb beside the others, and where the rest goes. */
export function allowanceWords(
  choice: Pick<VisitChoice, keyof CutsChosen | 'pass' | 'limits'>,
  limb: GrowingLimb,
  { allowed }: VisitConditions
): string {
  if (allowed <= 0) return 'no live foliage may come off the tree this season'
  let left = choice.limits.units / doseUnits
  for (const other of choice.limbsCut) if (other !== limb) left -= cutOf(choice, other)?.dose ?? 0
  const goes = whereItGoes(choice, limb)
  const rest = left > 1e-9 ? `${ceilingPercent(left)} is left` : 'nothing is left'
  const why = goes.length === 0 ? '' : ` (${goes.join('; ')})`
  return `${rest} of the allowance of ${ceilingPercent(allowed)}${why}`
}

/** Why a cut that is worth making by itself is not made: which limit of the tree it would break. */
export function limitWords(seen: SeenLimb, cut: PossibleCut): string {
  const { choice, conditions } = seen
  const { rules } = conditions
  const { limb } = seen.assessed
  const what = cutWords(cut)
  switch (limitBroken(seen, cut)) {
    case 'allowance':
      return `${what} would take ${percent(cut.dose)} of the tree’s foliage, and ${allowanceWords(choice, limb, conditions)}`
    case 'cuts':
      return `${what} would be one cut more than the ${String(rules.cutsPerVisit)} that a tree gets at a visit`
    case 'leaders':
      return 'of the competing leaders half are cut at this visit and the others at the next'
    case 'lower':
      return `${what} would leave too little of the foliage in the lower two-thirds of the crown`
    case 'crown ratio':
      return `${what} would raise the crown base, and a live-crown ratio of ${ratioText(rules.crownRatioGoal)} is kept`
    case null:
      return limb.parent === null && limb.children.length === 0
        ? `${what} would lower the tree’s priorities no further`
        : `${what} does less than what is cut, or would take too much from the inside of a limb`
  }
}

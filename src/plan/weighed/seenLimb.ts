import type { AssessedLimb } from '../assessLimb'
import type { VisitChoice } from '../chooseForVisit'
import { foliagePart } from '../../../shared/words/foliageParts'
import { tenth } from '../../../shared/words/figures'
import type { Limit } from '../../../shared/words/rounding'
import type { PossibleCut } from '../possibleCut'
import type { VisitConditions } from '../visitConditions'

/** A limb at a visit, with the choice that was made among all the limbs of its tree. */
export interface SeenLimb {
  readonly assessed: AssessedLimb
  readonly choice: VisitChoice
  readonly conditions: VisitConditions
}

/** A cut as what is weighed: "three-eighths", "31 % of its foliage", "its removal". */
export function cutWords({ kind, share }: PossibleCut): string {
  if (kind === 'remove') return 'its removal'
  const part = foliagePart(share)
  return part.endsWith('%') ? `${part} of its foliage` : part
}

/** Points to a tenth: what is gained is never shown as more than it is, what is asked never as less. */
export function pointsText(value: number, limit?: Limit): string {
  const text = tenth(value, limit)
  return `${text} ${text === '1' ? 'point' : 'points'}`
}

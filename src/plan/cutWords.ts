import { counted } from '../../shared/words/counts'
import type { Cut } from './plan'

const precut = ' Precut so that the bark does not tear.'

/** What is asked of the climber; each with and without a word on precutting. */
const asked = {
  dead: 'Remove the dead limb back to its collar, without cutting into live tissue.',
  remove: 'Remove at the branch collar.',
  raise: 'Take off the hanging side branches up to the height shown.',
  broken: 'Cut back to the nearest live lateral or union below the break.',
  reduce: 'Reduce to a live lateral.',
  below: 'Reduce to a live lateral. Keep all other ends of this limb below the tip shown.',
  then: 'Reduce to a live lateral. A forecast: measure then where to cut.'
} as const
const askedPrecut = Object.fromEntries(
  Object.entries(asked).map(([key, text]) => [key, text + precut])
) as Record<keyof typeof asked, string>

function isMeasuredThen({ kind, cutDiameter, obligation }: Cut): boolean {
  return kind === 'reduce' && cutDiameter === null && obligation !== 'broken'
}

function keyOf(cut: Cut): keyof typeof asked {
  if (!cut.live) return 'dead'
  if (cut.kind !== 'reduce') return cut.kind
  if (cut.obligation === 'broken') return 'broken'
  if (isMeasuredThen(cut)) return 'then'
  return cut.tipAfter === null ? 'reduce' : 'below'
}

/** What a cut asks of the climber, in the trade's words. */
export function whatToDo(cut: Cut): string {
  if (cut.count > 1 && cut.kind === 'reduce')
    return `Reduce the outer part in ${counted(cut.count, 'cut')}, each to a live lateral. Keep all ends of this limb below the tip shown.`
  return (cut.marked ? askedPrecut : asked)[keyOf(cut)]
}

/** Whether it is done in any case. */
export function mustWords({ must }: Cut): string {
  return must ? 'must' : 'if time allows'
}

/** The tick of a large cut; a text, so that it also reads without color. */
export function largeCutMark(cut: Cut): string {
  if (cut.needsReason) return '✓ needs a reason'
  return cut.marked ? '✓ large' : ''
}

/**
 * Where the cut is made, in meters; a removal is made where the limb starts. Null where it is measured then, as on every limb
 * that was shortened before in the plan.
 */
export function heightOfCut({ kind, cutHeight, cutDiameter, limb }: Cut): number | null {
  return kind === 'remove' && cutDiameter !== null ? limb.origin : cutHeight
}

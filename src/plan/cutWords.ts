import type { Cut } from './plan'

const precut = ' Precut so that the bark does not tear.'

/** What is asked of the climber; each with and without a word on precutting. */
const asked = {
  dead: 'Remove the dead limb back to its collar, without cutting into live tissue.',
  remove: 'Remove at the branch collar.',
  reduce: 'Reduce to a live lateral.',
  below: 'Reduce to a live lateral. Keep all other ends of this limb below the tip shown.'
} as const
const askedPrecut = Object.fromEntries(
  Object.entries(asked).map(([key, text]) => [key, text + precut])
) as Record<keyof typeof asked, string>

/** What a cut asks of the climber, in the trade's words. */
export function whatToDo({ kind, live, marked, tipAfter }: Cut): string {
  const texts = marked ? askedPrecut : asked
  if (kind === 'remove') return live ? texts.remove : texts.dead
  return tipAfter === null ? texts.reduce : texts.below
}

/** Short, for large type; what each word asks stands at the head of the work order. */
export function shortInstruction({ kind, live, marked }: Cut): string {
  const three = marked ? ', 3 cuts' : ''
  if (!live) return `Remove dead limb${three}`
  return kind === 'remove' ? `Remove at collar${three}` : `Reduce to lateral${three}`
}

/** The tick of a large cut; a text, so that it also reads without color. */
export function largeCutMark(cut: Cut): string {
  if (cut.needsReason) return '✓ needs a reason'
  return cut.marked ? '✓ large' : ''
}

/** Where the cut is made, in meters; a removal is made where the limb starts. */
export function heightOfCut({ cutHeight, limb }: Cut): number | null {
  return cutHeight ?? limb.origin
}

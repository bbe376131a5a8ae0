import type { Cut } from '../arbor/plan/plan'

/** What a cut asks of the climber, in the trade's words. */
export function whatToDo(cut: Cut): string {
  const precut = cut.marked ? ' Precut so that the bark does not tear.' : ''
  if (cut.kind === 'remove' && !cut.live)
    return `Remove the dead limb back to its collar, without cutting into live tissue.${precut}`
  if (cut.kind === 'remove') return `Remove at the branch collar.${precut}`
  const tip = cut.tipAfter === null ? '' : ' Keep all other ends of this limb below the tip shown.'
  return `Reduce to a live lateral.${tip}${precut}`
}

/** The tick of a large cut; a text, so that it also reads without colour. */
export function largeCutMark(cut: Cut): string {
  if (cut.needsReason) return '✓ needs a reason'
  return cut.marked ? '✓ large' : ''
}

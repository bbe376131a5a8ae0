import type { UnitSystem } from '../../../shared/units'
import { showHeight } from '../../../shared/words/lengths'
import type { Cut } from '../../plan/plan'

const winds = ['north', 'north-east', 'east', 'south-east', 'south', 'south-west', 'west', 'north-west']

/** "north-east side" for a bearing in degrees from north; empty where none was measured. */
function sideOf(bearing: number | null): string {
  if (bearing === null) return ''
  const eighth = Math.round((((bearing % 360) + 360) % 360) / 45) % 8
  return ` (${winds[eighth] ?? ''})`
}

function whatIsDone(cut: Cut): string {
  if (cut.obligation === 'broken' && cut.kind === 'reduce') return 'cut back below the break'
  if (!cut.live) return 'take off, dead'
  if (cut.kind === 'raise') return 'take off hanging side branches'
  if (cut.count > 1) return `shorten at its ends, ${String(cut.count)} small cuts`
  return cut.kind === 'remove' ? 'take off at the stem' : 'shorten to a side branch'
}

function whereItIs(cut: Cut, system: UnitSystem): string {
  if (cut.distance !== null) return `${showHeight(cut.distance, system)} out from the stem`
  const height = cut.cutHeight ?? cut.limb.origin
  if (cut.kind === 'raise' && height !== null) return `up to ${showHeight(height, system)}`
  const place = height === null ? 'height to be judged on site' : `at ${showHeight(height, system)}`
  return cut.tipAfter === null
    ? place
    : `${place}; its top is then at ${showHeight(cut.tipAfter, system, 'at most')}`
}

/** A cut in one line: "B (north): shorten to a side branch, at 27 ft; its top is then at 36 ft". */
export function cutLine(cut: Cut, system: UnitSystem): string {
  const large = cut.needsReason ? ' A large cut.' : ''
  return `${cut.limb.id}${sideOf(cut.limb.bearing)}: ${whatIsDone(cut)}, ${whereItIs(cut, system)}.${large}`
}

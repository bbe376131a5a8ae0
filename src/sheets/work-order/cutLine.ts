import { compassPoint } from '../../../shared/compass'
import type { UnitSystem } from '../../../shared/units'
import { foliagePart } from '../../../shared/words/foliageParts'
import { showDiameter, showHeight } from '../../../shared/words/lengths'
import { heightOfCut } from '../../plan/cutWords'
import type { Cut } from '../../plan/plan'

/** A cut as a crew reads it, in the columns of its line. */
export interface CutLine {
  readonly limb: string
  readonly side: string
  readonly at: string
  readonly what: string
  /** What the limb may not pass afterward. */
  readonly keep: string
  readonly when: string
}

/** Ids of so many characters stand after the word. */
const shortId = 3

function limbOf({ limb }: Cut): string {
  return limb.id.length <= shortId ? `limb ${limb.id}` : limb.id
}

/** Where the cut is made; a limb to raise is found where it starts. */
function placeOf(cut: Cut, system: UnitSystem): string {
  const { distance, kind, limb, count } = cut
  if (distance !== null) return `${showHeight(distance, system)} out`
  if (kind === 'reduce' && count > 1) return 'outer end'
  const height = kind === 'raise' ? limb.origin : heightOfCut(cut)
  return height === null ? 'look' : showHeight(height, system)
}

const dead = (size: string): string => `dead: remove at the collar${size}`

function reduceWords({ cutDiameter, lateralMin, obligation, share, count }: Cut, system: UnitSystem): string {
  if (obligation === 'broken') return 'broken: cut back to sound wood'
  if (cutDiameter === null) return `take off ${foliagePart(share)}, measure first`
  const lateral =
    lateralMin === null ? 'a side branch' : `side branch ≥ ${showDiameter(lateralMin, system, 'at least')}`
  return count > 1
    ? `${String(count)} small cuts, each to ${lateral}`
    : `${showDiameter(cutDiameter, system)} cut to ${lateral}`
}

function whatOf(cut: Cut, system: UnitSystem): string {
  const size = cut.cutDiameter === null ? '' : `, ${showDiameter(cut.cutDiameter, system)}`
  if (!cut.live) return dead(size)
  if (cut.kind === 'raise') return 'take off hanging side branches'
  if (cut.kind === 'reduce') return reduceWords(cut, system)
  const why = cut.obligation === 'broken' || cut.obligation === 'rubbing' ? `${cut.obligation}: ` : ''
  return `${why}remove at the collar${size}`
}

/**
 * A raised limb hangs no lower, a reduced one ends no higher than this. A limb that is shortened because it hangs too low has
 * no ceiling: it is the first step of its removal.
 */
function keepOf({ kind, live, obligation, cutHeight, tipAfter }: Cut, system: UnitSystem): string {
  if (kind === 'raise')
    return cutHeight === null ? '' : `nothing under ${showHeight(cutHeight, system, 'at least')}`
  if (!live || kind === 'remove' || tipAfter === null) return ''
  return obligation === 'clearance' ? 'first step' : `keep below ${showHeight(tipAfter, system, 'at most')}`
}

/** A cut in one line: limb, side, height or distance out, what to do, what to keep to, and whether it must be done. */
export function cutLine(cut: Cut, system: UnitSystem): CutLine {
  const three = cut.marked && (!cut.live || cut.kind !== 'raise') ? ', 3 cuts' : ''
  return {
    limb: limbOf(cut),
    side: cut.limb.bearing === null ? '' : compassPoint(cut.limb.bearing),
    at: placeOf(cut, system),
    what: whatOf(cut, system),
    keep: keepOf(cut, system),
    when: `${cut.must ? 'must' : 'if time'}${three}`
  }
}

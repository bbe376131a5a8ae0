import { ratio as ratioText } from '../../../shared/words/figures'
import { showDiameter } from '../../../shared/words/lengths'
import { removalOf } from '../removal'
import { removalBarrier } from '../removalReason'
import { limitWords } from './limitWords'
import type { SeenLimb } from './seenLimb'
import { unworthyWords } from './unworthyWords'

/** Why a limb may not be removed; null where it may. */
export function removalRefused({ assessed, conditions }: SeenLimb): string | null {
  const { limb, aspectRatio } = assessed
  const against = removalBarrier(limb, aspectRatio, conditions)
  if (against === null) return null
  const { system } = conditions
  const before = limb.shortened ? ', cut back before,' : ''
  switch (against.barrier) {
    case 'ratio':
      return `${ratioText(aspectRatio)} of its stem; a limb${before} is removed up to ${ratioText(against.ratio)}, as the wound would be large`
    case 'size':
      return `${showDiameter(limb.diameter, system)} across; a limb${before} is removed up to ${showDiameter(against.diameter, system)}, as the wound would be large`
    case 'permanent':
      return 'it is permanent, and stays'
    case 'no reason':
      return 'at most half its stem, and nothing else asks for its removal'
  }
}

/** Why a limb is not removed at a visit, where another cut is made on it or none is. */
export function notRemoved(seen: SeenLimb): string {
  const refused = removalRefused(seen)
  if (refused !== null) return refused
  const removal = seen.assessed.cuts.find(({ kind }) => kind === 'remove')
  if (removal !== undefined) return limitWords(seen, removal)
  const unworthy = unworthyWords(seen, removalOf(seen.assessed.limb))
  return unworthy ?? limitWords(seen, removalOf(seen.assessed.limb))
}

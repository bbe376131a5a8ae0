import type { UnitSystem } from '../../../shared/units'
import { showHeight } from '../../../shared/words/lengths'
import type { Cut, Visit } from '../../plan/plan'
import { numberedCuts } from '../../drawing/form/limbsAtVisit'
import type { Content } from '../sheet'
import { foldText } from '../../../shared/folding'

/** Cuts listed below a drawing at most; a tree with more is an exception, and its cut plan has them all. */
const mostListed = 12

const winds = ['north', 'north-east', 'east', 'south-east', 'south', 'south-west', 'west', 'north-west']

/** "north-east side" for a bearing in degrees from north. */
function sideOf(bearing: number | null): string {
  if (bearing === null) return ''
  const eighth = Math.round((((bearing % 360) + 360) % 360) / 45) % 8
  return `, ${winds[eighth] ?? ''}`
}

function whatIsDone(cut: Cut): string {
  const large = cut.needsReason ? '; a large cut' : ''
  if (!cut.live) return `Take off, dead${large}`
  if (cut.kind === 'raise') return 'Take off hanging side branches'
  if (cut.obligation === 'broken' && cut.kind === 'reduce') return `Cut back below the break${large}`
  if (cut.count > 1) return `Shorten at its ends, ${String(cut.count)} small cuts`
  return cut.kind === 'remove' ? `Take off at the stem${large}` : `Shorten to a side branch${large}`
}

function whereItIs(cut: Cut, system: UnitSystem): string {
  if (cut.distance !== null) return `${showHeight(cut.distance, system)} out from the stem`
  const height = cut.cutHeight ?? cut.limb.origin
  if (cut.kind === 'raise' && height !== null) return `Up to ${showHeight(height, system)}`
  const place = height === null ? 'Height to be judged on site' : `At ${showHeight(height, system)}`
  return cut.tipAfter === null
    ? place
    : `${place}; it then ends at ${showHeight(cut.tipAfter, system, 'at most')}`
}

/** Characters of a limb's name and side that fit before what is done to it. */
const nameWidth = 19

/** One cut; a limb whose name and side need more than a line goes on in the next, so that neither is cut off. */
function cutLines(number: number, cut: Cut, system: UnitSystem): Content[][] {
  const [name = '', ...more] = foldText(`${cut.limb.id}${sideOf(cut.limb.bearing)}`, nameWidth)
  const line = [number, name, null, whatIsDone(cut), null, whereItIs(cut, system)]
  return [line, ...more.map((text) => [null, text])]
}

/** The cuts of a visit as they are numbered in the drawing: number, limb and side, what is done, and how high. */
export function cutCells(visit: Visit, system: UnitSystem): Content[][] {
  const numbered = numberedCuts(visit)
  const rows = numbered.slice(0, mostListed).flatMap(({ number, cut }) => cutLines(number, cut, system))
  const more = numbered.length - mostListed
  if (more > 0) rows.push([null, `and ${String(more)} more, listed in the cut plan`])
  return [['Cut', 'Limb, side', null, 'What is done', null, 'How high'], ...rows]
}

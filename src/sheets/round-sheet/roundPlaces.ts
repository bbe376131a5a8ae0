import type { Plan } from '../../plan/plan'
import { byTag, placeKey, placeTeller } from '../places'
import type { RoundLine } from './roundTrees'

/** The trees of a place, in the order of the round. */
export interface RoundPlace<Line extends RoundLine = RoundLine> {
  readonly name: string
  readonly lines: readonly Line[]
}

const worstFirst = (one: RoundLine, other: RoundLine): number =>
  Number(other.must) - Number(one.must) || other.worst - one.worst || byTag(one, other)

/** Without places one walks by the tags: past the trees that must be dealt with, then past the others. */
function byTags(lines: readonly RoundLine[]): RoundPlace[] {
  const must = lines.filter(({ must: needed }) => needed)
  const rest = lines.filter(({ must: needed }) => !needed)
  return [
    { name: 'Trees with a cut that must be made', lines: must.sort(byTag) },
    { name: 'If time allows', lines: rest.sort(byTag) }
  ].filter((place) => place.lines.length > 0)
}

/** The round by places, that of the worst tree first, and the worst trees first in each; by tags where no place is known. */
export function placesOf(lines: readonly RoundLine[], plan: Plan): RoundPlace[] {
  const teller = placeTeller(plan.trees, plan)
  if (teller === null) return byTags(lines)
  const places = new Map<string, { name: string; lines: RoundLine[] }>()
  for (const line of [...lines].sort(worstFirst)) {
    const name = teller.nameOf(line.tree)
    const place = places.get(placeKey(name))
    if (place !== undefined) place.lines.push(line)
    else places.set(placeKey(name), { name: name === '' ? 'No location given' : name, lines: [line] })
  }
  return [...places.values()]
}

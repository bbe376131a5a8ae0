import { cautions } from '../cautions'
import type { PrintedDraft } from '../printedDraft'
import { palette } from '../../../shared/palette'

/** What no cut on the sheet allows. The sources stand below the list. */
const never: readonly string[] = [
  'The leader named for each tree is not cut and not reduced.',
  'Inner and lower foliage stays on every limb: reduce from the end, never strip from the inside.',
  'Nothing beyond the foliage that may be removed from the tree. It is a ceiling; what is left of it is not used up.',
  'No topping: no cut between side branches, and none to a lateral smaller than the one given.',
  'No cut into the branch collar, and no stub beyond it.',
  'No climbing spurs on trees being pruned.'
]

const sources =
  'Sources: foliage removed by life stage, see the cut plan; half the foliage in the lower two-thirds of the crown and of each limb, ANSI A300-1995, 5.3.1; spurs from memory, trade practice; topping, collar and stub, common practice, no source.'

const howToCut: readonly string[] = [
  'Reduce to lateral: cut back to a live lateral at least as thick as given. All other ends of this limb are kept below the tip shown.',
  'Remove at collar: cut just outside the branch collar; dead limbs at the edge of the live collar.',
  '3 cuts, for these and for any limb too heavy to hold in one hand: an undercut away from the final cut, a cut further out that lets the limb go, then the final cut of what is left (ANSI A300-1995).',
  'Where the lateral, the limb or the leader is not as described: stop at that limb, note it, and ask the arborist.',
  'Order on the tree: dead and broken wood first, then what must be done, then the rest if time allows; each from the top down (common practice, no source).'
]

/** What is checked each day before the first cut. */
const before: readonly string[] = [
  'Wires: every line found and its owner known; distance kept; where in doubt, stop and call the owner',
  'Nests, dens and other wildlife looked for in each tree; where found, the tree waits and the arborist is asked',
  'Pruning window of the region asked for (disease, nesting) and open today; permits at hand',
  'Traffic and walkers: signs, cones and a drop zone set; someone watches it while limbs come down',
  'Saws, ropes, harness, ladder or lift looked over; helmet, eye, ear and leg protection worn',
  'Two or more on site, a first-aid kit and the way to call for help known to all; nobody works aloft alone',
  'Saw blades cleaned between trees where the region asks for it'
]

/** How to cut, what never to do, and the cautions: once, ahead of the days. */
export function addRules(draft: PrintedDraft): void {
  const ink = { color: palette.ink }
  draft.heading('Cautions')
  for (const text of cautions) draft.bullet(text, { bold: true, ...ink })
  draft.blank()
  draft.heading('How to cut')
  for (const text of howToCut) draft.bullet(text, ink)
  draft.keepTogether()
  draft.blank()
  draft.heading('Never')
  for (const text of never) draft.bullet(text, ink)
  draft.prose(sources)
}

/** The checks of one day, each with a box to tick. */
export function addChecks(draft: PrintedDraft): void {
  draft.heading('Before the first cut of the day')
  for (const text of before) draft.tick(text)
}

/** What the crew leader signs when a day is done. */
export function addSignOff(draft: PrintedDraft, day: number): void {
  draft.keepTogether()
  draft.blank()
  draft.heading(`Day ${String(day)} done`)
  draft.tick('Every cut is ticked, or what was done instead is written beside it')
  draft.tick('No tree lost more foliage than it may; brush cleared, lawn and walks raked, signs taken in')
  draft.toFill([
    { label: 'Trees not finished', at: 0, from: 3, columns: 1 },
    { label: 'Started, ended', at: 4, from: 6, columns: 4 }
  ])
  draft.toFill([
    { label: 'Crew leader, name', at: 0, from: 3, columns: 1 },
    { label: 'Signature, date', at: 4, from: 6, columns: 4 }
  ])
}

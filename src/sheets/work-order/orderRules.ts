import { palette } from '../../../shared/palette'
import { cautions } from '../cautions'
import type { PrintedDraft } from '../printedDraft'

/** What is checked each day before the first cut. */
const before: readonly string[] = [
  'Wires: every line found and its owner known; distance kept; where in doubt, stop and call the owner.',
  'Nests, dens and other wildlife looked for in each tree; where found, the tree waits and the arborist is asked.',
  'Pruning window of the region (disease, nesting) asked for and open today; permits at hand.',
  'Traffic and walkers: signs, cones and a drop zone set; someone watches it while limbs come down.',
  'Saws, ropes, harness, ladder or lift looked over; helmet, eye, ear and leg protection worn.',
  'Two or more on site, a first-aid kit and the way to call for help known to all; nobody works aloft alone.',
  'Saw blades cleaned between trees where the region asks for it.'
]

/** How each line of a card is read and done. */
const howToCut: readonly string[] = [
  'The number of a cut is the number in the drawing, in the report and on the cut plan. The side is that of the limb: N, NE, E …',
  'Height: of the cut above ground; “out”: along the limb from its union. “look”: find the place on the tree.',
  'Cut to side branch: back to a live one at least as thick as given. No such branch: leave the limb and ask the arborist.',
  'Keep below: all other ends of this limb stay lower than that. Nothing under: take hanging side branches off up to that height. First step: shorten it only; it is removed later.',
  'Remove at the collar: just outside the branch collar; dead limbs at the edge of the live collar.',
  '3 cuts, there and for any limb too heavy for one hand: an undercut away from the final cut, a cut further out that lets the limb go, then the final cut.',
  'Must: done in any case. If time: only when all others of the day are done. Order on a tree: dead and broken wood first, then what must be done, then the rest if time allows; each from the top down.',
  'A limb, side branch or leader is not as described: stop at that limb, note it, ask the arborist.'
]

/** What no cut of the order allows. */
const never: readonly string[] = [
  'The leader named on the card is not cut and not reduced.',
  'Inner and lower foliage stays on every limb: reduce from the end, never strip from the inside.',
  'Nothing beyond the live leaves that may come off the tree. It is a ceiling; what is left of it is not used up.',
  'No topping: no cut between side branches, and none to a side branch thinner than given.',
  'No cut into the branch collar, and no stub beyond it.',
  'No climbing spurs on trees being pruned.'
]

const lists: readonly (readonly [title: string, sentences: readonly string[]])[] = [
  ['Before the first cut of each day', before],
  ['How to read a card and make its cuts', howToCut],
  ['Never', never]
]

/** What holds for every tree: once, on the last page, to be kept at hand. */
export function addRules(draft: PrintedDraft): void {
  const ink = { color: palette.ink }
  draft.newPage()
  // All of it on one page, in any font.
  draft.resize(draft.size - 1)
  draft.heading('For every tree')
  for (const text of cautions) draft.bullet(text, { bold: true, ...ink })
  for (const [title, sentences] of lists) {
    draft.air()
    draft.heading(title, draft.size + 2)
    for (const text of sentences) draft.bullet(text, ink)
  }
}

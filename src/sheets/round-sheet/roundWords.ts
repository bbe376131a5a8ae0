import { compassPoint } from '../../../shared/compass'
import type { UnitSystem } from '../../../shared/units'
import { foliageSign } from '../../../shared/words/foliageParts'
import { markDiameter, markHeight } from '../../../shared/words/lengths'
import { heightOfCut } from '../../plan/cutWords'
import { judgedOf, notJudgedLimbs } from '../../plan/judged'
import type { Cut, TreePlan } from '../../plan/plan'
import { treePlace } from '../../plan/treeTitle'
import type { RoundPlace } from './roundPlaces'
import type { RoundLine } from './roundTrees'

/** As many cuts of a tree as stand on its line. */
export const cutsOnLine = 3

/** Marks a cut that must be made. */
export const mustMark = '!'

/** Where to find it: the side, and the height of the cut; of a limb that is raised, the height where it starts. */
function whereIs(cut: Cut, system: UnitSystem): string {
  const { limb, distance, kind } = cut
  const height =
    kind === 'raise' ? limb.origin : (heightOfCut(cut) ?? (distance === null ? null : limb.origin))
  return [
    ...(limb.bearing === null ? [] : [compassPoint(limb.bearing)]),
    ...(height === null ? [] : [markHeight(height, system)]),
    ...(distance === null ? [] : [`${markHeight(distance, system)} out`])
  ].join(' ')
}

function reduceWords({ obligation, share, count, lateralMin }: Cut, system: UnitSystem): string {
  if (obligation === 'broken') return 'broken, back to sound wood'
  const part = `${count > 1 ? `ends, ${String(count)} small cuts,` : 'back'} ${foliageSign(share)}`
  return lateralMin === null ? part : `${part} to ≥${markDiameter(lateralMin, system, 'at least')}`
}

function toDo(cut: Cut, system: UnitSystem): string {
  const { kind, live, obligation, cutHeight } = cut
  if (!live) return 'dead, remove'
  if (kind === 'raise') return cutHeight === null ? 'raise' : `raise to ${markHeight(cutHeight, system)}`
  if (kind === 'reduce') return reduceWords(cut, system)
  return obligation === 'broken' || obligation === 'rubbing' ? `${obligation}, remove` : 'remove'
}

/** A cut in a few words: "! C SE 9': back ¼ to ≥0.4". */
function cutInWords(cut: Cut, system: UnitSystem): string {
  const must = cut.must ? `${mustMark} ` : ''
  const where = whereIs(cut, system)
  const three = cut.marked ? ', 3 cuts' : ''
  return `${must}${cut.limb.id}${where === '' ? '' : ` ${where}`}: ${toDo(cut, system)}${three}`
}

/** The cuts that a line has no room for: "+2 (1 !)", of which one must be made. */
function moreCuts(rest: readonly Cut[]): string[] {
  if (rest.length === 0) return []
  const musts = rest.filter(({ must }) => must).length
  return [`+${String(rest.length)}${musts === 0 ? '' : ` (${String(musts)} ${mustMark})`}`]
}

/** What else is to be known of a tree, each as a few words; nothing that the line has no room for is left out silently. */
function more({ tree, visit, cuts }: RoundLine): string[] {
  const held = visit.limbs.filter(({ decision }) => decision === 'hold')
  return [
    ...moreCuts(cuts.slice(cutsOnLine)),
    ...(judgedOf(tree) === 'some' ? [`${notJudgedLimbs(tree)} not judged: leave`] : []),
    ...held.map(({ limb }) => `${limb.id}: ask the arborist`)
  ]
}

/** The cuts of a line in their columns; what else is to be known stands in the next one, or below the last cut. */
function cutCells(line: RoundLine, system: UnitSystem): (string | null)[] {
  const cells: (string | null)[] = line.cuts.slice(0, cutsOnLine).map((cut) => cutInWords(cut, system))
  const rest = more(line).join('; ')
  if (rest !== '') {
    if (cells.length < cutsOnLine) cells.push(rest)
    else cells[cutsOnLine - 1] = `${cells[cutsOnLine - 1] ?? ''}; ${rest}`
  }
  while (cells.length < cutsOnLine) cells.push(null)
  return cells
}

/** The stem that is kept: its limb, or the trunk; a question mark where it is to be confirmed on site. */
function leaderMark({ leader, form }: TreePlan): string {
  const name = leader.limb?.id ?? (form === 'multi-stem' ? 'stems' : 'trunk')
  return leader.confirm ? `${name} ?` : name
}

/** Characters of a species' name on a line. */
const speciesRoom = 20

/** A species short: without what stands in brackets or is quoted, and cut off where it is still long. */
function shortSpecies(species: string): string {
  const bare = species.replace(/\s*\([^)]*\)|\s*['‘][^'’]*['’]/g, '').trim()
  const name = bare === '' ? species.trim() : bare
  return name.length > speciesRoom ? `${name.slice(0, speciesRoom - 1).trimEnd()}…` : name
}

/** What a location says beside the name of its place: "12" of 12 Elm Street, "bed 3" of Zone A, bed 3. */
function spotIn(site: string, place: string): string {
  const at = site.toLowerCase().indexOf(place.toLowerCase())
  if (at < 0) return site
  return `${site.slice(0, at)} ${site.slice(at + place.length)}`
    .replace(/^[\s,]+|[\s,]+$/g, '')
    .replace(/\s+/g, ' ')
}

/** A line with the texts that stand on it, which are the same in every size of type. */
export interface WrittenLine extends RoundLine {
  readonly where: string
  /** Where it stands at its place. */
  readonly spot: string
  readonly species: string
  readonly leader: string
  readonly cells: readonly (string | null)[]
}

/** The lines of the places with their texts. */
export function writtenPlaces(
  places: readonly RoundPlace[],
  system: UnitSystem
): readonly RoundPlace<WrittenLine>[] {
  return places.map(({ name, lines }) => ({
    name,
    lines: lines.map((line) => {
      const where = treePlace(line.tree.tree)
      return {
        ...line,
        where,
        spot: spotIn(where, name),
        species: shortSpecies(line.tree.tree.species),
        leader: leaderMark(line.tree),
        cells: cutCells(line, system)
      }
    })
  }))
}

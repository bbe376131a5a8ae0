import { columnOf, type Column, type Field } from '../../../shared/columns'
import { inPlace, type Likely } from './likelihood'

type Of = Column['of']

/** Fields that hardly ever stand among the other group's columns, by which the neighbors are known. */
const limbAnchors = new Set<Field>(
  'limb diameter diameter2 stem stemBelow origin tip parent length lowestFoliage lateral lateralHeight cut bark angle'.split(
    ' '
  ) as Field[]
)
const treeAnchors = new Set<Field>(
  'tree species trunk height crownBase spread stage vigor caliper matureHeight'.split(' ') as Field[]
)
const anchorFrom = 0.75

/** How well the values of a column fit a field. */
export type Fits = (column: number, field: Field) => number

/** How well the values have to fit what an anchor says that it is: "Lat" with degrees below it is no Latin name. House judgment. */
const fitting = 0.6

function anchorOf(candidates: readonly Likely[], column: number, fits: Fits): Of | null {
  const best = candidates.find(({ standing }) => standing === 'itself')
  if (best === undefined || best.score < anchorFrom || fits(column, best.field) < fitting) return null
  if (limbAnchors.has(best.field)) return 'limb'
  return treeAnchors.has(best.field) ? 'tree' : null
}

/**
 * Whether limbs are listed: a column names them, or two tell of them. One column about a limb, such as the height of the
 * fork, stands in a list of trees too.
 */
function tellsOfLimbs(columns: readonly (readonly Likely[])[], anchors: readonly (Of | null)[]): boolean {
  if (!anchors.includes('limb')) return false
  const named = columns.some(
    ([best], at) => anchors[at] === 'limb' && best !== undefined && namesLimbs.has(best.field)
  )
  return named || columns.filter(isRatherOfLimbs).length >= 2
}

function isRatherOfLimbs(candidates: readonly Likely[]): boolean {
  const most = (of: Of): number =>
    Math.max(0, ...candidates.map(({ field, score }) => (columnOf(field).of === of ? score : 0)))
  return most('limb') >= someFrom && most('limb') > most('tree') + rather
}

const namesLimbs = new Set<Field>(['limb', 'parent'])
/** From which score a column tells of limbs beside another one that does. House judgment. */
const someFrom = 0.5
const rather = 0.05

/** Where each column stands: among the tree's or the limb's columns. */
export interface Neighbors {
  /** No column speaks of limbs: a list of trees. */
  readonly treesOnly: boolean
  /** By the nearest column to the left that says it itself. */
  readonly behind: readonly Of[]
  /** By the nearest to the right, as an id stands before what it names. */
  readonly before: readonly Of[]
}

export function neighbors(columns: readonly (readonly Likely[])[], fits: Fits): Neighbors {
  const anchors = columns.map((candidates, column) => anchorOf(candidates, column, fits))
  const treesOnly = !tellsOfLimbs(columns, anchors)
  // Where bare words alone speak of the tree, they stand before the limb's id.
  const limbs = anchors.includes('tree') ? -1 : anchors.indexOf('limb')
  const bare = columns[limbs]?.[0]?.field === 'limb' ? limbs : -1
  const nearest = (at: number, steps: readonly number[]): Of => {
    if (at < bare) return 'tree'
    for (const step of steps)
      for (let there = at + step; there >= 0 && there < anchors.length; there += step) {
        const found = anchors[there]
        if (found !== undefined && found !== null) return found
      }
    return 'tree'
  }
  return {
    treesOnly,
    behind: columns.map((_column, at) => nearest(at, [-1, 1])),
    before: columns.map((_column, at) => nearest(at, [1, -1]))
  }
}

/** What a bare header loses among the others' columns, and a limb's column in a list of trees. House judgment. */
const outOfPlace = 0.65
const withoutLimbs = 0.85
/** What a measure of limbs loses there, as there is no limb that it could be of. House judgment. */
const withoutItsLimb = 0.5
const ofALimb = new Set<Field>('diameter diameter2 stem stemBelow origin tip length'.split(' ') as Field[])

/** The score of a candidate where its column stands. */
export function placedScore(
  { field, score, standing }: Likely,
  at: number,
  { treesOnly, behind, before }: Neighbors
): number {
  const { of } = columnOf(field)
  if (treesOnly && of === 'limb')
    return score * (ofALimb.has(field) ? withoutItsLimb : standing === 'placed' ? outOfPlace : withoutLimbs)
  if (standing !== 'placed') return score
  const here = field === 'tree' || field === 'limb' ? before[at] : behind[at]
  if (here === of) return inPlace(score)
  return behind[at] === of || before[at] === of ? score : score * outOfPlace
}

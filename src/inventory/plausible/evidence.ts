import { isOver, isUnder } from '../../formulas/boundary'
import type { Limb, Tree } from '../inventory'
import type { Shape } from './otherUnit'

/** So many limbs of so many that were measured. */
interface Share {
  found: number
  of: number
}

/** A tree outside these heights by trunk diameters is asked about by itself (house judgment). */
const leastTimes = 10
const mostTimes = 250

/** Few shade trees are higher than so many meters (house judgment). */
const tallTree = 60

/** A limb or stem this many times as thick as the trunk at breast height is asked about (house judgment). */
export const overTrunk = 1.4

/** A crown base this share of the height above the lowest union, and above every other, is asked about (house judgment). */
const clearlyAbove = 0.1

/** What holds for whole columns is told from so many trees, and from each tenth after them: to look at all would take too long. */
const treesCompared = 200
const everyTree = 10

/** In a list of more limbs under one id they are no limbs of one tree, and comparing all of them would take too long. */
const limbsCompared = 2000

/** Whether two limbs of a tree are the same in everything that was measured of a union. */
function areAlike(one: Limb, other: Limb): boolean {
  return (
    one.diameter === other.diameter &&
    one.stem === other.stem &&
    one.origin === other.origin &&
    one.tip === other.tip &&
    one.bearing === other.bearing &&
    one.parent === other.parent &&
    one.stem !== null &&
    one.tip !== null
  )
}

/** What the trees say together, gathered tree by tree; lengths as the model has them, mm and m. */
export interface Evidence {
  /** Whether a column gives trunks. */
  readonly hasTrunks: boolean
  /** Trees that were looked at. */
  trees: number
  /** Limbs thicker than their stem. */
  readonly thicker: Share
  /** Limbs with the tip below the origin. */
  readonly drooping: Share
  /** Tree height by trunk diameter, the trunk diameters in mm, and the trees these are of. */
  readonly slenderness: number[]
  readonly trunks: number[]
  readonly shapes: Shape[]
  /** What stands above a union by the diameter of the stem there; gathered where no column gives trunks. */
  readonly aboveUnions: number[]
  /** The highest tip by the height of the tree. */
  readonly reaches: number[]
  readonly oddShapes: Tree[]
  /** Limbs of which the limb, or the stem at its union, is far thicker than the trunk of its tree. */
  readonly overTrunk: { readonly tree: Tree; readonly limb: Limb }[]
  /** Limbs of trees whose trunk was measured. */
  besideTrunks: number
  /** Heights in m, and trees that are higher than almost any. */
  readonly heights: number[]
  readonly tall: Tree[]
  /** Trees whose crown base lies above every union, with the lowest union in m. */
  readonly highCrowns: { readonly tree: Tree; readonly lowest: number }[]
  readonly alike: (readonly [Tree, Limb, Limb])[]
  /** A number of each limb of the tree at hand that limbs with the same measurements share; NaN equals none. */
  readonly marks: Float64Array
}

export function noEvidence(hasTrunks: boolean): Evidence {
  return {
    hasTrunks,
    trees: 0,
    thicker: { found: 0, of: 0 },
    drooping: { found: 0, of: 0 },
    slenderness: [],
    trunks: [],
    shapes: [],
    aboveUnions: [],
    reaches: [],
    oddShapes: [],
    overTrunk: [],
    besideTrunks: 0,
    heights: [],
    tall: [],
    highCrowns: [],
    alike: [],
    marks: new Float64Array(limbsCompared)
  }
}

/** Adds what a tree says. */
export function look(evidence: Evidence, tree: Tree): void {
  const { limbs } = tree
  const { marks } = evidence
  let lowest = Infinity
  const most = (tree.trunk ?? Infinity) * overTrunk
  for (let at = 0; at < limbs.length; at++) {
    const limb = limbs[at]
    if (limb === undefined) continue
    const { diameter, origin, stem } = limb
    if ((stem ?? 0) > most || (diameter ?? 0) > most) evidence.overTrunk.push({ tree, limb })
    marks[at] = diameter === null || origin === null ? NaN : diameter + origin * 7919
    if (origin !== null && origin < lowest) lowest = origin
  }
  if (tree.trunk !== null) evidence.besideTrunks += limbs.length
  if (tree.height !== null && tree.height > tallTree) evidence.tall.push(tree)
  if (evidence.trees < treesCompared || evidence.trees % everyTree === 0) lookAtLimbs(evidence, tree)
  evidence.trees++
  lookAtShape(evidence, tree)
  compare(evidence, tree)
  if (isClearlyAbove(tree, lowest)) lookAtCrown(evidence, tree)
}

function lookAtLimbs(evidence: Evidence, { limbs, height }: Tree): void {
  if (height !== null) evidence.heights.push(height)
  let highest = 0
  for (const limb of limbs) {
    if (limb.dead || limb.role === 'leader') continue
    lookAtLimb(evidence, limb, height)
    if (limb.tip !== null && limb.tip > highest) highest = limb.tip
  }
  if (height !== null && highest > 0) evidence.reaches.push(highest / height)
}

/** The crown base against the unions of live limbs alone. */
function lookAtCrown({ highCrowns }: Evidence, tree: Tree): void {
  const origins = tree.limbs.flatMap(({ dead, role, origin }) =>
    dead || role === 'leader' || origin === null ? [] : [origin]
  )
  if (origins.length === 0 || origins.some((origin) => origin >= (tree.crownBase ?? 0))) return
  const lowest = Math.min(...origins)
  if (isClearlyAbove(tree, lowest)) highCrowns.push({ tree, lowest })
}

function lookAtLimb(
  { thicker, drooping, aboveUnions, hasTrunks }: Evidence,
  { diameter, stem, origin, tip }: Limb,
  height: number | null
): void {
  if (diameter !== null && stem !== null) {
    thicker.of++
    if (isOver(diameter, stem)) thicker.found++
  }
  if (origin === null) return
  if (tip !== null) {
    drooping.of++
    if (isUnder(tip, origin)) drooping.found++
  }
  if (!hasTrunks && height !== null && stem !== null && height > origin)
    aboveUnions.push(((height - origin) * 1000) / stem)
}

function lookAtShape({ slenderness, trunks, shapes, oddShapes }: Evidence, tree: Tree): void {
  if (tree.height === null || tree.trunk === null) return
  const times = (tree.height * 1000) / tree.trunk
  slenderness.push(times)
  trunks.push(tree.trunk)
  shapes.push({ id: tree.id, row: tree.row, height: tree.height, trunk: tree.trunk })
  if (times < leastTimes || times > mostTimes) oddShapes.push(tree)
}

/** By their marks first: reading the limbs themselves for each pair would take most of the time. */
function compare({ marks, alike }: Evidence, tree: Tree): void {
  const { limbs } = tree
  if (limbs.length > limbsCompared) return
  for (let at = 1; at < limbs.length; at++) {
    const mark = marks[at]
    for (let before = 0; before < at; before++) {
      if (marks[before] !== mark) continue
      const [limb, other] = [limbs[at], limbs[before]]
      if (limb === undefined || other === undefined || !areAlike(limb, other)) continue
      alike.push([tree, other, limb])
      break
    }
  }
}

function isClearlyAbove({ crownBase, height }: Tree, lowest: number): boolean {
  if (crownBase === null || height === null || crownBase >= height) return false
  return crownBase - lowest > clearlyAbove * height
}

import { columnOf } from '../../shared/columns'
import { ratio } from '../../shared/words/figures'
import type { Problem } from '../../shared/problems'
import type { Form } from '../../shared/choices'
import type { Rules } from '../../shared/rules'
import type { UnitSystem } from '../../shared/units'
import { showDiameter, showHeight } from '../../shared/words/lengths'
import { atMost, isOver, isUnder } from '../formulas/boundary'
import { aspectRatio } from '../formulas/diameters'
import { foliageKept } from '../formulas/growth'
import type { Limb } from '../inventory/inventory'
import { chooseLeader, type LeaderFound } from './chooseLeader'
import {
  checkParents,
  checkTree,
  isOut,
  treeProblem,
  type Findings,
  type Refusal,
  type SurveyedTree
} from './checkTree'
import type { GrowingLimb } from './growingLimb'
import type { LeaderChoice } from './plan'
import type { TreeBasics } from './treeBasics'
import { risesFromGround } from './treeForm'
import { stemAtUnion } from './unionStem'

/** A dead limb of known diameter: all that dead wood needs to be planned. */
export type MeasuredDeadwood = Limb & { readonly diameter: number }

/** A tree made ready: what is assumed is reported, stems stand above their unions, limbs know their parents. */
export interface PreparedTree extends Omit<TreeBasics, 'formProposed' | 'justPruned'> {
  readonly system: UnitSystem
  readonly height: number
  readonly crownBase: number
  readonly leader: LeaderChoice
  /** The leader is broken, lost or in doubt: structure waits for it. */
  readonly waitsForLeader: boolean
  /** Live limbs to plan, in the inventory's order, the leader and dead wood left out. */
  readonly limbs: readonly GrowingLimb[]
  /** Dead limbs, which are removed. */
  readonly dead: readonly MeasuredDeadwood[]
  /** Live limbs on the trunk that cannot be planned but hold foliage. */
  readonly unplanned: readonly Limb[]
}

/** A tree made ready to plan, or null where its limbs cannot be judged, and what was found on the way. */
export interface Preparation extends Findings {
  readonly prepared: PreparedTree | null
}

/** Makes a tree ready to plan. */
export function prepareTree(
  surveyed: SurveyedTree,
  known: TreeBasics,
  rules: Rules,
  year: number
): Preparation {
  const { tree, inventory } = surveyed
  const { heights, problems, refused } = checkTree(surveyed)
  if (heights === null) return { prepared: null, problems, refused }
  const { height, crownBase } = heights
  const { form, stage, vigor, stemGrowth } = known
  const parents = checkParents(surveyed, refused)
  const choice = leaderOf(surveyed, known, rules)
  const { leader } = choice
  const beginning = { crownBase, year, rules, form }
  const grown = limbsOf(surveyed, leader, [...refused, ...parents.refused], beginning)
  const left = otherLimbs(surveyed, leader, grown.refused)
  const { limbs } = grown
  const { dead, unplanned } = left
  const { system } = inventory
  return {
    prepared: {
      tree,
      form,
      stage,
      vigor,
      stemGrowth,
      system,
      height,
      crownBase,
      leader,
      waitsForLeader: leader.lost !== null || leader.limb?.decay === true || choice.inDoubt === true,
      limbs,
      dead,
      unplanned
    },
    problems: [...problems, ...parents.problems, ...choice.problems, ...grown.problems, ...left.problems],
    refused: left.refused
  }
}

/** The leader of a tree; on a multi-stem tree none is sought where none is marked. */
function leaderOf(surveyed: SurveyedTree, known: TreeBasics, rules: Rules): LeaderFound {
  const { limbs, row } = surveyed.tree
  const isMarked = limbs.some(({ role }) => role === 'leader')
  if (known.form !== 'multi-stem' || isMarked) return withDoubt(surveyed, chooseLeader(surveyed, rules))
  const reason = 'a multi-stem tree: no leader is sought'
  const stems = limbs.filter((limb) => risesFromGround(limb, rules)).length
  const problems = known.formProposed
    ? [treeProblem(surveyed, 'multi-stem-proposed', row, 'form', { count: stems })]
    : []
  return { leader: { limb: null, name: 'none', reason, confirm: known.formProposed, lost: null }, problems }
}

/** A leader with decay or a crack is asked for. */
function withDoubt(surveyed: SurveyedTree, found: LeaderFound): LeaderFound {
  const { limb, lost } = found.leader
  if (limb === null || !limb.decay || lost !== null) return found
  const doubt = treeProblem(surveyed, 'leader-decayed', limb.row, 'decay', { limb: limb.id })
  return { leader: { ...found.leader, confirm: true }, problems: [...found.problems, doubt] }
}

interface OtherLimbs extends Findings, Pick<PreparedTree, 'dead' | 'unplanned'> {}

/** Dead wood, and live limbs that cannot be planned; a dead limb of unknown diameter is refused. */
function otherLimbs(surveyed: SurveyedTree, leader: LeaderChoice, before: readonly Refusal[]): OtherLimbs {
  const dead: MeasuredDeadwood[] = []
  const unplanned: Limb[] = []
  const problems: Problem[] = []
  const refused = [...before]
  for (const limb of surveyed.tree.limbs) {
    const out = isOut(limb, refused)
    if (limb.dead) {
      if (out || (limb === leader.limb && limb !== leader.lost)) continue
      if (isMeasured(limb)) dead.push(limb)
      else {
        const found = unmeasured(surveyed, limb)
        problems.push(found)
        refused.push({ limb, reason: found.message })
      }
    } else if (out && limb.diameter !== null && limb.parent === null) unplanned.push(limb)
  }
  return { dead, unplanned, problems, refused }
}

function isMeasured(limb: Limb): limb is MeasuredDeadwood {
  return limb.diameter !== null
}

/** What a limb needs; only a row marked as leader, and not kept as one, can have come without. */
const measurements = ['diameter', 'stem', 'origin', 'tip'] as const

/** A row marked as leader that is dead wood to be cut, or a limb beside the leader that is kept. */
function unmeasured(surveyed: SurveyedTree, limb: Limb): Problem {
  const field = measurements.find((each) => limb[each] === null) ?? 'diameter'
  const facts = { column: columnOf(field).name.toLowerCase(), limb: limb.id }
  return treeProblem(surveyed, 'missing-value', limb.row, field, facts)
}

interface GrowingLimbs extends Findings, Pick<PreparedTree, 'limbs'> {}

/** What a limb is made ready with. */
interface Beginning {
  readonly crownBase: number
  readonly year: number
  readonly rules: Rules
  readonly form: Form
}

/** The live limbs to plan; those whose stem above the union cannot be are refused, besides those already refused. */
function limbsOf(
  surveyed: SurveyedTree,
  leader: LeaderChoice,
  before: readonly Refusal[],
  beginning: Beginning
): GrowingLimbs {
  const { tree } = surveyed
  const limbs: GrowingLimb[] = []
  const problems: Problem[] = []
  const refused = [...before]
  const refuse = (limb: Limb, found: Problem): void => {
    problems.push(found)
    refused.push({ limb, reason: found.message })
  }
  for (const limb of tree.limbs) {
    if (limb === leader.limb || limb === leader.lost || limb.dead || isOut(limb, before)) continue
    const besideLeader = limb.stem === null ? stemOfLeader(limb, leader) : null
    const whole = besideLeader === null ? limb : { ...limb, stem: besideLeader }
    if (!isMeasuredWhole(whole)) {
      refuse(limb, unmeasured(surveyed, limb))
      continue
    }
    if (besideLeader !== null) problems.push(besideTheLeader(surveyed, limb, leader))
    const stem = besideLeader ?? stemAtUnion(tree, limb)
    if (stem === null) {
      refuse(limb, treeProblem(surveyed, 'union-impossible', limb.row, 'stem', { limb: limb.id }))
      continue
    }
    const made = growingLimb(whole, stem, beginning, limb, limbs.length)
    limbs.push(made)
    if (isOver(made.diameter, made.stem)) problems.push(overtaken(surveyed, made))
    if (limb.decay || limb.lowestFoliage !== null)
      problems.push(...doubts(surveyed, made, beginning.crownBase))
  }
  if (limbs.some(({ surveyed: { parent } }) => parent !== null)) joinParents(limbs)
  return { limbs, problems, refused }
}

/**
 * The stem beside a limb that was given none: the leader, where it was proposed and both start within its diameter, which is
 * one union; otherwise null.
 */
function stemOfLeader(
  { origin, role, parent }: Limb,
  { limb: leader, confirm }: LeaderChoice
): number | null {
  if (leader === null || !confirm || leader.diameter === null || role !== null || parent !== null) return null
  if (origin === null || leader.origin === null) return null
  return atMost(Math.abs(origin - leader.origin) * 1000, leader.diameter) ? leader.diameter : null
}

function besideTheLeader(at: SurveyedTree, { id, row }: Limb, { name, limb }: LeaderChoice): Problem {
  const value = showDiameter(limb?.diameter ?? 0, at.inventory.system)
  return treeProblem(at, 'stem-beside-leader', row, 'stem', { limb: id, other: name, value })
}

/** A limb whose parent is the leader, dead or not planned counts as one on the trunk. */
function joinParents(growing: readonly GrowingLimb[]): void {
  const byId = new Map(growing.map((limb) => [limb.surveyed.id, limb]))
  for (const limb of growing) {
    const { parent: id } = limb.surveyed
    const parent = id === null ? undefined : byId.get(id)
    if (parent === undefined) continue
    limb.parent = parent
    parent.children.push(limb)
  }
}

/** A limb with all that a live limb is planned by. */
type MeasuredLimb = Limb & Readonly<Record<'diameter' | 'stem' | 'origin' | 'tip', number>>

function isMeasuredWhole(limb: Limb): limb is MeasuredLimb {
  return limb.diameter !== null && limb.stem !== null && limb.origin !== null && limb.tip !== null
}

function growingLimb(
  limb: MeasuredLimb,
  stem: number,
  { crownBase, year, rules, form }: Beginning,
  surveyed: Limb,
  place: number
): GrowingLimb {
  const { diameter, origin, tip } = limb
  const loss = limb.lastCutShare ?? 0
  const lossAge = limb.lastCutYear === null ? 0 : Math.max(0, year - limb.lastCutYear)
  return {
    surveyed,
    place,
    diameter,
    stem,
    origin,
    tip,
    firstTip: tip,
    firstDiameter: diameter,
    lowest: limb.lowestFoliage ?? Math.max(crownBase, Math.min(origin, tip)),
    foliageStart: limb.lowestFoliage,
    share: 0,
    hadAtSurvey: foliageKept(loss, lossAge, rules.effectYears),
    loss,
    lossAge,
    fade: rules.effectYears,
    parent: null,
    children: [],
    corrected: false,
    shortened: loss > 0 || limb.lastCutYear !== null,
    earlier: null,
    permanence: null,
    goneBy: null,
    isStem: form === 'multi-stem' && risesFromGround(limb, rules),
    gone: false
  }
}

function overtaken(at: SurveyedTree, { diameter, stem, surveyed }: GrowingLimb): Problem {
  const facts = { limb: surveyed.id, value: ratio(aspectRatio(diameter, stem)) }
  return treeProblem(at, 'thicker-than-stem', surveyed.row, 'diameter', facts)
}

/** A limb that is to be inspected before it is cut, and foliage below the crown base. */
function doubts(at: SurveyedTree, { surveyed }: GrowingLimb, crownBase: number): Problem[] {
  const { id, row, decay, lowestFoliage } = surveyed
  const problems: Problem[] = []
  if (decay) problems.push(treeProblem(at, 'inspect-first', row, 'decay', { limb: id }))
  if (at.tree.crownBase !== null && lowestFoliage !== null && isUnder(lowestFoliage, crownBase)) {
    const { system } = at.inventory
    const facts = { limb: id, value: showHeight(lowestFoliage, system), limit: showHeight(crownBase, system) }
    problems.push(treeProblem(at, 'foliage-below-base', row, 'lowestFoliage', facts))
  }
  return problems
}

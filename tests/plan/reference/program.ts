/**
 * The second pass of a visit as an integer program, for trees with more choices than can be tried: a limb on the trunk with
 * the limbs on it is one group, of which one choice is made; what a choice takes, leaves and lowers adds up over the groups.
 */
import { crownFoliage, isTakenAway, mayCome } from './limits'
import { firstOrder, type LimbNow } from './model'
import { atMost, hair } from './near'
import { everyChoice, isLive, keepsLaterals, leadersLeft, nextPriorityOf, type Question } from './structure'

interface Way {
  readonly name: string
  readonly squares: number
  readonly dose: number
  readonly cuts: number
  readonly leaders: number
  /** Its part of the foliage in the lower two-thirds, less the share that has to be there. */
  readonly low: number
  /** A limb that holds the crown base goes. */
  readonly holder: number
}

/** The ways to treat a limb on the trunk with the limbs on it. */
function waysOf(asked: Question, root: LimbNow, group: number): Way[] {
  const { tree } = asked
  const family = tree.limbs.filter((limb) => isLive(limb) && rootOf(asked, limb) === root.at)
  const within = {
    ...asked,
    limbs: asked.limbs.filter(({ limb }) => family.some(({ at }) => at === limb.at))
  }
  const before = crownFoliage(tree, [])
  const keep = Math.min(tree.rules.lowerFoliageGoal, before.below / before.all)
  const holders = holdersOf(asked)
  return everyChoice(within)
    .filter((taken) => keepsLaterals(asked, taken))
    .map((taken, way) => {
      const after = crownFoliage(tree, taken)
      return {
        name: `x${group}_${way}`,
        squares: family.reduce(
          (total, limb) => total + nextPriorityOf(tree, asked.without, taken, limb) ** 2,
          0
        ),
        dose: taken.reduce((total, { dose }) => total + dose, 0),
        cuts: taken.length,
        leaders: taken.filter(({ at }) => asked.leaders?.at.includes(at)).length,
        low: after.below - before.below - keep * (after.all - before.all),
        holder: holders.includes(root.at) && isTakenAway(tree.limbs, taken, root) ? 1 : 0
      }
    })
}

function rootOf({ tree }: Question, limb: LimbNow): number {
  const parent = tree.limbs.find(({ at }) => at === limb.parent)
  return parent === undefined ? limb.at : rootOf({ tree } as Question, parent)
}

/** The limbs of which one has to stay, so that the crown base stays where it may be; none where others hold it. */
function holdersOf({ tree }: Question): number[] {
  const now = { ...tree, crownBase: tree.crownBaseNow }
  const near = now.crownBase + now.rules.crownHolding / 1000
  const trunk = firstOrder(now.limbs)
  if (mayCome(now, now.leaderFrom) || !trunk.some(({ lowest }) => atMost(lowest, near))) return []
  return trunk.filter(({ lowest }) => mayCome(now, lowest)).map(({ at }) => at)
}

function terms(ways: readonly Way[], of: (way: Way) => number): string {
  const text = ways
    .filter((way) => of(way) !== 0)
    .map((way) => `${of(way) < 0 ? '-' : '+'} ${Math.abs(of(way)).toFixed(12)} ${way.name}`)
  return text.length === 0 ? '0 nothing' : text.join(' ')
}

/** The question as a text in the LP format. */
export function programOf(asked: Question): string {
  const { tree, obliged, leaders } = asked
  const groups = firstOrder(tree.limbs).map((root, group) => waysOf(asked, root, group))
  const all = groups.flat()
  const before = crownFoliage(tree, [])
  const keep = Math.min(tree.rules.lowerFoliageGoal, before.below / before.all)
  const made = obliged.taken.filter(({ obligation }) => obligation !== 'dead')
  const holders = holdersOf(asked)
  const rows = [
    ...groups.map((ways, group) => ` one${group}: ${ways.map(({ name }) => `+ 1 ${name}`).join(' ')} = 1`),
    ` dose: ${terms(all, ({ dose }) => dose)} <= ${obliged.left + hair}`,
    ` cuts: ${terms(all, ({ cuts }) => cuts)} <= ${Math.max(0, tree.rules.cutsPerVisit - made.length)}`,
    ` low: ${terms(all, ({ low }) => low)} >= ${-(before.below - keep * before.all)}`
  ]
  if (holders.length > 0) rows.push(` base: ${terms(all, ({ holder }) => holder)} <= ${holders.length - 1}`)
  if (leaders !== null) {
    rows.push(` lead: ${terms(all, (way) => way.leaders)} <= ${leadersLeft(asked)}`)
  }
  return [
    'Minimize',
    ` obj: ${terms(all, ({ squares }) => squares)}`,
    'Subject To',
    ...rows,
    'Bounds',
    ' 0 <= nothing <= 0',
    'Binary',
    ` ${all.map(({ name }) => name).join(' ')}`,
    'End'
  ].join('\n')
}

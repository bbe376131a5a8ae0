import { counted, plural } from '../../../shared/words/counts'
import { listed } from '../../../shared/words/lists'
import { describeTree } from '../../plan/treeTitle'
import { judgedOf } from '../../plan/judged'
import type { Plan } from '../../plan/plan'
import { byPurpose, type Purpose } from '../purposes'
import { urgencies, type ReportedTree } from './reportedTrees'

/** "4 high, 5 medium and 4 low", without those of which there are none. */
function urgencyWords(trees: readonly ReportedTree[]): string {
  const counts = urgencies.map((urgency) => ({
    urgency,
    count: trees.filter((tree) => tree.urgency === urgency).length
  }))
  return listed(
    counts.filter(({ count }) => count > 0).map(({ urgency, count }) => `${String(count)} ${urgency}`)
  )
}

/** How many trees need pruning by what was measured of them, and how urgent that is. */
function needWords(judged: number, needing: readonly ReportedTree[]): string {
  if (judged === 0) return ''
  if (needing.length === 0)
    return judged === 1
      ? 'By what was measured, it is not to be pruned at present.'
      : 'By what was measured, none of them is to be pruned at present.'
  const urgent = `urgency ${urgencyWords(needing)}`
  if (judged === 1) return `It needs pruning (${urgent}).`
  return `${String(needing.length)} of them ${plural(needing.length, 'needs', 'need')} pruning (${urgent}).`
}

/** What the trees have that is worth cutting for, by the number of trees. */
const findings: readonly { purpose: Purpose; one: string; many: string }[] = [
  {
    purpose: 'leader',
    one: 'has a limb that competes with the main stem, the leader',
    many: 'have limbs that compete with the main stem, the leader'
  },
  {
    purpose: 'clearance',
    one: 'hangs into the space you want kept clear',
    many: 'hang into the space you want kept clear'
  },
  {
    purpose: 'reach',
    one: 'has a low limb that grows up into the top',
    many: 'have low limbs that grow up into the top'
  },
  { purpose: 'hurt', one: 'has broken or rubbing limbs', many: 'have broken or rubbing limbs' },
  {
    purpose: 'end-weight',
    one: 'carries its leaves far out on a limb',
    many: 'carry their leaves far out on limbs'
  },
  { purpose: 'dead', one: 'has dead limbs', many: 'have dead limbs' }
]

function has(purpose: Purpose): (each: ReportedTree) => boolean {
  return ({ tree, visit }) =>
    visit !== null && byPurpose(tree, visit.cuts).some((group) => group.purpose === purpose)
}

function trappedBark({ visit }: ReportedTree): boolean {
  return visit?.cuts.some(({ limb, live }) => live && limb.bark !== 'none') === true
}

/** What was seen on the trees that need pruning: "9 have limbs that compete …". */
function seenWords(needing: readonly ReportedTree[]): string {
  const seen = findings.flatMap(({ purpose, one, many }) => {
    const count = needing.filter(has(purpose)).length
    return count === 0 ? [] : [`${String(count)} ${plural(count, one, many)}`]
  })
  const bark = needing.filter(trappedBark).length
  if (bark > 0) seen.push(`on ${String(bark)} bark is trapped in a union (included bark)`)
  return seen.length === 0 ? '' : `Of these, ${listed(seen)}.`
}

function unknownWords({ trees }: Plan): string[] {
  const unmeasured = trees.filter(({ tree }) => tree.limbs.length === 0).length
  const unjudged = trees.filter((tree) => judgedOf(tree) === 'none').length
  return [
    ...(unmeasured > 0 ? [`The limbs of ${counted(unmeasured, 'tree')} have not been measured yet.`] : []),
    ...(unjudged > 0
      ? [`The limbs of ${counted(unjudged, 'tree')} could not be judged and are to be surveyed again.`]
      : [])
  ]
}

/** What was looked at, what of it needs pruning, and what was seen there. */
export function foundWords(plan: Plan, trees: readonly ReportedTree[]): string {
  const needing = trees.filter(({ visit }) => visit !== null)
  const judged = plan.trees.filter((tree) => !['none', 'no limbs'].includes(judgedOf(tree))).length
  const [first] = needing
  const name =
    first === undefined ? '' : [first.tree.tree.id, describeTree(first.tree.tree)].filter(Boolean).join(', ')
  return [
    `${counted(trees.length, 'tree')} and ${counted(plan.inventory.limbCount, 'limb')} were looked at.`,
    needWords(judged, needing),
    seenWords(needing),
    needing.length > 1 ? `The tree that needs it most is ${name}.` : '',
    ...unknownWords(plan)
  ]
    .filter((sentence) => sentence !== '')
    .join(' ')
}

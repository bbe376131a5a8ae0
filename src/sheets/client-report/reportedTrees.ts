import { byUrgency, type Cut, type Plan, type TreePlan, type Visit } from '../../plan/plan'
import { priorityWord } from '../../plan/priorityWords'
import type { EstimateLine } from '../../price/estimate'
import type { ChosenOffer } from '../../price/offers'
import { inOrder } from '../inOrder'

/** How soon a tree wants its work, in a word for a client. */
export type Urgency = ReturnType<typeof priorityWord>

/** A tree as the report tells of it. */
export interface ReportedTree {
  readonly tree: TreePlan
  /** Its first visit with cuts; null where no cut is planned. */
  readonly visit: Visit | null
  /** Null where no cut is planned. */
  readonly urgency: Urgency | null
  /** What of it is offered. */
  readonly lines: readonly EstimateLine[]
}

const ranks: Readonly<Record<Urgency, number>> = { high: 0, medium: 1, low: 2 }

export const urgencies = Object.keys(ranks) as Urgency[]

/** Dead wood alone hurries nothing; what else has to be done in any case does. */
function isPressing({ must, live, obligation }: Cut): boolean {
  return must && (live || obligation === 'broken')
}

function urgencyOf(tree: TreePlan, visit: Visit, { rules }: Plan): Urgency {
  if (visit.cuts.some(isPressing)) return 'high'
  return priorityWord(Math.max(0, ...visit.cuts.map(({ priority }) => priority)), rules)
}

/** Lines by tree, found at once for long inventories. */
function byTree(lines: readonly EstimateLine[]): Map<string, EstimateLine[]> {
  const found = new Map<string, EstimateLine[]>()
  for (const line of lines) {
    const before = found.get(line.tree)
    if (before === undefined) found.set(line.tree, [line])
    else before.push(line)
  }
  return found
}

/** Every tree, the most urgent first and those without a cut last. */
export function reportedTrees(plan: Plan, offer: ChosenOffer): readonly ReportedTree[] {
  const lines = byTree(offer.lines)
  const trees = byUrgency(plan).map((tree): ReportedTree => {
    const visit = tree.visits.find(({ cuts }) => cuts.length > 0) ?? null
    return {
      tree,
      visit,
      urgency: visit === null ? null : urgencyOf(tree, visit, plan),
      lines: lines.get(tree.tree.id) ?? []
    }
  })
  const rank = ({ urgency }: ReportedTree) => (urgency === null ? urgencies.length : ranks[urgency])
  return inOrder(trees, (a, b) => rank(a) - rank(b))
}

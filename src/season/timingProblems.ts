import { problem, type Problem } from '../../shared/problems'
import { plural } from '../../shared/words/counts'
import { firstOf } from '../../shared/words/some'
import { fieldAddress, type Inventory } from '../inventory/inventory'
import type { TimingNote, TreeInSeason } from './timing'

/** Trees named in one sentence; more are counted. */
const namedTrees = 6

/** "Tree T02", "Trees T02, T06 and 4 more". */
export function nameTrees(trees: readonly TreeInSeason[]): string {
  const ids = trees.map(({ tree }) => tree.id)
  return `${plural(trees.length, 'Tree')} ${firstOf(ids, namedTrees)}`
}

/** What of the season belongs among the checks: closed windows, and a region that is not given or not listed. */
export function timingProblems(
  notes: readonly TimingNote[],
  inventory: Inventory,
  region: string
): Problem[] {
  return notes.flatMap((note) => {
    const { state, concern, sentence, source, trees } = note
    const first = trees[0]
    const cell = first === undefined ? '' : fieldAddress(inventory, first.tree.row, 'species')
    if (state === 'closed') {
      const facts = { sentence: `${nameTrees(trees)}. ${sentence}`, source, remedy: remedyFor(note) }
      return [problem('closed-window', cell, facts)]
    }
    if (state !== 'ask') return []
    if (concern === 'region') return [problem('region-unknown', '')]
    if (concern !== 'oak wilt' && concern !== 'nesting') return []
    const place = concern === 'oak wilt' ? ` (${nameTrees(trees)})` : ''
    return [problem('region-not-listed', '', { text: region, concern, place })]
  })
}

function remedyFor({ concern }: TimingNote): string {
  if (concern === 'nesting')
    return 'Look for nests before work begins; where one is in use, stop and ask the wildlife agency'
  if (concern === 'stress') return 'Leave live wood for a better season, or give the reason in writing'
  if (concern === 'leaf flush') return 'Wait until the leaves are fully out and firm'
  return 'Choose another month, or ask the agency of the region first'
}

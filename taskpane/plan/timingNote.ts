import { notesForTree, type TimingNote } from '../../src/season/timing'
import { nameTrees } from '../../src/season/timingProblems'
import type { Plan, TreePlan } from '../../src/plan/plan'
import { timingSource, timingWords } from '../../src/sheets/timingWords'
import { disclosure } from '../parts/disclosure'
import { el, type Child } from '../parts/elements'

function entry(note: TimingNote, about: string): HTMLElement {
  const source = timingSource(note)
  return el(
    'li',
    {},
    el('strong', {}, `${timingWords[note.state]}. `),
    `${about}${note.sentence}`,
    source !== '' && el('span', { class: 'timing-source' }, ` ${source}.`)
  )
}

/** Windows that the first visit falls in, and a region that was not given: above the trees, where nobody misses it. */
export function closedWindows({ timing = [] }: Plan): Child {
  const first = timing.filter(({ state, concern }) => state === 'closed' || concern === 'region')
  if (first.length === 0) return null
  return el(
    'section',
    { class: 'notice timing', 'aria-label': 'Season of the work' },
    el(
      'ul',
      {},
      ...first.map((note) => entry(note, note.state === 'closed' ? `${nameTrees(note.trees)}. ` : ''))
    )
  )
}

/** What is to be known about the season for one tree. */
export function seasonOf(tree: TreePlan, timing: readonly TimingNote[]): Child {
  const notes = notesForTree(timing, tree)
  if (notes.length === 0) return null
  const closed = notes.some(({ state }) => state === 'closed')
  const season = disclosure('more', [closed ? 'Season: closed window' : 'Season'], () => [
    el('ul', { class: 'season' }, ...notes.map((note) => entry(note, '')))
  ])
  if (closed) season.open()
  return season.element
}

import { palette } from '../../../shared/palette'
import { defaultRules } from '../../../shared/rules'
import { counted, plural } from '../../../shared/words/counts'
import { hundredth } from '../../../shared/words/figures'
import { showDiameter, showHeight } from '../../../shared/words/lengths'
import { listed } from '../../../shared/words/lists'
import { byName } from '../../../shared/words/order'
import { capital, closed } from '../../../shared/words/sentences'
import { rowsNamed } from '../../../shared/words/some'
import type { JobDetails } from '../../details/detailsBook'
import { firstYearOf, type Plan } from '../../plan/plan'
import { cautions } from '../cautions'
import { addLetterhead } from '../details/letterhead'
import type { ChosenOffer } from '../offered'
import { titles } from '../ownSheets'
import { ruleChangeSentences } from '../planBasis'
import type { PrintedDraft } from '../printedDraft'
import { seasonSentences } from '../seasonWords'
import { keptOnAll } from './roundColumns'
import type { DividedTrees, NotOnRound } from './roundTrees'
import { mustMark, type WrittenLine } from './roundWords'

const checkedBy = '☐ Region’s pruning season and nesting checked by ____________________'

/** Where sentences start that have a label before them. */
const said = 2

function reachSentence({ rules = defaultRules, system }: Plan, { rates }: ChosenOffer): string {
  const hand = `By hand up to ${showHeight(rules.handReach / 1000, system)} (Rules sheet)`
  if (rates.poleHeight <= 0) return `${hand}; no pole is used (Rates sheet).`
  const pole = showHeight(rates.poleHeight, system)
  return `${hand}; with a pole up to ${pole} and for cuts of at most ${showDiameter(rates.poleCut, system)} (Rates sheet).`
}

function daysSentence({ rates, lines }: ChosenOffer): string {
  const hours = Number(rates.travelHours)
  const travel = hours > 0 ? `; travel of ${hundredth(hours)} hours a day is on top` : ''
  const alone = lines.some(({ byPole }) => byPole)
    ? ' Where one person with a pole does, the others work at the next trees: three minutes of one in a crew of three are one crew-minute.'
    : ''
  return `Crew-minutes are the hours of the estimate for the whole visit to the tree: set-up, all its cuts and brush, for a crew of ${String(rates.crewPersons)}.${alone} A day holds ${hundredth(rates.dayHours)} productive crew-hours${travel}.`
}

/** The stem that is kept on all trees, in a sentence. */
function inFull(kept: string): string {
  if (kept === 'stems') return 'the stems are kept'
  return kept === 'trunk' ? 'the trunk leads' : `limb ${kept} leads`
}

const howToRead = (leader: string, units: string): readonly string[] => [
  'Before each tree: look for wires, nests and people below, and keep clear of where the limb comes down; helmet and eye protection on, two or more on site.',
  `${mustMark} must be made; the others if time allows. Nothing else is cut. ${leader} Where a limb is not as described: stop at that limb and ask the arborist. “+2 (1 !)”: two more cuts, one of which must be made, stand on the work order.`,
  `Side and height are where the cut is made${units}, “out” is along the limb from its union; of a limb to raise it is where the limb starts.`,
  'Back ¼ to ≥…: shorten until that part of the limb’s foliage is off, to a live side branch at least that thick; all its other ends stay shorter than that branch. No such branch: leave the limb. Never strip it from the inside.',
  'Remove: just outside the branch collar, no stub. Raise: take the hanging side branches off up to that height. 3 cuts: undercut, cut further out, then the final cut; so for any limb that one hand cannot hold.'
]

/** What the round is, whose, and how its lines are read. */
export function addHead(
  draft: PrintedDraft,
  plan: Plan,
  offer: ChosenOffer,
  lines: readonly WrittenLine[],
  days: number,
  details: JobDetails
): void {
  const year = String(firstYearOf(plan))
  draft.title(titles['round-sheet'])
  draft.format(0, 0, 1, draft.widths.length, { color: palette.ink })
  addLetterhead(draft, details, plan.date, draft.size)
  const work = `The first visit, ${year}: ${counted(lines.length, 'tree')} of ${String(plan.trees.length)} in ${counted(days, 'crew day')}. ${reachSentence(plan, offer)}`
  draft.entry('Work', work, said)
  draft.entry('Time', daysSentence(offer), said)
  for (const text of seasonSentences(plan, ['closed', 'always']))
    draft.prose(text, { bold: true }, said, 'Season')
  // What was not answered is checked by somebody who signs for it; the questions stand on the Cut plan.
  if (plan.timing?.some(({ state }) => state === 'ask') === true)
    draft.prose(checkedBy, { bold: true }, said, 'Season')
  for (const text of ruleChangeSentences(plan)) draft.prose(text, {}, said, 'Rules')
  draft.prose(cautions.join(' '), { bold: true }, said, 'Cautions')
  draft.prose(shortly(plan), {}, said, 'Lines')
}

/** What nobody can do without who has not read the end. */
function shortly(plan: Plan): string {
  const units = plan.system === 'in-ft' ? ` (' feet, " inches)` : ''
  return `${mustMark} must be made, the others if time allows; side and height of the cut${units}. How to read a line stands at the end.`
}

/** How a line is read and its cuts are made: behind the last line. */
export function addHowToRead(draft: PrintedDraft, plan: Plan, lines: readonly WrittenLine[]): void {
  draft.heading('How to read a line', draft.size + 1.5)
  const kept = keptOnAll(lines)
  const leads =
    kept === null ? 'The stem under “Keep” leads' : `On every tree ${inFull(kept.replace(' ?', ''))}`
  const confirm = kept === null ? '; “?”: confirm it first' : kept.endsWith('?') ? ': confirm it first' : ''
  const units = plan.system === 'in-ft' ? ` (' feet, " inches)` : ''
  for (const text of howToRead(`${leads}, never cut${confirm}.`, units)) draft.bullet(text)
}

const lists: readonly (readonly [NotOnRound['list'], string])[] = [
  ['elsewhere', 'Not on this round'],
  ['not judged', 'Not judged: survey again, then plan again; the cut plan says why'],
  ['look', 'No cut now, and not done'],
  ['nothing', 'Skip: nothing to do at this visit']
]

/** Trees that the round does not lead to, many a line, each in the list of its reason. */
export function addLists(draft: PrintedDraft, plan: Plan, { others }: DividedTrees): void {
  const unnamed = plan.unplanned.filter(({ tree }) => tree === '')
  for (const [list, heading] of lists) {
    const own = others.filter((each) => each.list === list)
    const rows = list === 'not judged' ? unnamed : []
    if (own.length === 0 && rows.length === 0) continue
    const count = own.length === 0 ? '' : ` (${counted(own.length, 'tree')})`
    draft.heading(heading + count, draft.size + 1.5)
    const whys = new Map<string, string[]>()
    for (const { tree, why } of own) whys.set(why, [...(whys.get(why) ?? []), tree.tree.id])
    for (const why of [...whys.keys()].sort(byName)) {
      const ids = [...(whys.get(why) ?? [])].sort(byName)
      draft.bullet(`${capital(why)}: ${closed(listed(ids))}`)
    }
    if (rows.length > 0)
      draft.bullet(
        `${capital(plural(rows.length, 'a row names', 'rows name'))} no tree: ${rowsNamed(rows.map(({ row }) => row))} of the inventory.`
      )
  }
}

import type { ReadingChoices } from '../src/inventory/inventory'
import { judgedOf } from '../src/plan/judged'
import { allChecks, checksSection } from './checks/checksSection'
import { cautionsNote } from './cautionsNote'
import { withNoTrees } from './checks/noTree'
import { columnsCard } from './columns/columnsCard'
import { columnsSection, isUncertain } from './columns/columnsSection'
import { rememberedNote } from './columns/rememberedNote'
import { button, el, fill, type Child } from './parts/elements'
import { estimateSection, type EstimateSetting } from './estimate/estimateSection'
import { rowAddress } from './plan/limbCard'
import type { Planned } from './planning'
import { planSection, type PlanSection } from './plan/planSection'
import { rulesNote, type RulesSetting } from './plan/rulesNote'
import type { CopySetting } from './plan/specificationCopy'
import { tabs, type Section } from './parts/tabs'
import { counted } from '../shared/words/counts'
import { grouped } from '../shared/words/figures'
import type { DetailsSetting } from './write/detailsNote'
import { writeSection, type WriteSection, type WriteSetting } from './write/writeSection'

export interface ResultSetting
  extends WriteSetting, DetailsSetting, RulesSetting, EstimateSetting, CopySetting {
  planAgain(): void
  planWith(choices: ReadingChoices): void
}

export interface ResultView {
  element: HTMLElement
  /** Focus comes here once the plan stands. */
  head: HTMLElement
  openTree(id: string): void
  /** Says what changed since, none for an empty text, and marks the trees that it bears on. */
  mark(words: string, trees: ReadonlySet<string> | 'all'): void
  /** Writes what is ticked, with a sentence on why it was planned again before. */
  write(replace: boolean, note: string): void
}

/** The result: what was planned in a sentence, and the sections behind tabs. */
export function resultView(planned: Planned, setting: ResultSetting): ResultView {
  const { plan } = planned
  const checks = withNoTrees(allChecks(planned.problems, plan.unplanned), plan)
  const isNoTree = (id: string): void => {
    setting.planWith({ ...planned.choices, noTrees: [...(planned.choices.noTrees ?? []), id] })
  }
  const card = columnsCard(planned, setting.planWith)
  const uncertain = plan.inventory.matches.filter(isUncertain).length
  const hasPlan = plan.trees.length > 0
  let section: PlanSection | null = null
  const goToRow = (row: number): void => {
    setting.goToCell(rowAddress(plan, row))
  }
  const buildPlan = (): PlanSection =>
    (section ??= planSection(plan, { ...setting, goToRow, weigh: planned.weigh }))
  let writing: WriteSection | null = null
  const buildWrite = (): WriteSection => (writing ??= writeSection(setting))
  const stale = el('div', { class: 'stale', hidden: true })
  const again = button('Plan again', setting.planAgain)
  const sections: Section[] = [
    { name: 'plan', label: 'Plan', build: () => buildPlan().element },
    {
      name: 'estimate',
      label: 'Estimate',
      build: () => withCautions(estimateSection(planned, setting))
    },
    {
      name: 'checks',
      label: 'Checks',
      badge: { number: checks.length, words: counted(checks.length, 'entry', 'entries') },
      build: () => withCautions(checksSection(checks, setting.goToCell, isNoTree))
    },
    {
      name: 'columns',
      label: 'Columns',
      ...(uncertain > 0 && { badge: { number: uncertain, words: `${grouped(uncertain)} uncertain` } }),
      build: () => withCautions(columnsSection(planned, setting.planWith))
    },
    {
      name: 'write',
      label: 'Write',
      build: () =>
        hasPlan ? buildWrite().element : el('p', {}, 'There is no plan to write. The checks say why.')
    }
  ]
  const tabbed = tabs('Sections of the plan', sections, hasPlan ? 'plan' : 'checks')
  const head = el('h2', { class: 'result-head', tabindex: -1 }, headline(planned))
  return {
    element: el(
      'section',
      { class: 'result', 'aria-label': 'Result' },
      head,
      summary(planned),
      rulesNote(planned, setting),
      rememberedNote(planned, () => {
        setting.planWith({})
      }),
      stale,
      card ?? el('div', { class: 'actions' }, again),
      tabbed.element
    ),
    head,
    openTree: (id) => {
      tabbed.show('plan')
      buildPlan().openTree(id)
    },
    mark: (words, trees) => {
      stale.hidden = words === ''
      fill(
        stale,
        el('p', {}, words),
        el('div', { class: 'actions' }, button('Plan again', setting.planAgain))
      )
      again.parentElement?.toggleAttribute('hidden', words !== '')
      if (hasPlan) buildPlan().mark(trees)
    },
    write: (replace, note) => {
      if (!hasPlan) return
      tabbed.show('write')
      buildWrite().write(replace, note)
    }
  }
}

/** The plan in a few words: "Plan for 12 trees". */
export function headline({ plan }: Planned): string {
  return plan.trees.length === 0
    ? 'No tree could be planned'
    : `Plan for ${counted(plan.trees.length, 'tree')}`
}

function summary({ plan }: Planned): Child {
  const cuts = plan.trees.reduce((sum, { visits }) => sum + (visits[0]?.cuts.length ?? 0), 0)
  const left = plan.unplanned.length
  const unjudged = plan.trees.filter((tree) => judgedOf(tree) === 'none').length
  const parts = [
    `From ${plan.inventory.address}, for ${plan.date}.`,
    plan.trees.length > 0 && `${counted(cuts, 'cut')} at visit 1.`,
    unjudged > 0 && `Limbs of ${counted(unjudged, 'tree')} not judged.`,
    left > 0 && `${counted(left, 'row')} not planned, see Checks.`
  ]
  return el('p', { class: 'result-summary' }, parts.filter(Boolean).join(' '))
}

/** The cautions are reachable from every section. */
function withCautions(section: HTMLElement): HTMLElement {
  return el('div', {}, section, cautionsNote())
}

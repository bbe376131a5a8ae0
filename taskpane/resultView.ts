import type { ReadingChoices } from '../src/inventory/inventory'
import { judgedOf } from '../src/plan/judged'
import { allChecks, checksSection } from './checks/checksSection'
import { cautionsNote } from './cautionsNote'
import { withNoTrees } from './checks/noTree'
import { columnsCard } from './columns/columnsCard'
import { columnsSection, isUncertain } from './columns/columnsSection'
import { rememberedNote } from './columns/rememberedNote'
import { button, el, type Child } from './parts/elements'
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
import { writeSection, type WriteSetting } from './write/writeSection'

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
        hasPlan ? writeSection(setting) : el('p', {}, 'There is no plan to write. The checks say why.')
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
      card ?? el('div', { class: 'actions' }, button('Plan again', setting.planAgain)),
      tabbed.element
    ),
    head,
    openTree: (id) => {
      tabbed.show('plan')
      buildPlan().openTree(id)
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

import { columnOf } from '../../shared/columns'
import { quoted } from '../../shared/cells'
import { unitNames } from '../../shared/units'
import { counted } from '../../shared/words/counts'
import type { ColumnMatch } from '../../src/inventory/inventory'
import { answersOf, sameName } from '../../src/inventory/survey/answers'
import { button, el } from '../parts/elements'
import { systemNames } from './columnsSection'
import type { Planned } from '../planning'

function meaning({ header, field, unit }: ColumnMatch): string {
  if (field === null) return `“${quoted(header)}” is not used`
  const name = columnOf(field).name
  return `“${quoted(header)}” is ${name}${unit === null ? '' : `, in ${unitNames[unit]}`}`
}

/** Which answers from before were used, one line each. */
function usedAnswers({ plan: { inventory }, choices }: Planned): string[] {
  const answerFor = answersOf(choices)
  const used = inventory.matches.filter(
    ({ sheet, letters, header }) => answerFor(sheet, letters, header) !== undefined
  )
  const once = used.filter(
    (match, at) =>
      used.findIndex(
        (other) =>
          sameName(other.header, match.header) && other.field === match.field && other.unit === match.unit
      ) === at
  )
  return [
    ...once.map(meaning),
    ...(choices.system === undefined ? [] : [`numbers without a unit are in ${systemNames[choices.system]}`]),
    ...(inventory.problems.some(({ code }) => code === 'said-no-trees') ? noTrees(choices.noTrees) : [])
  ]
}

function noTrees(ids: readonly string[] = []): string[] {
  return ids.map((id) => `“${quoted(id)}” is no tree`)
}

/** Answers that were kept in the workbook and used, with the button that forgets them; null where there are none. */
export function rememberedNote(planned: Planned, forget: () => void): HTMLElement | null {
  const used = usedAnswers(planned)
  if (used.length === 0) return null
  return el(
    'section',
    { class: 'remembered', 'aria-label': 'Answers from before' },
    el(
      'p',
      {},
      `${counted(used.length, 'answer')} from this workbook ${used.length === 1 ? 'is' : 'are'} used: ${used.join('; ')}.`
    ),
    button('Forget', forget, 'link')
  )
}

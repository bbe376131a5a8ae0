import type { Problem } from '../../shared/problems'
import type { UnitSystem } from '../../shared/units'
import type { RuleChange } from '../../src/plan/rules/ruleChanges'
import { shownChange } from '../../src/plan/rules/ruleUnits'
import { disclosure } from '../parts/disclosure'
import { el } from '../parts/elements'
import type { Planned } from '../planning'
import { sheetOffer, type OfferSetting } from '../write/sheetOffer'
import { counted } from '../../shared/words/counts'
import { sentence } from '../../shared/words/sentences'

/** What the note needs to write a Rules sheet where there is none. */
export interface RulesSetting extends OfferSetting {
  writeRules(): Promise<string | Problem>
}

/** By which rules the plan was made: the defaults, or what the workbook's Rules sheet changes. */
export function rulesNote({ plan, rulesSheet }: Planned, setting: RulesSetting): HTMLElement {
  const changes = plan.ruleChanges ?? []
  const line =
    changes.length === 0
      ? 'Rules: the defaults'
      : `Rules: ${counted(changes.length, 'changed', 'changed')} from the defaults`
  return disclosure('more', [line], () => {
    const from =
      rulesSheet === null
        ? sheetOffer('rules', () => setting.writeRules(), setting)
        : el('p', {}, `From the sheet ${rulesSheet.sheet}, which is yours to change.`)
    return [
      changes.length > 0 &&
        el('ul', { class: 'rule-changes' }, ...changes.map((change) => changed(change, plan.system))),
      from
    ]
  }).element
}

function changed(change: RuleChange, system: UnitSystem): HTMLElement {
  const { name, reason } = change
  const { unit, from, to } = shownChange(change, system)
  const words = `${name}: ${to}, by default ${from} (${unit}). `
  return el('li', {}, words, reason === '' ? 'No reason was written down.' : sentence(reason))
}

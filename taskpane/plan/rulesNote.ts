import type { Problem } from '../../shared/problems'
import { showRule, type RuleChange } from '../../src/plan/rules/ruleChanges'
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
    return [changes.length > 0 && el('ul', { class: 'rule-changes' }, ...changes.map(changed)), from]
  }).element
}

function changed({ name, unit, from, to, reason }: RuleChange): HTMLElement {
  const words = `${name}: ${showRule(to)}, by default ${showRule(from)} (${unit}). `
  return el('li', {}, words, reason === '' ? 'No reason was written down.' : sentence(reason))
}

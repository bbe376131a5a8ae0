import type { Problem } from '../shared/problems'
import { showRule, type RuleChange } from '../src/arbor/assess/ruleChanges'
import { checkEntry } from './checksSection'
import { disclosure } from './disclosure'
import { button, el, fill } from './elements'
import type { Planned } from './planning'
import { count, sentence } from './wording'

/** What the note needs to write a Rules sheet where there is none. */
export interface RulesSetting {
  writeRules(): Promise<string | Problem>
  /** Turns what went wrong into a problem with a remedy. */
  explain(error: unknown): Problem
  announce(sentence: string): void
  goToCell(cell: string): void
}

/** By which rules the plan was made: the defaults, or what the workbook's Rules sheet changes. */
export function rulesNote({ plan, rulesSheet }: Planned, setting: RulesSetting): HTMLElement {
  const changes = plan.ruleChanges ?? []
  const place = el('div', {})
  const line =
    changes.length === 0
      ? 'Rules: the defaults'
      : `Rules: ${count(changes.length, 'changed', 'changed')} from the defaults`
  return disclosure('more', [line], () => {
    if (rulesSheet === null) offer(place, setting)
    else fill(place, el('p', {}, `From the sheet ${rulesSheet.sheet}, which is yours to change.`))
    return [changes.length > 0 && el('ul', { class: 'rule-changes' }, ...changes.map(changed)), place]
  }).element
}

function changed({ name, unit, from, to, reason }: RuleChange): HTMLElement {
  const words = `${name}: ${showRule(to)}, by default ${showRule(from)} (${unit}). `
  return el('li', {}, words, reason === '' ? 'No reason was written down.' : sentence(reason))
}

const why =
  'A Rules sheet holds every number the plan goes by, for you to change, and asks for the region and the season.'

function offer(place: HTMLElement, setting: RulesSetting): void {
  const write = button('Write a Rules sheet', () => void begin(place, write, setting))
  fill(place, el('p', {}, why), el('div', { class: 'actions' }, write))
}

async function begin(place: HTMLElement, write: HTMLButtonElement, setting: RulesSetting): Promise<void> {
  write.disabled = true
  let result: string | Problem
  try {
    result = await setting.writeRules()
  } catch (error) {
    result = setting.explain(error)
  }
  if (typeof result !== 'string') {
    offer(place, setting)
    place.prepend(el('ul', { class: 'check-list' }, checkEntry(result, setting.goToCell)))
    setting.announce(`${result.message} ${result.remedy}`)
    place.querySelector<HTMLElement>('.actions .button')?.focus()
    return
  }
  const done = `Written: the sheet ${result}. It is yours: change it, then press Plan again.`
  const line = el('p', { class: 'done', tabindex: -1 }, done)
  fill(place, line)
  setting.announce(done)
  line.focus()
}

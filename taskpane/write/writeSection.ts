import { plural } from '../../shared/words/counts'
import type { Problem } from '../../shared/problems'
import { cautionsList } from '../cautionsNote'
import { checkEntry, checkOf } from '../checks/checksSection'
import type { DocumentChoice } from './documentChoice'
import { button, el, fill } from '../parts/elements'
import { progressLine, type ProgressLine } from '../parts/progressLine'
import type { OwnSheet, Steps, Writing } from '../surface'
import { listed } from '../../shared/words/lists'

/** What the section needs to write: what an earlier plan left, and the writing itself. */
export interface WriteSetting {
  choice: DocumentChoice
  /** Whose job it is, as the documents say. */
  detailsNote(): HTMLElement
  /** What the documents offer the client, as a line that follows the choice. */
  offerLine(): HTMLElement
  findOwnSheets(): Promise<OwnSheet[] | Problem>
  write(replace: boolean, steps: Steps): Promise<Writing>
  /** Plans again what changed and then writes it; false where it could not be planned. */
  planAndWrite(replace: boolean, changed: string): Promise<boolean>
  /** Turns what went wrong into a problem with a remedy. */
  explain(error: unknown): Problem
  announce(sentence: string): void
  goToCell(cell: string): void
}

const writes = 'Writes the sheets you tick into this workbook. Your own cells are not touched.'

const nothingTicked = 'Nothing is ticked: tick at least one sheet to write.'

export interface WriteSection {
  element: HTMLElement
  /** Writes what is ticked, with a sentence on why it was planned again before. */
  write(replace: boolean, note: string): void
}

/** Writes the documents; asks in place before it replaces what an earlier plan wrote. */
export function writeSection(setting: WriteSetting): WriteSection {
  const place = el('div', { class: 'write-place' })
  const flow = new WriteFlow(place, setting)
  flow.offer()
  const element = el(
    'div',
    {},
    el('p', {}, writes),
    setting.choice.element(),
    setting.detailsNote(),
    setting.offerLine(),
    place,
    cautionsList()
  )
  return { element, write: (replace, note) => void flow.write(replace, note) }
}

class WriteFlow {
  constructor(
    private readonly place: HTMLElement,
    private readonly setting: WriteSetting
  ) {}

  /** The first step: one button. */
  offer(focus = false, label = 'Write sheets'): void {
    const start = button(label, () => void this.begin(), 'primary')
    fill(this.place, el('div', { class: 'actions' }, start))
    if (focus) start.focus()
  }

  private async begin(): Promise<void> {
    const { kinds } = this.setting.choice
    if (kinds.size === 0) {
      this.offer(true)
      this.place.prepend(el('p', { class: 'aside' }, nothingTicked))
      this.setting.announce(nothingTicked)
      return
    }
    try {
      const own = await this.setting.findOwnSheets()
      const earlier = Array.isArray(own) ? own.filter(({ kind }) => (kinds as Set<string>).has(kind)) : own
      if (!Array.isArray(earlier)) this.fail([earlier])
      else if (earlier.length === 0) await this.write(false)
      else this.ask(earlier)
    } catch (error) {
      this.fail([this.setting.explain(error)])
    }
  }

  /** Sheets of ours exist: replaced only after asking. */
  private ask(earlier: readonly OwnSheet[]): void {
    const names = listed(earlier.map(({ sheetName }) => sheetName))
    const [there, them] = earlier.length === 1 ? ['is the sheet', 'it'] : ['are the sheets', 'them']
    const replace = button(`Replace ${them}`, () => void this.write(true), 'primary')
    const several = new Set(earlier.map(({ kind }) => kind)).size < earlier.length
    const question = several
      ? `There are the sheets ${names} from earlier plans. Replace the latest of each kind?`
      : `There ${there} ${names} from an earlier plan. Replace ${them}?`
    const head = el('h3', { tabindex: -1 }, question)
    fill(
      this.place,
      el(
        'div',
        { class: 'question' },
        head,
        el('p', {}, `Replacing discards what was typed into ${them} and cannot be undone.`),
        el(
          'div',
          { class: 'actions' },
          replace,
          button(`Keep ${them}, write new sheets`, () => void this.write(false)),
          button('Cancel', () => {
            this.offer(true)
          })
        )
      )
    )
    head.focus()
  }

  /** Writes; a note stands behind what was written. */
  async write(replace: boolean, note = ''): Promise<void> {
    const control = new AbortController()
    const line: ProgressLine = progressLine(() => {
      control.abort()
    })
    fill(this.place, line.element)
    line.cancel.focus()
    try {
      const { written, problems, changed, notes } = await this.setting.write(replace, {
        signal: control.signal,
        onProgress: (done, total) => {
          line.show({ doing: 'Writing', done, total })
        }
      })
      if (changed !== undefined) {
        if (!(await this.setting.planAndWrite(replace, changed))) this.offer()
      } else if (problems.length > 0) this.fail(problems)
      else if (written.length > 0) this.succeed(written, note, notes)
      else this.stopped()
    } catch (error) {
      if (control.signal.aborted) this.stopped()
      else this.fail([this.setting.explain(error)])
    }
  }

  private stopped(): void {
    this.setting.announce('Writing was canceled.')
    this.offer(true)
  }

  private succeed(written: readonly string[], note: string, notes: readonly Problem[] = []): void {
    const noun = plural(written.length, 'sheet')
    const sentence = [`Written: the ${noun} ${listed(written)}.`, note].filter(Boolean).join(' ')
    this.offer(false, 'Write again')
    const done = el('p', { class: 'done', tabindex: -1 }, sentence)
    this.place.prepend(done, this.checks(notes))
    this.setting.announce(sentence)
    done.focus()
  }

  private fail(problems: readonly Problem[]): void {
    this.offer(false, 'Try again')
    const head = el('h3', { tabindex: -1 }, 'Writing did not finish')
    this.place.prepend(el('div', { class: 'refusal' }, head, this.checks(problems)))
    head.focus()
  }

  private checks(problems: readonly Problem[]): HTMLElement {
    const entries = problems.map((problem) => checkEntry(checkOf(problem), this.setting.goToCell))
    return el('ul', { class: 'check-list', hidden: entries.length === 0 }, ...entries)
  }
}

import { findingsByRow, type RowFinding } from './plan/limbCard'
import type { CellBlock } from '../shared/cells'
import type { Problem } from '../shared/problems'
import { keptText, readKept, type KeptChoices } from '../src/inventory/keptAnswers'
import type { ReadingChoices } from '../src/inventory/inventory'
import { detailsNote } from './write/detailsNote'
import { DocumentChoice } from './write/documentChoice'
import { button, el, fill } from './parts/elements'
import type { Engine } from './engine'
import { buildFrame, type Frame } from './frame'
import { Notice } from './parts/notice'
import { planSheets, type Planned } from './planning'
import { changeWords } from './fresh/changes'
import { treesConcerned } from './fresh/concerned'
import { patience, spreadsheetBusy } from './loading/whyWaiting'
import { Freshness } from './fresh/freshness'
import { lastPlanText, readLastPlan } from './fresh/lastPlan'
import { OfferChoice } from './estimate/offerChoice'
import type { ProgressLine } from './parts/progressLine'
import { headline, resultView, type ResultSetting, type ResultView } from './resultView'
import { RowDock } from './rowDock'
import { pointsInto, selectionHint, selectionWords } from './selectionLine'
import type { SheetChange } from '../src/excel/changes'
import type { Selected, SheetsRead, Steps, Surface, Wanted, Writing } from './surface'

export interface PaneOptions {
  surface: Surface
  engine: Engine
  /** The date of a plan made now, year-month-day. */
  today(): string
}

/** The sheets of the inventory that was planned; the first one names it. */
function sheetsOf({ plan }: Planned): string[] {
  return [...new Set(plan.inventory.parts.map(({ sheet }) => sheet))]
}

/** The pane: follows the selection, plans it, shows the plan and writes it. */
export class Pane {
  private readonly frame: Frame
  private readonly notice: Notice
  private readonly dock: RowDock
  private readonly choice = new DocumentChoice()
  private readonly offer = new OfferChoice()
  private selected: Selected | null = null
  private shown: Planned | null = null
  private view: ResultView | null = null
  /** What the shown plan says of each row. */
  private rows: ReadonlyMap<number, RowFinding> = new Map()
  /** Whether what the shown plan was made from still stands. */
  private fresh: Freshness | null = null
  /** Our own writing changes cells too. */
  private writing = false
  private running: Promise<void> | null = null
  /** Answers that the workbook did not take. */
  private unkept: { choices: KeptChoices; problem: Problem } | null = null

  constructor(
    root: HTMLElement,
    private readonly options: PaneOptions
  ) {
    this.frame = buildFrame(root, () => void this.planSelection())
    this.notice = new Notice(this.frame.notice, (cell) => void this.goToCell(cell))
    this.dock = new RowDock(this.frame.dock)
    this.showSelection()
  }

  /** Begins to follow the selection, for as long as the pane's page lives. */
  async start(): Promise<void> {
    const { surface } = this.options
    const late = window.setTimeout(() => {
      this.announce(spreadsheetBusy)
      this.notice.say(spreadsheetBusy)
    }, patience)
    try {
      await surface.watchSelection((selected) => {
        this.select(selected)
      })
      await surface.watchChanges((change) => void this.follow(change))
      this.select(await surface.describeSelection())
      this.offerLastPlan()
      if (this.notice.unsay()) this.announce('The spreadsheet has answered.')
    } catch (error) {
      this.refuse([surface.explain(error)])
    } finally {
      window.clearTimeout(late)
    }
  }

  /** A workbook that was saved with a plan written into it is planned again by one press. */
  private offerLastPlan(): void {
    const last = readLastPlan(this.options.surface.readLastPlan())
    const { again } = this.frame
    again.hidden = last === null
    if (last === null) return
    const { range, address, date } = last
    const words = `The documents here were planned from ${address} on ${date}.`
    const start = button(
      `Plan ${address} again`,
      () => void this.plan(range === null ? 'workbook' : { range })
    )
    fill(again, el('p', { class: 'aside' }, words), el('div', { class: 'actions' }, start))
  }

  /** Marks the plan where somebody changed what it was made from. */
  private async follow(change: SheetChange): Promise<void> {
    const { fresh } = this
    if (fresh === null || this.writing) return
    try {
      if ((await fresh.look(change)) && fresh === this.fresh) this.mark()
    } catch {
      // What cannot be looked at now is looked at before anything is written.
    }
  }

  /** Says beside the plan what changed since, and on which trees that bears. */
  private mark(): void {
    const { fresh, shown, view } = this
    if (fresh === null || shown === null || view === null) return
    const { changes } = fresh
    const concerned = treesConcerned(shown.plan, this.rows, changes)
    const words = changes.length === 0 ? '' : `Changed since this plan: ${changeWords(changes)}.`
    view.mark(words, concerned)
    this.dock.mark(concerned)
    this.announce(words === '' ? 'The plan is up to date again.' : words)
  }

  /** Plans the selection; where it only points into the plan that is shown, plans that range again. */
  planSelection(): Promise<void> {
    return this.isPointing() ? this.planAgain() : this.plan('selection')
  }

  /** Plans what was planned before, as it stands now. */
  private planAgain(): Promise<void> {
    const range = this.shown?.read.range
    return this.plan(range === undefined ? 'selection' : range === null ? 'workbook' : { range })
  }

  /** Keeps what a person answered, and plans by it. */
  private async planWith(choices: ReadingChoices): Promise<void> {
    const { surface } = this.options
    try {
      const found = await surface.keepAnswers(keptText(choices))
      this.unkept = found === null ? null : { choices, problem: found }
    } catch (error) {
      this.unkept = { choices, problem: surface.explain(error) }
    }
    await this.planAgain()
  }

  /** What was answered before, here or whenever this workbook was open, with what cannot be read of it. */
  private answers(): { choices: KeptChoices; problems: readonly Problem[] } {
    if (this.unkept !== null) return { choices: this.unkept.choices, problems: [this.unkept.problem] }
    return readKept(this.options.surface.readAnswers())
  }

  /** One planning at a time: a second press while one runs waits for the first. */
  private plan(wanted: Wanted): Promise<void> {
    this.running ??= this.readAndPlan(wanted).finally(() => {
      this.running = null
    })
    return this.running
  }

  private async readAndPlan(wanted: Wanted): Promise<void> {
    const control = new AbortController()
    const steps = this.showProgress(control)
    try {
      const { read, problems } = await this.options.surface.readInventory(wanted, steps)
      if (control.signal.aborted) this.canceled()
      else if (read === null) this.refuse(problems)
      else await this.planRead(read, problems, steps)
    } catch (error) {
      if (control.signal.aborted) this.canceled()
      else this.refuse([this.options.surface.explain(error)])
    }
  }

  private async planRead(
    read: SheetsRead,
    found: readonly Problem[],
    { signal, line }: Steps & { line: ProgressLine }
  ): Promise<void> {
    const { engine, surface, today } = this.options
    const rulesSheet = await surface.readRules()
    const inventory = read.sheets.map(({ name }) => name)
    const rates = await this.readRates(inventory)
    if (rulesSheet !== null && 'code' in rulesSheet) {
      this.refuse([rulesSheet])
      return
    }
    if ('code' in rates) {
      this.refuse([rates])
      return
    }
    const chosen = await surface.readDetails(inventory)
    if ('code' in chosen) {
      this.refuse([chosen])
      return
    }
    const detailsSheet = chosen.block
    const options = { date: today(), rulesSheet, ...rates, detailsSheet, signal, onProgress: line.show }
    const { choices, problems } = this.answers()
    const planned = await planSheets(engine, read, choices, options)
    if (planned === null) this.canceled()
    else this.show({ ...planned, problems: [...found, ...problems, ...chosen.problems, ...planned.problems] })
  }

  /** What prices go by as it stands now, or why it cannot be read. */
  private async readRates(
    inventory: readonly string[]
  ): Promise<{ ratesSheet: CellBlock | null; estimateSheet: CellBlock | null } | Problem> {
    const { surface } = this.options
    const ratesSheet = await surface.readRates()
    if (ratesSheet !== null && 'code' in ratesSheet) return ratesSheet
    const estimateSheet = await surface.readEstimate(inventory)
    if (estimateSheet !== null && 'code' in estimateSheet) return estimateSheet
    return { ratesSheet, estimateSheet }
  }

  private showProgress(control: AbortController): Steps & { line: ProgressLine } {
    const line = this.notice.progress(control)
    this.frame.stage.inert = true
    this.frame.plan.disabled = true
    this.announce('Planning.')
    return {
      line,
      signal: control.signal,
      onProgress: (done, total) => {
        line.show({ doing: 'Reading the rows', done, total })
      }
    }
  }

  private settle(): void {
    this.notice.clear()
    this.frame.stage.inert = false
    this.frame.plan.disabled = false
  }

  private canceled(): void {
    this.settle()
    this.announce(this.shown === null ? 'Canceled.' : 'Canceled. The earlier plan still stands.')
    const again = this.frame.stage.querySelector<HTMLElement>('.button')
    ;(this.frame.plan.hidden ? again : this.frame.plan)?.focus()
  }

  private refuse(problems: readonly Problem[]): void {
    this.settle()
    this.announce(this.notice.refuse(problems))
  }

  private show(planned: Planned): void {
    this.settle()
    const { surface, engine } = this.options
    const setting: ResultSetting = {
      planAgain: () => void this.planAgain(),
      planWith: (choices) => void this.planWith(choices),
      writeRules: async () =>
        surface.writeRules(await engine.describeUsersSheet('rules', planned.plan.system)),
      writeRates: async () =>
        surface.writeRates(await engine.describeUsersSheet('rates', planned.plan.system)),
      offer: this.offer,
      drawings: () => engine.drawings(),
      specificationOf: async (tree) => engine.specificationOf(planned.plan, tree),
      writeDetails: async () => {
        const sheets = sheetsOf(planned)
        const given = { inventory: sheets[0] ?? '' }
        const described = await engine.describeUsersSheet('job-details', planned.plan.system, given)
        return surface.writeDetails(described, sheets)
      },
      detailsNote: () => detailsNote(planned, setting),
      findOwnSheets: () => surface.findOwnSheets(sheetsOf(planned)),
      choice: this.choice,
      offerLine: () => this.offer.line(planned.estimate),
      write: (replace, steps) => this.write(planned, replace, steps),
      planAndWrite: (replace, changed) => this.planAndWrite(planned, replace, changed),
      explain: (error) => surface.explain(error),
      announce: (sentence) => {
        this.announce(sentence)
      },
      goToCell: (cell) => void this.goToCell(cell)
    }
    const view = resultView(planned, setting)
    this.shown = planned
    this.view = view
    this.fresh = new Freshness(surface, planned)
    this.rows = findingsByRow(planned.plan)
    this.dock.use(planned, this.rows, view.openTree)
    fill(this.frame.stage, view.element)
    this.frame.needs.hidden = true
    this.frame.again.hidden = true
    this.frame.cautions.hidden = true
    this.showSelection()
    this.announce(`${headline(planned)}.`)
    view.head.focus()
  }

  /** Writes what is ticked; nothing where what the plan was made from has changed since. */
  private async write(planned: Planned, replace: boolean, steps: Steps): Promise<Writing> {
    const { plan, read, details, detailsSheet, rulesSheet, estimate } = planned
    const { surface, engine } = this.options
    const { fresh } = this
    const unread = (await fresh?.check()) ?? null
    if (unread !== null) return { written: [], problems: [unread] }
    if (fresh !== null && fresh.changes.length > 0) {
      this.mark()
      return { written: [], problems: [], changed: changeWords(fresh.changes) }
    }
    const inventory = sheetsOf(planned)
    const offer = this.offer.chosenFor(estimate)
    const { kinds } = this.choice
    const source = read.sheets.filter(({ name }) => inventory.includes(name))
    const report = kinds.has('client-report')
    const pictures = { plan, offer, details, detailsSheet, sheets: source, report }
    const { logo, photographs, problems: notes } = await surface.readPictures(pictures)
    const sheets = await engine.describeDocuments(kinds, plan, offer, { ...details, logo }, photographs, {
      sheets: source,
      rules: rulesSheet
    })
    this.writing = true
    try {
      const result = await surface.writeSheets(sheets, { replace, inventory, source }, steps)
      if (result.written.length > 0) {
        await fresh?.wrote()
        // Where the workbook does not take it, there is no offer at the next opening, and nothing else is lost.
        await surface.keepLastPlan(lastPlanText(read, plan.inventory.address, plan.date)).catch(() => null)
      }
      return { ...result, notes: [...notes, ...(result.notes ?? [])] }
    } finally {
      this.writing = false
    }
  }

  /** Plans what changed and then writes it; false where it could not be planned. */
  private async planAndWrite(before: Planned, replace: boolean, changed: string): Promise<boolean> {
    await this.planAgain()
    if (this.shown === before) return false
    this.view?.write(replace, `Planned again first, as this had changed: ${changed}.`)
    return true
  }

  private async goToCell(cell: string): Promise<void> {
    const { surface } = this.options
    try {
      const found = await surface.goToCell(cell)
      if (found !== null) this.refuse([found])
    } catch (error) {
      this.refuse([surface.explain(error)])
    }
  }

  private select(selected: Selected): void {
    this.selected = selected
    this.showSelection()
  }

  private isPointing(): boolean {
    return this.shown !== null && pointsInto(this.selected, this.shown.read)
  }

  private showSelection(): void {
    const { frame, selected } = this
    const again = this.isPointing()
    frame.words.textContent = selectionWords(selected)
    frame.hint.textContent = again ? '' : selectionHint(selected)
    frame.hint.hidden = frame.hint.textContent === ''
    frame.plan.hidden = again
    frame.plan.className = `button button-${this.shown === null ? 'primary' : 'plain'}`
    this.dock.follow(selected?.cells ?? null)
  }

  private announce(sentence: string): void {
    this.frame.status.textContent = sentence
  }
}

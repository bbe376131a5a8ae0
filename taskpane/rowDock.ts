import { staleWords } from './fresh/changes'
import { el, fill } from './parts/elements'
import { limbCard, selectedRow, treeOf, type RowFinding } from './plan/limbCard'
import type { Planned } from './planning'
import type { SelectedCells } from './surface'

/** The card of the selected row at the foot of the pane; stays folded once a person has folded it. */
export class RowDock {
  private folded = false
  private planned: Planned | null = null
  private rows: ReadonlyMap<number, RowFinding> = new Map()
  private openTree: (id: string) => void = () => undefined
  private stale: ReadonlySet<string> | 'all' = new Set()
  private cells: SelectedCells | null = null

  constructor(private readonly place: HTMLElement) {}

  /** From now on rows are those of this plan. */
  use(planned: Planned, rows: ReadonlyMap<number, RowFinding>, openTree: (id: string) => void): void {
    this.planned = planned
    this.rows = rows
    this.openTree = openTree
    this.stale = new Set()
  }

  /** From now on the cards of these trees say that they are older than the cells. */
  mark(stale: ReadonlySet<string> | 'all'): void {
    this.stale = stale
    this.follow(this.cells)
  }

  /** Shows the card of the selected row, or hides it where the plan does not know the row. */
  follow(cells: SelectedCells | null): void {
    this.cells = cells
    const { planned, stale } = this
    const row = planned === null ? null : selectedRow(planned.plan.inventory, cells)
    const finding = row === null ? undefined : this.rows.get(row)
    this.place.hidden = finding === undefined
    if (planned === null || row === null || finding === undefined) return
    const card = limbCard(finding, planned.plan, row, {
      weigh: planned.weigh,
      folded: this.folded,
      onFold: (folded) => {
        this.folded = folded
      },
      showTree: this.openTree
    })
    const isStale = stale === 'all' || stale.has(treeOf(finding))
    this.place.classList.toggle('is-stale', isStale)
    fill(this.place, isStale && el('p', { class: 'stale-words' }, staleWords), card)
  }
}

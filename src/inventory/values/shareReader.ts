import { mannerWords, takeApart } from '../../../shared/approximate'
import { numberIn } from '../../../shared/numbers'
import { percent, ratePercent } from '../../../shared/words/percent'
import { Noted, type Reading } from '../reading'
import type { ColumnCells, Filled } from './columnCells'
import { saysNone } from './missing'

/** Reads the cells of a column of shares, 0 to 1, as the whole column writes them. */
export class ShareReader {
  constructor(private readonly cells: ColumnCells) {}

  read(typed: Filled, row: number): Reading<number> {
    if (typeof typed === 'string' && saysNone(typed, this.cells.column.field)) return 0
    const cell = withSign(typed)
    const signed = typeof cell === 'string' && cell.trim().endsWith('%')
    const style = typeof cell === 'string' ? this.cells.conventions.styleFor(cell) : null
    const value = numberIn(cell, style, { percent: true })
    if (typeof value !== 'number')
      return (typeof cell === 'string' ? this.inexact(cell, row) : null) ?? this.cells.fault(value, row)
    if (signed) return value < 0 || value > 1 ? this.cells.problem('not-a-share', row) : value
    if (value < 0 || value > 100) return this.cells.problem('not-a-share', row)
    return value === 0 ? 0 : this.bare(value, row)
  }

  /** A number without a sign. */
  private bare(value: number, row: number): Reading<number> {
    const inHeader = this.cells.match.percent
    const writing = inHeader ? 'percent' : this.cells.conventions.shares
    if (writing === 'fraction' && value <= 1) return value
    if (writing === 'mixed' && value <= 1) return this.question(value, value, row)
    if (value < 1) return this.question(value, value / 100, row)
    return inHeader ? value / 100 : new Noted(value / 100, this.cells.problem('whole-percent', row))
  }

  /** A small number among percentages can be a share or a percentage. */
  private question(value: number, taken: number, row: number): Reading<number> {
    const facts = { low: ratePercent(value / 100), high: ratePercent(value), value: ratePercent(taken) }
    return new Noted(taken, this.cells.problem('share-or-percent', row, facts))
  }

  /** "~10 %" and "5-10 %", where no limit hangs on it: a limit is taken at its strictest instead. */
  private inexact(text: string, row: number): Reading<number> {
    const { unread } = this.cells.column.reads
    const found = unread === 'row' || unread.value === null ? takeApart(text) : null
    if (found === null || !text.includes('%')) return null
    const values = found.texts.flatMap((each) => {
      const value = numberIn(each.replace('%', ''), this.cells.conventions.styleFor(each))
      return typeof value === 'number' && value >= 0 && value <= 100 ? [value / 100] : []
    })
    const [first = NaN, last = first] = values
    if (values.length !== found.texts.length || last < first) return null
    const value = (first + last) / 2
    const facts = { manner: mannerWords[found.manner], value: percent(value) }
    return new Noted(value, this.cells.problem('inexact-share', row, facts))
  }
}

/** A share with its sign in place of a word for it: "5 pct", "10 percent", "5 Prozent". */
function withSign(cell: Filled): Filled {
  if (typeof cell !== 'string') return cell
  return cell.replace(/\s*(?:pct|per ?cent|prozent|pour ?cent|por ?ciento|v\.? ?h)\.?\s*$/i, ' %')
}

import { columnLetters } from '../../../shared/cells'
import { cutColumnAt } from '../cutTable'
import type { SheetDraft } from '../draft'
import { palette } from '../../../shared/palette'
import type { ConditionalLook } from '../sheet'

/** Columns of the table of cuts, from 0. */
const columns = {
  dose: cutColumnAt('visitDose'),
  allowed: cutColumnAt('allowed'),
  large: cutColumnAt('large')
}

/** A dose of the visit from this share of the allowed removal on is shown as reaching it (house rule). */
const reached = 0.95

/** Says in words what bold means below. */
export function sayCutPlanLooks(draft: SheetDraft): void {
  draft.labeled(
    'Bold',
    'A large cut, on a tint where it needs a reason; foliage removed at the visit that takes 95 % or more of the allowed removal.'
  )
}

/** The looks of the table of cuts, one rule a column: `top` is the row of its headers. */
export function cutPlanLooks(top: number, cuts: number): ConditionalLook[] {
  const first = (column: number) => `$${columnLetters(column)}${String(top + 2)}`
  const area = (column: number) => ({ row: top + 1, column, rows: cuts, columns: 1 })
  return [
    { area: area(columns.large), formula: `=${first(columns.large)}<>""`, format: { bold: true } },
    {
      area: area(columns.large),
      formula: `=ISNUMBER(SEARCH("reason",${first(columns.large)}))`,
      format: { bold: true, fill: palette.noticeFill }
    },
    {
      area: area(columns.dose),
      formula: `=AND(${first(columns.allowed)}>0,${first(columns.dose)}>=${String(reached)}*${first(columns.allowed)})`,
      format: { bold: true }
    }
  ]
}

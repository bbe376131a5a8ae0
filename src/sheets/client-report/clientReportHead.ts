import type { JobDetails } from '../../details/detailsBook'
import { palette } from '../../../shared/palette'
import { firstYearOf, type Plan } from '../../plan/plan'
import type { ChosenOffer } from '../../price/offers'
import { addBusiness } from '../details/letterhead'
import { looks } from '../looks'
import { titles } from '../ownSheets'
import { columnPoints } from '../pageBreaks'
import { printedFold } from '../printedLines'
import type { PrintedDraft } from '../printedDraft'
import type { Content } from '../sheet'
import { columns } from './reportGrid'

const name = 'Structural pruning: plan and proposal'

interface Entry {
  readonly label: string
  readonly text: string
}

/** Two lists of entries side by side; what is not known is a line to write on, and a long one goes on in the next row. */
function addEntries(draft: PrintedDraft, left: readonly Entry[], right: readonly Entry[]): void {
  const sides = [
    { entries: left, at: columns.tree, from: columns.about, to: columns.work },
    { entries: right, at: columns.work, from: columns.urgency, to: draft.widths.length }
  ]
  const rows: Content[][] = []
  const blanks: { row: number; from: number; to: number }[] = []
  for (const { entries, at, from, to } of sides) {
    let row = 0
    for (const { label, text } of entries) {
      const parts =
        text === '' ? [] : printedFold(text, columnPoints(...draft.widths.slice(from, to)), draft.size)
      const lines = parts.length === 0 ? [''] : parts
      lines.forEach((part, index) => {
        const cells = (rows[row] ??= [])
        while (cells.length < from) cells.push(null)
        cells[at] = index === 0 ? label : null
        cells[from] = part === '' ? null : part
        if (part === '') blanks.push({ row, from, to })
        row += 1
      })
    }
  }
  const top = draft.next
  for (const cells of rows) draft.height(draft.line(cells, draft.body), 1, 14)
  draft.format(top, columns.tree, rows.length, 1, { bold: true })
  draft.format(top, columns.work, rows.length, 1, { bold: true })
  for (const { row, from, to } of blanks)
    draft.format(top + row, from, 1, to - from, { underline: palette.ink })
}

/** Who writes to whom, about what, when, and until when its prices hold. */
export function addHead(draft: PrintedDraft, plan: Plan, offer: ChosenOffer, details: JobDetails): void {
  const { client, site, contact, reference, revision, date, season, validUntil } = details
  draft.height(draft.line([titles['client-report']], { ...looks.lead, size: 9 }), 1, 12)
  addBusiness(draft, details)
  draft.height(draft.line([name], { ...looks.title, size: 17 }), 1, 25)
  const first = String(firstYearOf(plan))
  addEntries(
    draft,
    [
      { label: 'Client', text: client },
      { label: 'Site', text: site },
      { label: 'Contact', text: contact },
      {
        label: 'Ref.',
        text: reference !== '' && revision !== '' ? `${reference}, revision ${revision}` : reference
      }
    ],
    [
      { label: 'Date', text: date === '' ? plan.date : date },
      { label: 'First work', text: season === '' ? first : `${season}, ${first}` },
      { label: 'Prices hold until', text: validUntil === '' ? offer.validUntil : validUntil }
    ]
  )
}

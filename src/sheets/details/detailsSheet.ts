import {
  detailEntry,
  detailHeaders,
  detailNames,
  inventoryRow,
  type DetailKind,
  type DetailName
} from '../../details/detailsBook'
import { mostCharacters, wantedOf } from '../../details/readDetail'
import type { Cell } from '../../../shared/cells'
import { firstSerial, lastSerial } from '../../../shared/dates'
import { palette } from '../../../shared/palette'
import type { UnitSystem } from '../../../shared/units'
import { SheetDraft } from '../draft'
import { looks } from '../looks'
import { titles } from '../ownSheets'
import type { CellRule, Content, Format, SheetDescription } from '../sheet'
import { linesNeeded, pointsForLines } from '../wrapping'

/** What stands on the sheet from the start. */
export interface DetailsGiven {
  /** The sheet of the inventory that the details are for; every inventory unless given. */
  readonly inventory?: string
  readonly values?: ReadonlyMap<DetailName, Cell>
}

const widths = [24, 52, 66]
const columns = { name: 0, value: 1, remark: 2 } as const

const lead: readonly (readonly [string, string])[] = [
  [
    'Whose it is',
    'This sheet is yours: type into the column Value. It is read for every plan and never replaced.'
  ],
  [
    'Where it goes',
    'Each document has these details at its head, and the reference, the client and the site at the foot of each page.'
  ],
  ['Left blank', 'A detail left blank is printed as a line to fill by hand, or goes by its remark.'],
  ['Not for change', 'Names in the first column are how a detail is found: leave them as they are.']
]

const input: Format = { fill: palette.inputFill, align: 'left', wrap: true, vertical: 'top' }

/** Text stays as it is typed, so that a number of a phone or of a job keeps its zeros. */
const asTyped: Format = { numberFormat: '@' }

function takes(kind: DetailKind): CellRule['takes'] | null {
  if (kind === 'paper') return { values: ['letter', 'A4'] }
  if (kind === 'year') return { from: 1901, to: 2200, whole: true }
  return kind === 'day' ? { from: firstSerial, to: lastSerial, whole: false, texts: true } : null
}

function addRow(draft: SheetDraft, cells: readonly [string, Content, string]): number {
  const row = draft.line([...cells], looks.body)
  draft.format(row, columns.name, 1, 1, { bold: true, vertical: 'top' })
  draft.format(row, columns.value, 1, 1, input)
  draft.format(row, columns.remark, 1, 1, { color: palette.quiet, wrap: true, vertical: 'top' })
  const lines = Math.max(
    linesNeeded(cells[1], widths[columns.value] ?? 9),
    linesNeeded(cells[2], widths[columns.remark] ?? 9)
  )
  draft.height(row, 1, pointsForLines(Math.max(1, lines), 10))
  return row
}

/** The details of a job as a sheet that a person then owns: each with its value and a remark on what to type. */
export function describeDetails(
  system: UnitSystem,
  { inventory = '', values = new Map() }: DetailsGiven = {}
): SheetDescription {
  const draft = new SheetDraft(widths)
  const rules: CellRule[] = []
  draft.title(titles['job-details'])
  for (const [label, sentence] of lead) draft.labeled(label, sentence)
  draft.blank()
  const titleRow = draft.line([detailHeaders.name, detailHeaders.value, detailHeaders.remark], looks.header)
  const heading = (text: string) =>
    draft.line([text], { ...looks.section, size: 11, underline: palette.rule })
  let group = ''
  for (const name of detailNames) {
    const entry = detailEntry(name)
    if (entry.group !== group) {
      group = entry.group
      heading(group)
    }
    const row = addRow(draft, [entry.name, values.get(name) ?? null, entry.remark])
    if (entry.kind === 'text' || entry.kind === 'long' || entry.kind === 'mail' || entry.kind === 'picture')
      draft.format(row, columns.value, 1, 1, asTyped)
    const taken = takes(entry.kind)
    const area = { row, column: columns.value, rows: 1, columns: 1 }
    if (taken !== null)
      rules.push({ area, takes: taken, sentence: `${entry.name}: ${wantedOf(entry.kind)}, or blank.` })
  }
  heading('Which inventory')
  const remark =
    'The name of the sheet with the inventory that these details are for. Blank: every inventory without details of its own.'
  const of = addRow(draft, [inventoryRow, inventory === '' ? null : inventory, remark])
  draft.format(of, columns.value, 1, 1, asTyped)
  draft.line(
    [
      `A text has at most ${String(mostCharacters.text)} characters, the terms ${String(mostCharacters.long)}.`
    ],
    looks.lead
  )
  return {
    ...draft.finish({
      kind: 'job-details',
      name: titles['job-details'],
      freezeRows: 0,
      freezeColumns: 1,
      page: {
        orientation: 'landscape',
        paper: system === 'in-ft' ? 'letter' : 'a4',
        titleRow,
        footer: 'Job details'
      }
    }),
    rules
  }
}

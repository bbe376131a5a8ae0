import { columnGiving, type Part } from './part'
import type { SurveyTable } from './surveyTable'
import { namesZone, zoneName } from './zoneNames'

/** The zone of the trees of a part where no column gives it: the last line above the row that names one, else the sheet. */
export interface Zones {
  readonly lines: Part['sections']
  readonly sheet: string
}

const noLines: Part['sections'] = []

/** Where the zones of a part stand; null where they stand nowhere. Lines that name the trees name no zones. */
export function zonesOf(part: Part): Zones | null {
  if (part.isForm) return null
  const named = part.of === 'trees' || columnGiving(part, 'tree') >= 0
  const lines = named ? part.sections.filter(({ text }) => namesZone(text)) : noLines
  const sheet = namesZone(part.block.sheet) ? part.block.sheet : ''
  return lines.length === 0 && sheet === '' ? null : { lines, sheet }
}

export function zoneAt({ lines, sheet }: Zones, row: number): string {
  let found = sheet
  for (const line of lines) if (line.row < row) found = line.text
  return zoneName(found) ?? found
}

/** The lines between the rows of a table that name the zones of its trees. */
export function zoneLines({ header, sections, of }: SurveyTable): readonly number[] {
  if (of !== 'trees' && !header.columns.some(({ meaning }) => meaning.field === 'tree')) return []
  return sections.filter(({ text }) => namesZone(text)).map(({ row }) => row)
}

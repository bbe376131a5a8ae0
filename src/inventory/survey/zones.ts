import { readHeaderText } from '../headers/headerText'
import { columnGiving, type Part } from './part'
import type { SurveyTable } from './surveyTable'

/** Words of a name at most: what is longer is a sentence. House judgment. */
const mostWords = 5

/** What stands beside the word for a zone in its name: "Zone A", "North sector", "Sektor 3b", "Barrio San Roque". */
const nameWord =
  /^(?:\p{Lu}[\p{L}'’.-]*|\p{L}{1,2}|[\p{L}-]{0,2}\d+\p{L}?|d[eu]l?|la|le|der|die|of|the|nr\.?|no\.?|n°|#)$/u

/** Whether a line or the name of a sheet is that of a zone. */
export function namesZone(text: string): boolean {
  const words = text
    .trim()
    .replace(/[:.,]$/, '')
    .split(/[\s_]+/)
  if (words.length < 2 || words.length > mostWords) return false
  const at = words.findIndex(isZoneWord)
  return (
    (at === 0 || at === words.length - 1) && words.every((word, place) => place === at || nameWord.test(word))
  )
}

function isZoneWord(word: string): boolean {
  const { words } = readHeaderText(word)
  return words.length === 1 && words[0]?.spelling === 'known' && words[0].meanings.includes('zone')
}

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
  return found.replace(/[:.,]\s*$/, '')
}

/** The lines between the rows of a table that name the zones of its trees. */
export function zoneLines({ header, sections, of }: SurveyTable): readonly number[] {
  if (of !== 'trees' && !header.columns.some(({ meaning }) => meaning.field === 'tree')) return []
  return sections.filter(({ text }) => namesZone(text)).map(({ row }) => row)
}

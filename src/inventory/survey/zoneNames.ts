import { isBlank, type Cell } from '../../../shared/cells'
import { fold, readHeaderText } from '../headers/headerText'

/** Words of a name at most: what is longer is a sentence. House judgment. */
const mostWords = 5

/** What stands beside the word for a zone in its name: "Zone A", "North sector", "Sektor 3b", "Barrio San Roque". */
const nameWord =
  /^(?:\p{Lu}[\p{L}'’.-]*|\p{L}{1,2}|[\p{L}-]{0,2}\d+\p{L}?|d[eu]l?|la|le|der|die|of|the|nr\.?|no\.?|n°|#)$/u

const direction =
  /^(?:north|south|east|west|nord|sud|ost|est|ouest|norte|sur|este|oeste|upper|lower|inner|outer|cent(?:er|re|ral|rale|ro)|mitte)(?:east|west|ost|est|este|oeste|ern)?$/

/** Parts of a planting that head no column of zones, but lines between its trees. */
const alsoZones =
  /^(?:blocks?|blk|bloc|bloque|manzana|parcel|parcelle|parcela|parzelle|lot|lote|plot|compartment|abteilung|abt|feld|flurstuck|flurstueck|teilflache|teilflaeche|carre|massif|area|row|reihe|rang|rangee|fila|hilera|phase|fase)\.?$/

/** How many trees there are, behind the name: "(4 trees)", ": 12 Bäume", "– n = 3". */
const countBehind =
  /\s*[-–—:,;]?\s*[([]?\s*(?:n\s*=\s*)?\d+\s*(?:trees?|b(?:ä|ae)ume?|baum|arbres?|[áa]rbol(?:es)?|st(?:ü|ue)?c?k\.?|st\.?|sujets?|plants?|sites?|limbs?|nos?\.?|pcs?\.?|total)\s*[)\]]?$|\s*[([]\s*(?:n\s*=\s*)?\d+\s*[)\]]$|\s*[-–—:,;]?\s*n\s*=\s*\d+$/iu

/** What stands around a line to set it off: "*** Block 7 ***". */
const around = /^[^\p{L}\d]+|[\s\-–—:.,;*=_~#]+$/gu
/** Where a description begins: "Zone A: main entrance", "Sector 2 – Eingang". */
const description = /\s*[:–—]\s*|\s+-\s+|,\s+/
const longestLine = 60

/** The name of the zone that a line or a sheet names, without a count of its trees; null where it names none. */
export function zoneName(text: string): string | null {
  if (text.length > longestLine) return null
  const name = text.replace(around, '').replace(countBehind, '').replace(around, '')
  const [head = ''] = name.split(description)
  return isName(head) ? name : null
}

function isName(text: string): boolean {
  const words = text.split(/[\s_]+/)
  if (words.length < 2 || words.length > mostWords) return false
  const at = words.findIndex(isZoneWord)
  return (
    (at === 0 || at === words.length - 1) && words.every((word, place) => place === at || isPartOfName(word))
  )
}

/** Whether a line or the name of a sheet is that of a zone. */
export function namesZone(text: string): boolean {
  return zoneName(text) !== null
}

function isPartOfName(word: string): boolean {
  return nameWord.test(word) || direction.test(fold(word))
}

function isZoneWord(word: string): boolean {
  const { words } = readHeaderText(word)
  if (words.length === 1 && words[0]?.spelling === 'known' && words[0].meanings.includes('zone')) return true
  return alsoZones.test(fold(word))
}

/** Cells that a line with the name of a zone may fill: word and name apart, and a count. */
const mostTexts = 2

/** The name in a row that names a zone and tells nothing else, however many cells it is merged over; null for any other row. */
export function zoneLine(row: readonly Cell[]): string | null {
  const texts: string[] = []
  let count: number | null = null
  for (const cell of row) {
    if (isBlank(cell)) continue
    if (typeof cell === 'number') {
      if (count !== null || !Number.isInteger(cell)) return null
      count = cell
    } else {
      const text = String(cell).trim()
      if (!texts.includes(text)) texts.push(text)
      if (texts.length > mostTexts) return null
    }
  }
  const [first = '', second] = texts
  if (second === undefined) return zoneName(count === null ? first : withName(first, count))
  // "Zone A" and "4 trees", or "Zone" and "A".
  const isCount = countBehind.test(` ${second}`)
  return isCount ? zoneName(first) : zoneName(first) === null ? zoneName(`${first} ${second}`) : null
}

/** "Block", 2 is the second block; "Block C", 2 has two trees. */
function withName(text: string, count: number): string {
  return zoneName(text) === null ? `${text} ${count}` : text
}

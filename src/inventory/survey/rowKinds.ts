import { isBlank, type Cell } from '../../../shared/cells'
import { fold } from '../headers/headerText'

/** What a row below the headers is; only data opens a tree. */
export type RowKind = 'blank' | 'header again' | 'total' | 'note' | 'no tree' | 'data'

const totals =
  /^(?:grand |sub ?)?(?:totals?|sum|average|avg|mean|median|min|max|minimum|maximum|count|stdev|gesamt|gesamtsumme|summe|mittel|mittelwert|durchschnitt|anzahl|moyenne|somme|totaux|promedio|suma|media|subtotal|zwischensumme|sous[ -]total)\b\s*(?:$|[:(=]|of\b|height|dbh|dia|trees?\b|limbs?\b|baeume|baume|arbres|arboles)/

const notes =
  /^(?:notes?|n\.?b\.?|remarks?|comments?|surveyed|survey|measured|prepared|checked|inspected|accepted|signed|signature|approved|tax|vat|sales tax|date|page|legend|key|source|see|total price|bemerkung(?:en)?|hinweise?|aufgenommen|erfasst|geprueft|gepruft|unterschrift|datum|mwst|legende|remarques?|releve|verifie|accepte|signe|signature|tva|legende|notas?|observaciones|levantado|medido por|aceptado|firma|firmado|iva|fecha|leyenda)\b\s*(?::|by\b|\d|$|von\b|par\b|por\b|\.)/

const noTree =
  /^(?:removed|felled|fallen|dead and removed|vacant|vacancy|vacant (?:site|pit|space)|empty(?: (?:site|pit|space))?|stump|no tree|tree (?:gone|removed)|missing tree|gone|leer|leerstelle|baum fehlt|stubben|stumpf|baumstumpf|wurzelstock|gefallt|gefaellt|vide|vacante?|souche|arbre absent|abattu|abattue|vacio|vacia|tocon|sin arbol|alcorque vacio)(?: (?:in |am |en )?[\d./-]{4,10})?$/

function texts(row: readonly Cell[]): string[] {
  return row.flatMap((cell) =>
    typeof cell === 'string' && cell.trim() !== '' ? [fold(cell).trim().replace(/\s+/g, ' ')] : []
  )
}

/**
 * The kind of a row. `names` are the header's cells, `idAt` the column of the tree's id and `known` the columns that give
 * a field, so that a lone sentence beside the table is told from a tree with little measured.
 */
export function kindOfRow(
  row: readonly Cell[],
  names: readonly Cell[],
  idAt: number,
  known: ReadonlySet<number>
): RowKind {
  const filled = row.flatMap((cell, column) => (isBlank(cell) ? [] : [column]))
  if (filled.length === 0) return 'blank'
  if (repeats(row, names)) return 'header again'
  const words = texts(row)
  const first = typeof row[filled[0] ?? 0] === 'string' ? (words[0] ?? '') : ''
  const numbers = filled.filter((column) => typeof row[column] === 'number').length
  if (
    totals.test(first) ||
    (isBlank(row[idAt]) && words.some((word) => totals.test(word) && word.length < 30))
  )
    return 'total'
  if (words.some((word) => noTree.test(word))) return 'no tree'
  const texted = filled.length - numbers
  if (notes.test(first) && texted >= numbers && filled.length <= 4) return 'note'
  if (filled.length === 1 && numbers === 0 && known.size >= 3) {
    const only = words[0] ?? ''
    const inId = filled[0] === idAt
    if (
      only.length > 24 ||
      only.split(' ').length >= 4 ||
      only.endsWith(':') ||
      (!inId && only.includes(' '))
    )
      return 'note'
    if (filled[0] !== undefined && !known.has(filled[0])) return 'note'
  }
  return 'data'
}

/** Whether a row says what the headers say, as where a table goes on after a page. */
function repeats(row: readonly Cell[], names: readonly Cell[]): boolean {
  let same = 0
  let other = 0
  for (let column = 0; column < Math.max(row.length, names.length); column++) {
    const [mine, theirs] = [row[column], names[column]]
    if (isBlank(mine) && isBlank(theirs)) continue
    if (typeof mine === 'string' && typeof theirs === 'string' && fold(mine).trim() === fold(theirs).trim())
      same++
    else if (!isBlank(mine)) other++
  }
  return same >= 2 && same >= other * 4
}

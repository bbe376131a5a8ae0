import { isBlank, type Cell } from '../../../shared/cells'
import { fold } from '../headers/headerText'

/** What a row below the headers is; only data opens a tree. */
export type RowKind = 'blank' | 'header again' | 'total' | 'note' | 'no tree' | 'data'

const totals =
  /^(?:all (?:trees|limbs|rows|sites)$|alle baume$|tous les arbres$|todos los arboles$)|^(?:grand |sub ?)?(?:totals?|sum|average|avg|mean|median|min|max|minimum|maximum|count|stdev|s\.?d\.?|s\.?e\.?|std(?:\.? ?dev)?\.?|standard (?:deviation|error)|variance|cv|range|mode|overall|carried forward|brought forward|ubertrag|report|q[13]|percentile|standardabweichung|ecart[- ]type|desviacion|mediane?|gesamt|gesamtsumme|summe|mittel|mittelwert|durchschnitt|anzahl|moyenne|somme|totaux|promedio|suma|media|subtotal|zwischensumme|sous[ -]total)\b\s*(?:$|[:(=]|of\b|height|dbh|dia|trees?\b|limbs?\b|baeume|baume|arbres|arboles)/

const notes =
  /^[^\p{L}\p{N}]{1,3}\s*\p{L}|^(?:example|e\.g\.|sample|beispiel|bsp\.?|exemple|ejemplo|muster)$|^(?:notes?|n\.?b\.?|remarks?|comments?|surveyed|survey|measured|prepared|checked|inspected|accepted|signed|signature|approved|tax|vat|sales tax|date|page|legend|key|source|see|total price|bemerkung(?:en)?|hinweise?|aufgenommen|erfasst|geprueft|gepruft|unterschrift|datum|mwst|legende|remarques?|releve|verifie|accepte|signe|signature|tva|legende|notas?|observaciones|levantado|medido por|aceptado|firma|firmado|iva|fecha|leyenda)\b\s*(?::|by\b|\d|$|von\b|par\b|por\b|\.)/u

const noTrees =
  /^(?:removed|felled|fallen|dead and removed|vacant|vacancy|vacant (?:site|pit|space)|empty(?: (?:site|pit|space))?|stump|no tree|tree (?:gone|removed)|missing tree|gone|leer|leerstelle|baum fehlt|stubben|stumpf|baumstumpf|wurzelstock|gefallt|gefaellt|vide|vacante?|souche|arbre absent|abattu|abattue|vacio|vacia|tocon|sin arbol|alcorque vacio)(?: (?:in |am |en )?[\d./-]{4,10})?$/

const counts = /^n\b(?:\s*=.*)?$/

/** What a text says of its row. */
interface Judged {
  readonly folded: string
  readonly total: boolean
  readonly note: boolean
  readonly noTree: boolean
  /** It stands for a count: "n", "n = 12". */
  readonly count: boolean
}

/** Texts stand in many rows, so each is judged once; the store is emptied before it grows large. */
const judgments = new Map<string, Judged>()
const mostJudgments = 50_000

function judged(text: string): Judged {
  let found = judgments.get(text)
  if (found === undefined) {
    const folded = fold(text).trim().replace(/\s+/g, ' ')
    found = {
      folded,
      total: totals.test(folded),
      note: notes.test(folded),
      noTree: noTrees.test(folded),
      count: counts.test(folded)
    }
    if (judgments.size >= mostJudgments) judgments.clear()
    judgments.set(text, found)
  }
  return found
}

/** The columns of a table, by which its rows are judged. */
export interface JudgedColumns {
  /** The cells of the headers. */
  readonly names: readonly Cell[]
  /** The column of the tree's id, or -1. */
  readonly idAt: number
  /** The columns that give a field, so that a lone sentence beside the table is told from a tree with little measured. */
  readonly known: ReadonlySet<number>
  /** What ids look like where other cells stand beside them: all numbers, some with a space. */
  readonly ids: { readonly areNumbers: boolean; readonly haveSpaces: boolean }
}

/** The kind of a row; `above` is the last row of data, whose texts need no second look. */
export function kindOfRow(
  row: readonly Cell[],
  columns: JudgedColumns,
  above: readonly Cell[] = []
): RowKind {
  const { idAt, known } = columns
  let filled = 0
  let numbers = 0
  let at = -1
  let first: Judged | null = null
  let total = false
  for (let column = 0; column < row.length; column++) {
    const cell = row[column]
    if (cell === null || cell === undefined) continue
    if (typeof cell !== 'string') {
      if (filled++ === 0) at = column
      if (typeof cell === 'number') numbers++
      continue
    }
    if (cell === above[column] && at >= 0) {
      filled++
      continue
    }
    if (isBlank(cell)) continue
    const text = judged(cell)
    if (filled++ === 0) {
      at = column
      first = text
    }
    if (text.noTree) return repeats(row, columns.names) ? 'header again' : 'no tree'
    total ||= text.total && text.folded.length < 30
  }
  if (filled === 0) return 'blank'
  if (numbers === 0 && isDrawn(row)) return 'note'
  if (numbers <= 1 && (repeats(row, columns.names) || countsInLetters(row, filled))) return 'header again'
  if (first?.total === true || (total && isBlank(row[idAt]))) return 'total'
  if (numbers >= 3 && first?.count === true && (at === idAt || isBlank(row[idAt]))) return 'total'
  if (first?.note === true && ((filled - numbers >= numbers && filled <= 4) || isExample(first.folded)))
    return 'note'
  if (numbers >= 3 && row[at] === 1 && countsColumns(row, filled)) return 'header again'
  if (filled === 1 && first !== null && known.size >= 3 && isLone(first.folded, at, columns)) return 'note'
  return 'data'
}

function isExample(text: string): boolean {
  return /^(?:example|sample|beispiel|bsp|exemple|ejemplo|muster)/.test(text)
}

/** A line drawn with signs: dashes in every cell. */
function isDrawn(row: readonly Cell[]): boolean {
  return row.every(
    (cell) => isBlank(cell) || (typeof cell === 'string' && /^\s*[-=_*.|:+–—~\s]{2,}\s*$/.test(cell))
  )
}

/** Whether a row counts the columns: 1, 2, 3 and so on, or (a), (b), (c). */
function countsColumns(row: readonly Cell[], filled: number): boolean {
  const cells = row.filter((cell) => !isBlank(cell))
  return filled >= 4 && cells.every((cell, at) => cell === at + 1)
}

function countsInLetters(row: readonly Cell[], filled: number): boolean {
  const cells = row.filter((cell) => !isBlank(cell))
  const letter = (at: number): string => String.fromCharCode(97 + at)
  return (
    filled >= 4 &&
    cells.every(
      (cell, at) =>
        typeof cell === 'string' &&
        /^[([]?([a-z])[)\].]?$/i.exec(cell.trim())?.[1]?.toLowerCase() === letter(at)
    )
  )
}

/** Whether the only text of a row is a sentence, a title or something beside the table. */
function isLone(text: string, at: number, { idAt, known, ids }: JudgedColumns): boolean {
  return (
    (at === idAt && ((ids.areNumbers && !/^\d/.test(text)) || (!ids.haveSpaces && text.includes(' ')))) ||
    text.length > 24 ||
    text.split(' ').length >= 4 ||
    text.endsWith(':') ||
    (at !== idAt && text.includes(' ')) ||
    !known.has(at)
  )
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

import { isBlank, quoted, type Cell } from '../../../shared/cells'
import { problem, type Problem } from '../../../shared/problems'
import { unitFromWord } from '../../../shared/units'
import { firstOf } from '../../../shared/words/some'
import { fold } from '../headers/fold'
import { readHeaderText } from '../headers/headerText'
import { bestOf } from '../survey/headerRows'
import { cellIn, type SheetCells } from '../survey/sheetCells'
import { widthOf } from './labels'

/** Rows of a key at most, columns in which it may stand, rows in which headers may stand, and letters of a name at most. House judgment. */
const keyRows = 400
const keyColumns = 6
const headRows = 60
const longestName = 30
/** Names that a key has to explain, their share of a row of names, and headers that a line names. House judgment. */
const leastNames = 3
const share = 0.5
const named = 4

/** What a key says of names: two columns beside each other, by the folded name. */
interface Key {
  readonly sheet: SheetCells
  readonly rows: ReadonlySet<number>
  readonly first: { readonly row: number; readonly column: number }
  readonly meanings: ReadonlyMap<string, string>
}

function plain(cell: Cell | undefined): string {
  return typeof cell === 'string' ? fold(cell).replace(/\s+/g, ' ').trim() : ''
}

/** The texts to the right of a name, as far as they stand in a row: what it means, and its unit in brackets. */
function meaningOf(row: readonly Cell[], column: number): string {
  const texts = row.slice(column + 1, column + 4).filter((cell): cell is string => typeof cell === 'string')
  const [first = '', ...others] = texts.filter((text) => text.trim() !== '')
  const unit = others.find((text) => unitFromWord(text.trim()) !== null)
  return unit === undefined ? first : `${first} (${unit.trim()})`
}

function keyIn(sheet: SheetCells, column: number): Key | null {
  const meanings = new Map<string, string>()
  const rows = new Set<number>()
  let first: Key['first'] | null = null
  for (let row = 0; row < Math.min(sheet.rows.length, keyRows); row++) {
    const cells = sheet.rows[row] ?? []
    const name = plain(cells[column])
    const meaning = meaningOf(cells, column)
    if (name === '' || name.length > longestName || meaning === '' || meanings.has(name)) continue
    meanings.set(name, meaning)
    rows.add(row)
    first ??= { row, column }
  }
  return first === null || meanings.size < leastNames ? null : { sheet, rows, first, meanings }
}

/** Whether a row of names holds enough of those that a key explains, each of them somewhere else than in the key. */
function isExplained(row: readonly Cell[], { meanings }: Key): boolean {
  const names = row.filter((cell) => !isBlank(cell)).map(plain)
  const met = names.filter((name) => meanings.has(name))
  return new Set(met).size >= leastNames && met.length >= names.length * share
}

/** The meaning that makes more of a name than the name itself does; null where the name says it as well. */
function betterThan(name: string, meaning: string): string | null {
  const score = (text: string): number => bestOf(text)?.score ?? 0
  const [best = meaning] = [meaning, `${name} ${meaning}`].sort((a, b) => score(b) - score(a))
  if (score(best) > score(name)) return best
  const { unit } = readHeaderText(meaning)
  const isSame = bestOf(meaning)?.field === bestOf(name)?.field
  return unit !== null && isSame && readHeaderText(name).unit === null ? `${name} (${unit})` : null
}

/**
 * The sheets with the names of columns read by what a key says of them, as a list of variables does on a sheet of its own or
 * above the table; what is told of that.
 */
export function explained(sheets: readonly SheetCells[]): {
  readonly sheets: readonly SheetCells[]
  readonly told: readonly Problem[]
} {
  const keys = sheets.flatMap((sheet) =>
    Array.from({ length: Math.min(widthOf(sheet.rows, headRows), keyColumns) }, (_none, column) =>
      keyIn(sheet, column)
    ).filter((key) => key !== null)
  )
  const told: Problem[] = []
  if (keys.length === 0) return { sheets, told }
  const read = sheets.map((sheet) => {
    for (let row = 0; row < Math.min(sheet.rows.length, headRows); row++) {
      const cells = sheet.rows[row] ?? []
      const key = keys.find(
        (each) => (each.sheet !== sheet || !each.rows.has(row)) && isExplained(cells, each)
      )
      if (key === undefined) continue
      const says = new Map(
        cells.flatMap((cell) => {
          const name = plain(cell)
          const better = betterThan(String(cell), key.meanings.get(name) ?? '')
          return better === null || !key.meanings.has(name) ? [] : [[name, better] as const]
        })
      )
      if (says.size === 0) continue
      const texts = cells.flatMap((cell) => {
        const meaning = says.get(plain(cell))
        return meaning === undefined ? [] : [`“${quoted(cell)}” as “${quoted(meaning)}”`]
      })
      const at = cellIn(key.sheet, key.first.row, key.first.column)
      told.push(problem('headers-explained', at, { text: firstOf(texts, named) }))
      return { ...sheet, says: (name: string) => says.get(plain(name)) ?? null }
    }
    return sheet
  })
  return { sheets: read, told }
}

import { cellAddress } from '../../shared/cells'
import { inventedRatesIn, type Rates } from '../../src/price/rates'
import { isFormula, type Content, type SheetDescription } from '../../src/sheets/sheet'

export interface FormulaCell {
  row: number
  column: number
  address: string
  formula: string
  value: number | string
}

/** Every formula of a description with its place. */
export function formulasOf(description: SheetDescription): FormulaCell[] {
  return description.rows.flatMap((row, r) =>
    row.flatMap((content: Content, c) =>
      isFormula(content)
        ? [{ row: r, column: c, address: cellAddress(r, c), formula: content.formula, value: content.value }]
        : []
    )
  )
}

/** The sheet with this in place of every stored value, so that only what is recalculated can be right. */
export function spoiled(description: SheetDescription, wrong: number): SheetDescription {
  const cell = (content: Content): Content =>
    isFormula(content) ? { formula: content.formula, value: wrong } : content
  return { ...description, rows: description.rows.map((row) => row.map(cell)) }
}

/** Invented, and unlike the default rates in every way that the formulas know. */
export const yenRates: Rates = {
  ...inventedRatesIn['cm-m'],
  currency: 'JPY',
  minorDigits: 0,
  profitKind: 'markup',
  profitRate: '0.22',
  wage: '3100',
  equipmentHour: '2800',
  mobilization: '10007',
  disposalKind: 'load',
  loadCharge: '5000',
  minimumPerTrip: '60000',
  disposalPerWeight: '7',
  minimumPerTree: '4000'
}

/** Where a cell stands among sheets that are written together: "0!A1". */
export function addressOn(sheet: number, address: string): string {
  return `${String(sheet)}!${address}`
}

/** The cells that a formula on one of the sheets depends on, whole areas included, names of all of them looked up. */
export function precedents(formula: string, sheet: number, sheets: readonly SheetDescription[]): string[] {
  const bare = formula.replace(/"[^"]*"/g, '')
  const cells: string[] = []
  for (const [, from, to] of bare.matchAll(/\$?([A-Z]+\$?\d+)(?::\$?([A-Z]+\$?\d+))?(?![A-Za-z0-9_(])/g)) {
    const [top, left] = placeOf(from!)
    const [bottom, right] = placeOf(to ?? from!)
    for (let row = top; row <= bottom; row++)
      for (let column = left; column <= right; column++)
        cells.push(addressOn(sheet, cellAddress(row, column)))
  }
  sheets.forEach(({ names = [] }, at) => {
    for (const { name, area } of names) {
      if (!new RegExp(`(?<![A-Za-z0-9_])${name}(?![A-Za-z0-9_])`).test(bare)) continue
      // INDEX takes one cell of a column.
      const one = new RegExp(`^=INDEX\\(${name},(\\d+)\\)$`).exec(bare)
      const rows = one === null ? [area.row, area.row + area.rows - 1] : [area.row + Number(one[1]) - 1]
      for (let row = rows[0]!; row <= (rows[1] ?? rows[0]!); row++)
        for (let column = area.column; column < area.column + area.columns; column++)
          cells.push(addressOn(at, cellAddress(row, column)))
    }
  })
  return cells
}

function placeOf(reference: string): [row: number, column: number] {
  const found = /^([A-Z]+)\$?(\d+)$/.exec(reference)!
  const column = [...found[1]!].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0) - 1
  return [Number(found[2]) - 1, column]
}

/** Every formula of sheets that are written together, by its address among them. */
export function formulasIn(
  sheets: readonly SheetDescription[]
): Map<string, { sheet: number; formula: string }> {
  return new Map(
    sheets.flatMap((description, sheet) =>
      formulasOf(description).map(
        ({ address, formula }) => [addressOn(sheet, address), { sheet, formula }] as const
      )
    )
  )
}

/** A chain of formulas that lead back to themselves, or null: a spreadsheet refuses to calculate such sheets. */
export function circle(sheets: readonly SheetDescription[]): string[] | null {
  const formulas = formulasIn(sheets)
  const settled = new Set<string>()
  const path: string[] = []
  const visit = (address: string): string[] | null => {
    const own = formulas.get(address)
    if (settled.has(address) || own === undefined) return null
    if (path.includes(address)) return [...path.slice(path.indexOf(address)), address]
    path.push(address)
    for (const next of precedents(own.formula, own.sheet, sheets)) {
      const found = visit(next)
      if (found !== null) return found
    }
    path.pop()
    settled.add(address)
    return null
  }
  for (const address of formulas.keys()) {
    const found = visit(address)
    if (found !== null) return found
  }
  return null
}

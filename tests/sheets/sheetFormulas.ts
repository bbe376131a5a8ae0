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
  loadCharge: '5000',
  disposalPerWeight: '7',
  minimumPerTree: '4000'
}

/** The cells that a formula depends on, whole areas included, names looked up. */
export function precedents(formula: string, { names = [] }: SheetDescription): string[] {
  const bare = formula.replace(/"[^"]*"/g, '')
  const cells: string[] = []
  for (const [, from, to] of bare.matchAll(/\$?([A-Z]+\$?\d+)(?::\$?([A-Z]+\$?\d+))?(?![A-Za-z0-9_(])/g)) {
    const [top, left] = placeOf(from!)
    const [bottom, right] = placeOf(to ?? from!)
    for (let row = top; row <= bottom; row++)
      for (let column = left; column <= right; column++) cells.push(cellAddress(row, column))
  }
  for (const { name, area } of names)
    if (new RegExp(`(?<![A-Za-z0-9_])${name}(?![A-Za-z0-9_])`).test(bare))
      for (let row = area.row; row < area.row + area.rows; row++)
        for (let column = area.column; column < area.column + area.columns; column++)
          cells.push(cellAddress(row, column))
  return cells
}

function placeOf(reference: string): [row: number, column: number] {
  const found = /^([A-Z]+)\$?(\d+)$/.exec(reference)!
  const column = [...found[1]!].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0) - 1
  return [Number(found[2]) - 1, column]
}

/** A chain of formulas that lead back to themselves, or null: a spreadsheet refuses to calculate such a sheet. */
export function circle(description: SheetDescription): string[] | null {
  const formulas = new Map(formulasOf(description).map(({ address, formula }) => [address, formula]))
  const settled = new Set<string>()
  const path: string[] = []
  const visit = (address: string): string[] | null => {
    if (settled.has(address) || !formulas.has(address)) return null
    if (path.includes(address)) return [...path.slice(path.indexOf(address)), address]
    path.push(address)
    for (const next of precedents(formulas.get(address)!, description)) {
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

/**
 * Whether LibreOffice comes to the same figures: it recalculates every formula of the documents. The values in the file
 * are spoiled on purpose, so that only what LibreOffice computed itself can agree with the engine.
 */
import { readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { cellAddress } from '../../shared/cells'
import { Money, printMoney } from '../../shared/money'
import { readInventory } from '../../src/inventory/readInventory'
import { planInventory } from '../../src/plan/planInventory'
import { estimatePlan } from '../../src/price/estimatePlan'
import { firstVisit, wholeProgram } from '../../src/price/offers'
import { withinBudget } from '../../src/price/withinBudget'
import { inventedRatesIn } from '../../src/price/rates'
import { describeDocuments, planDocuments } from '../../src/sheets/describeDocuments'
import { describeEstimateSheets } from '../../src/sheets/estimate/estimateSheet'
import { moneyFormat } from '../../src/sheets/moneyFormat'
import { describeRates } from '../../src/sheets/rates/ratesSheet'
import { describeRoundSheet } from '../../src/sheets/round-sheet/roundSheet'
import { describeRules } from '../../src/sheets/rules/rulesSheet'
import { isFormula, type SheetDescription } from '../../src/sheets/sheet'
import { unpackValues } from '../../src/file/file-library/unpackValues'
import { sampleInventory, sampleSheetName } from '../../src/file/sampleInventory'
import { SheetLooks } from '../../src/file/workbookStyles'
import { writeWorkbook } from '../../src/file/writeWorkbook'
import { spoiled, yenRates } from '../../tests/sheets/sheetFormulas'
import { longRound } from './inventories'
import type { OfficeSuite } from './officeSuite'

const otherRates = { ...yenRates, taxRate: '0.1' }

function roundSheetOf500(): SheetDescription {
  const { rows, sheet } = longRound
  const plan = planInventory(readInventory({ rows, sheet, top: 0, left: 0 }), { date: '2026-03-02' })
  return { ...describeRoundSheet(plan, firstVisit(estimatePlan(plan))), name: longRound.name }
}

/** Every document of the sample, the sheets a person owns, and a second estimate at other rates. */
function documentsOfSample(): { sheets: SheetDescription[]; minorDigits: number[] } {
  const inventory = readInventory({ rows: sampleInventory, sheet: sampleSheetName, top: 0, left: 0 })
  const plan = planInventory(inventory, { date: '2026-03-02' })
  const estimate = estimatePlan(plan, { ...inventedRatesIn['in-ft'], taxRate: '0.0825' })
  const other = estimatePlan(plan, otherRates)
  const dollars = [
    ...describeDocuments(planDocuments, plan, firstVisit(estimate)),
    describeRules(),
    describeRates(estimate.rates),
    roundSheetOf500(),
    ...describeEstimateSheets(wholeProgram(estimate), plan)
  ]
  const yen = [withinBudget(other, other.total.div(3)), wholeProgram(other)].flatMap((offer) =>
    describeEstimateSheets(offer, plan)
  )
  return {
    sheets: [...dollars, ...yen],
    minorDigits: [...dollars.map(() => 2), ...yen.map(() => 0)]
  }
}

/** Stands in every formula of a file in place of its value. */
export const wrong = -98765.4321

/** Money to the last minor unit; any other number to a billionth of itself. */
function agrees(wanted: number | string, found: unknown, money: number | null): boolean {
  if (typeof wanted === 'string' || typeof found !== 'number') return wanted === found
  const near = Math.abs(found - wanted) <= 1e-9 * Math.max(1, Math.abs(wanted))
  return money === null
    ? near
    : near && printMoney(new Money(found), money) === printMoney(new Money(wanted), money)
}

/** The formulas of a sheet that were recalculated, and a line for each that came to something else. */
function compare(description: SheetDescription, rows: readonly unknown[][], digits: number, name: string) {
  const looks = new SheetLooks(description)
  const moneyLook = moneyFormat(digits).numberFormat
  const differing: string[] = []
  let formulas = 0
  let amounts = 0
  description.rows.forEach((row, r) => {
    row.forEach((content, c) => {
      if (!isFormula(content)) return
      formulas += 1
      const isMoney = looks.row(r).looks[c]?.style?.numFmt === moneyLook
      if (isMoney) amounts += 1
      const found = plainNumber(rows[r]?.[c])
      if (agrees(content.value, found, isMoney ? digits : null)) return
      const [wanted, got] = [JSON.stringify(content.value), JSON.stringify(found)]
      differing.push(`${name}!${cellAddress(r, c)} ${content.formula}: ${wanted} here, ${got} in LibreOffice`)
    })
  })
  return { formulas, amounts, differing }
}

/** A share comes as the text that a percent format shows, "8.25 %". */
function plainNumber(cell: unknown): unknown {
  const percents = typeof cell === 'string' ? /^(-?\d+(?:\.\d+)?) %$/.exec(cell)?.[1] : undefined
  return percents === undefined ? cell : Number((Number(percents) / 100).toPrecision(12))
}

/** A line for each formula that comes to something else in the spreadsheet program; the file is kept at the path. */
export async function checkFormulas(suite: OfficeSuite, folder: string, path: string): Promise<string[]> {
  const { sheets, minorDigits } = documentsOfSample()
  writeFileSync(path, await writeWorkbook(sheets.map((description) => spoiled(description, wrong))))
  const [made = ''] = suite.convert([path], 'xlsx', join(folder, 'recalculated'))
  const recalculated = await unpackValues(readFileSync(made))
  if ('unreadable' in recalculated) return [`LibreOffice wrote a file that cannot be read: ${made}.`]
  const results = sheets.map((sheet, index) => {
    const { name = sheet.name, rows = [] } = recalculated.sheets[index] ?? {}
    return compare(sheet, rows, minorDigits[index] ?? 2, name)
  })
  const sum = (of: (result: (typeof results)[number]) => number) =>
    results.reduce((all, one) => all + of(one), 0)
  const formulas = sum((result) => result.formulas)
  const differing = results.flatMap((result) => result.differing)
  console.log(
    `${String(formulas)} formulas compared, ${String(sum((result) => result.amounts))} of them money: ${String(differing.length)} differ.`
  )
  return formulas === 0 ? ['No formula was compared.'] : differing
}

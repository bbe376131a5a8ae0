/**
 * Checks the documents in a spreadsheet program that is not ours: LibreOffice opens what the command line would write,
 * recalculates every formula and prints every document. The values in the file are spoiled on purpose, so that only
 * what LibreOffice computed itself can agree with the engine.
 */
import { mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { basename, join } from 'node:path'
import { cellAddress } from '../shared/cells'
import { Money, printMoney } from '../shared/money'
import { readInventory } from '../src/inventory/readInventory'
import { planInventory } from '../src/plan/planInventory'
import { estimatePlan } from '../src/price/estimatePlan'
import { firstVisit, wholeProgram } from '../src/price/offers'
import { withinBudget } from '../src/price/withinBudget'
import { inventedRatesIn } from '../src/price/rates'
import { describeDocuments, planDocuments } from '../src/sheets/describeDocuments'
import { describeEstimateSheets } from '../src/sheets/estimate/estimateSheet'
import { moneyFormat } from '../src/sheets/moneyFormat'
import { describeRates } from '../src/sheets/rates/ratesSheet'
import { describeRoundSheet } from '../src/sheets/round-sheet/roundSheet'
import { describeRules } from '../src/sheets/rules/rulesSheet'
import { isFormula, type SheetDescription } from '../src/sheets/sheet'
import { unpackValues } from '../src/file/file-library/unpackValues'
import { sampleInventory, sampleSheetName } from '../src/file/sampleInventory'
import { SheetLooks } from '../src/file/workbookStyles'
import { writeWorkbook } from '../src/file/writeWorkbook'
import { spoiled, yenRates } from '../tests/sheets/sheetFormulas'
import { youngTrees } from '../tests/sheets/youngTrees'
import { openXmlFaults } from './checkOpenXml'
import { MissingProgram, OfficeSuite, pagesOf } from './officeSuite'

const folder = join(__dirname, '..', 'build', 'office')

const otherRates = { ...yenRates, taxRate: '0.1' }

/** A round of 500 invented young trees: its sums are compared, and it may not take more pages than this. */
const longRound = { name: 'Round of 500', trees: 500, pages: 12 }

function roundSheetOf500(): SheetDescription {
  const rows = youngTrees(longRound.trees)
  const plan = planInventory(readInventory({ rows, sheet: 'Trees', top: 0, left: 0 }), { date: '2026-03-02' })
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

const wrong = -98765.4321

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

async function checkFormulas(suite: OfficeSuite): Promise<string[]> {
  const { sheets, minorDigits } = documentsOfSample()
  const path = join(folder, 'sample.xlsx')
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

const errors = /#NAME\?|#VALUE!|#REF!|#DIV\/0!|#N\/A|#NUM!|Err:\d+/

/** Sheets that are shown, each with the hidden ones that its formulas call. */
function printed(
  sheets: readonly SheetDescription[]
): { sheet: SheetDescription; file: SheetDescription[] }[] {
  return sheets.flatMap((sheet, index) => {
    if (sheet.hidden === true) return []
    const next = sheets[index + 1]
    return [{ sheet, file: next?.continues === true ? [sheet, next] : [sheet] }]
  })
}

async function checkPrints(suite: OfficeSuite): Promise<string[]> {
  const documents = printed(documentsOfSample().sheets)
  const sheets = documents.map(({ sheet }) => sheet)
  const files = await Promise.all(
    documents.map(async ({ sheet, file }, index) => {
      const path = join(folder, `${String(index + 1)} ${sheet.name}.xlsx`)
      writeFileSync(path, await writeWorkbook(file.map((each) => spoiled(each, wrong))))
      return path
    })
  )
  const prints = suite.convert(files, 'pdf', join(folder, 'printed'))
  return sheets.flatMap((sheet, index) => {
    const wanted = basename(files[index] ?? '', '.xlsx')
    const pages = pagesOf(prints.find((print) => basename(print, '.pdf') === wanted) ?? '')
    console.log(`${sheet.name}: ${String(pages.length)} ${pages.length === 1 ? 'page' : 'pages'} printed.`)
    const title = String(sheet.rows[0]?.[0])
    const missing = pages[0]?.includes(title) === true ? [] : [`${wanted}: the first page lacks “${title}”.`]
    const hidden = documents[index]?.file.find((each) => each.hidden === true)?.name
    if (hidden !== undefined && pages.some((page) => page.includes(hidden)))
      missing.push(`${wanted}: the hidden sheet ${hidden} is printed.`)
    const shown = pages.flatMap((page, at) => {
      const error = errors.exec(page)
      return error === null ? [] : [`${wanted}, page ${String(at + 1)}: shows ${error[0]}.`]
    })
    const isLong = sheet.name === longRound.name && pages.length > longRound.pages
    const over = isLong ? [`${wanted}: more than ${String(longRound.pages)} pages.`] : []
    return [...missing, ...shown, ...over]
  })
}

/** Names such as a file may hold: signs that XML forbids or that mean something in it, long ones, any script. */
const oddNames = [
  '\ufffe\uffff\u0001',
  '\ud83c alone',
  '<T1> & "T2" ]]>',
  "=1+1'",
  'Дуб 橡树 🌳',
  'a'.repeat(3000)
]

/** The documents of the sample with odd names of trees and limbs in it. */
function oddDocuments(): SheetDescription[] {
  const rows = sampleInventory.map((row, at) =>
    at === 0
      ? row
      : row.map((cell, c) =>
          c < 2 && typeof cell === 'string' ? `${cell} ${oddNames[at % oddNames.length] ?? ''}` : cell
        )
  )
  const plan = planInventory(readInventory({ rows, sheet: oddNames[2] ?? '', top: 0, left: 0 }), {
    date: '2026-03-02'
  })
  return describeDocuments(planDocuments, plan, firstVisit(estimatePlan(plan, inventedRatesIn['in-ft'])))
}

async function checkStandard(): Promise<string[]> {
  const odd = join(folder, 'odd names.xlsx')
  writeFileSync(odd, await writeWorkbook(oddDocuments()))
  const files = [join(folder, 'sample.xlsx'), odd]
  const faults = files.map(openXmlFaults)
  console.log(
    `${String(files.length)} files validated against Open XML: ${String(faults.flat().length)} faults.`
  )
  return faults.flat()
}

async function main(): Promise<number> {
  rmSync(folder, { recursive: true, force: true })
  mkdirSync(folder, { recursive: true })
  const suite = new OfficeSuite(folder)
  console.log(`The sample’s documents in ${suite.version()}:`)
  const failures = [
    ...(await checkFormulas(suite)),
    ...(await checkStandard()),
    ...(await checkPrints(suite))
  ]
  for (const failure of failures) console.error(failure)
  return failures.length === 0 ? 0 : 1
}

main().then(
  (code) => {
    process.exitCode = code
  },
  (error: unknown) => {
    console.error(error instanceof Error ? error.message : error)
    process.exitCode = error instanceof MissingProgram ? 2 : 1
  }
)

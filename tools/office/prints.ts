/** Whether every document prints well: no page in halves, no page all but empty, no text cut off, not too many pages. */
import { mkdirSync, writeFileSync } from 'node:fs'
import { basename, join } from 'node:path'
import { readInventory } from '../../src/inventory/readInventory'
import { planInventory } from '../../src/plan/planInventory'
import { estimatePlan } from '../../src/price/estimatePlan'
import { firstVisit } from '../../src/price/offers'
import { describeDocuments, planDocuments, type PlanDocument } from '../../src/sheets/describeDocuments'
import type { Content, SheetDescription } from '../../src/sheets/sheet'
import { writeWorkbook } from '../../src/file/writeWorkbook'
import { spoiled } from '../../tests/sheets/sheetFormulas'
import { wrong } from './formulas'
import { longRound, printedInventories, type PrintedInventory } from './inventories'
import type { Fonts, OfficeSuite } from './officeSuite'
import { overlaps, printedPages, type PrintedPage } from './pdf'

/**
 * The least part of a page that has to be covered, and the words that justify less on the last one: a text ends where it
 * ends, but not with a line or two on a page of their own.
 */
const leastInk = 0.05
const lastWords = 70

const errors = /#NAME\?|#VALUE!|#REF!|#DIV\/0!|#N\/A|#NUM!|Err:\d+|###|\bundefined\b|\bNaN\b/

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

function documentsOf({ rows, sheet, details }: PrintedInventory, wanted: readonly PlanDocument[]) {
  const inventory = readInventory({ rows, sheet, top: 0, left: 0 })
  const plan = planInventory(inventory, { date: '2026-03-02' })
  return printed(describeDocuments(wanted, plan, firstVisit(estimatePlan(plan)), details))
}

const beginning = (cell: Content | undefined): string[] =>
  typeof cell === 'string' ? [cell.replace(/\s+/g, ' ').trim().slice(0, 12)] : []

/**
 * Whether this is the right half of a page that did not fit: it holds words, and none that stand furthest left in a row of
 * the sheet. Rows whose first text stands far to the right prove nothing.
 */
function isRightHalf({ words, text }: PrintedPage, { rows }: SheetDescription): boolean {
  const left = new Set(
    rows.flatMap((row) =>
      beginning(row.slice(0, 2).find((cell) => typeof cell === 'string' && cell.trim() !== ''))
    )
  )
  const numbered = rows.some((row) => typeof row[0] === 'number')
  return words.length > 8 && !numbered && ![...left].some((start) => text.includes(start))
}

function faultsOf(page: PrintedPage, sheet: SheetDescription, isLast: boolean): string[] {
  const faults: string[] = []
  const error = errors.exec(page.text)
  if (error !== null) faults.push(`shows ${error[0]}`)
  if (page.ink < leastInk && !(isLast && page.words.length >= lastWords))
    faults.push(`is all but empty (${(100 * page.ink).toFixed(1)} % covered)`)
  if (isRightHalf(page, sheet)) faults.push('is the right half of a page that did not fit')
  const [first, ...more] = overlaps(page)
  if (first !== undefined)
    faults.push(
      `has text cut off or upon other text: “${first[0].text}” and “${first[1].text}”` +
        (more.length > 0 ? ` and ${String(more.length)} more` : '')
    )
  const out = page.words.find(({ right, bottom }) => right > page.width - 12 || bottom > page.height - 8)
  if (out !== undefined) faults.push(`runs over the edge of the paper at “${out.text}”`)
  return faults
}

async function checkInventory(
  suite: OfficeSuite,
  folder: string,
  inventory: PrintedInventory,
  wanted: readonly PlanDocument[]
): Promise<string[]> {
  const documents = documentsOf(inventory, wanted)
  const into = join(folder, inventory.name)
  mkdirSync(into, { recursive: true })
  const files = await Promise.all(
    documents.map(async ({ sheet, file }) => {
      const path = join(into, `${sheet.name}.xlsx`)
      writeFileSync(path, await writeWorkbook(file.map((each) => spoiled(each, wrong))))
      return path
    })
  )
  const prints = suite.convert(files, 'pdf', join(into, 'printed'))
  const counts: string[] = []
  const faults = documents.flatMap(({ sheet, file }) => {
    const pages = printedPages(prints.find((print) => basename(print, '.pdf') === sheet.name) ?? '')
    counts.push(`${sheet.name} ${String(pages.length)}`)
    const found = pages.flatMap((page, at) =>
      faultsOf(page, sheet, at === pages.length - 1).map((fault) => `page ${String(at + 1)} ${fault}.`)
    )
    const title = String(sheet.rows[0]?.[0])
    if (pages[0]?.text.includes(title) !== true) found.push(`the first page lacks “${title}”.`)
    const hidden = file.find((each) => each.hidden === true)?.name
    if (hidden !== undefined && pages.some(({ text }) => text.includes(`${hidden} Made from`)))
      found.push(`the hidden sheet ${hidden} is printed.`)
    const most = inventory.pages[sheet.kind] ?? Infinity
    if (pages.length > most)
      found.push(`${String(pages.length)} pages, and at most ${String(most)} are wanted.`)
    return found.map((fault) => `${inventory.name}, ${sheet.name}: ${fault}`)
  })
  console.log(`  ${inventory.name}: ${counts.join(', ')} pages; ${String(faults.length)} faults.`)
  return faults
}

/** A line for each fault of a printed document, of every inventory; the pages are kept as pictures in the folder. */
export async function checkPrints(
  suite: OfficeSuite,
  folder: string,
  fonts: Fonts,
  wanted: readonly PlanDocument[] = planDocuments
): Promise<string[]> {
  console.log(`Printed with the ${fonts}, pages each:`)
  const faults: string[] = []
  for (const inventory of printedInventories)
    faults.push(...(await checkInventory(suite, folder, inventory, wanted)))
  if (wanted.includes('round-sheet'))
    faults.push(...(await checkInventory(suite, folder, longRound, ['round-sheet'])))
  return faults.map((fault) => `With the ${fonts}: ${fault}`)
}

/** No text of an inventory, a job or a sheet's name becomes a formula, in any document, by either writer. */
import { readXlsx } from 'hucre/xlsx'
import type { Cell } from '../../shared/cells'
import { detailNames, noDetails, type JobDetails } from '../../src/details/detailsBook'
import { applySheets } from '../../src/excel/applySheets'
import { isProblem } from '../../src/excel/failures'
import { filePainter } from '../../src/file/paintDrawing'
import { sampleInventory } from '../../src/file/sampleInventory'
import { writeWorkbook } from '../../src/file/writeWorkbook'
import { readInventory } from '../../src/inventory/readInventory'
import { planInventory } from '../../src/plan/planInventory'
import { estimatePlan } from '../../src/price/estimatePlan'
import { wholeProgram } from '../../src/price/offers'
import { describeDocuments, describeUsersSheet, planDocuments } from '../../src/sheets/describeDocuments'
import { isFormula, type SheetDescription } from '../../src/sheets/sheet'
import { startWith } from './inventorySheet'

/**
 * What a spreadsheet may take for a formula, a command or a reference: signs that begin one, also behind spaces and in
 * full width (OWASP, CSV injection), and the ends of texts that are put together. `MARK` finds them again.
 */
const corpus = [
  '=MARK()',
  '+MARK',
  '-MARK',
  '@MARK',
  '\tMARK',
  '\r=MARK()',
  ' =MARK()',
  "'=MARK()",
  '=HYPERLINK("https://example.com/MARK","see")',
  "=MARK|' /C x'!A0",
  '＝MARK()',
  '{=MARK()}',
  '"&MARK()&"',
  '#MARK!',
  '=1+1;MARK',
  'MARK\n=MARK()'
]

const textColumns = ['Tree', 'Species', 'Location', 'Limb', 'Notes']
const headers = sampleInventory[0] ?? []

/** The sample with a text of the corpus behind each text, or in its place where nothing depends on it. */
function inventory(): Cell[][] {
  let at = 0
  return sampleInventory.map((row, r) =>
    row.map((cell, column) => {
      const name = String(headers[column])
      if (r === 0 || !textColumns.includes(name) || typeof cell !== 'string' || cell === '') return cell
      const text = corpus[at++ % corpus.length] ?? ''
      return name === 'Tree' || name === 'Limb' ? `${text} ${cell}` : text
    })
  )
}

const details: JobDetails = {
  ...noDetails,
  ...Object.fromEntries(
    detailNames
      .filter((name) => typeof noDetails[name] === 'string' && name !== 'date' && name !== 'validUntil')
      .map((name, at) => [name, corpus[at % corpus.length]])
  )
}

const plan = planInventory(readInventory({ rows: inventory(), sheet: "=MARK 'x'", top: 0, left: 0 }), {
  date: '2026-03-02'
})
const documents: SheetDescription[] = [
  ...describeDocuments(planDocuments, plan, wholeProgram(estimatePlan(plan)), details),
  describeUsersSheet('rules', plan.system),
  describeUsersSheet('job-details', plan.system, {
    inventory: '=MARK()',
    values: new Map(detailNames.map((name, at) => [name, corpus[at % corpus.length] ?? '']))
  })
]

const ownFormulas = (description: SheetDescription): Set<string> =>
  new Set(description.rows.flat().flatMap((content) => (isFormula(content) ? [content.formula] : [])))

test('the texts are in the documents, and no formula of ours holds one', () => {
  const texts = documents.flatMap(({ rows }) => rows.flat()).filter((content) => typeof content === 'string')
  expect(texts.filter((text) => text.includes('MARK')).length).toBeGreaterThan(200)
  const formulas = documents.flatMap((description) => [...ownFormulas(description)])
  expect(formulas.length).toBeGreaterThan(50)
  expect(formulas.filter((formula) => /\bMARK\b/.test(formula.replace(/"[^"]*"|'[^']*'/g, '')))).toEqual([])
})

test('the file has the formulas of the descriptions and no other', async () => {
  const file = await readXlsx(await writeWorkbook(documents), { readStyles: true })
  for (const description of documents) {
    const sheet = file.sheets.find(({ name }) => name === description.name)
    const own = ownFormulas(description)
    const others = [...(sheet?.cells?.values() ?? [])].flatMap(({ formula }) =>
      formula === undefined || own.has(`=${formula}`) ? [] : [formula]
    )
    expect([description.name, others]).toEqual([description.name, []])
  }
})

test('the add-in writes the formulas of the descriptions and no other', async () => {
  const office = await startWith()
  const result = await applySheets(documents, { replace: false, painter: filePainter })
  if (isProblem(result)) throw new Error(result.message)
  const found = documents.map((description) => {
    const id = office.book.sheets().find(({ name }) => name === description.name)?.id ?? ''
    const area = { row: 0, column: 0, rows: description.rows.length, columns: description.widths.length }
    const formulas = office.book.formulas(id, area).flatMap((row, r) =>
      row.filter((cell, c) => {
        // A text that begins with "=" is read back like a formula; it is none where the book computes none there.
        const described = description.rows[r]?.[c]
        return typeof cell === 'string' && cell.startsWith('=') && !isFormula(described) && cell !== described
      })
    )
    return [description.name, formulas]
  })
  expect(found).toEqual(documents.map(({ name }) => [name, []]))
  // What begins with "=" reads as it was given, and not as a result.
  for (const description of documents) {
    const id = office.book.sheets().find(({ name }) => name === description.name)?.id ?? ''
    const area = { row: 0, column: 0, rows: description.rows.length, columns: description.widths.length }
    const values = office.book.values(id, area)
    const turned = description.rows.flatMap((row, r) =>
      row.flatMap((content, c) =>
        typeof content === 'string' && content.startsWith('=') && values[r]?.[c] !== content ? [content] : []
      )
    )
    expect([description.name, turned]).toEqual([description.name, []])
  }
})

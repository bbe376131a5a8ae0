import { wholeProgram } from '../src/price/offers'
import { writeXlsx, type WriteSheet } from 'hucre/xlsx'
import { readInventory } from '../src/inventory/readInventory'
import { planInventory } from '../src/plan/planInventory'
import { estimatePlan } from '../src/price/estimatePlan'
import { describeDocuments, planDocuments } from '../src/sheets/describeDocuments'
import { isFormula, type SheetDescription } from '../src/sheets/sheet'
import { writeWorkbook } from '../src/file/writeWorkbook'
import { madeInventory } from './madeInventory'
import { leastTimesInTurn, ratio } from './measure'

/** Limbs that make some 10,000 trees. */
const limbs = 85000

/** The same values and formulas and nothing else, in the way that the library takes them most readily. */
function bareSheet({ name, rows }: SheetDescription): WriteSheet {
  const cells: NonNullable<WriteSheet['cells']> = new Map()
  const values = rows.map((row, r) =>
    row.map((content, c) => {
      if (!isFormula(content)) return typeof content === 'object' && content !== null ? content.date : content
      const { formula, value } = content
      cells.set(`${String(r)},${String(c)}`, { value, formula: formula.slice(1), formulaResult: value })
      return null
    })
  )
  return { name, rows: values, cells }
}

function withoutPictures(description: SheetDescription): SheetDescription {
  const copy = { ...description }
  delete copy.pictures
  return copy
}

/**
 * All documents of some 10,000 trees as an .xlsx, against the bare cells of the same sheets written by the same library.
 * Painting the pictures of the 60 most urgent trees is measured beside it: bare cells have no pictures.
 */
async function measureWorkbook(): Promise<void> {
  const plan = planInventory(readInventory(madeInventory(limbs)), { date: '2026-11-25' })
  const documents = describeDocuments(planDocuments, plan, wholeProgram(estimatePlan(plan)))
  const unpainted = documents.map(withoutPictures)
  const [ours = NaN, bare = NaN, painted = NaN] = await leastTimesInTurn(
    [
      () => writeWorkbook(unpainted),
      () => writeXlsx({ sheets: documents.map(bareSheet) }),
      () => writeWorkbook(documents)
    ],
    3,
    0
  )
  const what = `write all documents of ${plan.trees.length} trees as an .xlsx, looks and charts included`
  const against = 'the bare cells by the same library'
  console.log(
    JSON.stringify([
      ratio(what, 1.5, ours, bare, against),
      ratio('the same with 60 pictures painted', null, painted, bare, against)
    ])
  )
}

void measureWorkbook()

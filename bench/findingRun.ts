import { describeSelection } from '../src/excel/selection'
import { showsInventory } from '../src/inventory/survey/showsInventory'
import { startOffice } from '../tests/host/officeInNode'
import { madeInventory } from './madeInventory'
import type { Measurement } from './measure'

/** Limbs, and sheets beside the one that holds them. */
const limbs = 20_000
const otherSheets = 8

/** Rows that are read from a click in a cell until the pane can name what it would read, through the Office library. */
async function measureFinding(): Promise<void> {
  const { book } = await startOffice()
  const sheetId = book.activeSheet()
  const { rows } = madeInventory(limbs)
  const columns = rows[0]?.length ?? 0
  const area = { row: 0, column: 0, rows: rows.length, columns }
  const cells = rows.map((row) => row.map((cell) => cell ?? ''))
  book.setValues(sheetId, area, cells)
  for (let sheet = 1; sheet <= otherSheets; sheet++) {
    const { id } = book.addSheet(`Notes ${sheet}`)
    book.setValues(
      id,
      { row: 0, column: 0, rows: 60, columns: 2 },
      Array.from({ length: 60 }, (_, line) => [`Line ${line}`, line])
    )
  }
  const read = { rows: 0, cells: 0 }
  const values = book.values.bind(book)
  book.values = (id, part) => {
    read.rows += part.rows
    read.cells += part.rows * part.columns
    return values(id, part)
  }
  book.selectAreas(sheetId, [{ row: limbs - 5, column: 3, rows: 1, columns: 1 }])
  const { places } = await describeSelection(showsInventory)
  if (!places.some(({ rows: found }) => found === rows.length))
    throw new Error('The inventory was not found.')
  const measured: Measurement = {
    what: `find an inventory of ${limbs} rows among ${otherSheets + 1} sheets from a click`,
    value: read.rows,
    unit: 'rows',
    limit: 200,
    note: `${read.cells} cells read`
  }
  console.log(JSON.stringify([measured]))
}

void measureFinding()

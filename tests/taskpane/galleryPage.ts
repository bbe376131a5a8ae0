/** The page behind the pictures: the real pane and engine, with a stand-in for the spreadsheet. */
import { problem } from '../../shared/problems'
import { ruleBook } from '../../shared/rules'
import { describeRules } from '../../src/sheets/rules/rulesSheet'
import { sampleInventory, sampleSheetName } from '../../src/file/sampleInventory'
import { Pane } from '../../taskpane/pane'
import { FakeSurface, selectionOf } from './fakeSurface'
import { realEngine } from './realEngine'

/** The invented sample with two headers made doubtful, so that the columns have something to ask. */
const rows = sampleInventory.map((row, index) =>
  index > 0
    ? row
    : row.map((header) => (header === 'Tip (ft)' ? 'Tip' : header === 'Bearing' ? 'Faces' : header))
)
const surface = new FakeSurface({ sheet: sampleSheetName, top: 0, left: 0, rows })
const root = document.getElementById('pane')
if (root === null) throw new Error('The page has no pane.')
const pane = new Pane(root, { surface, engine: realEngine, today: () => '2031-03-02' })
void pane.start()

/** The sample over and over, each time with trees of their own. */
function repeated(times: number): typeof rows {
  const [headers = [], ...below] = rows
  const copies = Array.from({ length: times }, (_, copy) =>
    below.map(([tree, ...rest]) => [
      tree === null || tree === undefined ? null : `${String(tree)}-${copy}`,
      ...rest
    ])
  )
  return [headers, ...copies.flat()]
}

const stage = {
  manyRows: (times: number) => {
    surface.block = { sheet: sampleSheetName, top: 0, left: 0, rows: repeated(times) }
    surface.tell(selectionOf(surface.block))
  },
  /** Headers that are asked about: one that limbs wait for, and two that are guessed. */
  doubtfulColumns: () => {
    const names: Record<string, string> = {
      'Stem dia (in)': 'Whatsit',
      'Limb dia (in)': 'Size',
      Bearing: 'Side of the street or garden, as seen from the gate'
    }
    const doubtful = sampleInventory.map((row, index) =>
      index > 0 ? row : row.map((header) => names[String(header)] ?? header)
    )
    surface.block = {
      sheet: sampleSheetName,
      top: 0,
      left: 0,
      rows: [...doubtful, ['Lunch']]
    }
  },
  /** Trees and limbs on sheets of their own. */
  severalSheets: () => {
    surface.tell({
      ...selectionOf({ sheet: sampleSheetName, top: 0, left: 0, rows }),
      places: [
        { address: "'Trees of the street'!B4:H44", rows: 41, columns: 7 },
        { address: 'Limbs!A1:F301', rows: 301, columns: 6 }
      ]
    })
  },
  closeClipboard: () => {
    document.execCommand = () => false
    Object.defineProperty(navigator, 'clipboard', { value: undefined })
  },
  holdReading: () => {
    surface.readInventory = (_wanted, { onProgress }) => {
      onProgress(1200, 3400)
      return new Promise(() => undefined)
    }
  },
  failReading: () => {
    surface.readInventory = () => Promise.resolve({ read: null, problems: [problem('cell-editing', '')] })
  },
  useRules: () => {
    const rows = describeRules().rows.map((cells) => {
      const row = cells.map((cell) => (typeof cell === 'object' ? null : cell))
      if (row[0] === 'Region of the trees') row[1] = 'Texas'
      if (row[0] === ruleBook.allowedYoung.name) {
        row[1] = 0.35
        row[6] = 'vigorous young trees, agreed with the owner'
      }
      if (row[0] === ruleBook.cutsPerVisit.name) row[1] = 4
      return row
    })
    surface.rules = { rows, sheet: 'Rules', top: 0, left: 0 }
  },
  /** A limb measured again behind the plan's back. */
  typeOver: () => {
    surface.selectRow(2)
    surface.type(2, 13, 1)
  },
  reopen: () => {
    surface.lastPlan = JSON.stringify({ range: null, address: 'Inventory!A1:V63', date: '2031-02-11' })
    void new Pane(root, { surface, engine: realEngine, today: () => '2031-03-02' }).start()
  },
  selectRow: (row: number) => {
    surface.selectRow(row)
  },
  selectNothing: () => {
    surface.tell({
      places: [],
      range: null,
      remark: '',
      problem: problem('not-cells', ''),
      cells: null
    })
  }
}

Object.assign(globalThis, { stage })

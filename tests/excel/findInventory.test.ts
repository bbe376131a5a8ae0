import type { Cell } from '../../shared/cells'
import { KnownSheets } from '../../src/excel/findInventory'
import { readInventorySheets } from '../../src/excel/readInventorySheets'
import { describeSelection } from '../../src/excel/selection'
import { readSheets } from '../../src/inventory/readSheets'
import { showsInventory } from '../../src/inventory/survey/showsInventory'
import { sampleInventory } from '../../src/file/sampleInventory'
import { fill, startWith, type InventoryBook } from './inventorySheet'

/** The finder over the unmodified Office library: from any cell of any sheet one press means the inventory. */
let office: InventoryBook
const ids = new Map<string, string>()

const treeHeaders = ['Tree', 'Species', 'DBH (in)', 'Height (ft)', 'Crown base (ft)', 'Life stage', 'Vigor']
const limbHeaders = ['Tree', 'Limb', 'Limb dia (in)', 'Stem dia (in)', 'Origin (ft)', 'Tip (ft)']

const trees = (count: number): Cell[][] =>
  Array.from({ length: count }, (_, at) => [`T${String(at + 1)}`, 'Red oak', 6, 30, 8, 'young', 'good'])
const limbs = (count: number): Cell[][] =>
  Array.from({ length: count }, (_, at) => [
    `T${String((at % 40) + 1)}`,
    `L${String(at + 1)}`,
    2,
    4,
    6 + (at % 9),
    20
  ])

/** Five sheets: notes, the trees under three lines of title, the limbs, a list of choices, and a hidden older survey. */
beforeAll(async () => {
  office = await startWith([['Notes of the invented survey'], ['Bring the ladder']])
  const add = (name: string, rows: Cell[][], row = 0, column = 0) => {
    const { id } = office.book.addSheet(name)
    ids.set(name, id)
    fill(office, id, rows, row, column)
  }
  add('Trees of the street', [['Street trees'], ['Invented'], [], treeHeaders, ...trees(40)], 0, 1)
  add('Limbs', [limbHeaders, ...limbs(3000)])
  add('Choices', [['Vigor'], ['good'], ['fair'], ['poor']])
  add('Old', [limbHeaders, ...limbs(3)])
  office.book.hideSheet(ids.get('Old')!)
  ids.set('Trees', office.sheetId)
})

const click = (sheet: string, row: number, column: number, rows = 1, columns = 1) =>
  office.book.selectAreas(ids.get(sheet)!, [{ row, column, rows, columns }])

const whole = ["'Trees of the street'!B1:H44", 'Limbs!A1:F3001']

describe('one press anywhere', () => {
  test.each([
    ['a cell of the limbs', 'Limbs', 2500, 3],
    ['a title above the trees', 'Trees of the street', 0, 1],
    ['a blank row between title and headers', 'Trees of the street', 2, 3],
    ['a blank cell beside the trees', 'Trees of the street', 30, 20],
    ['a sheet of notes', 'Trees', 1, 0],
    ['far from anything', 'Choices', 5000, 200]
  ])('%s', async (_where, sheet, row, column) => {
    click(sheet, row, column)
    const { places, range, problem } = await describeSelection(showsInventory)
    expect(places.map(({ address }) => address)).toEqual(whole)
    expect({ range, problem }).toEqual({ range: null, problem: null })
  })

  test('finding it reads at most 200 rows', async () => {
    const values = jest.spyOn(office.book, 'values')
    const formats = jest.spyOn(office.book, 'numberFormats')
    for (const [sheet, row] of [
      ['Limbs', 2500],
      ['Trees', 0]
    ] as const) {
      values.mockClear()
      formats.mockClear()
      click(sheet, row, 0)
      await describeSelection(showsInventory)
      const rows = (spy: typeof values | typeof formats) =>
        spy.mock.calls.reduce((sum, [, area]) => sum + area.rows, 0)
      expect(rows(values)).toBeLessThanOrEqual(200)
      expect(rows(values)).toBeGreaterThan(5)
      expect(rows(formats)).toBe(rows(values))
    }
    values.mockRestore()
    formats.mockRestore()
  })

  test('a walk through the cells of known sheets reads none, until a sheet grows', async () => {
    const known = new KnownSheets()
    const values = jest.spyOn(office.book, 'values')
    click('Limbs', 7, 2)
    await describeSelection(showsInventory, known)
    values.mockClear()
    click('Choices', 1, 0)
    expect((await describeSelection(showsInventory, known)).places.map(({ address }) => address)).toEqual(
      whole
    )
    expect(values).not.toHaveBeenCalled()
    fill(office, ids.get('Choices')!, [['very poor']], 4)
    await describeSelection(showsInventory, known)
    expect(values).toHaveBeenCalled()
    values.mockRestore()
  })
})

describe('a selection of several cells', () => {
  test('with headers and rows is read alone, and it says so', async () => {
    click('Limbs', 0, 0, 12, 6)
    const { places, range, remark } = await describeSelection(showsInventory)
    expect(places).toEqual([{ address: 'Limbs!A1:F12', rows: 12, columns: 6 }])
    expect(range).toBe('Limbs!A1:F12')
    expect(remark).toBe('Only the selected cells, Limbs!A1:F12, are read.')
  })

  test('of whole columns is cut to what is filled', async () => {
    click('Limbs', 0, 0, 1048576, 6)
    const { range, remark } = await describeSelection(showsInventory)
    expect(range).toBe('Limbs!A1:F3001')
    expect(remark).toBe('Only the filled part of the selection, Limbs!A1:F3001, is read.')
  })

  test.each([
    ['rows without their headers', 100, 30],
    ['the header row alone', 0, 1],
    ['blank cells', 4000, 9]
  ])('%s mean the inventory', async (_what, row, rows) => {
    click('Limbs', row, 0, rows, 6)
    const { places, range } = await describeSelection(showsInventory)
    expect({ addresses: places.map(({ address }) => address), range }).toEqual({
      addresses: whole,
      range: null
    })
  })

  test('of several areas is refused', async () => {
    const area = { row: 0, column: 0, rows: 3, columns: 2 }
    office.book.selectAreas(ids.get('Limbs')!, [area, { ...area, row: 10 }])
    expect((await describeSelection(showsInventory)).problem?.code).toBe('several-areas')
  })
})

describe('where the inventory is hard to find', () => {
  const book = async (sheets: [string, Cell[][], number?][]) => {
    for (const { id } of office.book.sheets().slice(1)) office.book.deleteSheet(id)
    office.book.setValues(office.sheetId, { row: 0, column: 0, rows: 2, columns: 1 }, [[''], ['']])
    for (const [name, rows, top] of sheets) {
      const { id } = office.book.addSheet(name)
      ids.set(name, id)
      fill(office, id, rows, top)
    }
  }
  const found = async () => {
    const { places, problem } = await describeSelection(showsInventory)
    return problem?.code ?? places.map(({ address }) => address).join(' ')
  }

  test('headers far below, near the selected cell', async () => {
    const prose = Array.from({ length: 90 }, (_, at) => [`Line ${String(at)} of a long report`])
    await book([['Report', [...prose, limbHeaders, ...limbs(30)]]])
    click('Report', 110, 2)
    expect(await found()).toBe('Report!A1:F121')
  })

  test('more sheets than can be looked at are read all the same', async () => {
    const many = Array.from({ length: 50 }, (_, at): [string, Cell[][]] => [
      `Tree ${String(at + 1)}`,
      [['Survey sheet'], ['Crew'], ['Weather'], ['Date'], limbHeaders, ...limbs(3)]
    ])
    await book(many)
    click('Tree 7', 2, 0)
    const { places } = await describeSelection(showsInventory)
    expect(places).toHaveLength(50)
  })

  test('hidden sheets count where there is no other', async () => {
    await book([
      ['Kept', [limbHeaders, ...limbs(3)]],
      ['Cover', [['Invented']]]
    ])
    office.book.hideSheet(ids.get('Kept')!)
    click('Cover', 0, 0)
    expect(await found()).toBe('Kept!A1:F4')
  })

  test('hidden sheets are read whole where the visible ones are too many to be sure of', async () => {
    const prose = Array.from({ length: 60 }, (_, at) => ['Remark', at, `Line ${String(at)} of a report`])
    await book([
      ...Array.from({ length: 20 }, (_, at): [string, Cell[][]] => [`Report ${String(at)}`, prose]),
      ['Kept', [limbHeaders, ...limbs(90)]]
    ])
    office.book.hideSheet(ids.get('Kept')!)
    click('Report 3', 0, 0)
    const { sheets } = await readInventorySheets('selection', showsInventory)
    expect(readSheets(sheets).limbCount).toBe(90)
  })

  test('of a hidden sheet beside a visible inventory nothing is read, and it is named', async () => {
    await book([
      ['Limbs', [limbHeaders, ...limbs(4)]],
      ['Kept', [limbHeaders, ...limbs(90)]],
      ['Choices', [['Vigor'], ['good']]]
    ])
    office.book.hideSheet(ids.get('Kept')!)
    click('Limbs', 1, 1)
    const { sheets } = await readInventorySheets('selection', showsInventory)
    const { limbCount, problems } = readSheets(sheets)
    expect(limbCount).toBe(4)
    const messages = problems.map(({ message }) => message)
    expect(messages).toContain('Nothing was read from the hidden sheets “Kept”.')
    expect(messages).toContain(
      'The inventory was read from “Limbs”; nothing was read from the sheets “Choices”.'
    )
  })

  test('documents of ours are no inventory, though a cell of them is selected', async () => {
    await book([
      ['Limbs', [limbHeaders, ...limbs(3)]],
      ['Cut plan', [['Cut plan'], limbHeaders, ...limbs(2)]]
    ])
    office.book.addName({ name: 'Limbwright_cut_plan', formula: "='Cut plan'!$A$1", visible: false })
    click('Cut plan', 2, 1)
    expect(await found()).toBe('Limbs!A1:F4')
    office.book.deleteName('Limbwright_cut_plan')
  })

  test('where nothing is found, the sheet that is looked at is read, so that what is missing can be named', async () => {
    await book([
      [
        'Prices',
        [
          ['Item', 'Price'],
          ['Rope', 40]
        ]
      ],
      ['Letters', [['Dear client']]]
    ])
    click('Letters', 0, 0)
    expect(await found()).toBe('Letters!A1')
    await book([])
    click('Trees', 0, 0)
    expect(await found()).toBe('empty-selection')
  })
})

test('the sample inventory is found from a cell in it', async () => {
  const { id } = office.book.addSheet('Sample')
  fill(office, id, sampleInventory)
  office.book.selectAreas(id, [{ row: 40, column: 3, rows: 1, columns: 1 }])
  const { places } = await describeSelection(showsInventory)
  expect(places.map(({ address }) => address)).toEqual([`Sample!A1:V${String(sampleInventory.length)}`])
  expect(readSheets([{ name: 'Sample', rows: sampleInventory, top: 0, left: 0 }]).trees).toHaveLength(15)
})

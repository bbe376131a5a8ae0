/** @jest-environment jsdom */
import { problem } from '../../shared/problems'
import type { Cell } from '../../shared/cells'
import { sampleInventory, sampleSheetName } from '../../src/file/sampleInventory'
import { readSheets } from '../../src/inventory/readSheets'
import { namedColumn } from '../../src/inventory/namedColumn'
import { columnQuestions } from '../../taskpane/columns/questions'
import { FakeSurface } from './fakeSurface'
import { openPane, press, readable, settle } from './openPane'
import { realEngine } from './realEngine'

/** The card that asks about columns on the first screen of a plan, with the real reader. */

/** The invented sample with some headers renamed. */
function renamed(names: Record<string, string>, more: Cell[][] = []): Cell[][] {
  const [headers = [], ...below] = sampleInventory
  return [headers.map((header) => names[String(header)] ?? header), ...below, ...more]
}

async function planned(names: Record<string, string>, more: Cell[][] = [], kept?: unknown) {
  const surface = new FakeSurface({ sheet: sampleSheetName, top: 0, left: 0, rows: renamed(names, more) })
  surface.kept = kept
  const opened = await openPane(surface, realEngine)
  await opened.pane.planSelection()
  const card = () => opened.root.querySelector<HTMLElement>('.columns-card')
  const selects = () => [...(card()?.querySelectorAll('select') ?? [])]
  return { ...opened, card, selects }
}

function choose(select: HTMLSelectElement | undefined, value: string): void {
  if (select === undefined) throw new Error('There is no such select.')
  select.value = value
  select.dispatchEvent(new Event('change'))
}

/** The first values of a column of the sample. */
const firstOf = (column: number, count: number) =>
  sampleInventory
    .slice(1)
    .map((row) => row[column] ?? null)
    .filter((cell) => cell !== null)
    .slice(0, count)

const texts = (select: HTMLSelectElement | undefined, count: number) =>
  [...(select?.options ?? [])].slice(0, count).map(({ text }) => text)

test('an inventory that is clear is not asked about', async () => {
  const { root, card } = await planned({})
  expect(card()).toBeNull()
  expect(press(root, 'Plan again').className).toContain('button-plain')
})

describe('a column that was read by a guess', () => {
  test('stands there with its place, three values and the guesses first', async () => {
    const { card, selects, root } = await planned({ 'Limb dia (in)': 'Size (in)' })
    const text = readable(card()!)
    expect(text).toContain('1 column to confirm')
    expect(text).toContain('N Size (in)')
    expect(text).toContain(`Column N: ${firstOf(13, 3).join('; ')}`)
    expect(text).toContain('Read as Limb diameter, in inches as the header says.')
    const [meaning] = selects()
    expect(texts(meaning, 4)).toEqual(['Limb diameter', 'Trunk diameter', 'Not used', 'Tree'])
    expect(meaning?.value).toBe('diameter')
    expect([...meaning!.querySelectorAll('optgroup')].map(({ label }) => label)).toEqual([
      'Likely',
      'Of the tree',
      'Of the limb'
    ])
    expect(texts(meaning, 999).filter((each) => each === 'Limb diameter')).toHaveLength(1)
    expect(
      [...root.querySelectorAll('button')].filter((each) => each.textContent === 'Plan again')
    ).toHaveLength(1)
  })

  test('is settled by one press, kept, and not asked again', async () => {
    const { root, surface, card } = await planned({ 'Limb dia (in)': 'Size (in)' })
    press(card()!, 'Plan again')
    await settle()
    expect(JSON.parse(String(surface.kept))).toEqual({
      version: 1,
      answers: [{ header: 'Size (in)', field: 'diameter' }],
      noTrees: []
    })
    expect(card()).toBeNull()
    expect(readable(root)).toContain(
      '1 answer from this workbook is used: “Size (in)” is Limb diameter, in inches.'
    )
    const later = await planned({ 'Limb dia (in)': 'Size (in)' }, [], surface.kept)
    expect(later.card()).toBeNull()
    press(later.root, 'Forget')
    await settle()
    expect(later.card()).not.toBeNull()
    expect(later.surface.kept).toBeUndefined()
  })

  test('can be corrected, with its unit', async () => {
    const { surface, card, selects } = await planned({ 'Limb dia (in)': 'Size' })
    const [meaning, unit] = selects()
    choose(unit, 'cm')
    choose(meaning, '')
    expect(selects()).toHaveLength(1)
    choose(meaning, 'diameter')
    press(card()!, 'Plan again')
    await settle()
    expect(JSON.parse(String(surface.kept))).toMatchObject({
      answers: [{ header: 'Size', field: 'diameter', unit: 'cm' }]
    })
  })
})

describe('a column that limbs wait for', () => {
  test('is asked openly: nothing is answered by leaving it', async () => {
    const { card, selects, surface, root } = await planned({ 'Stem dia (in)': 'Whatsit' })
    expect(readable(card()!)).toContain(
      'Not used so far. No column gives the stem diameter at the union, which limbs need: is it this one?'
    )
    const [meaning] = selects()
    expect(texts(meaning, 3)).toEqual(['Choose what it is', 'Stem diameter at the union', 'Not used'])
    press(card()!, 'Plan again')
    await settle()
    expect(surface.kept).toBeUndefined()
    expect(card()).not.toBeNull()
    const [again] = selects()
    choose(again, 'stem')
    press(card()!, 'Plan again')
    await settle()
    expect(card()).toBeNull()
    expect(readable(root)).toContain('Plan for 15 trees')
    expect(JSON.parse(String(surface.kept))).toMatchObject({
      answers: [{ header: 'Whatsit', field: 'stem' }]
    })
  })

  test('every select has its label', async () => {
    const { card } = await planned({ 'Stem dia (in)': 'Whatsit', 'Limb dia (in)': 'Size (in)' })
    for (const select of card()!.querySelectorAll('select'))
      expect(card()!.querySelector(`label[for=${select.id}]`)?.textContent).not.toBe('')
  })
})

describe('where nothing could be read', () => {
  const fields = ['tree', 'limb', 'diameter', 'stem', 'origin', 'tip']
  const below: Cell[][] = Array.from({ length: 9 }, (_, at) => [
    `T${String(1 + (at % 3))}`,
    `L${String(at)}`,
    2 + (at % 3),
    5,
    8 + at,
    20 + at
  ])
  const open = async (headers: Cell[]) => {
    const opened = await openPane(
      new FakeSurface({ sheet: 'Survey', top: 0, left: 0, rows: [headers, ...below] }),
      realEngine
    )
    await opened.pane.planSelection()
    return opened
  }
  const answer = async (root: HTMLElement, all: string[]) => {
    const card = root.querySelector('.columns-card')!
    all.forEach((field, at) => {
      const column = card.querySelectorAll('.column')[at]
      choose(column?.querySelector('select') ?? undefined, field)
    })
    press(card, 'Plan again')
    await settle()
  }

  test('for want of known headers, every column is asked, and the answers make the plan', async () => {
    const { root } = await open(['Qq', 'Ww', 'Ee', 'Rr', 'Tt', 'Yy'])
    expect(readable(root)).toContain('No tree could be planned')
    expect(readable(root)).toContain('6 columns to confirm')
    await answer(root, fields)
    expect(readable(root)).toContain('Plan for 3 trees')
    expect(root.querySelector('.columns-card')).toBeNull()
  })

  test('for want of the trees’ ids, the unknown column is asked with that guess', async () => {
    const { root } = await open(['Qq', 'Limb', 'Limb dia (in)', 'Stem dia (in)', 'Origin (ft)', 'Tip (ft)'])
    expect(readable(root)).toContain('1 column to confirm')
    expect(texts(root.querySelector<HTMLSelectElement>('.columns-card select') ?? undefined, 2)).toEqual([
      'Choose what it is',
      'Tree'
    ])
    await answer(root, ['tree'])
    expect(readable(root)).toContain('Plan for 3 trees')
  })
})

describe('how an answer names its column', () => {
  const headers = ['Tree', 'Limb', 'Size', 'Stem dia (in)', 'Origin (ft)', 'Tip (ft)']
  const limb = (id: string, size: Cell): Cell[] => [id, 'A', size, 6, 8, 22]
  const matchesOf = (sheets: [string, Cell[][]][]) =>
    readSheets(sheets.map(([name, rows]) => ({ name, rows, top: 0, left: 0 }))).matches
  const north: [string, Cell[][]] = ['North', [headers, limb('T1', 3), limb('T2', 4)]]

  test('by its header, where that means the same on every sheet', () => {
    const matches = matchesOf([north, ['South', [headers, limb('S1', 3), limb('S2', 4)]]])
    expect(namedColumn(matches[2]!, matches)).toEqual({ header: 'Size' })
  })

  test('with its sheet where it means something else on another, with its letters on its own', () => {
    const matches = matchesOf([north])
    const other = { ...matches[2]!, sheet: 'South', field: 'trunk' as const }
    expect(namedColumn(matches[2]!, [...matches, other])).toEqual({ header: 'Size', sheet: 'North' })
    const twin = { ...matches[2]!, letters: 'H', field: null }
    expect(namedColumn(matches[2]!, [...matches, twin])).toEqual({
      header: 'Size',
      sheet: 'North',
      column: 'C'
    })
  })

  test('a header that repeats with a number or on sheets is one question', () => {
    const inventory = readSheets(
      [north, ['South', [headers, limb('S1', 3), limb('S2', 4)]] as typeof north].map(([name, rows]) => ({
        name,
        rows,
        top: 0,
        left: 0
      }))
    )
    const likely = inventory.matches.filter(({ confidence }) => confidence === 'likely')
    expect(likely.length).toBeGreaterThan(1)
    expect(columnQuestions(inventory).map(({ match }) => [match.sheet, match.header])).toEqual([
      ['North', 'Size']
    ])
  })
})

describe('a row that is no tree', () => {
  test('has a button that keeps so, and is left out from then on', async () => {
    const { root, surface } = await planned({}, [['Lunch']])
    press(root, 'Checks')
    const buttons = () =>
      [...root.querySelectorAll('button')].filter((each) => each.textContent === 'This is not a tree')
    expect(buttons().map((each) => each.getAttribute('aria-label'))).toEqual(['Lunch: this is not a tree'])
    buttons()[0]!.click()
    await settle()
    expect(JSON.parse(String(surface.kept))).toEqual({ version: 1, answers: [], noTrees: ['Lunch'] })
    expect(readable(root)).toContain('“Lunch” is no tree')
    press(root, 'Checks')
    expect(buttons()).toEqual([])
    expect(readable(root)).toContain('Left out as no trees, as was answered before')
  })
})

test('answers that cannot be kept are told among the checks', async () => {
  const { root, surface, card } = await planned({ 'Limb dia (in)': 'Size (in)' })
  surface.keepingProblem = problem('answers-not-kept', '', { text: 'It is read only.' })
  press(card()!, 'Plan again')
  await settle()
  expect(card()).toBeNull()
  press(root, 'Checks')
  expect(readable(root)).toContain('The workbook does not keep the answers about columns: It is read only.')
})

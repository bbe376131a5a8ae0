/**
 * Looks that follow the cells, calculated and shown by a spreadsheet that is not ours: the documents are opened in the grid
 * of the workbench, every formula of a look is put beside every row that it is about, and what it says is compared with
 * the engine. That the grid shows them is seen on its canvas.
 */
import { readXlsx } from 'hucre/xlsx'
import type { Browser } from 'playwright-core'
import { readRules } from '../../src/plan/rules/readRules'
import { ruleChanges } from '../../src/plan/rules/ruleChanges'
import { byUrgency } from '../../src/plan/plan'
import { rateEntry, rateNames } from '../../src/price/rateBook'
import { readRates } from '../../src/price/readRates'
import { describeCutPlan } from '../../src/sheets/cut-plan/cutPlan'
import { palette } from '../../shared/palette'
import { describeStartRates } from '../../src/sheets/rates/ratesSheet'
import { describeRules } from '../../src/sheets/rules/rulesSheet'
import type { ConditionalLook, SheetDescription } from '../../src/sheets/sheet'
import { writeWorkbook } from '../../src/file/writeWorkbook'
import { cellAddress, type Cell } from '../../shared/cells'
import { ruleBook, type RuleName } from '../../shared/rules'
import { samplePlan } from '../sheets/samplePlan'
import { connectBrowser, workbenchAddress } from './shared'
import { openDesk, openFile, read, savedFile, select, write, type Desk } from './workbench'

jest.setTimeout(90000)

const plan = samplePlan()
const cutPlan = describeCutPlan(plan)
const rules = describeRules()
const rates = describeStartRates('cm-m')

let browser: Browser
let desk: Desk

beforeAll(async () => {
  browser = await connectBrowser()
  desk = await openDesk(browser, workbenchAddress())
  const buffer = Buffer.from(await writeWorkbook([cutPlan, rules, rates]))
  await openFile(desk, 'looks.xlsx', buffer)
})
afterAll(() => browser.close())

/** The formula as it reads for another row of its area: references to the first row move, fixed ones stay. */
function forRow({ area, formula }: ConditionalLook, row: number): string {
  const first = new RegExp(`(\\$[A-Z]+)${String(area.row + 1)}(?!\\d)`, 'g')
  return formula.replace(first, `$1${String(row + 1)}`)
}

/** What the formula of a look says of each row of its area, as the grid calculates it in a column far to the right. */
async function saysOf(sheet: SheetDescription, which: number): Promise<unknown[]> {
  const look = sheet.conditionalLooks![which]!
  const { row, rows } = look.area
  const column = 40 + which
  const place = `${cellAddress(row, column)}:${cellAddress(row + rows - 1, column)}`
  await write(
    desk,
    sheet.name,
    place,
    Array.from({ length: rows }, (_, index) => [forRow(look, row + index)])
  )
  const end = Date.now() + 15000
  for (;;) {
    const said = (await read(desk, sheet.name, place)).map(([value]) => value)
    if (said.every((value) => typeof value === 'boolean') || Date.now() > end) return said
    await desk.page.waitForTimeout(100)
  }
}

/** The same until it is as expected, since recalculating takes the grid a moment. */
async function expectSaid(sheet: SheetDescription, which: number, expected: boolean[]): Promise<void> {
  const end = Date.now() + 10000
  let said = await saysOf(sheet, which)
  while (JSON.stringify(said) !== JSON.stringify(expected) && Date.now() < end) {
    await desk.page.waitForTimeout(100)
    said = await saysOf(sheet, which)
  }
  expect(said).toEqual(expected)
}

/** How many points of the grid's canvas have this color. */
function pointsOf(color: string): Promise<number> {
  return desk.page.evaluate((hex) => {
    const canvas = document.querySelector<HTMLCanvasElement>('#grid canvas[id^=univer-sheet]')!
    const { data } = canvas.getContext('2d')!.getImageData(0, 0, canvas.width, canvas.height)
    const [red, green, blue] = [1, 3, 5].map((at) => parseInt(hex.slice(at, at + 2), 16))
    let count = 0
    for (let at = 0; at < data.length; at += 4)
      if (data[at] === red && data[at + 1] === green && data[at + 2] === blue) count++
    return count
  }, color)
}

async function untilPoints(color: string, enough: (count: number) => boolean): Promise<number> {
  const end = Date.now() + 10000
  let count = await pointsOf(color)
  while (!enough(count) && Date.now() < end) {
    await desk.page.waitForTimeout(100)
    count = await pointsOf(color)
  }
  expect(enough(count)).toBe(true)
  return count
}

describe('the Rates sheet', () => {
  const { row: top, rows: count } = rates.conditionalLooks![0]!.area
  const nameAt = (row: number) => rateNames.find((name) => rateEntry(name).name === rates.rows[row]?.[0])
  const rowOf = (name: (typeof rateNames)[number]) =>
    rates.rows.findIndex((cells) => cells[0] === rateEntry(name).name)

  /** The rows of the area by the engine's reading of the sheet as it stands in the grid. */
  async function byEngine(): Promise<{ invented: boolean[]; own: boolean[] }> {
    const area = `A1:${cellAddress(rates.rows.length - 1, rates.widths.length - 1)}`
    const rows = (await read(desk, rates.name, area)) as Cell[][]
    const { invented } = readRates({ rows, sheet: rates.name, top: 0, left: 0 }, 'cm-m').rates
    const of = Array.from({ length: count }, (_, index) => nameAt(top + index))
    return {
      invented: of.map((name) => name !== undefined && invented.includes(name)),
      own: of.map((name) => name !== undefined && !invented.includes(name))
    }
  }

  test('shows every value as invented when it is new, and each one as the user’s when it is changed', async () => {
    const fresh = await byEngine()
    expect(fresh.invented.filter(Boolean)).toHaveLength(rateNames.length)
    await expectSaid(rates, 0, fresh.invented)
    await expectSaid(rates, 1, fresh.own)

    await select(desk, rates.name, 'A1')
    const before = await untilPoints(palette.noticeFill, (points) => points > 5000)
    for (const name of rateNames) {
      const { kind, start, low, high, choices } = rateEntry(name)
      const number = Number(start['cm-m'])
      const other = number + 1 <= high ? number + 1 : low
      const typed =
        kind === 'choice'
          ? choices.find((choice) => choice !== start['cm-m'])!
          : kind === 'code'
            ? 'NZD'
            : other
      // The last one is left alone, and one is marked as right as it is.
      if (name === 'taxRate') await write(desk, rates.name, cellAddress(rowOf(name), 4), [['yes']])
      else if (name !== 'validityDays') await write(desk, rates.name, cellAddress(rowOf(name), 1), [[typed]])
    }
    const edited = await byEngine()
    expect(edited.own.filter(Boolean)).toHaveLength(rateNames.length - 1)
    await expectSaid(rates, 0, edited.invented)
    await expectSaid(rates, 1, edited.own)
    await select(desk, rates.name, 'A1')
    await untilPoints(palette.noticeFill, (points) => points < before / 10)
  })

  test('shows a value that was taken out as invented, since the start value stands in for it', async () => {
    await write(desk, rates.name, cellAddress(rowOf('wage'), 1), [['']])
    const { invented } = await byEngine()
    expect(invented[rowOf('wage') - top]).toBe(true)
    await expectSaid(rates, 0, invented)
  })
})

test('the Rules sheet shows the values that the engine reads as changed', async () => {
  const { row: top } = rules.conditionalLooks![0]!.area
  const names = Object.keys(ruleBook) as RuleName[]
  await expectSaid(
    rules,
    0,
    names.map(() => false)
  )
  const edits: [RuleName, Cell][] = [
    ['gainingUpTo', 0.65],
    ['cutsPerVisit', 4],
    ['lateralFraction', 1 / 3],
    ['leastCut', '']
  ]
  for (const [name, value] of edits)
    await write(desk, rules.name, cellAddress(top + names.indexOf(name), 1), [[value]])
  const area = `A1:${cellAddress(rules.rows.length - 1, rules.widths.length - 1)}`
  const rows = (await read(desk, rules.name, area)) as Cell[][]
  const changed = ruleChanges(readRules({ rows, sheet: rules.name, top: 0, left: 0 }).rules)
  expect(changed.map(({ rule }) => rule)).toEqual(['gainingUpTo', 'cutsPerVisit'])
  await expectSaid(
    rules,
    0,
    names.map((name) => changed.some(({ rule }) => rule === name))
  )
})

/** Types into a cell by keyboard; gives the sentence that the grid answers with, or an empty text. */
async function answerTo(address: string, text: string): Promise<string> {
  await select(desk, rules.name, address)
  await desk.page.locator('#grid canvas').first().focus()
  await desk.page.keyboard.type(text)
  await desk.page.keyboard.press('Enter')
  const dialog = desk.page.getByText(/: type a |Type yes or no/).last()
  const shown = await dialog.waitFor({ timeout: 1500 }).then(
    () => true,
    () => false
  )
  if (!shown) return ''
  const sentence = await dialog.innerText()
  await desk.page.keyboard.press('Escape')
  return sentence
}

test('the Rules sheet says what to type while something else is typed, and takes a length with its unit', async () => {
  const { row: top } = rules.conditionalLooks![0]!.area
  const names = Object.keys(ruleBook) as RuleName[]
  const place = (name: RuleName) => cellAddress(top + names.indexOf(name), 1)
  expect(await answerTo(place('markedCut'), '3 in')).toBe('')
  expect(await read(desk, rules.name, place('markedCut'))).toEqual([['3 in']])
  expect(await answerTo(place('markedCut'), '5000')).toContain('type a number from 25 to 150 (mm)')
  expect(await answerTo(place('cutsPerVisit'), '4.5')).toContain('type a whole number from 1 to 30')
})

test('the Cut plan shows large cuts, those that need a reason, and doses that reach the allowed removal', async () => {
  const cuts = byUrgency(plan).flatMap(({ visits }) =>
    visits.flatMap((visit) => visit.cuts.map((cut) => ({ cut, visit })))
  )
  const marked = cuts.map(({ cut }) => cut.marked || cut.needsReason)
  const reasoned = cuts.map(({ cut }) => cut.needsReason)
  const full = cuts.map(({ visit }) => visit.allowedRemoval > 0 && visit.dose >= 0.95 * visit.allowedRemoval)
  for (const each of [marked, reasoned, full]) expect(new Set(each)).toEqual(new Set([true, false]))
  await expectSaid(cutPlan, 0, marked)
  await expectSaid(cutPlan, 1, reasoned)
  await expectSaid(cutPlan, 2, full)
})

test('a look that was made through office.js is shown, follows what is typed, and is saved', async () => {
  const color = '#bada55'
  await desk.pane.evaluate(
    (fill) =>
      Excel.run(async (context) => {
        const sheet = context.workbook.worksheets.add('Looks')
        sheet.getRange('B3:C5').values = [
          [1, 1],
          [2, 3],
          [4, 5]
        ]
        const { custom } = sheet.getRange('B3:B5').conditionalFormats.add('Custom')
        custom.rule.formula = '=$B3=$C3'
        custom.format.fill.color = fill
        custom.format.font.bold = true
        sheet.activate()
        sheet.getRange('A1').select()
        await context.sync()
      }),
    color
  )
  const one = await untilPoints(color, (points) => points > 500)
  await write(desk, 'Looks', 'B4', [[3]])
  await untilPoints(color, (points) => points > one * 1.8)
  await write(desk, 'Looks', 'B3:B4', [[7], [7]])
  await untilPoints(color, (points) => points === 0)

  const saved = await readXlsx((await savedFile(desk)).bytes, { readStyles: true })
  const ruleOf = (name: string) => saved.sheets.find((sheet) => sheet.name === name)!.conditionalRules!
  expect(ruleOf('Looks')).toMatchObject([
    { type: 'expression', formula: '$B3=$C3', range: 'B3:B5', style: { font: { bold: true } } }
  ])
  expect(ruleOf(cutPlan.name)).toHaveLength(cutPlan.conditionalLooks!.length)
})

test('nothing fails on the page', () => expect(desk.complaints).toEqual([]))

/** The way of an answer about a column: asked, chosen, kept in the workbook and in its file. */
import type { Browser } from 'playwright-core'
import { isRefusal } from '../../shared/refusal'
import { readPlannedFile } from '../../src/file/readPlannedFile'
import { sampleSheetName } from '../../src/file/sampleInventory'
import { connectBrowser, workbenchAddress } from './shared'
import {
  openDesk,
  openFile,
  planSelection,
  read,
  reloadPane,
  savedFile,
  select,
  sheetNames,
  write,
  type Desk
} from './workbench'

let browser: Browser
let desk: Desk

beforeAll(async () => {
  browser = await connectBrowser()
  desk = await openDesk(browser, workbenchAddress())
})

afterAll(async () => {
  await desk.close()
  await browser.close()
})

const card = () => desk.pane.locator('.columns-card')
const remembered = () => desk.pane.locator('.remembered')

test('a renamed header is asked about, chosen, kept, and remembered wherever the workbook is opened', async () => {
  expect(await read(desk, sampleSheetName, 'O1')).toEqual([['Stem dia (in)']])
  await write(desk, sampleSheetName, 'O1', [['Whatsit']])
  await select(desk, sampleSheetName, 'AB200')
  await planSelection(desk)
  expect(await card().innerText()).toMatch(/1 column to confirm[^]*Whatsit[^]*Column O: 5.2; 5.6; 4.8/)
  await card().getByRole('combobox').first().selectOption({ label: 'Stem diameter at the union' })
  await card().getByRole('button', { name: 'Plan again' }).click()
  await remembered().waitFor()
  expect(await remembered().innerText()).toContain('“Whatsit” is Stem diameter at the union')
  expect(await card().count()).toBe(0)

  await reloadPane(desk)
  await planSelection(desk)
  expect(await remembered().innerText()).toContain('“Whatsit” is Stem diameter at the union')
  expect(await card().count()).toBe(0)

  const { bytes } = await savedFile(desk)
  const file = await readPlannedFile({ name: 'saved.xlsx', bytes })
  if (isRefusal(file)) throw new Error(file.sentence)
  expect(file.kept.choices.answers).toEqual([{ header: 'Whatsit', field: 'stem' }])

  await openFile(desk, 'again.xlsx', bytes)
  expect(await sheetNames(desk)).toEqual([sampleSheetName])
  await planSelection(desk)
  expect(await remembered().innerText()).toContain('“Whatsit” is Stem diameter at the union')
  await remembered().getByRole('button', { name: 'Forget' }).click()
  await card().waitFor()
  expect(await remembered().count()).toBe(0)
  expect(desk.complaints).toEqual([])
})

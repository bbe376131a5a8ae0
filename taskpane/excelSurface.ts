import { readKept, answersKey } from '../src/inventory/keptAnswers'
import { applySheets } from '../src/excel/applySheets'
import { isProblem, problemFrom } from '../src/excel/failures'
import { KnownSheets } from '../src/excel/findInventory'
import { goToCell } from '../src/excel/goTo'
import type { Judge } from '../src/excel/judgeSheets'
import { keepSetting, readSetting } from '../src/excel/keptSettings'
import { findOwnSheets } from '../src/excel/ownSheetsInBook'
import { readInventorySheets } from '../src/excel/readInventorySheets'
import {
  readDetailsSheet,
  readLatest,
  readUsersSheet,
  writeDetailsSheet,
  writeUsersSheet
} from '../src/excel/usersSheet'
import { describeSelection, watchSelection } from '../src/excel/selection'
import type { Reading, Selected, Steps, Surface, Wanted } from './surface'

/** What sheets show of an inventory, as a person has answered about them; the reader is fetched at first need. */
async function judgeNow(): Promise<Judge> {
  const { showsInventory } = await import('./documents')
  const { choices } = readKept(readSetting(answersKey))
  return (sheet) => showsInventory(sheet, choices)
}

/** What was found before, so that a walk through the cells reads no more than addresses. */
let known = new KnownSheets()

async function describe(): Promise<Selected> {
  try {
    return await describeSelection(await judgeNow(), known)
  } catch (error) {
    return { places: [], range: null, remark: '', problem: problemFrom(error), cells: null }
  }
}

async function readInventory(wanted: Wanted, steps: Steps): Promise<Reading> {
  const { sheets, range, problems } = await readInventorySheets(wanted, await judgeNow(), steps)
  const stopped = problems.some(({ level }) => level === 'stop')
  return { read: stopped ? null : { sheets, range }, problems }
}

/** The spreadsheet as the pane sees it, through Office.js. */
export const excelSurface: Surface = {
  describeSelection: describe,
  watchSelection: (callback) => watchSelection(callback, describe),
  readInventory,
  readAnswers: () => readSetting(answersKey),
  keepAnswers: (text) => {
    known = new KnownSheets()
    return keepSetting(answersKey, text)
  },
  readRules: () => readUsersSheet('rules'),
  writeRules: writeUsersSheet,
  readRates: () => readUsersSheet('rates'),
  writeRates: writeUsersSheet,
  readEstimate: (inventory) => readLatest('estimate', inventory),
  readDetails: readDetailsSheet,
  writeDetails: writeDetailsSheet,
  findOwnSheets,
  writeSheets: async (descriptions, options, steps) => {
    const drawn = descriptions.some(({ pictures = [] }) => pictures.length > 0)
    const painter = drawn ? (await import('./documents')).canvasPainter(document) : undefined
    const result = await applySheets(descriptions, { ...options, ...steps, painter })
    if (isProblem(result)) return { written: [], problems: [result] }
    return { written: result.written.map(({ sheetName }) => sheetName), problems: [] }
  },
  goToCell,
  explain: problemFrom
}

import { readKept, answersKey } from '../src/inventory/keptAnswers'
import { readAgain, watchChanges } from '../src/excel/changes'
import { isProblem, problemFrom } from '../src/excel/failures'
import { KnownSheets } from '../src/excel/findInventory'
import { goToCell } from '../src/excel/goTo'
import type { Judge } from '../src/excel/judgeSheets'
import { keepSetting, readSetting } from '../src/excel/keptSettings'
import { findOwnSheets } from '../src/excel/ownSheetsInBook'
import { readInventorySheets } from '../src/excel/readInventorySheets'
import { readDetailsSheet, readLatest, readUsersSheet } from '../src/excel/usersSheet'
import { describeSelection, watchSelection } from '../src/excel/selection'
import { lastPlanKey } from './fresh/lastPlan'
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
  watchChanges,
  readAgain,
  readInventory,
  readLastPlan: () => readSetting(lastPlanKey),
  keepLastPlan: (text) => keepSetting(lastPlanKey, text),
  readAnswers: () => readSetting(answersKey),
  keepAnswers: (text) => {
    known = new KnownSheets()
    return keepSetting(answersKey, text)
  },
  readRules: () => readUsersSheet('rules'),
  writeRules: async (description) => (await import('./documents')).writeUsersSheet(description),
  readRates: () => readUsersSheet('rates'),
  writeRates: async (description) => (await import('./documents')).writeUsersSheet(description),
  readEstimate: (inventory) => readLatest('estimate', inventory),
  readDetails: readDetailsSheet,
  readPictures: async (wanted) => (await import('./documents')).readPictures(wanted),
  writeDetails: async (description, inventory) =>
    (await import('./documents')).writeDetailsSheet(description, inventory),
  findOwnSheets,
  writeSheets: async (descriptions, options, steps) => {
    const { applySheets, canvasPainter } = await import('./documents')
    const drawn = descriptions.some(({ pictures = [] }) => pictures.length > 0)
    const painter = drawn ? canvasPainter(document) : undefined
    const result = await applySheets(descriptions, { ...options, ...steps, painter })
    if (isProblem(result)) return { written: [], problems: [result] }
    const { written, missing } = result
    return {
      written: written.map(({ sheetName }) => sheetName),
      problems: [],
      notes: missing === null ? [] : [missing]
    }
  },
  goToCell,
  explain: problemFrom
}

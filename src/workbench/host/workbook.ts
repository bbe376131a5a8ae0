/** The root of the Excel API: Workbook, with Application and the workbook's protection. */
import { invalidOperation, notAnswered } from './faults'
import { BookFault } from '../book'
import { hostType, type HostObject } from './hostObject'
import { namesObject } from './namedItems'
import { rangeObject } from './range'
import { rangeAreasObject } from './rangeAreas'
import type { Session } from './session'
import { settingsObject } from './settingCollection'
import { tablesObject } from './tableCollection'
import { worksheetsObject } from './worksheetCollection'

function selectedRange(session: Session): HostObject {
  const { sheetId, areas } = session.book.selection()
  const [area, ...others] = areas
  if (!area || others.length)
    throw new BookFault('InvalidSelection', 'The selection is not one range of cells.')
  return rangeObject({ session, sheetId, area })
}

function selectedRanges(session: Session): HostObject {
  const { sheetId, areas } = session.book.selection()
  if (!areas.length) throw new BookFault('InvalidSelection', 'No cells are selected.')
  return rangeAreasObject({ session, sheetId, areas })
}

function activeCell(session: Session): HostObject {
  const { sheetId, areas } = session.book.selection()
  const area = areas.at(-1)
  if (!area) throw invalidOperation('No cell is active.')
  return rangeObject({ session, sheetId, area: { ...area, rows: 1, columns: 1 } })
}

/** Calculation needs no order: the store calculates, and the host waits for it before values are read. */
const applicationObject = hostType<Session>({
  name: 'Application',
  calls: {
    calculate: (session) => {
      session.stale = true
    },
    suspendScreenUpdatingUntilNextSync: () => undefined,
    suspendApiCalculationUntilNextSync: () => undefined
  }
})

const functionResult = hostType<number>({
  name: 'FunctionResult',
  reads: { value: (value) => value, error: () => '' }
})

/** Functions of the workbook: the one by which the add-in learns from which year days are counted. */
const functionsObject = hostType<Session>({
  name: 'Functions',
  opens: {
    year: (session, args) => {
      if (args[0] !== 1) throw notAnswered('Functions.year of another day than 1')
      return functionResult(session.book.countsFrom1904?.() === true ? 1904 : 1900)
    }
  }
})

const protectionObject = hostType<Session>({
  name: 'WorkbookProtection',
  reads: { protected: (session) => session.book.isProtected(null) }
})

export const workbookObject = hostType<Session>({
  name: 'Workbook',
  parts: {
    worksheets: (session) => worksheetsObject(session),
    names: (session) => namesObject(session),
    tables: (session) => tablesObject({ session, sheetId: null }),
    settings: (session) => settingsObject(session),
    protection: (session) => protectionObject(session),
    functions: (session) => functionsObject(session),
    application: (session) => applicationObject(session)
  },
  opens: {
    getSelectedRange: selectedRange,
    getSelectedRanges: selectedRanges,
    getActiveCell: activeCell
  },
  calls: {
    _RemoveReference: (session, args) => {
      session.kept.delete(String(args[0]))
    },
    _RemoveAllReferences: (session) => {
      session.kept.clear()
    },
    /** The client says that its runtime for custom functions is ready. */
    _SetOsfControlContainerReadyForCustomFunctions: () => undefined
  }
})

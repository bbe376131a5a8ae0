/** TableCollection and Table of the Excel API. */
import { type Area, type Cell, sharedPart } from '../../../shared/cells'
import type { TableInfo } from '../book'
import { booleanValue, numberArgument, textValue } from './memberArguments'
import { invalidArgument, invalidOperation, itemExists, itemNotFound, notAnswered } from './faults'
import { hostType, type HostObject, type HostType } from './hostObject'
import { rangeObject } from './range'
import { rangeAnywhere, rangeByText, rangeGiven, type RangeTarget } from './rangeTarget'
import { writable, type Session } from './session'
import { definedNameFault } from './sheetNames'

/** The tables of one sheet, or of the workbook. */
export interface TablesTarget {
  session: Session
  sheetId: string | null
}

interface TableTarget {
  session: Session
  id: string
}

function infos({ session, sheetId }: TablesTarget): TableInfo[] {
  return session.book.tables().filter((table) => sheetId === null || table.sheetId === sheetId)
}

function info({ session, id }: TableTarget): TableInfo {
  const table = session.book.tables().find((known) => known.id === id)
  if (!table) throw itemNotFound('table of that id')
  return table
}

function find(target: TablesTarget, key: unknown): HostObject | null {
  const text = String(key).toLowerCase()
  const table = infos(target).find(({ id, name }) => id === key || name.toLowerCase() === text)
  return table ? tableObject({ session: target.session, id: table.id }) : null
}

function item(target: TablesTarget, key: unknown): HostObject {
  const table = find(target, key)
  if (!table) throw itemNotFound(`table "${String(key)}"`)
  return table
}

function wantedRange({ session, sheetId }: TablesTarget, argument: unknown): RangeTarget {
  const range =
    rangeGiven(argument) ??
    (sheetId === null
      ? rangeAnywhere(session, textValue(argument, 'The address'))
      : rangeByText(session, sheetId, textValue(argument, 'The address')))
  if (sheetId !== null && range.sheetId !== sheetId) throw invalidArgument('The range lies on another sheet.')
  return range
}

function add(target: TablesTarget, [address, hasHeaders]: unknown[]): HostObject {
  if (hasHeaders !== true) throw notAnswered('TableCollection.add without headers')
  const { session, sheetId, area } = wantedRange(target, address)
  const book = writable(session, sheetId)
  const overlaps = infos({ session, sheetId }).some((table) => sharedPart(table.area, area) !== null)
  if (overlaps) throw invalidOperation('A table may not overlap another table.')
  const merged = book.mergedAreas(sheetId).some((cells) => sharedPart(cells, area) !== null)
  if (merged) throw invalidOperation('A table may not hold merged cells.')
  const headers = { ...area, rows: 1 }
  book.setValues(sheetId, headers, [uniqueHeaders(book.texts(sheetId, headers)[0] ?? [])])
  return tableObject({ session, id: book.addTable(sheetId, area, freeName(session)).id })
}

/** Excel makes headers texts, fills empty ones and numbers repeated ones. */
function uniqueHeaders(texts: string[]): Cell[] {
  const taken = new Set<string>()
  return texts.map((text, index) => {
    const wanted = text === '' ? `Column${index + 1}` : text
    let name = wanted
    for (let number = 2; taken.has(name.toLowerCase()); number++) name = `${wanted}${number}`
    taken.add(name.toLowerCase())
    return `'${name}`
  })
}

function freeName(session: Session): string {
  let number = session.book.tables().length + 1
  while (taken(session, `Table${number}`)) number++
  return `Table${number}`
}

function taken(session: Session, name: string, but?: string): boolean {
  const same = (other: string) => other.toLowerCase() === name.toLowerCase()
  return (
    session.book.tables().some((table) => table.id !== but && same(table.name)) ||
    session.book.names().some((known) => same(known.name))
  )
}

function rename(target: TableTarget, to: unknown): void {
  const name = textValue(to, 'The name')
  const fault = definedNameFault(name)
  if (fault) throw invalidArgument(fault)
  if (taken(target.session, name, target.id)) throw itemExists(`a table or a name "${name}"`)
  change(target, { name })
}

function change(target: TableTarget, to: Parameters<Session['book']['changeTable']>[1]): void {
  writable(target.session, info(target).sheetId).changeTable(target.id, to)
}

/** Excel deletes the cells with the table. */
function remove(target: TableTarget): void {
  const { sheetId, area } = info(target)
  const book = writable(target.session, sheetId)
  book.deleteTable(target.id)
  book.clear(sheetId, area)
}

function part(target: TableTarget, choose: (area: Area) => Area): HostObject {
  const { sheetId, area } = info(target)
  return rangeObject({ session: target.session, sheetId, area: choose(area) })
}

const tableObject: HostType<TableTarget> = hostType({
  name: 'Table',
  identity: (target) => ({ Id: info(target).id }),
  reads: {
    id: (target) => info(target).id,
    name: (target) => info(target).name,
    style: (target) => info(target).style,
    showFilterButton: (target) => info(target).showFilter,
    showBandedRows: (target) => info(target).banded,
    showHeaders: () => true
  },
  writes: {
    name: rename,
    style: (target, to) => {
      change(target, { style: textValue(to, 'The style') })
    },
    showFilterButton: (target, to) => {
      change(target, { showFilter: booleanValue(to, 'Showing the filter button') })
    },
    showBandedRows: (target, to) => {
      change(target, { banded: booleanValue(to, 'Showing banded rows') })
    }
  },
  parts: {
    worksheet: (target) =>
      target.session.types.worksheet({ session: target.session, sheetId: info(target).sheetId })
  },
  opens: {
    /** The cells stay. */
    convertToRange: (target) => {
      const { sheetId, area } = info(target)
      writable(target.session, sheetId).deleteTable(target.id)
      return rangeObject({ session: target.session, sheetId, area })
    },
    getRange: (target) => part(target, (area) => area),
    getHeaderRowRange: (target) => part(target, (area) => ({ ...area, rows: 1 })),
    getDataBodyRange: (target) =>
      part(target, (area) => ({ ...area, row: area.row + 1, rows: Math.max(1, area.rows - 1) }))
  },
  calls: { delete: remove }
})

export const tablesObject: HostType<TablesTarget> = hostType({
  name: 'TableCollection',
  reads: { count: (target) => infos(target).length },
  items: (target) => infos(target).map(({ id }) => tableObject({ session: target.session, id })),
  item,
  opens: {
    add,
    getItemOrNullObject: (target, args) => find(target, args[0]),
    getItemAt: (target, args) => {
      const table = infos(target)[numberArgument(args, 0, 'The index')]
      if (!table) throw itemNotFound('table of that index')
      return tableObject({ session: target.session, id: table.id })
    }
  },
  calls: { getCount: (target) => infos(target).length }
})

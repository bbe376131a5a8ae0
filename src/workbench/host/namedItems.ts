/** NamedItemCollection and NamedItem of the Excel API, for names of the workbook. */
import type { NameInfo } from '../book'
import { absoluteAddress } from '../../../shared/a1Notation'
import { booleanValue, textArgument, textValue } from './memberArguments'
import { invalidArgument, itemExists, itemNotFound, notAnswered } from './faults'
import { hostType, type HostObject } from './hostObject'
import { rangeObject } from './range'
import { rangeAnywhere, rangeGiven, type RangeTarget } from './rangeTarget'
import { sheetOf, type Session, type SheetTarget } from './session'
import { definedNameFault } from './sheetNames'

interface NameTarget {
  session: Session
  name: string
}

function info({ session, name }: NameTarget): NameInfo {
  const known = session.book.names().find((other) => other.name.toLowerCase() === name.toLowerCase())
  if (!known) throw itemNotFound(`name "${name}"`)
  return known
}

function find(session: Session, key: unknown): HostObject | null {
  const text = String(key).toLowerCase()
  const known = session.book.names().find(({ name }) => name.toLowerCase() === text)
  return known ? nameObject({ session, name: known.name }) : null
}

function item(session: Session, key: unknown): HostObject {
  const name = find(session, key)
  if (!name) throw itemNotFound(`name "${String(key)}"`)
  return name
}

function add(session: Session, args: unknown[]): HostObject {
  const name = textArgument(args, 0, 'The name')
  const fault = definedNameFault(name)
  if (fault) throw invalidArgument(fault)
  const same = (other: string) => other.toLowerCase() === name.toLowerCase()
  const taken =
    session.book.names().some((known) => same(known.name)) ||
    session.book.tables().some((table) => same(table.name))
  if (taken) throw itemExists(`a table or a name "${name}"`)
  session.stale = true
  session.book.addName({ name, formula: formulaOf(session, args[1]), visible: true })
  return nameObject({ session, name })
}

function formulaOf(session: Session, reference: unknown): string {
  const range = rangeGiven(reference)
  if (range) return `=${absoluteAddress(sheetOf(session, range.sheetId).name, range.area)}`
  if (typeof reference === 'number') return `=${reference}`
  const text = textValue(reference, 'The reference')
  if (!text.startsWith('='))
    throw invalidArgument('A reference given as text is a formula that begins with "=".')
  return text
}

/** The range that the name stands for; null where its formula is no address of one. */
function rangeOf(target: NameTarget): RangeTarget | null {
  try {
    return rangeAnywhere(target.session, info(target).formula)
  } catch {
    return null
  }
}

function change(target: NameTarget, to: Partial<NameInfo>): void {
  target.session.stale = true
  target.session.book.changeName(info(target).name, to)
}

const nameObject = hostType<NameTarget>({
  name: 'NamedItem',
  identity: (target) => ({ _Id: info(target).name }),
  reads: {
    name: (target) => info(target).name,
    formula: (target) => info(target).formula,
    visible: (target) => info(target).visible,
    scope: () => 'Workbook'
  },
  writes: {
    visible: (target, to) => {
      change(target, { visible: booleanValue(to, 'Visible') })
    },
    formula: (target, to) => {
      change(target, { formula: formulaOf(target.session, to) })
    }
  },
  opens: {
    getRange: (target) => {
      const range = rangeOf(target)
      if (!range) throw invalidArgument(`The name "${target.name}" does not stand for one range.`)
      return rangeObject(range)
    },
    getRangeOrNullObject: (target) => {
      const range = rangeOf(target)
      return range && rangeObject(range)
    }
  },
  calls: {
    delete: (target) => {
      target.session.book.deleteName(info(target).name)
    }
  }
})

export const namesObject = hostType<Session>({
  name: 'NamedItemCollection',
  items: (session) => session.book.names().map(({ name }) => nameObject({ session, name })),
  item,
  opens: { add, getItemOrNullObject: (session, args) => find(session, args[0]) },
  calls: { getCount: (session) => session.book.names().length }
})

/** A book of ours holds no names that belong to one sheet. */
export const sheetNamesObject = hostType<SheetTarget>({
  name: 'NamedItemCollection',
  items: () => [],
  item: (_target, key) => {
    throw itemNotFound(`name "${String(key)}" on this sheet`)
  },
  opens: {
    add: () => {
      throw notAnswered('Worksheet.names.add')
    },
    getItemOrNullObject: () => null
  },
  calls: { getCount: () => 0 }
})

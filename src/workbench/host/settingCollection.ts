/** SettingCollection and Setting of the Excel API: what the add-in keeps in the workbook. */
import { textArgument } from './memberArguments'
import { invalidArgument, itemNotFound } from './faults'
import { hostType, type HostObject } from './hostObject'
import type { Session } from './session'

interface SettingTarget {
  session: Session
  key: string
}

/** A setting of undefined is one that was taken away. */
function keys({ book }: Session): string[] {
  return Object.entries(book.settings()).flatMap(([key, value]) => (value === undefined ? [] : [key]))
}

function has(session: Session, key: unknown): key is string {
  return typeof key === 'string' && keys(session).includes(key)
}

function value({ session, key }: SettingTarget): unknown {
  if (!has(session, key)) throw itemNotFound(`setting "${key}"`)
  return session.book.settings()[key]
}

const settingObject = hostType<SettingTarget>({
  name: 'Setting',
  identity: ({ key }) => ({ _Id: key }),
  reads: { key: ({ key }) => key, value },
  writes: {
    value: (target, to) => {
      value(target)
      target.session.book.setSetting(target.key, to)
    }
  },
  calls: {
    delete: (target) => {
      value(target)
      target.session.book.setSetting(target.key, undefined)
    }
  }
})

function find(session: Session, key: unknown): HostObject | null {
  return has(session, key) ? settingObject({ session, key }) : null
}

export const settingsObject = hostType<Session>({
  name: 'SettingCollection',
  items: (session) => keys(session).map((key) => settingObject({ session, key })),
  item: (session, key) => {
    const setting = find(session, key)
    if (!setting) throw itemNotFound(`setting "${String(key)}"`)
    return setting
  },
  opens: {
    add: (session, args) => {
      const key = textArgument(args, 0, 'The key')
      if (args[1] === null || args[1] === undefined) throw invalidArgument('A setting needs a value.')
      session.book.setSetting(key, args[1])
      return settingObject({ session, key })
    },
    getItemOrNullObject: (session, args) => find(session, args[0])
  },
  calls: { getCount: (session) => keys(session).length }
})

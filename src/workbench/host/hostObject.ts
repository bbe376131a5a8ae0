/**
 * An object of the Excel API as the host sees it: a value of ours behind a table of the members that are answered.
 * Members are named as in the Excel API; whatever a table does not hold is refused by name.
 */
import { notAnswered } from './faults'

export interface TypeTable<T> {
  /** The type's name in the Excel API, for instance Range. */
  name: string
  /** What the client needs to find the object again: { Id } for items of collections. */
  identity?: (value: T) => Record<string, unknown>
  /** Plain properties that can be read. */
  reads?: Record<string, (value: T) => unknown>
  /** Plain properties that can be set. */
  writes?: Record<string, (value: T, to: unknown) => void>
  /** Properties that are objects; null stands for the null object. */
  parts?: Record<string, (value: T) => HostObject | null>
  /** Methods that return objects; null stands for the null object. */
  opens?: Record<string, (value: T, args: unknown[]) => HostObject | null>
  /** Methods that return a plain value or nothing. */
  calls?: Record<string, (value: T, args: unknown[]) => unknown>
  /** For collections: the objects in it, and one by its key. */
  items?: (value: T) => HostObject[]
  item?: (value: T, key: unknown) => HostObject
}

export interface HostObject {
  readonly typeName: string
  /** The value behind it, for members that take objects as arguments. */
  readonly value: unknown
  identity(): Record<string, unknown>
  isCollection: boolean
  /** Names of all plain properties, for a load without names. */
  scalars(): string[]
  read(member: string): unknown
  write(member: string, to: unknown): void
  /** The part of this name, or undefined if the type has none of that name. */
  part(member: string): HostObject | null | undefined
  open(member: string, args: unknown[]): HostObject | null
  call(member: string, args: unknown[]): unknown
  items(): HostObject[]
  item(key: unknown): HostObject
}

export type HostType<T> = (value: T) => HostObject

/** Makes host objects of one type. */
export function hostType<T>(table: TypeTable<T>): HostType<T> {
  const refusal = (member: string) => notAnswered(`${table.name}.${member}`)
  return (value) => ({
    typeName: table.name,
    value,
    isCollection: table.items !== undefined,
    identity: () => table.identity?.(value) ?? {},
    scalars: () => Object.keys(table.reads ?? {}),
    read: (member) => found(table.reads, member, refusal)(value),
    write: (member, to) => {
      found(table.writes, member, (name) => refusal(`${name} (to set it)`))(value, to)
    },
    part: (member) => (own(table.parts, member) ? table.parts?.[member]?.(value) : undefined),
    open: (member, args) => found(table.opens, member, refusal)(value, args),
    call: (member, args) => found(table.calls, member, refusal)(value, args),
    items: () => {
      if (!table.items) throw refusal('items')
      return table.items(value)
    },
    item: (key) => {
      if (!table.item) throw refusal('getItem')
      return table.item(value, key)
    }
  })
}

function own<M>(members: Record<string, M> | undefined, member: string): boolean {
  return members !== undefined && Object.hasOwn(members, member)
}

function found<M>(
  members: Record<string, M> | undefined,
  member: string,
  refusal: (member: string) => Error
): M {
  const answer = own(members, member) ? members?.[member] : undefined
  if (answer === undefined) throw refusal(member)
  return answer
}

/** The protocol writes Values where the Excel API says values; names with an underscore stay. */
export function apiName(protocolName: string): string {
  return protocolName.charAt(0).toLowerCase() + protocolName.slice(1)
}

export function protocolName(apiName: string): string {
  return apiName.charAt(0).toUpperCase() + apiName.slice(1)
}

/** Answers a load: the properties asked for, of an object, its parts, or every item of a collection. */
import { notAnswered } from './faults'
import { apiName, protocolName, type HostObject } from './hostObject'
import type { QueryInfo } from './protocol'
import type { Session } from './session'

/** The properties asked for, as a tree: format/font/bold is { format: { font: { bold: {} } } }. */
interface Wanted {
  [member: string]: Wanted
}

const calculated = ['values', 'text', 'valueTypes', 'value']

export async function answerQuery(
  session: Session,
  object: HostObject | null,
  query: QueryInfo
): Promise<unknown> {
  if (!object) return null
  const wanted = wantedOf(query)
  if (session.stale && mentions(wanted, calculated)) {
    await session.book.settled()
    session.stale = false
  }
  return object.isCollection ? answerItems(object, wanted, query) : answer(object, wanted)
}

function wantedOf({ Select = [], Expand = [] }: QueryInfo): Wanted {
  const wanted: Wanted = {}
  for (const path of [...Select, ...Expand]) {
    let level = wanted
    for (const step of path.split('/').map((member) => apiName(member.trim())))
      if (step !== '') level = level[step] ??= {}
  }
  return wanted
}

function mentions(wanted: Wanted, members: string[]): boolean {
  return (
    Object.keys(wanted).length === 0 ||
    Object.entries(wanted).some(([member, inner]) =>
      members.includes(member) ? true : Object.keys(inner).length > 0 && mentions(inner, members)
    )
  )
}

function answer(object: HostObject, wanted: Wanted): Record<string, unknown> {
  const members = Object.keys(wanted).length ? Object.entries(wanted) : everything(object)
  const answered: Record<string, unknown> = { ...object.identity() }
  for (const [member, inner] of members) answered[protocolName(member)] = answerMember(object, member, inner)
  return answered
}

function everything(object: HostObject): [string, Wanted][] {
  return object.scalars().map((member) => [member, {}])
}

function answerMember(object: HostObject, member: string, inner: Wanted): unknown {
  if (object.scalars().includes(member)) return object.read(member)
  const part = object.part(member)
  if (part === undefined) throw notAnswered(`${object.typeName}.${member}`)
  if (part === null) return null
  return part.isCollection ? answerItems(part, inner, {}) : answer(part, inner)
}

/** What is asked of a collection is asked of its items, but for its own properties such as the count. */
function answerItems(collection: HostObject, wanted: Wanted, { Top, Skip = 0 }: QueryInfo): unknown {
  const { items: inItems, ...others } = wanted
  const ownMembers = Object.keys(others).filter((member) => collection.scalars().includes(member))
  const ofItems: Wanted = { ...inItems }
  for (const [member, inner] of Object.entries(others))
    if (!ownMembers.includes(member)) ofItems[member] = inner
  const own = Object.fromEntries(ownMembers.map((member) => [protocolName(member), collection.read(member)]))
  const items = collection.items().slice(Skip, Top === undefined ? undefined : Skip + Top)
  const onlyOwn = ownMembers.length > 0 && Object.keys(ofItems).length === 0
  return { ...own, _Items: items.map((item) => (onlyOwn ? item.identity() : answer(item, ofItems))) }
}

/** Finds the objects of one batch: each path is followed once, in the order in which actions need it. */
import { invalidArgument, notAnswered } from './faults'
import { apiName, type HostObject } from './hostObject'
import { pathKind, type ArgumentInfo, type ObjectPath } from './protocol'
import type { Session } from './session'
import { workbookObject } from './workbook'

export interface Paths {
  /** The object at the path, or null for the null object. */
  at(pathId: number): HostObject | null
  /** Arguments with the objects in the places of their paths. */
  args(info: ArgumentInfo | undefined): unknown[]
  /** The member by which the path is reached, for messages. */
  label(pathId: number): string
}

export function pathsOf(
  session: Session,
  paths: Record<string, ObjectPath>,
  services: Record<string, HostObject>
): Paths {
  const known = new Map<number, HostObject | null>()

  function pathInfo(pathId: number): ObjectPath {
    const path = paths[pathId]
    if (!path) throw invalidArgument(`The batch has no object path ${pathId}.`)
    return path
  }

  function at(pathId: number): HostObject | null {
    const found = known.get(pathId)
    if (found !== undefined) return found
    const object = follow(pathInfo(pathId))
    known.set(pathId, object)
    return object
  }

  function follow(path: ObjectPath): HostObject | null {
    switch (path.ObjectPathType) {
      case pathKind.root:
        return workbookObject(session)
      case pathKind.service:
        return service(path.Name)
      case pathKind.reference:
        return reference(path.Name)
      case pathKind.none:
        return null
    }
    const parent = at(path.ParentObjectPathId ?? 0)
    return parent && step(parent, path)
  }

  function step(parent: HostObject, path: ObjectPath): HostObject | null {
    const given = args(path.ArgumentInfo)
    const member = apiName(path.Name)
    if (path.ObjectPathType === pathKind.indexer || member === 'getItem') return parent.item(given[0])
    if (path.ObjectPathType === pathKind.method) {
      if (session.book.refuses?.(`${parent.typeName}.${member}`) === true)
        throw invalidArgument(`${parent.typeName}.${member} is not taken.`)
      return parent.open(member, given)
    }
    const part = parent.part(member)
    if (part === undefined) throw notAnswered(`${parent.typeName}.${member}`)
    return part
  }

  function service(name: string): HostObject {
    const found = Object.hasOwn(services, name) ? services[name] : undefined
    if (!found) throw notAnswered(`the service ${name}`)
    return found
  }

  function reference(id: string): HostObject {
    const object = session.kept.get(id)
    if (!object) throw invalidArgument('The range is no longer kept; it was released before.')
    return object
  }

  function args(info: ArgumentInfo | undefined): unknown[] {
    const ids = info?.ReferencedObjectPathIds ?? []
    return (info?.Arguments ?? []).map((value, index) => {
      const id = ids[index]
      if (Array.isArray(id)) throw notAnswered('lists of objects as an argument')
      return id ? at(id) : value
    })
  }

  function label(pathId: number): string {
    const path = paths[pathId]
    if (!path) return ''
    const parent = known.get(path.ParentObjectPathId ?? 0)
    return parent ? `${parent.typeName}.${apiName(path.Name) || 'getItem'}` : apiName(path.Name)
  }

  return { at, args, label }
}

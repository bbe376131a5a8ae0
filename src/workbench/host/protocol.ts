/**
 * The messages of the Office client library, as observed by running it: a batch of actions on objects that are named by
 * paths, and one answer for the batch. Nothing here was compared with Excel itself.
 */

/** How an object is reached. */
export const pathKind = {
  root: 1,
  service: 2,
  method: 3,
  property: 4,
  indexer: 5,
  reference: 6,
  none: 7
} as const

/** What is to be done with it. */
export const actionKind = {
  instantiate: 1,
  query: 2,
  method: 3,
  set: 4,
  trace: 5
} as const

/** The flag of a batch that may wait until the user has left the cell. */
export const delayForCellEditFlag = 64

export interface ArgumentInfo {
  Arguments?: unknown[]
  /** Beside each argument the path of the object it stands for, or 0 for a plain value. */
  ReferencedObjectPathIds?: (number | number[])[]
}

export interface ObjectPath {
  Id: number
  ObjectPathType: number
  Name: string
  ParentObjectPathId?: number
  ArgumentInfo?: ArgumentInfo
}

export interface QueryInfo {
  Select?: string[]
  Expand?: string[]
  Top?: number
  Skip?: number
}

export interface Action {
  Id: number
  ActionType: number
  Name: string
  ObjectPathId: number
  ArgumentInfo?: ArgumentInfo
  QueryInfo?: QueryInfo
}

export interface RequestBody {
  Actions: Action[]
  ObjectPaths: Record<string, ObjectPath>
}

export interface ActionResult {
  ActionId: number
  Value: unknown
}

export interface RequestError {
  Code: string
  Message: string
  Location: string
  ActionIndex: number
}

export interface ResponseBody {
  Results: ActionResult[]
  /** The trace actions that were passed: the client registers event handlers only for these. */
  TraceIds: number[]
  Error?: RequestError
}

/** The client's tidying after a run: the batch only gives up objects that were kept. */
export function onlyReleases({ Actions, ObjectPaths }: RequestBody): boolean {
  const releases = Actions.filter(({ Name }) => Name === '_RemoveReference')
  const others = Actions.filter((action) => !releases.includes(action))
  return (
    releases.length > 0 &&
    others.every(
      ({ ActionType, ObjectPathId }) =>
        ActionType === actionKind.trace ||
        (ActionType === actionKind.instantiate && ObjectPaths[ObjectPathId]?.ObjectPathType === pathKind.root)
    )
  )
}

/** An event as the client expects it: type 3 on the bridge, category 65536 within. */
export function eventMessage(messageType: number, targetId: string, message: unknown): string {
  return JSON.stringify({
    type: 3,
    message: {
      entries: [{ messageCategory: 65536, messageType, targetId, message: JSON.stringify(message) }]
    }
  })
}

/** Carries out the actions of a batch one by one, until one fails. */
import { BookFault } from '../book'
import { invalidArgument, invalidOperation, notAnswered } from './faults'
import { apiName, type HostObject } from './hostObject'
import type { Paths } from './paths'
import { actionKind, type Action, type RequestBody, type ResponseBody } from './protocol'
import { answerQuery } from './query'
import type { Session } from './session'

export async function carryOut(
  session: Session,
  { Actions }: RequestBody,
  paths: Paths
): Promise<ResponseBody> {
  const response: ResponseBody = { Results: [], TraceIds: [] }
  for (const [index, action] of Actions.entries()) {
    try {
      const value = await perform(session, action, paths)
      if (action.ActionType === actionKind.trace) response.TraceIds.push(action.Id)
      if (value !== undefined) response.Results.push({ ActionId: action.Id, Value: value })
    } catch (thrown) {
      response.Error = { ...faultOf(thrown), Location: location(action, paths), ActionIndex: index }
      break
    }
  }
  return response
}

/** Anything but a fault is a mistake of the host's own; it is answered too, so that the test that meets it sees it. */
function faultOf(thrown: unknown): { Code: string; Message: string } {
  if (thrown instanceof BookFault) return { Code: thrown.code, Message: thrown.message }
  return { Code: 'GeneralException', Message: `Limbwright's test host failed: ${String(thrown)}` }
}

/** Undefined where the client waits for no answer. */
async function perform(session: Session, action: Action, paths: Paths): Promise<unknown> {
  switch (action.ActionType) {
    case actionKind.trace:
      return {}
    case actionKind.instantiate:
      return instantiated(session, paths.at(action.ObjectPathId))
    case actionKind.query:
      return answerQuery(session, paths.at(action.ObjectPathId), action.QueryInfo ?? {})
    case actionKind.method:
      return called(session, action, paths)
    case actionKind.set:
      refuseIfTold(session, existing(action, paths).typeName, action.Name)
      existing(action, paths).write(apiName(action.Name), paths.args(action.ArgumentInfo)[0])
      return undefined
  }
  throw notAnswered(`an action of type ${action.ActionType}`)
}

/** Enough for the client to find the object again; null is the null object. */
function instantiated(session: Session, object: HostObject | null): unknown {
  if (!object) return null
  const reference = session.referenceIds.get(object)
  return { ...object.identity(), ...(reference !== undefined && { _ReferenceId: reference }) }
}

function called(session: Session, action: Action, paths: Paths): unknown {
  if (action.Name === '_KeepReference') {
    const object = paths.at(action.ObjectPathId)
    if (object && !session.referenceIds.has(object)) keep(session, object)
    return undefined
  }
  refuseIfTold(session, existing(action, paths).typeName, action.Name)
  const answer = existing(action, paths).call(apiName(action.Name), paths.args(action.ArgumentInfo))
  return answer ?? null
}

/** A test tells which member the spreadsheet does not take. */
function refuseIfTold({ book }: Session, typeName: string, name: string): void {
  const member = `${typeName}.${apiName(name)}`
  if (book.refuses?.(member) === true) throw invalidArgument(`${member} is not taken.`)
}

function keep(session: Session, object: HostObject): void {
  session.references += 1
  const id = `kept-${session.references}`
  session.kept.set(id, object)
  session.referenceIds.set(object, id)
}

/** A null object has no members to call or set; Excel's own answer to that was not compared. */
function existing(action: Action, paths: Paths): HostObject {
  const object = paths.at(action.ObjectPathId)
  if (object) return object
  throw invalidOperation(`${apiName(action.Name)} was used on an object that does not exist.`)
}

function location(action: Action, paths: Paths): string {
  if (action.ActionType === actionKind.instantiate) return paths.label(action.ObjectPathId)
  try {
    const type = paths.at(action.ObjectPathId)?.typeName ?? ''
    return action.Name ? `${type}.${apiName(action.Name)}` : type
  } catch {
    return paths.label(action.ObjectPathId)
  }
}

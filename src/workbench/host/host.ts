/**
 * The Office host: answers the batches of the unmodified Office client library over a Book. It runs in the workbench's
 * page and in Node alike. It is a development and test host, not a replacement for Excel.
 */
import { BookFault, type Book } from '../book'
import { carryOut } from './actions'
import { oneOf } from './memberArguments'
import type { HostPort } from './bridgeObjects'
import { functionRuntime, type FunctionCall, type FunctionResult } from './customFunctions'
import { followEvents } from './events'
import { hostType, type HostObject } from './hostObject'
import { pathsOf } from './paths'
import { delayForCellEditFlag, onlyReleases, type RequestBody, type ResponseBody } from './protocol'
import { rangeAreasObject } from './rangeAreas'
import { forgetClient, newSession } from './session'
import { worksheetObject } from './worksheet'

export interface Host extends HostPort {
  /** How many batches have been received, but for those in which the client only tidies up after a run. */
  requests(): number
  /** Runs functions in the client's own runtime and waits for what they give. */
  callFunctions(calls: FunctionCall[]): Promise<FunctionResult[]>
  /** Stops following the book. */
  close(): void
}

export interface HostOptions {
  /** Told when the add-in asks for its pane to be shown or hidden. */
  showPane?: (shown: boolean) => void
}

/** Answers the client's own start-up call. */
const startUpService = hostType<null>({
  name: 'AddinInternalService',
  calls: { notifyActionHandlerReady: () => undefined }
})(null)

/** The shared runtime's pane: Office.addin.showAsTaskpane and hide. */
const paneService = hostType<HostOptions>({
  name: 'AppRuntimeService',
  calls: {
    setAppRuntimeState: ({ showPane }, [state]) => {
      showPane?.(oneOf(state, ['Visible', 'Background'], 'The state of the pane') === 'Visible')
    }
  }
})

export function createHost(book: Book, options: HostOptions = {}): Host {
  const session = newSession(book, { worksheet: worksheetObject, rangeAreas: rangeAreasObject })
  const listeners = new Set<(message: string) => void>()
  const send = (message: string) => {
    for (const listener of listeners) listener(message)
  }
  const functions = functionRuntime(send)
  const services: Record<string, HostObject> = {
    'Microsoft.InternalService.AddinInternalService': startUpService,
    'Microsoft.AppRuntime.AppRuntimeService': paneService(options),
    'Microsoft.ExcelServices.CustomFunctions': functions.service
  }
  const stop = followEvents(session, send)
  let number = 0
  let turn: Promise<unknown> = Promise.resolve()

  /** Tells the book of a batch; a fault that it raises refuses the batch as a whole. */
  function admit(body: RequestBody, flags: number): void {
    if (onlyReleases(body)) return
    number += 1
    if (!book.beginRequest) return
    const waitsForCellEdit = (flags & delayForCellEditFlag) !== 0
    book.beginRequest({ number, characters: JSON.stringify(body).length, waitsForCellEdit })
  }

  async function answer(given: RequestBody | string, flags: number): Promise<ResponseBody> {
    const body = typeof given === 'string' ? (JSON.parse(given) as RequestBody) : given
    try {
      admit(body, flags)
    } catch (fault) {
      return refused(fault)
    }
    session.stale = true
    return carryOut(session, body, pathsOf(session, body.ObjectPaths, services))
  }

  return {
    /** Batches are answered one after the other, as Excel does. */
    process: (body, flags = 0) => {
      const next = turn.then(() => answer(body, flags)).then((response) => JSON.stringify(response))
      turn = next.catch(() => undefined)
      return next
    },
    readSettings: () =>
      Object.fromEntries(
        Object.entries(book.settings()).map(([key, value]) => [key, JSON.stringify(value)] as const)
      ),
    writeSettings: (settings) => {
      for (const key of Object.keys(book.settings()))
        if (!Object.hasOwn(settings, key)) book.setSetting(key, undefined)
      for (const [key, text] of Object.entries(settings)) book.setSetting(key, JSON.parse(text))
    },
    listen: (listener) => {
      listeners.add(listener)
      return () => {
        listeners.delete(listener)
        if (listeners.size === 0) forgetClient(session)
      }
    },
    requests: () => number,
    callFunctions: (calls) => functions.call(calls),
    close: stop
  }
}

/** A batch refused as a whole; anything but a fault is a bug of ours and is thrown on. */
function refused(fault: unknown): ResponseBody {
  if (!(fault instanceof BookFault)) throw fault
  return {
    Results: [],
    TraceIds: [],
    Error: { Code: fault.code, Message: fault.message, Location: '', ActionIndex: 0 }
  }
}

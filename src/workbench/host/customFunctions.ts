/**
 * The service by which the client's runtime for custom functions hands back results, and the messages that call
 * functions in it. The workbench calculates in its own page; tests use this to run every function in the real runtime.
 */
import { hostType, type HostObject } from './hostObject'

export interface FunctionCall {
  id: string
  /** Each argument as Excel passes it: a value, or a block of values for any[][]. */
  args: unknown[]
}

export type FunctionResult = { value: unknown } | { error: number; message: string }

interface InvocationResult {
  id: number
  value: unknown
  failed?: boolean
  errorCode?: number
}

/** Allow errors as arguments; they arrive as CustomFunctions.Error. */
const allowErrorFlag = 4

export interface FunctionRuntime {
  service: HostObject
  call(calls: FunctionCall[]): Promise<FunctionResult[]>
}

export function functionRuntime(send: (message: string) => void): FunctionRuntime {
  const waiting = new Map<number, (result: FunctionResult) => void>()
  let last = 0

  function receive(results: InvocationResult[]): void {
    for (const { id, value, failed, errorCode } of results) {
      waiting.get(id)?.(failed ? { error: errorCode ?? 0, message: String(value ?? '') } : { value })
      waiting.delete(id)
    }
  }

  const service = hostType<null>({
    name: 'CustomFunctions',
    calls: {
      setInvocationResults: (_value, args) => {
        receive(args[0] as InvocationResult[])
      },
      _SetOsfControlContainerReadyForCustomFunctions: () => undefined
    }
  })(null)

  function call(calls: FunctionCall[]): Promise<FunctionResult[]> {
    const numbered = calls.map((one) => ({ ...one, invocation: ++last }))
    const results = numbered.map(
      ({ invocation }) => new Promise<FunctionResult>((resolve) => waiting.set(invocation, resolve))
    )
    send(invocationMessage(numbered))
    return Promise.all(results)
  }

  return { service, call }
}

function invocationMessage(calls: (FunctionCall & { invocation: number })[]): string {
  const entries = calls.map(({ id, args, invocation }) => ({
    messageCategory: 1,
    messageType: 1000,
    targetId: '',
    message: JSON.stringify({
      invocationId: invocation,
      functionName: id,
      parameterValues: args,
      address: '',
      flags: allowErrorFlag
    })
  }))
  return JSON.stringify({ type: 3, message: { entries } })
}

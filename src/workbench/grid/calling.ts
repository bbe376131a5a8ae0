/**
 * The two objects that the built functions.js looks for in a spreadsheet: `CustomFunctions.associate` and
 * `CustomFunctions.Error`. Here they gather the functions for the grid; inside Excel the add-in's runtime has them.
 */
export type CellFunction = (...parameters: unknown[]) => unknown

/** Why a function gives no value: the code shows in the cell, the message beside the grid. */
export class CellError extends Error {
  constructor(
    readonly code: string,
    message?: string
  ) {
    super(message ?? '')
    this.name = 'CellError'
  }
}

export const errorCodes = {
  invalidValue: '#VALUE!',
  notAvailable: '#N/A',
  divisionByZero: '#DIV/0!',
  invalidNumber: '#NUM!',
  nullReference: '#NULL!',
  invalidName: '#NAME?',
  invalidReference: '#REF!'
} as const

export interface Gathering {
  functions: Map<string, CellFunction>
  CustomFunctions: {
    associate(id: string | Record<string, CellFunction>, run?: CellFunction): void
    Error: typeof CellError
    ErrorCode: typeof errorCodes
  }
}

/** A fresh pair: what to stand in the window, and the functions that were associated with it. */
export function gatherFunctions(): Gathering {
  const functions = new Map<string, CellFunction>()
  const add = (id: string, run: CellFunction) => functions.set(id.toUpperCase(), run)
  return {
    functions,
    CustomFunctions: {
      associate(id, run) {
        if (typeof id !== 'string') for (const [key, value] of Object.entries(id)) add(key, value)
        else if (run !== undefined) add(id, run)
      },
      Error: CellError,
      ErrorCode: errorCodes
    }
  }
}

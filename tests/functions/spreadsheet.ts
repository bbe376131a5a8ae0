/** What a spreadsheet gives a cell function to run in: the error class, and the shapes that cells come in. */
export class CellError extends Error {
  constructor(
    readonly code: string,
    message?: string
  ) {
    super(message)
  }
}

export const customFunctions = {
  Error: CellError,
  ErrorCode: {
    invalidValue: '#VALUE!',
    notAvailable: '#N/A',
    divisionByZero: '#DIV/0!',
    invalidNumber: '#NUM!',
    nullReference: '#NULL!',
    invalidName: '#NAME?',
    invalidReference: '#REF!'
  },
  associate: () => undefined
}

Object.assign(globalThis, { CustomFunctions: customFunctions })

export type CellFunction = (...given: unknown[]) => unknown[][]

/** A column of cells. */
export const column = (...cells: unknown[]): unknown[][] => cells.map((cell) => [cell])

/** A row of cells. */
export const row = (...cells: unknown[]): unknown[][] => [cells]

/** The error that a call throws; fails where it throws none. */
export function faultOf(call: () => unknown): CellError {
  try {
    call()
  } catch (error) {
    if (error instanceof CellError) return error
    throw error
  }
  throw new Error('The call gave a value where an error was expected')
}

/** The forms a blank cell or a left-out parameter arrives in. */
export const blankForms: [string, unknown][] = [
  ['null', null],
  ['undefined', undefined],
  ['an empty text', ''],
  ['spaces', '  '],
  ['a blank cell', [[null]]],
  ['an empty text in a cell', [['']]],
  ['an empty list', []]
]

/** Error values as they arrive, each with the code that a single call shows. */
export const errorForms: [string, unknown, string][] = [
  ['an error object', { code: '#DIV/0!' }, '#VALUE!'],
  ['a missing value', { code: '#N/A' }, '#N/A'],
  ['an error text', '#REF!', '#VALUE!'],
  ['a missing value as text', '#N/A', '#N/A'],
  ['an error with a basic value', { type: 'Error', basicValue: '#NUM!' }, '#VALUE!'],
  ['an object that is no value', { type: 'Entity' }, '#VALUE!']
]

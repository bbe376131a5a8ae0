/**
 * Puts the add-in's cell functions into the grid's formula engine as LIMB.<ID>, with the names, descriptions and
 * parameters of functions.json. A function that throws would stop the grid's calculation, so whatever it throws becomes
 * an error in the one cell, and its sentence is kept for the status line.
 */
import { BooleanNumber } from '@univerjs/core'
import {
  BaseFunction,
  ErrorType,
  ErrorValueObject,
  FunctionType,
  IDescriptionService,
  IFunctionService,
  type BaseValueObject
} from '@univerjs/preset-sheets-core'
import { CellError, errorCodes, type CellFunction } from './calling'
import { fromResult, toRows } from './formulaValues'
import type { Grid } from './univer'

export interface ParameterEntry {
  name: string
  description?: string
  optional?: boolean
  repeating?: boolean
}

/** One entry of functions.json, as far as the grid uses it. */
export interface FunctionEntry {
  id: string
  name: string
  description?: string
  parameters: ParameterEntry[]
}

/** What went wrong in which cell: filled by every calculation, read when the cell is selected. */
export interface CellMessages {
  set(sheetId: string, row: number, column: number, message: string | null): void
  get(sheetId: string, row: number, column: number): string | null
}

const errorTypes = new Set<string>(Object.values(ErrorType))

class LimbFunction extends BaseFunction {
  constructor(
    name: string,
    private readonly entry: FunctionEntry,
    private readonly run: CellFunction,
    private readonly messages: CellMessages
  ) {
    super(name)
  }

  /** Excel does not take such a formula at all; here its cell says what is wrong with it. */
  private checkCount(given: number): void {
    const { parameters } = this.entry
    const missing = parameters.slice(given).find((parameter) => parameter.optional !== true)
    if (missing) throw new CellError(errorCodes.invalidValue, `${this.name} also needs ${missing.name}.`)
    const endless = parameters.some((parameter) => parameter.repeating === true)
    if (given > parameters.length && !endless)
      throw new CellError(
        errorCodes.invalidValue,
        `${this.name} takes ${parameters.length} values, not ${given}.`
      )
  }

  override calculate(...variants: BaseValueObject[]): BaseValueObject {
    try {
      this.checkCount(variants.length)
      const parameters = variants.map(toRows)
      while (parameters.length < this.entry.parameters.length) parameters.push(null as unknown as unknown[][])
      const result = fromResult(this.run(...parameters))
      this.tell(null)
      return result
    } catch (error) {
      const code = error instanceof CellError && errorTypes.has(error.code) ? error.code : ErrorType.VALUE
      this.tell(error instanceof Error ? error.message : String(error))
      return ErrorValueObject.create(code as ErrorType)
    }
  }

  private tell(message: string | null): void {
    this.messages.set(this.subUnitId ?? '', this.row, this.column, message)
  }
}

/** Registers every function that has both an entry and a body; returns the names now known to the grid. */
export function registerFunctions(
  grid: Grid,
  entries: FunctionEntry[],
  bodies: ReadonlyMap<string, CellFunction>,
  messages: CellMessages
): string[] {
  const injector = grid.univer.__getInjector()
  const known = entries.filter((entry) => bodies.has(entry.id.toUpperCase()))
  const named = known.map((entry) => `LIMB.${entry.name.toUpperCase()}`)
  injector
    .get(IFunctionService)
    .registerExecutors(
      ...known.map(
        (entry, index) =>
          new LimbFunction(
            named[index] ?? '',
            entry,
            bodies.get(entry.id.toUpperCase()) as CellFunction,
            messages
          )
      )
    )
  injector.get(IDescriptionService).registerDescriptions(
    known.map((entry, index) => ({
      functionName: named[index] ?? '',
      functionType: FunctionType.User,
      description: entry.description ?? '',
      abstract: entry.description ?? '',
      functionParameter: entry.parameters.map((parameter) => ({
        name: parameter.name,
        detail: parameter.description ?? '',
        example: '',
        require: parameter.optional === true ? BooleanNumber.FALSE : BooleanNumber.TRUE,
        repeat: parameter.repeating === true ? BooleanNumber.TRUE : BooleanNumber.FALSE
      }))
    }))
  )
  return named
}

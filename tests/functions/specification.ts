import golden from './golden.json'
import { blankForms, column, errorForms, faultOf, row, type CellFunction } from './spreadsheet'

/** What one cell function promises. `good` is a call with every parameter given. */
export interface Specification {
  id: keyof typeof golden
  call: CellFunction
  good: unknown[]
  /** Calls with their single result, the first being a real case. */
  gives: [args: unknown[], result: number | string, digits?: number][]
  /** Optional parameters and what they stand for when left out. */
  defaults?: Record<string, unknown>
  /** Calls that are refused, with what the sentence must say. */
  refuses: [args: unknown[], sentence: RegExp, code?: string][]
}

const parametersOf = (id: keyof typeof golden): { name: string; optional: boolean }[] =>
  golden[id].map((text) => ({ name: text.replace(/[[\]]/g, ''), optional: text.startsWith('[') }))

const one = (result: unknown[][]): unknown => result[0]?.[0]

function expectValue(actual: unknown, expected: number | string, digits: number): void {
  if (typeof expected === 'string') expect(actual).toBe(expected)
  else expect(actual as number).toBeCloseTo(expected, digits)
}

/** Runs what holds for every function that works cell by cell, and then the function's own table. */
export function specify(spec: Specification): void {
  const { id, call, good } = spec
  const parameters = parametersOf(id)
  const required = parameters.filter(({ optional }) => !optional).length
  const value = one(call(...good))
  const gives = spec.gives.map(([args, expected, digits = 12]) => [args, expected, digits] as const)
  const refuses = spec.refuses.map(([args, sentence, code = '#VALUE!']) => [args, sentence, code] as const)
  const withArgument = (index: number, argument: unknown): unknown[] =>
    good.map((given, at) => (at === index ? argument : given))

  describe(`${id} takes its parameters`, () => {
    test('one example argument stands for each declared parameter', () => {
      expect(good).toHaveLength(parameters.length)
      expect(call).toHaveLength(parameters.length)
    })
    test('a bare value, a cell and an entity with a basic value mean the same', () => {
      const asCells = good.map((given) => [[given]])
      const asEntities = good.map((given) => [[{ type: 'Formatted', basicValue: given }]])
      expect(call(...asCells)).toEqual([[value]])
      expect(call(...asEntities)).toEqual([[value]])
    })
    test('what the spreadsheet appends after the last parameter is ignored', () => {
      expect(call(...good, { functionName: id })).toEqual([[value]])
    })
    test.each(blankForms)('blank everywhere as %s gives an empty text', (_, blank) => {
      expect(call(...good.map(() => blank))).toEqual([['']])
    })
    test('0 in every required cell gives an empty text, as blanks may arrive as 0', () => {
      expect(call(...parameters.map(({ optional }) => (optional ? null : 0)))).toEqual([['']])
    })
  })

  describe(`${id} refuses bad cells`, () => {
    test.each(parameters.map(({ name }, index) => [name, index] as const))(
      'an error value in %s is named',
      (name, index) => {
        for (const [, cell, code] of errorForms) {
          const fault = faultOf(() => call(...withArgument(index, [[cell]])))
          expect(fault.code).toBe(code)
          expect(fault.message).toContain(name)
        }
      }
    )
    if (required > 1)
      test.each(parameters.slice(0, required).map(({ name }, index) => [name, index] as const))(
        '%s alone left blank is missing',
        (name, index) => {
          const fault = faultOf(() => call(...withArgument(index, null)))
          expect(fault.code).toBe('#N/A')
          expect(fault.message).toContain(name)
        }
      )
    test.each(parameters.map(({ name }, index) => [name, index] as const))(
      'a notice from another cell in %s passes through',
      (_, index) => {
        expect(call(...withArgument(index, '! the reason'))).toEqual([['! the reason']])
      }
    )
    test.each(refuses)('%j is refused', (args, sentence, code) => {
      const fault = faultOf(() => call(...args))
      expect(fault.message).toMatch(sentence)
      expect(fault.message).toMatch(/: .+\.$/)
      expect(fault.code).toBe(code)
    })
  })

  describe(`${id} works on ranges`, () => {
    test('good, blank and bad rows each get their own cell', () => {
      const ranges = good.map((given, index) =>
        column(given, null, index === 0 ? true : given, index === 0 ? '! before' : given, given)
      )
      const cells = call(...ranges).map(([cell]) => cell)
      expect(cells[0]).toEqual(value)
      expect(cells[1]).toBe('')
      expect(cells[2]).toMatch(/^! .+\.$/)
      expect(cells[3]).toBe('! before')
      expect(cells[4]).toEqual(value)
    })
    test('a range gives what single calls give', () => {
      for (const [args] of spec.gives) {
        const ranged = call(...parameters.map((_, index) => column(args[index], args[index])))
        expect(ranged).toEqual(column(one(call(...args)), one(call(...args))))
      }
    })
    test('a cell, a row and a column stretch to each other', () => {
      const shapes = good.map((given, index) =>
        index === 0 ? column(given, given) : row(given, given, given)
      )
      const across = good.length > 1 ? [value, value, value] : [value]
      expect(call(...shapes)).toEqual([across, across])
      const fixed = good.map((given, index) => (index === 0 ? column(given, given) : given))
      expect(call(...fixed)).toEqual(column(value, value))
    })
    if (good.length > 1)
      test('ranges of different sizes are refused as a whole', () => {
        const shapes = good.map((given, index) =>
          index === 0 ? column(given, given) : column(given, given, given)
        )
        const fault = faultOf(() => call(...shapes))
        expect(fault.code).toBe('#VALUE!')
        expect(fault.message).toContain('2 × 1, 3 × 1')
      })
  })

  describe(`${id} computes`, () => {
    test.each(gives)('%j gives %s', (args, expected, digits) => {
      expectValue(one(call(...args)), expected, digits)
    })
    const defaults = Object.entries(spec.defaults ?? {})
    test('every optional parameter has its default here', () => {
      expect(defaults.map(([name]) => name)).toEqual(
        parameters.filter(({ optional }) => optional).map(({ name }) => name)
      )
    })
    if (defaults.length > 0)
      test.each(defaults)('%s left blank stands for its default', (name, standsFor) => {
        const index = parameters.findIndex((parameter) => parameter.name === name)
        const explicit = call(...withArgument(index, standsFor))
        for (const [, blank] of blankForms) expect(call(...withArgument(index, blank))).toEqual(explicit)
      })
  })
}

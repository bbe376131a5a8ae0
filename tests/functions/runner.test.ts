import fc from 'fast-check'
import { number } from '../../functions/argument'
import { CUTDIAMETER, CUTDOSE } from '../../functions/cuts'
import { ASPECTRATIO, PROJECTEDRATIO } from '../../functions/measure'
import { eachCell } from '../../functions/runner'
import { PRIORITY } from '../../functions/assess'
import { CellError, column, faultOf, type CellFunction } from './spreadsheet'

/** What a single call shows: its value, or its sentence as a range would show it. */
function alone(call: CellFunction, args: unknown[]): unknown {
  try {
    return call(...args)[0]?.[0]
  } catch (error) {
    if (error instanceof CellError) return `! ${error.message}`
    throw error
  }
}

const added = eachCell([number('x'), number('y')], (x: number, y: number) => x + y)
const sum: CellFunction = (x, y) => added({ x, y })

const anyCell = fc.oneof(
  { weight: 6, arbitrary: fc.double({ min: 0.1, max: 60, noNaN: true }) },
  { weight: 1, arbitrary: fc.double() },
  {
    weight: 2,
    arbitrary: fc.constantFrom<unknown>(
      null,
      undefined,
      '',
      0,
      -3,
      'thick',
      '7',
      '! before',
      '#N/A',
      true,
      'below',
      'partial',
      { code: '#REF!' },
      { type: 'Double', basicValue: 5 },
      {},
      Number.MAX_VALUE,
      Infinity,
      NaN
    )
  }
)

describe('a range gives what its rows give alone, whatever they hold', () => {
  test.each<[string, CellFunction, number]>([
    ['ASPECTRATIO', ASPECTRATIO as never, 3],
    ['CUTDOSE', CUTDOSE as never, 3],
    ['CUTDIAMETER', CUTDIAMETER as never, 2],
    ['PROJECTEDRATIO', PROJECTEDRATIO as never, 5],
    ['a formula that takes any number', sum, 2],
    ['PRIORITY', PRIORITY as never, 6]
  ])('%s', (_, call, count) => {
    fc.assert(
      fc.property(
        fc.array(fc.array(anyCell, { minLength: count, maxLength: count }), { minLength: 2, maxLength: 8 }),
        (rows) => {
          const ranges = Array.from({ length: count }, (_unused, index) => rows.map((row) => [row[index]]))
          expect(call(...ranges)).toEqual(rows.map((row) => [alone(call, row)]))
        }
      )
    )
  })
})

test('a row of zeros stays empty even where every number is allowed', () => {
  expect(sum(column(0, 0, 1), column(0, 2, 0))).toEqual(column('', 2, 1))
})

describe('results are cells that a spreadsheet can show', () => {
  test('only numbers and texts, never null or a number that is not finite', () => {
    fc.assert(
      fc.property(fc.array(anyCell, { minLength: 2, maxLength: 8 }), anyCell, (limbs, stem) => {
        for (const [cell] of (ASPECTRATIO as CellFunction)(column(...limbs), stem))
          expect(typeof cell === 'string' || Number.isFinite(cell)).toBe(true)
      })
    )
  })
})

describe('outside a spreadsheet', () => {
  test('a refusal is an ordinary error with the same code and sentence', () => {
    const provided = CustomFunctions
    Object.assign(globalThis, { CustomFunctions: undefined })
    try {
      expect(() => ASPECTRATIO([[6]], [[-1]])).toThrow(
        expect.objectContaining({ code: '#VALUE!', message: expect.stringContaining('stem_diameter is -1') })
      )
    } finally {
      Object.assign(globalThis, { CustomFunctions: provided })
    }
    expect(faultOf(() => ASPECTRATIO([[6]], [[-1]])).code).toBe('#VALUE!')
  })
})

describe('an inventory of many rows', () => {
  test('keeps its size and order', () => {
    const limbs = Array.from({ length: 5000 }, (_, index) => [index + 1])
    const cells = ASPECTRATIO(limbs, [[2]])
    expect(cells).toHaveLength(5000)
    expect(cells[4999]).toEqual([2500])
  })
})

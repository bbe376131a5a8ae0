/** What must hold on trees of any kind: the crown base, values on a boundary in any unit, measured cuts, ties, the order of work. */
import fc from 'fast-check'
import type { Cell } from '../../shared/cells'
import { planText } from '../../src/file/planText'
import type { Plan } from '../../src/plan/plan'
import { wholeProgram } from '../../src/price/offers'
import { priceByRates } from '../../src/price/priceByRates'
import { describeWorkOrder } from '../../src/sheets/work-order/workOrder'
import { block, planOf, runs } from './trees'

const units = { in: ['in', 'ft', 25.4, 304.8], cm: ['cm', 'm', 10, 1000], mm: ['mm', 'm', 1, 1000] } as const
type Unit = keyof typeof units

const words = [
  'Tree',
  'Height',
  'Crown base',
  'Life stage',
  'Clearance',
  'Limb',
  'Role',
  'Limb dia',
  'Stem dia',
  'Origin',
  'Tip',
  'Included bark',
  'Lowest foliage',
  'Live or dead',
  'Broken',
  'Cut dia',
  'Lateral dia'
]
const across = new Set(['Limb dia', 'Stem dia', 'Cut dia', 'Lateral dia'])
const high = new Set(['Height', 'Crown base', 'Clearance', 'Origin', 'Tip', 'Lowest foliage'])

/** A plan of rows in inches and feet, typed in another unit. */
function planned(rows: readonly (readonly Cell[])[], unit: Unit = 'in', visits?: number): Plan {
  const [small, large, perSmall, perLarge] = units[unit]
  const headers = words.map((word) =>
    across.has(word) ? `${word} (${small})` : high.has(word) ? `${word} (${large})` : word
  )
  const typed = rows.map((row) =>
    row.map((cell, at) => {
      if (typeof cell !== 'number' || unit === 'in') return cell
      const word = words[at]!
      // Nine digits, as a person's sheet has them after a conversion.
      if (across.has(word)) return Number(((cell * 25.4) / perSmall).toPrecision(9))
      return high.has(word) ? Number(((cell * 304.8) / perLarge).toPrecision(9)) : cell
    })
  )
  return planOf(block(headers.join(' | '), ...typed), visits === undefined ? {} : { visits })
}

const cutsOf = (plan: Plan) =>
  plan.trees.flatMap(({ visits }) =>
    visits.map(({ cuts }) =>
      cuts.map(({ limb, kind, share, count, marked, needsReason }) => [
        limb.id,
        kind,
        share.toFixed(6),
        count,
        marked,
        needsReason
      ])
    )
  )

describe.each(Object.keys(units) as Unit[])('in %s', (unit) => {
  it.each([
    [4, 8, 'none', 'subordinate'],
    [0.9, 1.5, 'none', 'gaining'],
    [4.2, 6, 'full', 'codominant'],
    [4, 5, 'none', 'codominant'],
    [4.4, 5.5, 'none', 'codominant'],
    [2.1, 3.5, 'none', 'gaining'],
    [3.3, 5.5, 'none', 'gaining']
  ])('a limb of %s on %s with %s inclusion is %s', (d, stem, bark, standing) => {
    const plan = planned([['T', 30, 6, 'young', null, 'B', null, d, stem, 8, 27, bark]], unit)
    expect(plan.trees[0]!.visits[0]!.limbs[0]!.standing).toBe(standing)
  })

  it('an inch is an inch: 1 in of a young tree is removed, cuts of 2 and 4 in are not over them', () => {
    const young = planned(
      [
        ['T', 22, 4, 'young', null, 'A', 'leader', 4, null, 4, 22],
        ['T', null, null, null, null, 'B', null, 1, 1.4, 6, 15, 'full'],
        ['T', null, null, null, null, 'C', null, 1.5, 4, 5, 14]
      ],
      unit,
      1
    )
    expect(cutsOf(young)).toEqual([[['B', 'remove', '1.000000', 1, false, false]]])
    for (const [size, marked, reasoned] of [
      [2, false, false],
      [2.01, true, false],
      [4, true, false]
    ] as const) {
      const medium = planned(
        [['T', 50, 8, 'medium', null, 'B', null, size, size * 3.2, 15, 46, 'full']],
        unit,
        1
      )
      expect(cutsOf(medium)).toEqual([[['B', 'remove', '1.000000', 1, marked, reasoned]]])
    }
    const over = planned([['T', 50, 8, 'medium', null, 'B', null, 4.01, 12.83, 15, 46, 'full']], unit, 1)
    expect(over.trees[0]!.visits[0]!.cuts[0]!.kind).toBe('reduce')
  })

  it('keeps the crown base, also where foliage within 6 in of it holds it', () => {
    const plan = planned(
      [
        ['T', 32.8, 12.96, 'medium', 16.4, 'B', null, 2, 8, 11, 20, 'none', 13.29],
        ['T', null, null, null, null, 'C', null, 2, 7, 20, 28, 'none', 21],
        ['T', null, null, null, null, 'D', null, 2, 6, 22, 28, 'none', 22]
      ],
      unit
    )
    for (const { liveCrownRatioAfter } of plan.trees[0]!.visits)
      expect(liveCrownRatioAfter).toBeGreaterThanOrEqual(0.6 - 1e-6)
  })

  it('says where foliage hangs below the crown base, and nothing where it hangs at it', () => {
    const codes = (lowest: number) =>
      planned([['T', 34, 11, 'medium', null, 'B', null, 3, 7, 8, 22, 'none', lowest]], unit).problems.map(
        ({ code }) => code
      )
    expect(codes(9)).toContain('foliage-below-base')
    expect(codes(11)).not.toContain('foliage-below-base')
    expect(codes(12)).not.toContain('foliage-below-base')
  })
})

const limb = fc.tuple(
  fc.integer({ min: 4, max: 60 }),
  fc.integer({ min: 20, max: 100 }),
  fc.integer({ min: 4, max: 28 }),
  fc.integer({ min: 2, max: 30 }),
  fc.constantFrom('none', 'none', 'full'),
  fc.option(fc.integer({ min: -4, max: 6 })),
  fc.constantFrom('live', 'live', 'live', 'live', 'dead'),
  fc.constantFrom(null, null, null, 'yes')
)
const tree = fc.tuple(
  fc.constantFrom('planting', 'young', 'medium', 'mature'),
  fc.integer({ min: 5, max: 18 }),
  fc.option(fc.constantFrom(8, 14)),
  fc.array(limb, { minLength: 1, maxLength: 6 })
)

function rowsOf([stage, base, clearance, limbs]: typeof tree extends fc.Arbitrary<infer T>
  ? T
  : never): Cell[][] {
  return limbs.map(([d, percent, origin, rise, bark, low, live, broken], at) => [
    'T',
    40,
    base,
    stage,
    clearance,
    `L${String(at)}`,
    null,
    d / 10,
    Math.max(0.5, Math.round((1000 * d) / percent) / 100),
    origin,
    Math.min(39, origin + rise),
    bark,
    low === null ? null : Math.max(1, origin + low),
    live,
    broken
  ])
}

describe('on any tree', () => {
  it('no visit leaves a shorter crown than the goal, or than the tree has where it is shorter already', () => {
    fc.assert(
      fc.property(tree, (drawn) => {
        let before = (40 - drawn[1]) / 40
        // Broken wood comes off in any case.
        const sound = rowsOf(drawn).map((row) => [...row.slice(0, 14), null])
        for (const { liveCrownRatioAfter } of planned(sound).trees[0]!.visits) {
          expect(liveCrownRatioAfter).toBeGreaterThanOrEqual(Math.min(0.6, before) - 1e-6)
          before = liveCrownRatioAfter
        }
      }),
      runs(150)
    )
  })

  it('the text for a terminal has every number or a blank', () => {
    fc.assert(
      fc.property(tree, (drawn) => {
        const plan = planned(
          rowsOf(drawn).map((row) =>
            row[13] === 'dead' ? row.map((cell, at) => (at === 8 ? null : cell)) : row
          )
        )
        expect(planText(plan, wholeProgram(priceByRates(plan, null).estimate))).not.toMatch(
          /NaN|undefined|Infinity/
        )
      }),
      runs(40)
    )
  })
})

it('the order of the cuts is stated to the crew', () => {
  const plan = planned([['T', 40, 8, 'medium', null, 'B', null, 5, 7, 10, 38]])
  const texts = describeWorkOrder(plan, wholeProgram(priceByRates(plan, null).estimate)).rows.flat()
  expect(texts.join(' ').replace(/\s+/g, ' ')).toContain(
    'dead and broken wood first, then what must be done, then the rest if time allows'
  )
})

it('a cut measured on a limb stays the same part of it while it grows', () => {
  const plan = planned([
    ['T', 36, 6, 'medium', null, 'B', null, 4.2, 6.4, 9, 33, 'none', null, 'live', null, 2.6, 1.6],
    ['T', null, null, null, null, 'C', null, 3, 7, 8, 25]
  ])
  const made = plan.trees[0]!.visits.flatMap(({ cuts }) => cuts.filter((cut) => cut.limb.id === 'B'))
  expect(made.length).toBeGreaterThan(0)
  expect(made[0]!.share).toBeCloseTo((2.6 / 4.2) ** 2, 9)
})

it('of two limbs alike of which one fits, the first of the inventory is cut, in either order', () => {
  const twin = (id: string): Cell[] => ['T', 40, 8, 'mature', null, id, null, 9, 13, 16, 37, 'full']
  for (const order of [
    ['B', 'C'],
    ['C', 'B']
  ]) {
    const [first] = planned(order.map(twin), 'in', 1).trees[0]!.visits
    const shares = first!.cuts.map((cut) => [cut.limb.id, cut.share])
    expect(shares[0]![0]).toBe(order[0])
    if (shares.length > 1) expect(shares[0]![1]).toBeGreaterThanOrEqual(Number(shares[1]![1]))
  }
})

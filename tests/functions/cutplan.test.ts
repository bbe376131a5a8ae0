import { madeInventory } from '../../bench/madeInventory'
import { CUTPLAN } from '../../functions/plan'
import { sampleInventory } from '../../src/file/sampleInventory'
import { readInventory } from '../../src/inventory/readInventory'
import { byUrgency } from '../../src/plan/plan'
import { planInventory } from '../../src/plan/planInventory'
import { blankForms, faultOf, type CellFunction } from './spreadsheet'

const plan = CUTPLAN as CellFunction
const inventory = readInventory({ rows: sampleInventory, sheet: '', top: 0, left: 0 })
const expected = planInventory(inventory, { date: new Date().toISOString().slice(0, 10) })

/** An invented tree with one competing limb, in metric units. */
const small = [
  [
    'Tree',
    'Trunk dia (cm)',
    'Height (m)',
    'Crown base (m)',
    'Life stage',
    'Vigor',
    'Limb',
    'Limb dia (cm)',
    'Stem dia (cm)',
    'Origin (m)',
    'Tip (m)'
  ],
  ['A', 20, 10, 2, 'young', 'good', 'A1', 9, 11, 3, 9.5],
  ['A', '', '', '', '', '', 'A2', 4, 12, 2.5, 6]
]

describe('CUTPLAN spills the plan of an inventory', () => {
  test('its cuts are the engine’s, most urgent tree first', () => {
    const cells = plan(sampleInventory)
    const cuts = byUrgency(expected).flatMap(({ tree, visits }) =>
      visits.flatMap((visit) =>
        visit.cuts.map((cut) => [tree.id, visit.visit, cut.limb.id, cut.dose, cut.reason])
      )
    )
    expect(cuts.length).toBeGreaterThan(20)
    const shown = cells.slice(1, 1 + cuts.length)
    expect(shown.map((row) => [row[0], row[1], row[2], row[6], row[11]])).toEqual(cuts)
  })
  test('rows that could not be planned follow with their reason', () => {
    const notices = plan(sampleInventory).filter((row) => String(row.at(-1)).startsWith('! '))
    expect(notices.map((row) => row.at(-1))).toEqual(expected.unplanned.map(({ reason }) => `! ${reason}`))
    expect(notices.length).toBeGreaterThan(3)
  })
  test('every row is as wide as the headers and holds numbers and texts only', () => {
    const cells = plan(sampleInventory)
    for (const row of cells) {
      expect(row).toHaveLength(cells[0]!.length)
      for (const cell of row) expect(typeof cell === 'string' || Number.isFinite(cell)).toBe(true)
    }
  })
  test('5,000 rows are planned in one call', () => {
    const { rows } = madeInventory(5000)
    const cells = plan(rows) as unknown[][]
    const trees = new Set(cells.slice(1).map((row) => row[0]))
    expect(trees.size).toBeGreaterThan(400)
    expect(cells.length).toBeGreaterThan(2000)
  })

  test('one visit alone shows the cuts of that visit', () => {
    const numbers = plan(sampleInventory, 1)
      .slice(1)
      .map((row) => row[1])
    expect(new Set(numbers)).toEqual(new Set([1, '']))
  })
  test('diameters come in the inventory’s own unit', () => {
    const cells = plan(small)
    expect(cells[0]).toContain('Cut diameter (cm)')
    expect(cells[1]?.slice(0, 4)).toEqual(['A', 1, 'A1', 'reduce'])
    expect(cells[1]?.[4]).toBeGreaterThan(4)
    expect(cells[1]?.[4]).toBeLessThan(9)
  })
  test.each(blankForms)('visit as %s means all visits', (_, blank) =>
    expect(plan(small, blank)).toEqual(plan(small))
  )
  test.each(blankForms)('%s gives an empty text', (_, blank) => expect(plan(blank)).toEqual([['']]))
  test('what the spreadsheet appends is ignored', () =>
    expect(plan(small, null, { functionName: 'CUTPLAN' })).toEqual(plan(small)))
  test('an error cell spoils its own row only', () => {
    const broken = small.map((row, index) =>
      index === 2 ? [...row.slice(0, 7), { code: '#REF!' }, ...row.slice(8)] : row
    )
    const cells = plan(broken)
    expect(cells[1]?.[2]).toBe('A1')
    expect(cells.at(-1)?.at(-1)).toMatch(/^! .*#REF!/)
  })
})

describe('CUTPLAN refuses what it cannot read', () => {
  test.each<[string, unknown[], RegExp]>([
    ['headers alone', [small.slice(0, 1)], /no rows below/],
    [
      'numbers without headers',
      [
        [
          [1, 2],
          [3, 4]
        ]
      ],
      /not recognized as headers/
    ],
    ['a visit beyond the horizon', [small, 5], /visit is 5; it must be more than 0 and at most 4/],
    ['half a visit', [small, 1.5], /visit is 1.5: give a whole number/],
    ['a range of visits', [small, [[1, 2]]], /visit is a range/]
  ])('%s', (_, args, sentence) => {
    const fault = faultOf(() => plan(...args))
    expect(fault.code).toBe('#VALUE!')
    expect(fault.message).toMatch(sentence)
  })
  test('a notice as the visit passes through', () => expect(plan(small, '! why')).toEqual([['! why']]))
})

import type { Cell } from '../../shared/cells'
import { readInParts, readInventory } from '../../src/inventory/readInventory'
import { planInventory } from '../../src/plan/planInventory'
import { block, limbHeaders, limbRow, planOf } from '../plan/trees'

const found = (problems: readonly { code: string; cell: string }[], code: string): string[] =>
  problems.filter((problem) => problem.code === code).map(({ cell }) => cell)

const leader = limbRow('A', null, null, null, null, { role: 'leader' })
const sound = limbRow('B', 80, 100, 3, 9)

/** One limb whose cell in the given column is replaced. */
function withCell(column: number, cell: Cell): ReturnType<typeof readInventory> {
  const row = [...limbRow('C', 60, 100, 3, 8)]
  row[column] = cell
  return readInventory(block(limbHeaders, leader, sound, row))
}

describe('reading an inventory', () => {
  it('matches headers in any order and wording, with their units', () => {
    const inventory = readInventory(
      block('Tip ht (ft) | DBH (in) | Tag | branch dia. cm | Stem dia in | Origin height [ft] | Height ft', [
        30,
        12,
        'A1',
        10,
        6,
        9,
        40
      ])
    )
    expect(inventory.matches.map(({ field, unit }) => [field, unit])).toEqual([
      ['tip', 'ft'],
      ['trunk', 'in'],
      ['tree', null],
      ['diameter', 'cm'],
      ['stem', 'in'],
      ['origin', 'ft'],
      ['height', 'ft']
    ])
    const limb = inventory.trees[0]!.limbs[0]!
    expect(limb.diameter).toBeCloseTo(100, 9)
    expect(limb.stem).toBeCloseTo(152.4, 9)
    expect(inventory.trees[0]!.height).toBeCloseTo(12.192, 9)
    expect(found(inventory.problems, 'mixed-diameter-units')).toEqual(['Trees!D1'])
  })

  it('reads headers without a unit as inches and feet, and says so', () => {
    const inventory = readInventory(block('Tree | Height | Limb dia', ['T1', 40, 5]))
    expect(found(inventory.problems, 'no-unit')).toEqual(['Trees!B1', 'Trees!C1'])
    expect(inventory.trees[0]!.height).toBeCloseTo(12.192, 9)
  })

  it('takes tree columns from the tree’s first row, and reports a second value', () => {
    const blank = limbRow('C', 60, 100, 4, 8).map((cell, at) => (at >= 1 && at <= 5 ? null : cell))
    const other = [...limbRow('D', 60, 100, 4, 8)]
    other[1] = 12
    const inventory = readInventory(block(limbHeaders, sound, blank, other))
    expect(inventory.trees).toHaveLength(1)
    expect(inventory.trees[0]!.limbs).toHaveLength(3)
    expect(inventory.trees[0]!.height).toBe(10)
    expect(found(inventory.problems, 'duplicate-tree')).toEqual(['Trees!B4'])
  })

  it('lets an id that stands once stand for the rows below it', () => {
    const inventory = readInventory(
      block(
        'Tree | Limb | Limb dia (mm)',
        ['T1', 'a', 50],
        [null, 'b', 40],
        [null, 'c', 30],
        ['T2', 'a', 30],
        [null, 'b', 20]
      )
    )
    expect(inventory.trees.map(({ id, limbs }) => [id, limbs.length])).toEqual([
      ['T1', 3],
      ['T2', 2]
    ])
  })

  it('takes yes under a header “Dead” for dead', () => {
    const inventory = readInventory(
      block('Tree | Limb | Dead | Limb dia (mm)', ['T1', 'a', 'yes', 50], ['T1', 'b', 'no', 50])
    )
    expect(inventory.trees[0]!.limbs.map(({ dead }) => dead)).toEqual([true, false])
  })
})

describe('reading in parts', () => {
  const rows = Array.from({ length: 30 }, (_, at) =>
    limbRow(`L${at}`, at === 17 ? 'about three' : 80, 100, 3, 9, { tree: `T${Math.floor(at / 4)}` })
  )

  it('gives the same trees, problems and addresses as reading at once, and parts no tree', () => {
    const whole = readInventory(block(limbHeaders, ...rows))
    const parts = [...readInParts(block(limbHeaders, ...rows), 7)]
    expect(parts.length).toBeGreaterThan(2)
    expect(parts.flatMap(({ trees }) => trees)).toEqual(whole.trees)
    expect(parts.flatMap(({ problems }) => problems)).toEqual(whole.problems)
    expect(parts.flatMap(({ unplanned }) => unplanned)).toEqual(whole.unplanned)
  })

  it('reads in one part where a tree’s rows do not stand together', () => {
    const apart = [...rows, limbRow('X', 50, 90, 3, 8, { tree: 'T0' })]
    expect([...readInParts(block(limbHeaders, ...apart), 7)]).toEqual([
      readInventory(block(limbHeaders, ...apart))
    ])
  })
})

describe('bad input', () => {
  it('says what to select when the selection is empty or has headers only', () => {
    expect(readInventory(block('')).problems.map(({ code }) => code)).toEqual(['empty-selection'])
    expect(readInventory(block(limbHeaders)).problems.map(({ code }) => code)).toEqual(['headers-only'])
    expect(readInventory(block(limbHeaders, [null, null])).problems.map(({ code }) => code)).toEqual([
      'headers-only'
    ])
  })

  it('says when the first row is not a header row or has no tree column', () => {
    expect(readInventory(block('3 | 4 | 5', [1, 2, 3])).problems.map(({ code }) => code)).toEqual([
      'no-headers'
    ])
    expect(readInventory(block('Limb | Limb dia (in)', ['a', 3])).problems.map(({ code }) => code)).toEqual([
      'missing-column'
    ])
  })

  const cases: [string, number, Cell, string, string][] = [
    ['text where a number belongs', 8, 'about three', 'not-a-number', 'Trees!I4'],
    ['a hexadecimal number', 8, '0x10', 'not-a-number', 'Trees!I4'],
    ['a truth value', 8, true, 'not-a-number', 'Trees!I4'],
    ['a zero diameter', 8, 0, 'not-positive', 'Trees!I4'],
    ['a negative diameter', 8, -4, 'not-positive', 'Trees!I4'],
    ['an impossible diameter', 8, 1e6, 'too-large', 'Trees!I4'],
    ['a spreadsheet error', 9, '#DIV/0!', 'error-cell', 'Trees!J4'],
    ['a negative height', 10, -1, 'negative', 'Trees!K4'],
    ['a missing measurement', 11, null, 'missing-value', 'Trees!L4'],
    ['a second limb of the same id', 6, 'B', 'duplicate-limb', 'Trees!G4'],
    ['a limb without a tree', 0, null, 'limb-without-tree', 'Trees!A4']
  ]

  it.each(cases)(
    '%s: one sentence with the address, a remedy, and the rest is planned',
    (_, column, cell, code, at) => {
      const inventory = withCell(column, cell)
      expect(found(inventory.problems, code)).toEqual([at])
      const problem = inventory.problems.find((each) => each.code === code)!
      expect(problem.message).toContain(at)
      expect(problem.message).not.toMatch(/[{}]/)
      expect(problem.remedy.length).toBeGreaterThan(10)
      expect(inventory.unplanned).toMatchObject([
        { tree: column === 0 ? '' : 'T1', row: 4, cell: 'Trees!A4', reason: problem.message }
      ])
      const plan = planOf(
        block(
          limbHeaders,
          leader,
          sound,
          [...limbRow('C', 60, 100, 3, 8)].map((each, at) => (at === column ? cell : each))
        )
      )
      expect(plan.trees[0]!.visits[0]!.cuts.map(({ limb }) => limb.id)).toContain('B')
      expect(plan.unplanned.map(({ row }) => row)).toEqual([4])
    }
  )

  it('converts a length whose cell names another unit, and says so', () => {
    const inventory = withCell(8, '6 cm')
    expect(inventory.trees[0]!.limbs[2]!.diameter).toBe(60)
    expect(found(inventory.problems, 'mixed-units')).toEqual(['Trees!I4'])
    expect(inventory.unplanned).toMatchObject([])
  })

  it('plans a limb without an optional value that cannot be read', () => {
    const inventory = withCell(12, 'perhaps')
    expect(found(inventory.problems, 'not-a-choice')).toEqual(['Trees!M4'])
    expect(inventory.unplanned).toMatchObject([])
    expect(inventory.trees[0]!.limbs[2]!.bark).toBe('none')
  })

  it('takes a limit that cannot be read at its strictest', () => {
    const plan = planOf(block(`${limbHeaders} | Removed this season`, [...leader, null], [...sound, 'a lot']))
    expect(plan.trees[0]!.allowedRemoval).toBe(0)
  })

  it('finds a second limb of an id among few limbs and many, and where the first one stands', () => {
    for (const count of [2, 15, 16, 17, 18, 40]) {
      const limbs = Array.from({ length: count }, (_, at) => limbRow(`B${at + 1}`, 50 + at, 100, 3, 9))
      const again = limbRow(`b${count}`, 20, 100, 3, 9)
      const inventory = readInventory(block(limbHeaders, ...limbs, again))
      expect(inventory.limbCount).toBe(count)
      const [twice] = inventory.problems.filter(({ code }) => code === 'duplicate-limb')
      expect(twice?.cell).toBe(`Trees!G${count + 2}`)
      expect(twice?.message).toContain(`Trees!G${count + 1}`)
    }
  })

  it('keeps the inventory as it was read, however often it is planned', () => {
    const inventory = readInventory(block(limbHeaders, leader, limbRow('B', 80, 100, 12, 13)))
    const before = JSON.stringify(inventory)
    const first = planInventory(inventory, { date: '2030-01-01' })
    const second = planInventory(inventory, { date: '2030-01-01' })
    expect(JSON.stringify(inventory)).toBe(before)
    expect(second.problems).toEqual(first.problems)
    expect(second.unplanned).toEqual(first.unplanned)
    expect(first.unplanned).toHaveLength(1)
  })

  it('lists every limb of a tree whose height or crown base is missing or impossible', () => {
    for (const [column, cell, code] of [
      [1, null, 'missing-tree-value'],
      [1, 0, 'missing-tree-value'],
      [2, 11, 'crown-base-above-top']
    ] as const) {
      const rows = [leader, sound].map((row) => row.map((each, at) => (at === column ? cell : each)))
      const plan = planOf(block(limbHeaders, ...rows))
      expect(plan.problems.map((problem) => problem.code)).toContain(code)
      expect(plan.unplanned.map(({ row }) => row)).toEqual([2, 3])
      expect(plan.trees[0]!.visits).toEqual([])
    }
  })
})

describe('a row that repeats an earlier one', () => {
  const again = (change: (row: Cell[]) => Cell[]) => {
    const row = limbRow('A', 50, 100, 3, 9)
    const { problems } = readInventory(block(limbHeaders, row, sound, change([...row])))
    return problems.find(({ code }) => code === 'row-repeated' || code === 'duplicate-limb')
  }

  it('cell for cell is told to be a repetition', () => {
    const found = again((row) => row)
    expect(found?.code).toBe('row-repeated')
    expect(found?.remedy).toMatch(/^Delete one of the two rows/)
  })

  it('with another measurement is a second limb of the same id', () => {
    expect(again((row) => row.map((cell, at) => (at === 8 ? 77 : cell)))?.code).toBe('duplicate-limb')
  })
})

/**
 * Whatever stands in a cell: the run does not stop, no other tree is planned differently, and the cell is named. And the
 * same numbers in other writings give the same plan. FUZZ=full runs it for long; PROPERTY_SEED tries another seed.
 */
import fc from 'fast-check'
import { machineWordsInFile, machineWordsInJson } from './clean'
import type * as pictures from './drawnPictures'
import { csv, problemsAt, scratch, yearsMeet, type Printed } from './plannedFile'

jest.mock('@resvg/resvg-js', () => jest.requireActual<typeof pictures>('./drawnPictures'))

const full = process.env.FUZZ === 'full'
if (full) jest.setTimeout(1_200_000)
const seed = Number(process.env.PROPERTY_SEED ?? 20270301)
/** Cases of a property: so many every time, and so many in the long run. */
const runs = (usual: number, long: number) => ({ seed, numRuns: full ? long : usual })

const at = scratch()

const headers = [
  'Tree',
  'Species',
  'Trunk dia (in)',
  'Height (ft)',
  'Crown base (ft)',
  'Life stage',
  'Vigor',
  'Clearance (ft)',
  'Limb',
  'Role',
  'Limb dia (in)',
  'Stem dia (in)',
  'Origin (ft)',
  'Tip (ft)',
  'Included bark',
  'Live or dead',
  'Lowest foliage (ft)'
]

/** Three invented trees: G1 and G2 stay in order, X1 is where the junk goes. */
const inventory: readonly (readonly string[])[] = [
  headers,
  'G1,Red maple,7.5,32,6,young,good,8,A,leader,5.2,,7,32,,live,'.split(','),
  'G1,,,,,,,,B,,4.4,5.2,7,30,full,live,9'.split(','),
  'G1,,,,,,,,C,,2.6,5.6,6.2,25,none,live,8'.split(','),
  'X1,Pin oak,6.8,28,6,young,good,8,A,leader,4.6,,7,28,,live,'.split(','),
  'X1,,,,,,,,B,,3.4,4.4,8,26,partial,live,9'.split(','),
  'X1,,,,,,,,C,,1.8,4.2,9,20,none,live,10'.split(','),
  'X1,,,,,,,,D,,1.2,4,12,18,none,dead,'.split(','),
  'G2,Ginkgo,5.1,24,5,young,good,,A,leader,3.6,,6,24,,live,'.split(','),
  'G2,,,,,,,,B,,2.8,3.5,6.5,22,full,live,8'.split(',')
]

const treeColumns = [
  'Trunk dia (in)',
  'Height (ft)',
  'Crown base (ft)',
  'Life stage',
  'Vigor',
  'Clearance (ft)'
]
const limbColumns = [
  'Limb dia (in)',
  'Stem dia (in)',
  'Origin (ft)',
  'Tip (ft)',
  'Included bark',
  'Live or dead'
]
const optionalColumns = ['Lowest foliage (ft)']

/** Texts that are no measurement and no word of any choice. */
const junk = [
  'about 3',
  '12 est.',
  '3?',
  '~2',
  '?',
  'NaN',
  'Infinity',
  '-Infinity',
  'null',
  'undefined',
  '[object Object]',
  '#N/A',
  '#DIV/0!',
  '#REF!',
  '2026-03-01',
  '3-Feb',
  '0x10',
  '1_000',
  '1e999',
  '1.2.3',
  '2-3',
  '12 apples',
  '½½',
  'to be measured',
  '=1/0',
  '🌳',
  'x'.repeat(5000)
]

interface Cell {
  readonly row: number
  readonly column: number
  readonly text: string
}

const place = (column: string) => headers.indexOf(column)
/** All of the junk in the long run; otherwise every third kind of it, other ones in the next row and the next column. */
const junkOf = (start: number) => junk.filter((_text, index) => full || (index + start) % 3 === 0)
const letter = (column: number) => String.fromCharCode(65 + column)
const address = ({ row, column }: Cell) => `fuzz!${letter(column)}${String(row + 1)}`

/** Cells of X1: its own measurements on its first row, and those of its limbs. */
const places = [
  ...treeColumns.map((column) => [4, place(column)] as const),
  ...[5, 6, 7].flatMap((row) =>
    [...limbColumns, ...optionalColumns].map((column) => [row, place(column)] as const)
  )
]

const junkCells = (texts: readonly string[], most = 3): fc.Arbitrary<Cell[]> =>
  fc
    .uniqueArray(fc.constantFrom(...places), {
      minLength: 1,
      maxLength: most,
      selector: (each) => each.join()
    })
    .chain((where) =>
      fc.tuple(
        ...where.map(([row, column]) => fc.constantFrom(...texts).map((text) => ({ row, column, text })))
      )
    )

function withCells(cells: readonly Cell[], rows = inventory): string[][] {
  const copy = rows.map((row) => [...row])
  for (const { row, column, text } of cells) copy[row]![column] = text
  return copy
}

async function plan(rows: readonly (readonly string[])[], delimiter = ',') {
  const { code, out, failures } = await at.run(at.put('fuzz.csv', csv(rows, delimiter)), '--json')
  return { code, failures, printed: JSON.parse(out) as Printed }
}

const good = ['G1', 'G2']

/** The trees in order whose plan is not what it is beside a sound tree. */
function disturbed(printed: Printed): string[] {
  if (yearsMeet(printed, sound, good)) return []
  const before = new Map(sound.trees.map((each) => [each.tree, JSON.stringify(each)]))
  const after = new Map(printed.trees.map((each) => [each.tree, JSON.stringify(each)]))
  return good.filter((tree) => after.get(tree) !== before.get(tree))
}

let sound: Printed
beforeAll(async () => {
  sound = (await plan(inventory)).printed
})

test('the inventory is in order, and every tree of it is cut', () => {
  expect(sound.trees.map(({ tree, visits }) => [tree, visits[0]!.cuts.length > 0])).toEqual([
    ['G1', true],
    ['X1', true],
    ['G2', true]
  ])
  // No side is given with the clearance: it holds on all sides, and says so.
  expect(sound.problems.filter(({ cell }) => cell.startsWith('fuzz!'))).toEqual([
    expect.objectContaining({ code: 'clearance-all-sides', count: 2 })
  ])
  expect(sound.unplanned).toEqual([])
  expect(yearsMeet(sound, sound, good)).toBe(false)
})

describe('junk in cells of one tree', () => {
  test('never stops the run, never changes another tree, and each cell is named', async () => {
    await fc.assert(
      fc.asyncProperty(junkCells(junk), async (cells) => {
        const { code, failures, printed } = await plan(withCells(cells))
        expect([code, failures]).toEqual([0, []])
        expect(disturbed(printed)).toEqual([])
        expect(machineWordsInJson(printed)).toEqual([])
        const silent = cells.filter((cell) => problemsAt(printed.problems, address(cell)).length === 0)
        expect(silent.map((cell) => `${address(cell)}: ${cell.text.slice(0, 20)}`)).toEqual([])
      }),
      runs(50, 6000)
    )
  })

  test.each(
    places.map(([row, column]) => [`${letter(column)}${String(row + 1)}, ${headers[column]!}`, row, column])
  )('each kind of it in %s', async (_name, row, column) => {
    const silent: string[] = []
    for (const text of junkOf(Number(row) + Number(column))) {
      const cell = { row: Number(row), column: Number(column), text }
      const { code, printed } = await plan(withCells([cell]))
      expect([text, code, disturbed(printed)]).toEqual([text, 0, []])
      if (problemsAt(printed.problems, address(cell)).length === 0) silent.push(text.slice(0, 20))
    }
    expect(silent).toEqual([])
  })

  test('never stops the written file, nor gets into it', async () => {
    await fc.assert(
      fc.asyncProperty(junkCells(junk.slice(0, -1), 4), async (cells) => {
        const path = at.put('fuzz.csv', csv(withCells(cells)))
        const { code, failures } = await at.run(path, '--out', 'fuzz.xlsx')
        expect([code, failures]).toEqual([0, []])
        const file = await at.written('fuzz.xlsx')
        expect(machineWordsInFile(file!)).toEqual([])
      }),
      runs(3, 320)
    )
  })
})

describe('any text in any cell, headers and ids too', () => {
  // What fc.string({ unit: 'binary' }) draws, without the seconds that it takes to prepare itself.
  const anyCharacter = fc.oneof(
    fc.integer({ min: 0, max: 0x7f }),
    fc.integer({ min: 0x80, max: 0xd7ff }),
    fc.integer({ min: 0xe000, max: 0x10ffff })
  )
  const anyText = fc
    .array(anyCharacter, { maxLength: 12 })
    .map((characters) => String.fromCodePoint(...characters))
  const anywhere = fc.record({
    row: fc.nat(inventory.length - 1),
    column: fc.nat(headers.length - 1),
    text: fc.oneof(anyText, fc.double().map(String), fc.constantFrom(...junk))
  })

  test('never stops the run, and ends with a plan or with reasons', async () => {
    await fc.assert(
      fc.asyncProperty(fc.array(anywhere, { minLength: 1, maxLength: 12 }), async (cells) => {
        const { code, printed, failures } = await plan(withCells(cells))
        expect([0, 3]).toContain(code)
        expect(failures).toEqual([])
        if (code === 3) expect(printed.problems.length).toBeGreaterThan(0)
        const numbers = printed.trees.flatMap(({ allowedRemoval, visits }) => [
          allowedRemoval,
          ...visits.flatMap(({ dose, cuts }) => [dose, ...cuts.map((cut) => cut.dose)])
        ])
        // A number that is none is printed as null in JSON.
        expect(numbers.filter((each) => typeof each !== 'number' || each < 0 || each > 1 + 1e-9)).toEqual([])
      }),
      runs(50, 6000)
    )
  })
})

describe('the same numbers in other writings', () => {
  /** A diameter in quarters of an inch, so that it has a fraction; a height in tenths of a foot. */
  const tree = fc
    .record({
      trunk: fc.integer({ min: 26, max: 48 }),
      height: fc.integer({ min: 241, max: 399 }),
      base: fc.integer({ min: 31, max: 79 }),
      limbs: fc.array(
        fc.record({
          diameter: fc.integer({ min: 1, max: 15 }),
          stem: fc.integer({ min: 16, max: 20 }),
          origin: fc.integer({ min: 80, max: 120 }),
          tip: fc.integer({ min: 140, max: 235 })
        }),
        { minLength: 2, maxLength: 4 }
      )
    })
    .filter(
      ({ height, base, limbs }) =>
        height % 10 > 0 && base % 10 > 0 && limbs.some(({ diameter }) => diameter % 4 > 0)
    )

  type Tree = typeof tree extends fc.Arbitrary<infer Made> ? Made : never
  interface Style {
    readonly diameter: (quarters: number) => string
    readonly height: (tenths: number) => string
    readonly delimiter?: string
  }

  const comma = (text: string) => text.replace('.', ',')
  const quarters = (value: number) => String(value / 4)
  const tenths = (value: number) => String(value / 10)
  const fraction = (value: number): string => {
    const whole = Math.floor(value / 4)
    const part = ['', '1/4', '1/2', '3/4'][value % 4]!
    return [whole === 0 && part !== '' ? '' : String(whole), part].filter((each) => each !== '').join(' ')
  }

  const plain: Style = { diameter: quarters, height: tenths }
  const styles: Record<string, Style> = {
    'a decimal comma in every column': {
      diameter: (value) => comma(quarters(value)),
      height: (value) => comma(tenths(value))
    },
    'a decimal comma and semicolons': {
      diameter: (value) => comma(quarters(value)),
      height: (value) => comma(tenths(value)),
      delimiter: ';'
    },
    'zeros behind': {
      diameter: (value) => (value / 4).toFixed(3),
      height: (value) => (value / 10).toFixed(2)
    },
    'the unit in the cell': {
      diameter: (value) => `${quarters(value)} in`,
      height: (value) => `${tenths(value)} ft`
    },
    'the unit and a decimal comma': {
      diameter: (value) => `${comma(quarters(value))} in`,
      height: (value) => `${comma(tenths(value))} ft`
    },
    'fractions of an inch': { diameter: (value) => `${fraction(value)} in`, height: tenths },
    'spaces around': {
      diameter: (value) => `  ${quarters(value)} `,
      height: (value) => ` ${tenths(value)}\u00a0`
    }
  }

  function rowsOf({ trunk, height, base, limbs }: Tree, { diameter, height: high }: Style): string[][] {
    const first = ['W1', '', diameter(trunk), high(height), high(base), 'young', 'good', '']
    const leader = [...first, 'A', 'leader', diameter(20), '', high(90), high(height), '', 'live', '']
    const others = limbs.map((limb, index) => [
      ...['W1', '', '', '', '', '', '', '', `L${String(index)}`, ''],
      ...[diameter(limb.diameter), diameter(limb.stem), high(limb.origin), high(limb.tip), 'none', 'live', '']
    ])
    return [headers, leader, ...others]
  }

  test.each(Object.entries(styles))('%s: the same plan', async (_name, style) => {
    let cuts = 0
    await fc.assert(
      fc.asyncProperty(tree, async (made) => {
        const usual = await plan(rowsOf(made, plain))
        const other = await plan(rowsOf(made, style), style.delimiter)
        expect(other.printed.trees).toEqual(usual.printed.trees)
        expect(other.printed.estimate).toEqual(usual.printed.estimate)
        expect(other.printed.unplanned).toEqual([])
        cuts += usual.printed.trees.flatMap(({ visits }) => visits.flatMap((visit) => visit.cuts)).length
      }),
      runs(15, 600)
    )
    expect(cuts).toBeGreaterThan(10)
  })

  test('three decimals behind a comma in every diameter: the same plan, or a question, never a thousand inches', async () => {
    const style: Style = {
      diameter: (value) => comma((value / 4).toFixed(3)),
      height: (value) => comma(tenths(value))
    }
    await fc.assert(
      fc.asyncProperty(tree, async (made) => {
        const usual = await plan(rowsOf(made, plain))
        const { printed } = await plan(rowsOf(made, style))
        // Each column of diameters tells its own decimal sign, or is asked about: trunk, limbs and stems.
        const asked = ['C2', 'K2', 'L3'].some((cell) =>
          problemsAt(printed.problems, `fuzz!${cell}`).some(({ code }) => code === 'number-two-ways')
        )
        if (!asked) expect(printed.trees).toEqual(usual.printed.trees)
        const cuts = printed.trees.flatMap(({ visits }) => visits.flatMap((visit) => visit.cuts))
        expect(cuts.filter(({ cutDiameterMm }) => (cutDiameterMm ?? 0) > 48 * 25.4)).toEqual([])
        // Every limb drawn is thinner than its stem.
        expect(cuts.filter(({ aspectRatio }) => (aspectRatio ?? 0) > 1)).toEqual([])
        const zero = made.limbs.findIndex(({ diameter }) => diameter < 4)
        const refused = problemsAt(printed.problems, `fuzz!K${String(zero + 3)}`).filter(
          ({ code }) => code === 'too-large'
        )
        if (zero >= 0) expect(refused).toEqual([])
        const thicker = printed.problems.filter(({ code }) => code === 'thicker-than-stem')
        expect(thicker).toEqual([])
      }),
      runs(15, 600)
    )
  })

  /** Heights in centimeters run over a thousand; a column that also holds a decimal tells what the other sign is. */
  const grouped = (value: number, mark: string, sign: string): string => {
    const [whole, part] = String(value / 10).split('.')
    return whole!.replace(/(?=(?:\d{3})+$)(?!^)/g, mark) + (part === undefined ? '' : `${sign}${part}`)
  }

  test.each([
    ['a thousands comma beside a decimal point', ',', '.', ','],
    ['a thousands point beside a decimal comma', '.', ',', ','],
    ['a thousands point beside a decimal comma, and semicolons', '.', ',', ';']
  ])('%s: the same plan', async (_name, mark, sign, delimiter) => {
    const metric = headers.map((header) => header.replace('(ft)', '(cm)'))
    const whole = fc.integer({ min: 1001, max: 1300 }).map((value) => value * 10)
    const odd = fc.integer({ min: 1001, max: 1300 }).map((value) => value * 10 + 5)
    const low = fc.integer({ min: 300, max: 420 }).map((value) => value * 10 + 5)
    let cuts = 0
    await fc.assert(
      fc.asyncProperty(whole, odd, low, async (first, second, base) => {
        const write = (high: (value: number) => string) => [
          metric,
          ...[first, second].flatMap((height, index) => {
            const id = `W${String(index)}`
            const tips = [height, height - 500]
            return [
              [
                id,
                '',
                '8',
                high(height),
                high(base),
                'young',
                'good',
                '',
                'A',
                'leader',
                '6',
                '',
                high(base + 100),
                high(tips[0]!),
                '',
                'live',
                ''
              ],
              [
                id,
                '',
                '',
                '',
                '',
                '',
                '',
                '',
                'B',
                '',
                '5',
                '6',
                high(base + 200),
                high(tips[1]!),
                'full',
                'live',
                ''
              ]
            ]
          })
        ]
        const usual = await plan(write((value) => String(value / 10)))
        const other = await plan(
          write((value) => grouped(value, mark, sign)),
          delimiter
        )
        expect(other.printed.trees).toEqual(usual.printed.trees)
        cuts += usual.printed.trees.flatMap(({ visits }) => visits.flatMap((visit) => visit.cuts)).length
      }),
      runs(15, 600)
    )
    expect(cuts).toBeGreaterThan(20)
  })
})

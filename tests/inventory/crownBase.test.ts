/** Bare headers of a crown base, told by where their heights lie in the trees. All inventories are invented. */
import { readCsv } from '../../src/file/csvFile'
import { readSheets } from '../../src/inventory/readSheets'

type Heights = readonly [number, number, number]

function read(header: string, values: Heights, limbs = false) {
  const tops = [9, 8.5, 12]
  const more = (at: number) => (limbs ? `,A,10,12,2.1,${String((tops[at] ?? 0) - 1)}` : '')
  const text = [
    `Tree,Species,DBH (cm),Height (m),${header}${limbs ? ',Limb,Limb dia (cm),Stem dia (cm),Origin (m),Tip (m)' : ''}`,
    ...values.map((value, at) => `${String(at + 1)},Oak,22,${String(tops[at])},${String(value)}${more(at)}`)
  ].join('\n')
  const { trees, matches, problems } = readSheets([{ name: 'Survey', rows: readCsv(text), top: 0, left: 0 }])
  return {
    bases: trees.map(({ crownBase }) => crownBase),
    confidence: matches.find(({ field }) => field === 'crownBase')?.confidence ?? null,
    codes: problems.map(({ code }) => code),
    told: problems.find(({ code }) => code === 'crown-base-asked')
  }
}

const low: Heights = [2, 1.5, 2.4]
const deep: Heights = [7, 7, 9.6]

test.each([
  'Base ca. (m)',
  'Base (m)',
  'Base',
  'Alt. copa (m)',
  'Altura de copa (m)',
  'Cr. base (m)',
  'Kr.-Ansatz (m)',
  'H. base (m)',
  'Canopy ht (m)',
  'Kronenhöhe (m)',
  'Height of canopy (m)'
])('“%s” is used and asked about where its heights are low in the trees', (header) => {
  const found = read(header, low)
  expect(found.bases).toEqual(low)
  expect(found.confidence).toBe('likely')
  expect(found.codes).toContain('column-likely')
})

test.each(['Kronenansatz (m)', 'Base houppier (m)', 'Clear stem (m)', 'HCB (m)'])(
  '“%s” is sure',
  (header) => {
    expect(read(header, low)).toMatchObject({ bases: low, confidence: 'sure' })
  }
)

test.each(['Canopy ht (m)', 'Alt. copa (m)', 'Kronenhöhe (m)'])(
  '“%s” is asked about and not used where it may be the depth of the crown',
  (header) => {
    const found = read(header, deep)
    expect(found.bases).toEqual([null, null, null])
    expect(found.told?.message).toContain(`E “${header}” (7; 7; 9.6), or is that the depth of the crown?`)
    expect(found.codes).not.toContain('column-unknown')
  }
)

test('a bare base beside the origins of limbs is the tree’s', () => {
  expect(read('Base (m)', low, true)).toMatchObject({ bases: low, confidence: 'likely' })
})

test.each([
  ['Base diameter (cm)', [25, 24, 30]],
  ['Crown dieback (%)', [5, 0, 10]],
  ['Crown class', [1, 2, 1]],
  ['Basal area', [2, 1, 3]],
  ['Alt. copa (m)', [15, 16, 18]]
] as const)('“%s” is none', (header, values) => {
  const found = read(header, values)
  expect(found.bases).toEqual([null, null, null])
  expect(found.told).toBeUndefined()
})

describe('a header that says “crown” and no more', () => {
  test.each(['Cime (m)', 'Canopy', 'Baumkrone (m)', 'Tree crown (m)', 'Copa del árbol (m)'])(
    '“%s” is asked about with the lengths it may be, and not used',
    (header) => {
      for (const values of [low, deep]) {
        const found = read(header, values)
        expect(found.bases).toEqual([null, null, null])
        expect(found.codes).toContain('crown-asked')
        expect(found.codes).not.toContain('column-unknown')
        expect(found.codes).not.toContain('column-likely')
      }
    }
  )

  test('is not asked about where the crown base is given', () => {
    const text = 'Tree,DBH (cm),Height (m),HCB (m),Canopy (m)\n1,22,9,2,5\n2,25,10,3,6'
    const { trees, problems } = readSheets([{ name: 'Survey', rows: readCsv(text), top: 0, left: 0 }])
    expect(trees.map(({ crownBase, spread }) => [crownBase, spread])).toEqual([
      [2, null],
      [3, null]
    ])
    expect(problems.map(({ code }) => code)).toContain('column-unknown')
  })
})

test.each([
  '1er rameau vert (m)',
  'Hauteur du premier rameau vivant (m)',
  '1re ramification vivante (m)',
  '1. grüner Ast (m)',
  'Primer ramo verde (m)',
  'First live twig (m)'
])('“%s” is the crown base, not the lateral of a limb', (header) => {
  expect(read(header, low, true)).toMatchObject({ bases: low, confidence: 'sure' })
})

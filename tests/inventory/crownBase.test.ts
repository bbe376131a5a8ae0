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

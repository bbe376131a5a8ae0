import { columnValues } from '../../../src/inventory/headers/columnValues'
import { assignColumns } from '../../../src/inventory/headers/assign'
import type { HeadedColumn } from '../../../src/inventory/headers/headedColumn'
import { beside, headed } from './oneColumn'

const feet = ['12', '20', '6', '14']
const inches = ['4', '6', '3', '5']
const yes = ['yes', 'no', 'no', 'yes']

/** A table of headers with what stands below each. */
function table(columns: Readonly<Record<string, readonly string[]>>) {
  const list = Object.entries(columns).map(([header, cells]): HeadedColumn => ({
    header,
    unit: null,
    values: columnValues([...cells])
  }))
  const meanings = assignColumns(list)
  return Object.fromEntries(Object.keys(columns).map((header, at) => [header, meanings[at]]))
}

describe('a word of something else', () => {
  it.each([
    ['Light pole height (ft)', 'height', feet],
    ['Flagpole height (ft)', 'height', feet],
    ['Height of house (ft)', 'height', feet],
    ['Distance to next tree (ft)', 'spread', feet],
    ['Conk diameter (in)', 'trunk', inches],
    ['Trunk wound width (in)', 'trunk', inches],
    ['Tree height class', 'height', inches],
    ['Tree value', 'tree', inches],
    ['Sidewalk health', 'vigor', ['good', 'fair', 'poor', 'good']],
    ['Existing clearance (ft)', 'clearance', feet],
    ['Removed by', 'removed', ['A. Person', 'B. Person']]
  ] as const)('keeps “%s” from being the %s', (header, field, values) => {
    expect(beside(header, field, values)?.field ?? null).toBeNull()
  })

  it.each([
    ['Health rating', 'vigor'],
    ['Crew access', 'access'],
    ['Nursery caliper (in)', 'caliper'],
    ['Plant ID', 'tree'],
    ['Clearance over road (ft)', 'clearance']
  ] as const)('does not keep “%s” from being the %s, where it is not what is measured', (header, field) => {
    expect(headed(header, field)).toMatchObject({ field, confidence: 'sure' })
  })

  it.each(['Parcel ID', 'PO number', 'Anzahl Äste', 'Nombre de branches'])(
    '“%s” names no tree and no limb',
    (header) => {
      expect(beside(header, 'tree', ['K-17', 'K-18', 'K-22', 'K-31'])?.field ?? null).toBeNull()
    }
  )
})

describe('a word that no language here knows', () => {
  it('rules out a lone measure, is asked about beside two words, and hardly counts in a long header', () => {
    expect(beside('Zorp height (ft)', 'height', feet)?.field ?? null).toBeNull()
    expect(headed('Zorp tree height (ft)', 'height')?.confidence).toBe('likely')
    expect(headed('Zorpbaum-Nr.', 'tree')?.confidence).toBe('likely')
    expect(headed('Zorp stem diameter above union (in)', 'stem')?.confidence).toBe('sure')
  })
})

describe('what may mean too much else', () => {
  it.each([
    ['Base diameter (in)', 'diameter', inches],
    ['Type', 'role', ['limb', 'leader', 'limb', 'limb']],
    ['Status', 'live', ['live', 'dead', 'live', 'live']],
    ['Side', 'clearanceSide', ['N', 'S', 'W', 'N']],
    ['Aspect', 'bearing', ['N', 'SE', 'W', 'NW']],
    ['Kind', 'species', ['Red maple', 'Pin oak', 'Red maple', 'Hackberry']],
    ['DBH 2019 (in)', 'trunk', ['7', '9', '12', '8']]
  ] as const)('“%s” is asked about, never taken silently', (header, field, values) => {
    const limb = field === 'diameter' || field === 'role' || field === 'live' || field === 'bearing'
    const meaning = beside(header, field, values, limb ? 'limb' : 'tree')
    expect(meaning?.field).toBe(field)
    expect(meaning?.confidence).toBe('likely')
  })

  it.each([
    ['Type', 'role', ['street', 'park', 'street', 'yard']],
    ['Status', 'live', ['open', 'done', 'open', 'open']],
    ['Side', 'clearanceSide', ['odd', 'even', 'odd', 'even']],
    ['Aspect', 'bearing', ['sunny', 'shaded', 'sunny', 'half shade']]
  ] as const)('“%s” is not taken where the cells do not fit', (header, field, values) => {
    expect(beside(header, field, values)?.field ?? null).toBeNull()
  })
})

test.each(['Baumplakette', 'Plaque', 'Tag'])(
  'in a table of limbs “%s” before “Haut.” is the tree, as an abbreviated height is no limb’s tip',
  (id) => {
    const columns = {
      [id]: ['T1', 'T2', 'T3', 'T4'],
      'Haut. (m)': ['6', '9', '7', '8'],
      'Crown base height (m)': ['1', '2', '1.5', '2'],
      Limb: ['A', 'B', 'C', 'D'],
      'Limb dia (cm)': ['3', '4', '5', '3'],
      'Stem dia (cm)': ['9', '8', '9', '7'],
      'Origin (m)': ['1', '2', '1', '2'],
      'Tip (m)': ['3', '4', '3', '4']
    }
    const found = table(columns)
    expect([id, 'Haut. (m)', 'Tip (m)'].map((header) => found[header]?.field)).toEqual([
      'tree',
      'height',
      'tip'
    ])
  }
)

describe('a bare header', () => {
  const limbs = {
    Limb: ['A', 'B', 'C', 'D'],
    'Origin height (ft)': feet,
    'Tip height (ft)': ['20', '30', '18', '25']
  }
  const trees = { 'Tree ID': ['T1', 'T2', 'T3', 'T4'], Species: ['Red maple', 'Pin oak', 'Elm', 'Oak'] }

  it('is the limb’s to the right of the limb, and the tree’s to the right of the tree', () => {
    expect(table({ ...trees, ...limbs, 'Dia. (in)': inches })['Dia. (in)']).toMatchObject({
      field: 'diameter',
      confidence: 'sure'
    })
    expect(table({ ...trees, 'Dia. (in)': ['9', '12', '7', '11'], ...limbs })['Dia. (in)']).toMatchObject({
      field: 'trunk',
      confidence: 'sure'
    })
    expect(table({ ...limbs, ...trees, 'Height (ft)': feet })['Height (ft)']).toMatchObject({
      field: 'height'
    })
  })

  it('is the tree’s in a list of trees', () => {
    const found = table({ ...trees, 'Height (ft)': feet, 'Girth (cm)': ['60', '80', '90', '70'] })
    expect(found['Height (ft)']).toMatchObject({ field: 'height', confidence: 'sure' })
    expect(found['Girth (cm)']).toMatchObject({ field: 'trunk', girth: true, confidence: 'sure' })
  })

  it('names the limb where it stands before the limb’s columns', () => {
    const found = table({
      ...trees,
      'No.': ['1', '2', '3', '4'],
      'Limb dia (in)': inches,
      'Stem above union (in)': ['5', '7', '4', '6']
    })
    expect(found['No.']).toMatchObject({ field: 'limb', confidence: 'likely' })
  })

  it('holds the kind of tree where “Tree” stands over words and another column has the numbers', () => {
    const found = table({
      'No.': ['1', '2', '3', '4'],
      Tree: ['Red maple', 'Pin oak', 'Red maple', 'Pin oak'],
      'Height (ft)': feet
    })
    expect(found['No.']).toMatchObject({ field: 'tree' })
    expect(found['Tree']).toMatchObject({ field: 'species' })
  })
})

describe('stem and limb in one header', () => {
  it.each([
    ['Branch diameter at trunk (in)', 'diameter'],
    ['Trunk diameter at branch (in)', 'stem'],
    ['Durchmesser Ast am Stamm (cm)', 'diameter'],
    ['Stammdurchmesser am Ast (cm)', 'stem'],
    ['Diámetro de la rama en el tronco (cm)', 'diameter'],
    ['Diamètre du tronc à la branche (cm)', 'stem']
  ] as const)('“%s” is the %s: what is named first is measured', (header, field) => {
    expect(headed(header, field)).toMatchObject({ field, confidence: 'sure' })
  })
})

describe('what a header says of its cells', () => {
  it('keeps a length from being a yes, and a yes from being a length', () => {
    expect(beside('Bark (mm)', 'bark', inches, 'limb')?.field ?? null).toBeNull()
    expect(beside('Cavity (in)', 'decay', inches, 'limb')?.field ?? null).toBeNull()
    expect(beside('Height (y/n)', 'height', yes)?.field ?? null).toBeNull()
    expect(beside('Decay (%)', 'decay', ['10', '20', '0', '5'], 'limb')?.field ?? null).toBeNull()
  })

  it('tells a girth at breast height from a crown base, which are both shortened to CBH', () => {
    expect(headed('CBH (in)', 'trunk')).toMatchObject({ field: 'trunk', girth: true })
    expect(headed('CBH (ft)', 'crownBase')).toMatchObject({ field: 'crownBase', girth: false })
  })
})

describe('two columns for one field', () => {
  it('are asked about where neither is the better one', () => {
    const found = table({
      'Tree ID': ['T1', 'T2', 'T3', 'T4'],
      Species: ['Red maple', 'Pin oak', 'Elm', 'Oak'],
      'Tree height (ft)': feet,
      'Height of tree (ft)': ['13', '21', '7', '15']
    })
    expect(
      [found['Tree height (ft)'], found['Height of tree (ft)']].filter((each) => each?.field === 'height')
    ).toHaveLength(1)
    expect(found['Tree height (ft)']?.confidence).not.toBe('sure')
  })
})

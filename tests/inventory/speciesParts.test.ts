/** The kind of a tree in several columns: genus and species, a cultivar, a common name beside a botanical one. */
import { readCsv } from '../../src/file/csvFile'
import type { ReadingChoices } from '../../src/inventory/inventory'
import { readSheets } from '../../src/inventory/readSheets'

function read(text: string, choices: ReadingChoices = {}) {
  const sheet = { name: 'Survey', rows: readCsv(text.trim()), top: 0, left: 0 }
  const { trees, problems, matches } = readSheets([sheet], choices)
  const told = problems.filter(({ code }) => code === 'species-joined')
  return {
    species: trees.map(({ species }) => species),
    told: told.map(({ message }) => message),
    codes: problems.map(({ code }) => code),
    asked: matches.filter(({ confidence }) => confidence === 'likely').length
  }
}

const rows = (...lines: readonly string[]): string =>
  lines
    .map((line, at) => (at === 0 ? `Tree,${line},Height (ft)` : `${String(at)},${line},${String(20 + at)}`))
    .join('\n')

test.each([
  [
    'Genus,Species',
    ['Acer,rubrum', 'Quercus,palustris', 'Ulmus,'],
    ['Acer rubrum', 'Quercus palustris', 'Ulmus']
  ],
  ['Gattung,Art', ['Acer,platanoides', 'Tilia,cordata'], ['Acer platanoides', 'Tilia cordata']],
  ['Genre,Espèce', ['Acer,platanoides', 'Tilia,x europaea'], ['Acer platanoides', 'Tilia x europaea']],
  ['Género,Especie', ['Acer,negundo', 'Tilia,sp.'], ['Acer negundo', 'Tilia sp.']],
  ['Species,Genus', ['rubrum,Acer', 'palustris,Quercus'], ['Acer rubrum', 'Quercus palustris']],
  [
    'Genus,Species,Cultivar',
    ['Acer,rubrum,Red Sunset', "Acer,rubrum,'Armstrong'", 'Acer,rubrum,-'],
    ["Acer rubrum 'Red Sunset'", "Acer rubrum 'Armstrong'", 'Acer rubrum']
  ],
  ['Species,Cultivar', ['Red maple,Red Sunset', 'Elm,'], ["Red maple 'Red Sunset'", 'Elm']],
  ['Genus,Species', ['Acer,Acer rubrum', 'Quercus,Pin oak'], ['Acer rubrum', 'Pin oak (Quercus)']],
  ['Common name,Botanical name', ['Red maple,Acer rubrum', 'Elm,'], ['Red maple (Acer rubrum)', 'Elm']],
  ['Scientific name,Common name', ['Acer rubrum,Red maple', ',Elm'], ['Red maple (Acer rubrum)', 'Elm']],
  ['Species,Scientific name', ['Red maple,Acer rubrum', 'Elm,Elm'], ['Red maple (Acer rubrum)', 'Elm']],
  [
    'Baumart deutsch,Baumart botanisch',
    ['Spitzahorn,Acer platanoides', 'Ulme,unbekannt'],
    ['Spitzahorn (Acer platanoides)', 'Ulme']
  ],
  [
    'Genre,Espèce,Nom commun',
    ['Acer,platanoides,Érable plane', 'Tilia,cordata,'],
    ['Érable plane (Acer platanoides)', 'Tilia cordata']
  ]
])('“%s” is one name', (header, cells, species) => {
  const found = read(rows(header, ...cells))
  expect(found.species).toEqual(species)
  expect(found.told).toHaveLength(1)
  expect(found.codes).not.toContain('column-twice')
  expect(found.codes).not.toContain('column-unknown')
  expect(found.asked).toBe(0)
})

test('says in one line which columns they are', () => {
  expect(read(rows('Genus,Species,Cultivar', 'Acer,rubrum,Red Sunset')).told).toEqual([
    'The columns “Genus” (B), “Species” (C) and “Cultivar” (D) name the species of each tree together, and are read as one name (at Survey!C1).'
  ])
})

test.each([
  ['Species,Species code', ['Red maple,ACRU', 'Elm,ULAM'], ['Red maple', 'Elm']],
  ['Genus', ['Acer', 'Ulmus'], ['Acer', 'Ulmus']],
  ['Species,Soil type', ['Red maple,loam', 'Elm,clay'], ['Red maple', 'Elm']]
])('“%s” is not joined', (header, cells, species) => {
  const found = read(rows(header, ...cells))
  expect(found.species).toEqual(species)
  expect(found.told).toEqual([])
})

test('what a person said of a column stands', () => {
  const text = rows('Genus,Species', 'Acer,Red maple', 'Ulmus,Elm')
  const found = read(text, { answers: [{ header: 'Species', field: 'species' }] })
  expect(found.species).toEqual(['Red maple', 'Elm'])
  expect(found.told).toEqual([])
})

test('limbs as rows say it once, and units in rows beside it are read too', () => {
  const { trees } = readSheets([
    {
      name: 'Survey',
      top: 0,
      left: 0,
      rows: [
        [
          'Tree',
          'Genus',
          'Species',
          'Height (ft)',
          'Limb',
          'Limb dia',
          'Unit',
          'Stem dia (in)',
          'Origin (ft)',
          'Tip (ft)'
        ],
        ['T1', 'Acer', 'rubrum', 30, 'A', 4, 'in', 5, 7, 28],
        ['T1', null, null, null, 'B', 7, 'cm', 5.4, 6.5, 24]
      ]
    }
  ])
  expect(
    trees.map(({ species, limbs }) => [species, ...limbs.map(({ diameter }) => Math.round(diameter ?? 0))])
  ).toEqual([['Acer rubrum', 102, 70]])
})

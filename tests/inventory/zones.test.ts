/** Zones: a column of their own beside the street, the names of sheets, lines between the rows, a form. */
import type { Cell } from '../../shared/cells'
import { readSheets } from '../../src/inventory/readSheets'
import { namesZone } from '../../src/inventory/survey/zoneNames'

const measures = ['Tree', 'Species', 'Height (ft)', 'DBH (in)']
const oak = (id: Cell): Cell[] => [id, 'Red oak', 30, 9]
const elm = (id: Cell): Cell[] => [id, 'Elm', 28, 8]

type Sheet = readonly (readonly Cell[])[]

/** Sheets by their names, as trees with their places, and the codes of what is told. */
function read(sheets: Readonly<Record<string, Sheet>>) {
  const given = Object.entries(sheets).map(([name, rows]) => ({ name, rows, top: 0, left: 0 }))
  const { trees, problems, matches } = readSheets(given)
  return {
    places: trees.map(({ id, zone, site }) => [id, zone, site]),
    codes: problems.map(({ code }) => code),
    asked: matches.filter(({ confidence }) => confidence === 'likely').map(({ header }) => header)
  }
}

describe('a column of zones beside one of streets', () => {
  it.each([
    ['Zone', 'Street'],
    ['District', 'Address'],
    ['Sector', 'Location'],
    ['Bezirk', 'Straße'],
    ['Stadtteil', 'Standort'],
    ['Secteur', 'Rue'],
    ['Zona', 'Calle'],
    ['Barrio', 'Ubicación'],
    ['Park', 'Street']
  ])('“%s” and “%s” are read as what they are', (zone, street) => {
    for (const swapped of [false, true]) {
      const place = (one: Cell, other: Cell): Cell[] => (swapped ? [other, one] : [one, other])
      const { places, codes } = read({
        Trees: [
          [...place(zone, street), ...measures],
          [...place('A', 'Mill Lane'), ...oak(1)],
          [...place('A', 'Dock Road'), ...elm(2)],
          [...place('B', 'Mill Lane'), ...oak(3)]
        ]
      })
      expect(places).toEqual([
        ['1', 'A', 'Mill Lane'],
        ['2', 'A', 'Dock Road'],
        ['3', 'B', 'Mill Lane']
      ])
      expect(codes).not.toContain('column-twice')
    }
  })

  it('is asked about where the words hardly tell which is the larger', () => {
    const { places, asked } = read({
      Trees: [
        ['Site', 'Street', ...measures],
        ['Mill works', 'Mill Lane', ...oak(1)],
        ['Mill works', 'Dock Road', ...elm(2)]
      ]
    })
    expect(places[0]).toEqual(['1', 'Mill works', 'Mill Lane'])
    expect(asked).toEqual(['Site'])
  })

  it('alone is the zone, and a street alone is none', () => {
    const alone = read({
      Trees: [
        ['Zone', ...measures],
        ['A', ...oak(1)],
        ['B', ...elm(2)]
      ]
    })
    expect(alone.places).toEqual([
      ['1', 'A', ''],
      ['2', 'B', '']
    ])
    const street = read({
      Trees: [
        ['Street', ...measures],
        ['Mill Lane', ...oak(1)]
      ]
    })
    expect(street.places).toEqual([['1', '', 'Mill Lane']])
  })

  it('tells trees apart whose numbers begin again in each zone', () => {
    const { places } = read({
      Trees: [
        ['Zone', ...measures],
        ['A', ...oak(1)],
        ['A', ...elm(2)],
        ['B', 1, 'Ginkgo', 20, 5],
        ['B', 2, 'Hackberry', 41, 15]
      ]
    })
    expect(places.map(([id, zone]) => [id, zone])).toEqual([
      ['1 (A)', 'A'],
      ['2 (A)', 'A'],
      ['1 (B)', 'B'],
      ['2 (B)', 'B']
    ])
  })
})

describe('a zone without a column', () => {
  it('is the name of the sheet', () => {
    const { places, codes } = read({
      'Zone A': [measures, oak(1), elm(2)],
      'Zone B': [measures, oak(3)]
    })
    expect(places).toEqual([
      ['1', 'Zone A', ''],
      ['2', 'Zone A', ''],
      ['3', 'Zone B', '']
    ])
    expect(codes.filter((code) => code === 'zones-from-sheets')).toHaveLength(1)
  })

  it('is the line above the rows, which is no note then', () => {
    const { places, codes } = read({
      Trees: [measures, ['Zone A'], oak(1), elm(2), ['Zone B:'], oak(3)]
    })
    expect(places).toEqual([
      ['1', 'Zone A', ''],
      ['2', 'Zone A', ''],
      ['3', 'Zone B', '']
    ])
    expect(codes).toContain('zones-from-lines')
    expect(codes).not.toContain('notes-left-out')
  })

  it('is no tree where nothing names the trees', () => {
    const { places } = read({
      Trees: [measures.slice(1), ['Zone A'], oak(1).slice(1), elm(2).slice(1), ['Zone B'], oak(3).slice(1)]
    })
    expect(places.map(([, zone]) => zone)).toEqual(['Zone A', 'Zone A', 'Zone B'])
  })

  it('stands in the form above the trees, unless a column says it of each', () => {
    const form = [['Zone:', 'North'], []]
    expect(read({ Trees: [...form, measures, oak(1), elm(2)] }).places).toEqual([
      ['1', 'North', ''],
      ['2', 'North', '']
    ])
    const own = [...measures, 'Zone']
    const { places } = read({ Trees: [...form, own, [...oak(1), 'A'], [...elm(2), 'B']] })
    expect(places.map(([, zone]) => zone)).toEqual(['A', 'B'])
  })

  it('gives way to what a column says, and fills in where its cell is blank', () => {
    const own = [...measures, 'Zone']
    const { places } = read({
      'Zone A': [own, [...oak(1), 'A1'], [...elm(2), null]],
      Other: [own, [...oak(3), 'B']]
    })
    expect(places.map(([, zone]) => zone)).toEqual(['A1', 'Zone A', 'B'])
  })
})

test.each([
  ['Zone A', true],
  ['Zone 3', true],
  ['North sector', true],
  ['North Sector', true],
  ['Bezirk Nord', true],
  ['Sektor 3b', true],
  ['Secteur du Moulin', true],
  ['Barrio San Roque', true],
  ['Zones', false],
  ['Trees', false],
  ['Section closed for repairs', false],
  ['This section was surveyed in the rain', false],
  ['Area in need of pruning', false]
])('“%s” names a zone: %s', (text, isOne) => {
  expect(namesZone(text)).toBe(isOne)
})

describe('a line of its own that names a zone is no tree', () => {
  const trees: Cell[][] = [oak('Oak 7'), elm('Elm 2')].map((row) => [...row])
  it.each<[string, Cell[]]>([
    ['the word and a letter', ['Block D', null, null, null]],
    ['all in capitals, merged over the row', ['BEREICH 4', 'BEREICH 4', 'BEREICH 4', 'BEREICH 4']],
    ['a count in brackets', ['Bloque 3 (12 árboles)', null, null, null]],
    ['a count behind a colon', [null, 'Parcelle 2 : 12 arbres', null, null]],
    ['a count in a cell of its own', ['Abteilung 5', null, null, 12]],
    ['a count with its word in a cell of its own', ['Sector B', '12 trees', null, null]],
    ['the word and the name in two cells', ['Zona', 'C', null, null]],
    ['the word and a number in two cells', ['Block', 5, null, null]],
    ['a direction', ['Secteur ouest', null, null, null]],
    ['set off by signs', ['*** Area 9 ***', null, null, null]],
    ['with a description', [null, 'Sektor 3 – Schulhof', null, null]],
    ['n = 4', ['Zone K, n = 4', null, null, null]]
  ])('%s', (_what, line) => {
    const { places, codes } = read({ Round: [[...measures], ...trees, line, oak('Oak 8'), elm('Elm 3')] })
    expect(places.map(([id]) => id)).toEqual(['Oak 7', 'Elm 2', 'Oak 8', 'Elm 3'])
    expect(places.map(([, zone]) => zone).slice(0, 2)).toEqual(['', ''])
    expect(places[2]?.[1]).not.toBe('')
    expect(codes).toContain('zones-from-lines')
  })

  it('but a tree is, where trees are named so', () => {
    const { places } = read({
      Round: [[...measures], oak('Row 1'), elm('Row 2'), ['Row 3', null, null, null]]
    })
    expect(places.map(([id]) => id)).toEqual(['Row 1', 'Row 2', 'Row 3'])
  })

  it('nor is a row with measurements', () => {
    const { places } = read({ Round: [[...measures], ...trees, ['Block E', 'Red oak', 31, 8]] })
    expect(places.map(([id]) => id)).toEqual(['Oak 7', 'Elm 2', 'Block E'])
  })

  it('fills the column of zones where that is blank below it, and tells trees apart whose numbers begin again', () => {
    const { places, codes } = read({
      Round: [
        ['Sector', ...measures],
        ['Sector 1', null, null, null, null],
        [null, ...oak(1)],
        [null, ...elm(2)],
        ['Sector 2', null, null, null, null],
        [null, ...oak(1)],
        [null, ...elm(2)]
      ]
    })
    expect(places.map(([, zone]) => zone)).toEqual(['Sector 1', 'Sector 1', 'Sector 2', 'Sector 2'])
    expect(codes).toContain('zones-from-lines')
  })

  it('tells alike trees apart by the line above them', () => {
    const { places } = read({
      Round: [
        [...measures],
        ['Block A', null, null, null],
        oak(1),
        elm(2),
        ['Block B', null, null, null],
        oak(1),
        elm(2)
      ]
    })
    expect(places.map(([id, zone]) => [id, zone])).toEqual([
      ['1 (Block A)', 'Block A'],
      ['2 (Block A)', 'Block A'],
      ['1 (Block B)', 'Block B'],
      ['2 (Block B)', 'Block B']
    ])
  })
})

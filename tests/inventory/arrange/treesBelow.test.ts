/** Columns that repeat for each tree, and numbers of trees over a table on its side. All inventories are invented. */
import { readCsv } from '../../../src/file/csvFile'
import { readSheets } from '../../../src/inventory/readSheets'

function read(text: string) {
  const { trees, problems, matches } = readSheets([
    { name: 'Survey', rows: readCsv(text.trim()), top: 0, left: 0 }
  ])
  const cm = (value: number | null): number | null => (value === null ? null : Math.round(value) / 10)
  const m = (value: number | null): number | null => (value === null ? null : Math.round(value * 100) / 100)
  return {
    trees: trees.map(({ id, species, trunk, height, limbs }) => [
      id,
      species,
      cm(trunk),
      m(height),
      ...limbs.map(({ id: limb, diameter, stem, origin, tip }) =>
        [limb, cm(diameter), cm(stem), m(origin), m(tip)].join(' ')
      )
    ]),
    fields: matches.map(({ field }) => field),
    told: (code: string) => problems.find((each) => each.code === code),
    codes: problems.map(({ code }) => code)
  }
}

describe('columns that repeat for each tree', () => {
  test('one row per plot: every tree of every plot is one', () => {
    const found = read(`
Plot,Tree 1 dia (cm),Tree 1 height (m),Tree 2 dia (cm),Tree 2 height (m),Tree 3 dia (cm),Tree 3 height (m)
P1,22,9,20,8.5,31,12.5
P2,18,7.6,16.5,6.7,,
P3,22.5,9.2,28,11,24,9.1`)
    expect(found.trees).toEqual([
      ['P1-1', '', 22, 9],
      ['P1-2', '', 20, 8.5],
      ['P1-3', '', 31, 12.5],
      ['P2-1', '', 18, 7.6],
      ['P2-2', '', 16.5, 6.7],
      ['P3-1', '', 22.5, 9.2],
      ['P3-2', '', 28, 11],
      ['P3-3', '', 24, 9.1]
    ])
    expect(found.told('trees-in-columns')?.message).toBe(
      'The columns from Survey!B1 to Survey!G1 repeat and were read as 3 trees in each row.'
    )
  })

  test('one row per limb, below titles, with units in a row of their own', () => {
    const found = read(`
Limb,Tree A,,,,Tree B,,,
,Dia,Stem,From,To,Dia,Stem,From,To
,cm,cm,m,m,cm,cm,m,m
1,10.4,12.7,2.1,8.5,9.1,11.2,1.8,7.3
2,6.9,13.7,2,7.3,5.6,12.7,1.5,6.1
3,,,,,7,10,2,6`)
    expect(found.trees).toEqual([
      ['A', '', null, null, '1 10.4 12.7 2.1 8.5', '2 6.9 13.7 2 7.3'],
      ['B', '', null, null, '1 9.1 11.2 1.8 7.3', '2 5.6 12.7 1.5 6.1', '3 7 10 2 6']
    ])
  })

  test('one row per limb, the number of the tree in each header', () => {
    const found = read(`
Branch,T1_branch_dia_cm,T1_stem_dia_cm,T1_origin_m,T1_tip_m,T2_branch_dia_cm,T2_stem_dia_cm,T2_origin_m,T2_tip_m
A,10.4,12.7,2.1,8.5,9.1,11.2,1.8,7.3
B,6.9,13.7,2,7.3,,,,`)
    expect(found.trees).toEqual([
      ['T1', '', null, null, 'A 10.4 12.7 2.1 8.5', 'B 6.9 13.7 2 7.3'],
      ['T2', '', null, null, 'A 9.1 11.2 1.8 7.3']
    ])
  })

  test('in German, with a mean, a note and remarks behind the last tree', () => {
    const found = read(`
Aufnahme der Probeflächen;;;;;;;
Fläche;Baum 1 Art;Baum 1 BHD (cm);Baum 1 Höhe (m);Baum 2 Art;Baum 2 BHD (cm);Baum 2 Höhe (m);Bemerkung
F1;Eiche;22;9;Ulme;20;8,5;
F2;Linde;31;12;;;;windiger Tag
Mittel;;26,5;10,5;;20;8,5;
Aufgenommen: im Juni;;;;;;;`)
    expect(found.trees).toEqual([
      ['F1-1', 'Eiche', 22, 9],
      ['F1-2', 'Ulme', 20, 8.5],
      ['F2-1', 'Linde', 31, 12]
    ])
    expect(found.told('totals-left-out')?.message).toContain('row 5')
    expect(found.told('notes-left-out')?.message).toContain('row 6')
  })

  test('counted without the word, where the kind comes again with its size', () => {
    const found = read(`
Yard,Species 1,DBH 1 (in),Height 1 (ft),Species 2,DBH 2 (in),Height 2 (ft)
Mill,Oak,10,30,Elm,8,25
Dock,Lime,6,20,Oak,7,22`)
    expect(found.trees.map(([id, species]) => [id, species])).toEqual([
      ['Mill-1', 'Oak'],
      ['Mill-2', 'Elm'],
      ['Dock-1', 'Lime'],
      ['Dock-2', 'Oak']
    ])
  })

  test('one row per survey: the trees are the same, and the latest survey is planned', () => {
    const found = read(`
Date,Tree 1 DBH (cm),Tree 1 height (m),Tree 2 DBH (cm),Tree 2 height (m)
2021-05-01,18,8,20,9
2024-05-03,22,9.5,25,10.4`)
    expect(found.trees).toEqual([
      ['1', '', 22, 9.5],
      ['2', '', 25, 10.4]
    ])
    expect(found.codes).toContain('earlier-surveys')
  })

  test.each([
    ['stems of a tree', 'Tree,Height (m),DBH 1 (cm),DBH 2 (cm)\n1,9,12,14\n2,8,10,11'],
    [
      'distances to trees',
      'Tree,Height (m),Distance to tree 1 (m),Distance to tree 2 (m)\n1,9,12,14\n2,8,10,11'
    ],
    ['limbs', 'Tree,Height (m),Limb 1 dia (cm),Limb 1 tip (m),Limb 2 dia (cm),Limb 2 tip (m)\n1,9,12,8,14,7'],
    ['years', 'Tree,Tree 2021 height (m),Tree 2024 height (m)\n1,9,12\n2,8,10']
  ])('not where they are %s', (_what, text) => {
    const found = read(text)
    expect(found.codes).not.toContain('trees-in-columns')
    expect(found.trees.map(([id]) => id)).toContain('1')
  })
})

describe('a table on its side whose first row numbers the trees', () => {
  test.each(['Attribute,Tree 1,Tree 2', ',1,2', 'Merkmal,Baum 1,Baum 2'])('“%s”', (numbers) => {
    const found = read(`${numbers}\nSpecies,Oak,Elm\nDBH (cm),22,20\nHeight (m),9,8.5`)
    expect(found.trees.map(([id, ...rest]) => [String(id).slice(-1), ...rest])).toEqual([
      ['1', 'Oak', 22, 9],
      ['2', 'Elm', 20, 8.5]
    ])
    expect(found.codes).not.toContain('id-from-row')
  })
})

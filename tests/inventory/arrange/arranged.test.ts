import { readCsv } from '../../../src/file/csvFile'
import { readSheets } from '../../../src/inventory/readSheets'

/** What a file's limbs are read as, in meters and centimeters, and what is told of it. All inventories are invented. */
function read(text: string) {
  const { trees, problems } = readSheets([{ name: 'Survey', rows: readCsv(text), top: 0, left: 0 }])
  const round = (value: number | null): number | null =>
    value === null ? null : Math.round(value * 100) / 100
  const cm = (value: number | null): number | null => (value === null ? null : round(value / 10))
  return {
    trees: trees.map(({ id, height, crownBase, limbs }) => [
      id,
      round(height),
      round(crownBase),
      ...limbs.map((limb) => [limb.id, cm(limb.diameter), cm(limb.stem), round(limb.origin), round(limb.tip)])
    ]),
    told: (code: string) => problems.find((each) => each.code === code)?.cell,
    codes: problems.map(({ code }) => code)
  }
}

const maple = [9.14, 1.83]
const mapleA = ['A', 10.41, 12.7, 2.13, 8.53]
const mapleB = ['B', 6.86, 13.72, 1.98, 7.32]

describe('a table on its side', () => {
  test('with a column of units, in French', () => {
    const found = read(
      `
Relevé des jeunes arbres;;;;
Arbre;;1;1;2
Hauteur;m;9,1;9,1;10
Base du houppier;m;1,7;1,7;2
Stade;;jeune;jeune;jeune
Vigueur;;bonne;bonne;bonne
Branche;;A;B;A
Ø branche;cm;10,1;6,9;11,2
Ø tige au-dessus;cm;12,4;13,2;13,1
Insertion;m;2;1,9;2,4
Extrémité;m;8,6;7,5;9,5`.trim()
    )
    expect(found.trees).toEqual([
      ['1', 9.1, 1.7, ['A', 10.1, 12.4, 2, 8.6], ['B', 6.9, 13.2, 1.9, 7.5]],
      ['2', 10, 2, ['A', 11.2, 13.1, 2.4, 9.5]]
    ])
    expect(found.told('table-turned')).toBe('Survey!A2')
  })

  test('one below the other, a tree each, its sizes in its first column', () => {
    const found = read(
      `
Tree,T1,,
Height (ft),30,,
Crown base (ft),6,,
Stage,young,,
Vigor,good,,
Limb,A,B,C
Dia (in),4.1,2.7,3.2
Stem (in),5,5.4,4.6
Starts at (ft),7,6.5,9
Tip (ft),28,24,27
,,,
Tree,T2,,
Height (ft),33,,
Crown base (ft),7,,
Stage,young,,
Vigor,good,,
Limb,A,B,
Dia (in),4.4,3.1,
Stem (in),5.6,6,
Starts at (ft),8,7.5,
Tip (ft),31,26,`.trim()
    )
    expect(found.trees).toEqual([
      ['T1', ...maple, mapleA, mapleB, ['C', 8.13, 11.68, 2.74, 8.23]],
      ['T2', 10.06, 2.13, ['A', 11.18, 14.22, 2.44, 9.45], ['B', 7.87, 15.24, 2.29, 7.92]]
    ])
    expect(found.told('table-turned')).toBe('Survey!A1')
  })
})

describe('labels and values without a table', () => {
  test('in one cell each, units with the numbers', () => {
    const found = read(
      `
Tree: T1
Height: 30 ft
Crown base: 6 ft
Life stage: young
Vigor: good
Limb: A
Limb diameter: 4.1 in
Stem diameter above union: 5 in
Origin: 7 ft
Tip: 28 ft
Limb: B
Limb diameter: 2.7 in
Stem diameter above union: 5.4 in
Origin: 6.5 ft
Tip: 24 ft`.trim()
    )
    expect(found.trees).toEqual([['T1', ...maple, mapleA, mapleB]])
    expect(found.told('form-alone')).toBe('Survey!A1')
  })

  test('questions with their answers, limbs counted', () => {
    const found = read(
      `
Question,Answer
What is the tree number?,12
How tall is the tree (ft)?,30
At what height is the lowest live branch (ft)?,6
Which life stage?,young
How is its vigor?,good
Limb 1 diameter (in),4.1
Limb 1 stem diameter above the union (in),5
Limb 1 origin (ft),7
Limb 1 tip (ft),28
Limb 2 diameter (in),2.7
Limb 2 stem diameter above the union (in),5.4
Limb 2 origin (ft),6.5
Limb 2 tip (ft),24`.trim()
    )
    expect(found.trees).toEqual([
      ['12', ...maple, ['Limb 1', ...mapleA.slice(1)], ['Limb 2', ...mapleB.slice(1)]]
    ])
    expect(found.told('form-alone')).toBe('Survey!A1')
  })

  test('several pairs a row, form below form, in German', () => {
    const found = read(
      `
Baumkontrolle Jungbaum;;;
Baum-Nr.:;17;Baumart:;Linde
Höhe (m):;9,1;Kronenansatz (m):;1,7
Altersstufe:;jung;Vitalität:;gut
Ast:;1;Astdurchmesser (cm):;10,1
Stammdurchmesser über dem Ast (cm):;12,4;Ansatzhöhe (m):;2
Spitze (m):;8,6;Einwachsende Rinde:;nein
Ast:;2;Astdurchmesser (cm):;6,9
Stammdurchmesser über dem Ast (cm):;13,2;Ansatzhöhe (m):;1,9
Spitze (m):;7,5;Einwachsende Rinde:;ja
Baum-Nr.:;18;Baumart:;Platane
Höhe (m):;10;Kronenansatz (m):;2
Altersstufe:;jung;Vitalität:;gut
Ast:;1;Astdurchmesser (cm):;11,2
Stammdurchmesser über dem Ast (cm):;13,1;Ansatzhöhe (m):;2,4
Spitze (m):;9,5;Einwachsende Rinde:;nein`.trim()
    )
    expect(found.trees).toEqual([
      ['17', 9.1, 1.7, ['1', 10.1, 12.4, 2, 8.6], ['2', 6.9, 13.2, 1.9, 7.5]],
      ['18', 10, 2, ['1', 11.2, 13.1, 2.4, 9.5]]
    ])
    expect(found.told('form-alone')).toBe('Survey!A2')
  })
})

describe('one measurement a row', () => {
  test('with a unit a row, in Spanish', () => {
    const found = read(
      `
Árbol;Rama;Medida;Valor;Unidad;Fecha
1;;Altura;9,1;m;2026-02-01
1;;Base de la copa;170;cm;2026-02-01
1;1;Diámetro de la rama;10,1;cm;2026-02-01
1;1;Diámetro del tronco sobre la unión;124;mm;2026-02-01
1;1;Altura de inserción;2;m;2026-02-01
1;1;Altura de la punta;8,6;m;2026-02-01
1;2;Diámetro de la rama;6,9;cm;2026-02-01
1;2;Diámetro del tronco sobre la unión;13,2;cm;2026-02-01
1;2;Altura de inserción;1,9;m;2026-02-01
1;2;Altura de la punta;7,5;m;2026-02-01
2;;Altura;10;m;2026-02-01
2;1;Diámetro de la rama;11,2;cm;2026-02-01
2;1;Diámetro del tronco sobre la unión;13,1;cm;2026-02-01
2;1;Altura de inserción;2,4;m;2026-02-01
2;1;Altura de la punta;9,5;m;2026-02-01`.trim()
    )
    expect(found.trees).toEqual([
      ['1', 9.1, 1.7, ['1', 10.1, 12.4, 2, 8.6], ['2', 6.9, 13.2, 1.9, 7.5]],
      ['2', 10, null, ['1', 11.2, 13.1, 2.4, 9.5]]
    ])
    expect(found.told('one-measurement-a-row')).toBe('Survey!A1')
  })

  test('that is given twice for a limb is told', () => {
    const { codes } = read(
      `
tree,limb,measure,value
T1,,tree height (ft),30
T1,A,limb diameter (in),4.1
T1,A,stem diameter (in),5
T1,A,limb diameter (in),4.6
T1,A,origin (ft),7
T1,A,tip (ft),28`.trim()
    )
    expect(codes).toContain('duplicate-limb')
  })
})

describe('rows of trees and of limbs under the same headers', () => {
  test('with the tree of each limb in a column', () => {
    const found = read(
      `
kind,id,tree_id,species,height_ft,dia_in,stem_dia_in,origin_ft,tip_ft,crown_base_ft,stage,vigor
tree,T1,,Red maple,30,7.2,,,,6,young,good
tree,T2,,Pin oak,33,8,,,,7,young,good
branch,T1-a,T1,,,4.1,5,7,28,,,
branch,T2-a,T2,,,4.4,5.6,8,31,,,
branch,T1-b,T1,,,2.7,5.4,6.5,24,,,
branch,T2-b,T2,,,3.1,6,7.5,26,,,`.trim()
    )
    expect(found.trees).toEqual([
      ['T1', ...maple, ['T1-a', ...mapleA.slice(1)], ['T1-b', ...mapleB.slice(1)]],
      ['T2', 10.06, 2.13, ['T2-a', 11.18, 14.22, 2.44, 9.45], ['T2-b', 7.87, 15.24, 2.29, 7.92]]
    ])
    expect(found.told('record-kinds')).toBe('Survey!A1:L7')
  })
})

describe('more that is read in another arrangement', () => {
  test('the values of several limbs beside each other, a measure a row', () => {
    const { trees } = read(
      `
tree,measure,A,B
T1,limb diameter (in),4.1,2.7
T1,stem diameter (in),5,5.4
T1,origin (ft),7,6.5
T1,tip (ft),28,24
T1,tree height (ft),30,`.trim()
    )
    expect(trees).toEqual([['T1', 9.14, null, mapleA, mapleB]])
  })

  test('answers that are ticked in columns of their own', () => {
    const { trees, problems } = readSheets([
      {
        ...{ name: 'Survey', top: 0, left: 0 },
        rows: readCsv(
          `
Tree,Height (ft),Crown base (ft),Stage: young,Stage: mature,Vigor good,Vigor fair,Limb,Limb dia (in),Stem dia (in),Origin (ft),Tip (ft),Bark none,Bark full
1,30,6,x,,x,,A,4.1,5,7,28,,x
2,33,7,,x,,x,A,4.4,5.6,8,31,x,
3,33,7,,x,x,x,A,4.4,5.6,8,31,x,`.trim()
        )
      }
    ])
    expect(trees.map(({ stage, vigor, limbs }) => [stage, vigor, limbs[0]?.bark])).toEqual([
      ['young', 'good', 'full'],
      ['mature', 'fair', 'none'],
      ['mature', null, 'none']
    ])
    // Two ticks are no answer.
    expect(problems.find(({ code }) => code === 'not-a-choice')?.message).toMatch(/good, fair/)
  })

  test('a line of words with the sizes of the tree, in German', () => {
    const { trees } = read(
      `
Baum 1 Linde 9,1 m hoch;;;;
Ast;Ø cm;Stamm cm;von m;bis m
1;10,1;12,4;2;8,6
2;6,9;13,2;1,9;7,5`.trim()
    )
    expect(trees).toEqual([['1', 9.1, null, ['1', 10.1, 12.4, 2, 8.6], ['2', 6.9, 13.2, 1.9, 7.5]]])
  })

  test('columns of numbers of which none is called a value are left to be told apart', () => {
    const { codes } = read(
      `
tree,limb,measure,first,second
T1,A,limb diameter (in),4.1,4.3
T1,A,stem diameter (in),5,5.1
T1,A,origin (ft),7,7
T1,A,tip (ft),28,27`.trim()
    )
    expect(codes).not.toContain('one-measurement-a-row')
  })
})

describe('words without numbers', () => {
  const words = ['tree', 'limb', 'dia', 'height', 'tip', 'live', 'foo', '??', 'x', '-']
  test.each([3, 5, 7, 11])('are told in a sentence, drawn by %d', (step) => {
    const lines = Array.from({ length: 200 }, (_none, row) =>
      Array.from(
        { length: 9 },
        (_cell, column) => words[(row * step + column * column * (row % step)) % words.length]
      )
    )
    const { problems, trees } = readSheets([
      { name: 'Survey', rows: lines.map((line) => line.map((word) => word ?? null)), top: 0, left: 0 }
    ])
    expect(trees).toEqual([])
    expect(problems).toHaveLength(1)
  })
})

import { readCsv } from '../../../src/file/csvFile'
import { sheetTables } from '../../../src/inventory/survey/sheetTables'

/** Two limbs a row under such headers, which stand in for `dia`, `stem`, `from` and `to`. */
function twoLimbs(headers: string) {
  const text = `Tree,Species,Height (ft),${headers}\n${[
    'T1,Red maple,30,4.1,5.0,7,28,2.7,5.4,6.5,24',
    'T2,Pin oak,33,4.4,5.6,8,31,3.1,6.0,7.5,26'
  ].join('\n')}`
  const [table] = sheetTables({ name: 'Survey', rows: readCsv(text), top: 0, left: 0 })
  return table?.header
}

const four = ['diameter', 'stem', 'origin', 'tip']

describe('columns that repeat for each limb', () => {
  it.each([
    '1st limb dia (in),1st limb stem (in),1st limb from (ft),1st limb to (ft),2nd limb dia (in),2nd limb stem (in),2nd limb from (ft),2nd limb to (ft)',
    'First limb diameter,First limb stem,First limb origin,First limb tip,Second limb diameter,Second limb stem,Second limb origin,Second limb tip',
    'Limb dia A (in),Stem dia A (in),Origin A (ft),Tip A (ft),Limb dia B (in),Stem dia B (in),Origin B (ft),Tip B (ft)',
    'Limb A dia,Limb A stem,Limb A origin,Limb A tip,Limb B dia,Limb B stem,Limb B origin,Limb B tip',
    'diaA,stemA,originA,tipA,diaB,stemB,originB,tipB',
    'limbs[0].diameter_in,limbs[0].stem_in,limbs[0].origin_ft,limbs[0].tip_ft,limbs[1].diameter_in,limbs[1].stem_in,limbs[1].origin_ft,limbs[1].tip_ft',
    '1. Ast Ø (in),1. Ast Stamm Ø (in),1. Ast von (ft),1. Ast bis (ft),2. Ast Ø (in),2. Ast Stamm Ø (in),2. Ast von (ft),2. Ast bis (ft)',
    '1ère branche Ø (po),1ère branche axe Ø (po),1ère branche départ (pi),1ère branche fin (pi),2e branche Ø (po),2e branche axe Ø (po),2e branche départ (pi),2e branche fin (pi)',
    'Limb #1 dia (in),Limb #1 stem (in),Limb #1 origin (ft),Limb #1 tip (ft),Limb #2 dia (in),Limb #2 stem (in),Limb #2 origin (ft),Limb #2 tip (ft)',
    'Limb I dia (in),Limb I stem (in),Limb I origin (ft),Limb I tip (ft),Limb II dia (in),Limb II stem (in),Limb II origin (ft),Limb II tip (ft)',
    'N limb dia (in),N limb stem dia (in),N limb origin (ft),N limb tip (ft),S limb dia (in),S limb stem dia (in),S limb origin (ft),S limb tip (ft)',
    'Lower limb dia (in),Lower limb stem dia (in),Lower limb origin (ft),Lower limb tip (ft),Upper limb dia (in),Upper limb stem dia (in),Upper limb origin (ft),Upper limb tip (ft)',
    'Limb dia (in),Stem dia (in),Origin (ft),Tip (ft),Limb dia (in).1,Stem dia (in).1,Origin (ft).1,Tip (ft).1',
    'Limb dia (in),Stem dia (in),Origin (ft),Tip (ft),Limb dia (in)2,Stem dia (in)2,Origin (ft)2,Tip (ft)2'
  ])('are the same four measures of each: %s', (headers) => {
    const header = twoLimbs(headers)
    expect(header?.groups?.groups).toHaveLength(2)
    expect(header?.columns.map(({ meaning }) => meaning.field).slice(3)).toEqual([...four, ...four])
  })

  it('are no limbs where a column beside them tells of one limb', () => {
    const text =
      'Tree,Limb,Limb dia 1 (in),Limb dia 2 (in),Stem dia 1 (in),Stem dia 2 (in),Origin (ft),Tip (ft)\nT1,A,4.1,4.2,5,5,7,28'
    const [table] = sheetTables({ name: 'Survey', rows: readCsv(text), top: 0, left: 0 })
    expect(table?.header.groups).toBeNull()
  })

  it.each([
    ['Long.', '"-83,51102"'],
    ['Long.', '13.40512'],
    ['Longitud', '"13,40512"'],
    ['Length', '12']
  ])('are limbs beside a column “%s” of %s, which may be a length or a longitude', (header, cell) => {
    const group = (limb: number) =>
      ['ID', 'diameter (in)', 'stem (in)', 'origin (ft)', 'tip (ft)'].map((name) => `Limb ${limb} ${name}`)
    const text = `Tree,Height (ft),${header},${[...group(1), ...group(2)].join(',')}\nT1,30,${cell},A,4.1,5.0,7,28,B,2.7,5.4,6.5,24`
    const [table] = sheetTables({ name: 'Survey', rows: readCsv(text), top: 0, left: 0 })
    expect(table?.header.groups?.groups).toHaveLength(2)
    expect(table?.header.columns[2]?.meaning.field).toBeNull()
  })

  it('are no limbs where nothing in them is measured', () => {
    const text =
      'Tree,Limb,Limb dia (in),Stem dia (in),Origin (ft),Tip (ft),Photo 1,Link 1,Photo 2,Link 2\nT1,A,4.1,5,7,28,a.jpg,x,b.jpg,y'
    const [table] = sheetTables({ name: 'Survey', rows: readCsv(text), top: 0, left: 0 })
    expect(table?.header.groups).toBeNull()
    expect(table?.header.columns.map(({ meaning }) => meaning.field).slice(2, 6)).toEqual(four)
  })
})

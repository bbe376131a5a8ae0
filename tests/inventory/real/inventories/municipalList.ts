import { csv } from '../csvFile'
import { tree, type RealInventory } from '../expected'

export const municipalList: RealInventory = {
  shape: 'a municipal list of trees alone, with vacant sites, a stump, and what a city keeps of its streets',
  file: csv(`
SITE_ID,ADDRESS,STREET,SIDE,SPECIES,DBH,HT_FT,CROWN_BASE_FT,AGE,COND,WIRES,GROW_SPACE,YR_PLANTED,X_COORD,Y_COORD
1001,12,MILL LANE,FRONT,Red maple,9,32,7,young,good,NO,TREE LAWN,2012,451203.5,88120.2
1002,14,MILL LANE,FRONT,Vacant site,,,,,,NO,TREE LAWN,,451214.8,88121.0
1003,16,MILL LANE,SIDE,Pin oak,14,41,9,medium,fair,YES,PIT,2001,451226.0,88121.4
1004,18,MILL LANE,FRONT,STUMP,24,,,,,NO,TREE LAWN,,451238.4,88122.1
1005,20,MILL LANE,REAR,Hackberry,11,36,8,medium,good,NO,TREE LAWN,2004,451249.9,88122.8`),
  expected: {
    units: 'in-ft',
    columns: {
      '': 'A tree; B site|-; C site|-; E species; F trunk in; G height ft; H crownBase ft; I stage; J vigor'
    },
    trees: [
      tree('1001', 32, 7, { stage: 'young', vigor: 'good', trunk: 9 }),
      tree('1003', 41, 9, { stage: 'medium', vigor: 'fair', trunk: 14 }),
      tree('1005', 36, 8, { stage: 'medium', vigor: 'good', trunk: 11 })
    ],
    mayAsk: ['A1', 'D1', 'F1', 'I1', 'J1'],
    told: [
      ['', 'no limbs'],
      ['F1', 'unit']
    ],
    leftOut: { '3': 'vacant', '5': 'stump' }
  }
}

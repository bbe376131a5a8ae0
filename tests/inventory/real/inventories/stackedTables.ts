import { csv } from '../csvFile'
import { limb, tree, type RealInventory } from '../expected'

export const stackedTables: RealInventory = {
  shape: 'a table of trees and, below it, a table of limbs on one sheet, joined by id',
  file: csv(`
TREES,,,,,,
Tree,Species,Height (ft),Crown base (ft),Life stage,Vigor,
T1,Red maple,30,6,young,good,
T2,Pin oak,33,7,young,good,
,,,,,,
LIMBS,,,,,,
Tree,Limb,Limb dia (in),Stem dia (in),Origin (ft),Tip (ft),Included bark
T1,A,4.1,5,7,28,full
T1,B,2.7,5.4,6.5,24,none
T2,A,4.4,5.6,8,31,none
T2,B,3.1,6,7.5,26,none`),
  expected: {
    units: 'in-ft',
    columns: {
      '': 'A tree; B species|limb; C height|diameter; D crownBase|stem; E stage|origin; F vigor|tip; G bark'
    },
    trees: [
      tree(
        'T1',
        30,
        6,
        { stage: 'young', vigor: 'good' },
        limb('A', 4.1, 5, 7, 28, 'full'),
        limb('B', 2.7, 5.4, 6.5, 24, 'none')
      ),
      tree(
        'T2',
        33,
        7,
        { stage: 'young', vigor: 'good' },
        limb('A', 4.4, 5.6, 8, 31, 'none'),
        limb('B', 3.1, 6, 7.5, 26, 'none')
      )
    ],
    told: [['', 'joined']]
  }
}

import { csv } from '../csvFile'
import { limb, tree, type RealInventory } from '../expected'

export const stumpsAmongLimbs: RealInventory = {
  shape: 'stumps, removed trees and empty pits as rows between the limbs',
  file: csv(`
Tree,Species,Height (ft),Crown base (ft),Life stage,Vigor,Limb,Limb dia (in),Stem dia (in),Origin (ft),Tip (ft),Notes
T1,Red maple,30,6,young,good,A,4.1,5,7,28,
T1,Red maple,30,6,young,good,B,2.7,5.4,6.5,24,
T2,Stump,,,,,,,,,,grind 2027
T3,Empty pit,,,,,,,,,,plant in fall
T4,Pin oak,33,7,young,good,A,4.4,5.6,8,31,
T5,Removed 2025,,,,,,,,,,`),
  expected: {
    units: 'in-ft',
    columns: {
      '': 'A tree; B species; C height ft; D crownBase ft; E stage; F vigor; G limb; H diameter in; I stem in; J origin ft; K tip ft; L notes|treeNotes|-'
    },
    trees: [
      tree(
        'T1',
        30,
        6,
        { stage: 'young', vigor: 'good' },
        limb('A', 4.1, 5, 7, 28),
        limb('B', 2.7, 5.4, 6.5, 24)
      ),
      tree('T4', 33, 7, { stage: 'young', vigor: 'good' }, limb('A', 4.4, 5.6, 8, 31))
    ],
    leftOut: { '4': 'stump', '5': 'vacant', '7': 'removed' }
  }
}

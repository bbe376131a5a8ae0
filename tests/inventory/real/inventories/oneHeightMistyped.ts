import { csv } from '../csvFile'
import { limb, tree, type RealInventory } from '../expected'

export const oneHeightMistyped: RealInventory = {
  shape: 'one tree whose height differs in one of its rows: still one tree, and said',
  file: csv(`
Tree,Species,Height (ft),Crown base (ft),Life stage,Vigor,Limb,Limb dia (in),Stem dia (in),Origin (ft),Tip (ft)
T1,Red maple,30,6,young,good,A,4.1,5,7,28
T1,Red maple,30,6,young,good,B,2.7,5.4,6.5,24
T1,Red maple,33,6,young,good,C,3.2,4.6,9,27
T2,Pin oak,33,7,young,good,A,4.4,5.6,8,31`),
  expected: {
    units: 'in-ft',
    columns: {
      '': 'A tree; B species; C height ft; D crownBase ft; E stage; F vigor; G limb; H diameter in; I stem in; J origin ft; K tip ft'
    },
    trees: [
      tree(
        'T1',
        30,
        6,
        { stage: 'young', vigor: 'good' },
        limb('A', 4.1, 5, 7, 28),
        limb('B', 2.7, 5.4, 6.5, 24),
        limb('C', 3.2, 4.6, 9, 27)
      ),
      tree('T2', 33, 7, { stage: 'young', vigor: 'good' }, limb('A', 4.4, 5.6, 8, 31))
    ],
    told: [['C4', 'two values']]
  }
}

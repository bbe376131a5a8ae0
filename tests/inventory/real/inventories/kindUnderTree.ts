import { csv } from '../csvFile'
import { limb, tree, type RealInventory } from '../expected'

export const kindUnderTree: RealInventory = {
  shape: 'the column “Tree” holds the kind, “No.” the number; two trees of one kind',
  file: csv(`
No.,Tree,Height (ft),Crown base (ft),Life stage,Vigor,Limb,Limb dia (in),Stem dia (in),Origin (ft),Tip (ft)
1,Red maple,30,6,young,good,A,4.1,5,7,28
1,Red maple,30,6,young,good,B,2.7,5.4,6.5,24
2,Red maple,27,5,young,good,C,3.7,4.6,6,25
2,Red maple,27,5,young,good,D,2.8,5,5.6,22
3,Pin oak,34,8,young,good,A,4.8,5.9,9,32`),
  expected: {
    units: 'in-ft',
    columns: {
      '': 'A tree; B species; C height ft; D crownBase ft; E stage; F vigor; G limb; H diameter in; I stem in; J origin ft; K tip ft'
    },
    trees: [
      tree(
        '1',
        30,
        6,
        { stage: 'young', vigor: 'good' },
        limb('A', 4.1, 5, 7, 28),
        limb('B', 2.7, 5.4, 6.5, 24)
      ),
      tree(
        '2',
        27,
        5,
        { stage: 'young', vigor: 'good' },
        limb('C', 3.7, 4.6, 6, 25),
        limb('D', 2.8, 5, 5.6, 22)
      ),
      tree('3', 34, 8, { stage: 'young', vigor: 'good' }, limb('A', 4.8, 5.9, 9, 32))
    ],
    mayAsk: ['A1', 'B1']
  }
}

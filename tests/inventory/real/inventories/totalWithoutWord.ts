import { csv } from '../csvFile'
import { limb, tree, type RealInventory } from '../expected'

export const totalWithoutWord: RealInventory = {
  shape: 'sums in a row without a word for it: a blank id, no limb, numbers that add up',
  file: csv(`
Tree,DBH (in),Height (ft),Crown base (ft),Life stage,Vigor,Limb,Limb dia (in),Stem dia (in),Origin (ft),Tip (ft)
T1,7.2,30,6,young,good,A,4.1,5,7,28
T1,7.2,30,6,young,good,B,2.7,5.4,6.5,24
T2,8.4,33,7,young,good,A,4.4,5.6,8,31
,22.8,,,,,3,11.2,16,21.5,83`),
  expected: {
    units: 'in-ft',
    columns: {
      '': 'A tree; B trunk in; C height ft; D crownBase ft; E stage; F vigor; G limb; H diameter in; I stem in; J origin ft; K tip ft'
    },
    // 4.1 + 2.7 + 4.4 = 11.2, 5 + 5.4 + 5.6 = 16, 28 + 24 + 31 = 83.
    trees: [
      tree(
        'T1',
        30,
        6,
        { stage: 'young', vigor: 'good', trunk: 7.2 },
        limb('A', 4.1, 5, 7, 28),
        limb('B', 2.7, 5.4, 6.5, 24)
      ),
      tree('T2', 33, 7, { stage: 'young', vigor: 'good', trunk: 8.4 }, limb('A', 4.4, 5.6, 8, 31))
    ],
    leftOut: { '5': 'total' }
  }
}

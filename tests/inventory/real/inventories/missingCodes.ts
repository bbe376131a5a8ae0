import { csv } from '../csvFile'
import { limb, tree, type RealInventory } from '../expected'

export const missingCodes: RealInventory = {
  shape: 'codes for what was not measured: n/a, -, NM, -9999',
  file: csv(`
Tree,DBH (in),Height (ft),Crown base (ft),Life stage,Vigor,Limb,Limb dia (in),Stem dia (in),Origin (ft),Tip (ft),Lowest foliage on limb (ft)
T1,7.2,30,6,young,good,A,4.1,5,7,28,n/a
T1,7.2,30,6,young,good,B,2.7,5.4,6.5,24,-
T2,-9999,33,7,young,good,A,4.4,5.6,8,31,NM
T2,-9999,33,7,young,good,B,-9999,6,7.5,26,-9999`),
  expected: {
    units: 'in-ft',
    columns: {
      '': 'A tree; B trunk in; C height ft; D crownBase ft; E stage; F vigor; G limb; H diameter in; I stem in; J origin ft; K tip ft; L lowestFoliage ft'
    },
    trees: [
      tree(
        'T1',
        30,
        6,
        { stage: 'young', vigor: 'good', trunk: 7.2 },
        limb('A', 4.1, 5, 7, 28),
        limb('B', 2.7, 5.4, 6.5, 24)
      ),
      tree(
        'T2',
        33,
        7,
        { stage: 'young', vigor: 'good' },
        limb('A', 4.4, 5.6, 8, 31),
        limb('B', null, 6, 7.5, 26)
      )
    ],
    told: [['H5', 'missing']]
  }
}

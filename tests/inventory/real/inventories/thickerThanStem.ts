import { csv } from '../csvFile'
import { limb, tree, type RealInventory } from '../expected'

export const thickerThanStem: RealInventory = {
  shape: 'limb and stem diameters under each other’s header: every limb thicker than its stem',
  file: csv(`
Tree,Height (ft),Crown base (ft),Life stage,Vigor,Limb,Stem dia (in),Limb dia (in),Origin (ft),Tip (ft)
T1,30,6,young,good,A,3.1,5,7,28
T1,30,6,young,good,B,2.7,5.4,6.5,24
T2,33,7,young,good,A,3.4,5.6,8,31
T2,33,7,young,good,B,3.1,6,7.5,26`),
  expected: {
    units: 'in-ft',
    columns: {
      '': 'A tree; B height ft; C crownBase ft; D stage; E vigor; F limb; G stem in; H diameter in; I origin ft; J tip ft'
    },
    trees: [
      tree(
        'T1',
        30,
        6,
        { stage: 'young', vigor: 'good' },
        limb('A', 5, 3.1, 7, 28),
        limb('B', 5.4, 2.7, 6.5, 24)
      ),
      tree(
        'T2',
        33,
        7,
        { stage: 'young', vigor: 'good' },
        limb('A', 5.6, 3.4, 8, 31),
        limb('B', 6, 3.1, 7.5, 26)
      )
    ],
    asked: ['G1|H1|G2|H2'],
    told: [['', 'thicker']]
  }
}

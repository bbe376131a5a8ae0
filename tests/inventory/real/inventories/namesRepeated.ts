import { csv } from '../csvFile'
import { limb, tree, type RealInventory } from '../expected'

export const namesRepeated: RealInventory = {
  shape: 'the same names again for a second limb in the row, told apart by position only',
  file: csv(`
Tree,Height (ft),Crown base (ft),Life stage,Vigor,Limb,Dia (in),Stem (in),Origin (ft),Tip (ft),Limb,Dia (in),Stem (in),Origin (ft),Tip (ft)
T1,30,6,young,good,NE,4.1,5,7,28,SW,2.7,5.4,6.5,24
T2,33,7,young,good,N,4.4,5.6,8,31,S,3.1,6,7.5,26
T3,26,5,young,good,E,3.6,4.4,6,24,,,,,`),
  expected: {
    units: 'in-ft',
    columns: {
      '': 'A tree; B height ft; C crownBase ft; D stage; E vigor; F limb; G diameter in; H stem in; I origin ft; J tip ft; K limb; L diameter in; M stem in; N origin ft; O tip ft'
    },
    trees: [
      tree(
        'T1',
        30,
        6,
        { stage: 'young', vigor: 'good' },
        limb('NE', 4.1, 5, 7, 28),
        limb('SW', 2.7, 5.4, 6.5, 24)
      ),
      tree(
        'T2',
        33,
        7,
        { stage: 'young', vigor: 'good' },
        limb('N', 4.4, 5.6, 8, 31),
        limb('S', 3.1, 6, 7.5, 26)
      ),
      tree('T3', 26, 5, { stage: 'young', vigor: 'good' }, limb('E', 3.6, 4.4, 6, 24))
    ]
  }
}

import { csv } from '../csvFile'
import { limb, tree, type RealInventory } from '../expected'

export const swappedHeights: RealInventory = {
  shape: 'the headers of origin and tip stand over each other’s column',
  file: csv(`
Tree,Height (ft),Crown base (ft),Life stage,Vigor,Limb,Limb dia (in),Stem dia (in),Tip (ft),Origin (ft)
T1,30,6,young,good,A,4.1,5,7,28
T1,30,6,young,good,B,2.7,5.4,6.5,24
T2,33,7,young,good,A,4.4,5.6,8,31
T2,33,7,young,good,B,3.1,6,7.5,26`),
  expected: {
    units: 'in-ft',
    columns: {
      '': 'A tree; B height ft; C crownBase ft; D stage; E vigor; F limb; G diameter in; H stem in; I tip ft; J origin ft'
    },
    // Planned as typed, never turned round in silence.
    trees: [
      tree(
        'T1',
        30,
        6,
        { stage: 'young', vigor: 'good' },
        limb('A', 4.1, 5, 28, 7),
        limb('B', 2.7, 5.4, 24, 6.5)
      ),
      tree(
        'T2',
        33,
        7,
        { stage: 'young', vigor: 'good' },
        limb('A', 4.4, 5.6, 31, 8),
        limb('B', 3.1, 6, 26, 7.5)
      )
    ],
    ratios: 0,
    asked: ['I1|J1|I2|J2'],
    told: [['', 'origin above tip']]
  }
}

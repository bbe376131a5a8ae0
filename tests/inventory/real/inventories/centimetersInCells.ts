import { csv } from '../csvFile'
import { limb, tree, type RealInventory } from '../expected'

export const centimetersInCells: RealInventory = {
  shape: 'a column of inches in which half the cells say “cm” themselves',
  file: csv(`
Tree,Height (ft),Crown base (ft),Life stage,Vigor,Limb,Limb dia (in),Stem dia (in),Origin (ft),Tip (ft)
T1,30,6,young,good,A,4.1,5,7,28
T1,30,6,young,good,B,7 cm,13.7 cm,6.5,24
T2,33,7,young,good,A,11 cm,14.2 cm,8,31
T2,33,7,young,good,B,3.1,6,7.5,26`),
  expected: {
    units: 'in-ft',
    columns: {
      '': 'A tree; B height ft; C crownBase ft; D stage; E vigor; F limb; G diameter in; H stem in; I origin ft; J tip ft'
    },
    trees: [
      tree(
        'T1',
        30,
        6,
        { stage: 'young', vigor: 'good' },
        limb('A', 4.1, 5, 7, 28),
        limb('B', 7 / 2.54, 13.7 / 2.54, 6.5, 24)
      ),
      tree(
        'T2',
        33,
        7,
        { stage: 'young', vigor: 'good' },
        limb('A', 11 / 2.54, 14.2 / 2.54, 8, 31),
        limb('B', 3.1, 6, 7.5, 26)
      )
    ],
    told: [
      ['G3', 'unit'],
      ['H4', 'unit']
    ]
  }
}

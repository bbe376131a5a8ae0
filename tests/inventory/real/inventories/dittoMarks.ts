import { csv } from '../csvFile'
import { limb, tree, type RealInventory } from '../expected'

export const dittoMarks: RealInventory = {
  shape: 'ditto for the tree above: do., a pair of marks, an arrow down',
  file: csv(`
Tree,Species,Height (ft),Crown base (ft),Life stage,Vigor,Limb,Limb dia (in),Stem dia (in),Origin (ft),Tip (ft)
T1,Red maple,30,6,young,good,A,4.1,5,7,28
do.,do.,do.,do.,do.,do.,B,2.7,5.4,6.5,24
T2,Pin oak,33,7,young,good,A,4.4,5.6,8,31
"""","""","""","""","""","""",B,3.1,6,7.5,26`),
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
        limb('B', 2.7, 5.4, 6.5, 24)
      ),
      tree(
        'T2',
        33,
        7,
        { stage: 'young', vigor: 'good' },
        limb('A', 4.4, 5.6, 8, 31),
        limb('B', 3.1, 6, 7.5, 26)
      )
    ]
  }
}

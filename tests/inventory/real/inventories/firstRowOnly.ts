import { csv } from '../csvFile'
import { limb, tree, type RealInventory } from '../expected'

export const firstRowOnly: RealInventory = {
  shape: 'tree columns on the first row only, most trees with one or two limbs',
  file: csv(`
Tree,Species,Ht (ft),Crown base (ft),Life stage,Vigor,Limb,Limb dia (in),Stem dia (in),Origin (ft),Tip (ft)
T1,Red maple,30,6,young,good,A,4.1,5,7,28
,,,,,,B,2.7,5.4,6.5,24
T2,Hackberry,26,5,young,good,A,3.6,4.4,6,24
T3,Pin oak,34,8,young,good,A,4.8,5.9,9,32
,,,,,,B,3.4,6.2,8.5,28
T4,Ginkgo,22,4,young,fair,A,2.6,3.3,5,20`),
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
      tree('T2', 26, 5, { stage: 'young', vigor: 'good' }, limb('A', 3.6, 4.4, 6, 24)),
      tree(
        'T3',
        34,
        8,
        { stage: 'young', vigor: 'good' },
        limb('A', 4.8, 5.9, 9, 32),
        limb('B', 3.4, 6.2, 8.5, 28)
      ),
      tree('T4', 22, 4, { stage: 'young', vigor: 'fair' }, limb('A', 2.6, 3.3, 5, 20))
    ]
  }
}

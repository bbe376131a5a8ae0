import { csv } from '../csvFile'
import { limb, tree, type RealInventory } from '../expected'

export const idsWithCaseAndInvisibles: RealInventory = {
  shape: 'one id in several writings: case, a zero-width space, a no-break space, stray spaces',
  file: csv(`
Tree,Height (ft),Crown base (ft),Life stage,Vigor,Limb,Limb dia (in),Stem dia (in),Origin (ft),Tip (ft)
T1,30,6,young,good,A,4.1,5,7,28
t1,30,6,young,good,B,2.7,5.4,6.5,24
T1\u200B,30,6,young,good,C,3.2,4.6,9,27
T\u00A02,33,7,young,good,A,4.4,5.6,8,31
 T 2 ,33,7,young,good,B,3.1,6,7.5,26`),
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
        limb('B', 2.7, 5.4, 6.5, 24),
        limb('C', 3.2, 4.6, 9, 27)
      ),
      tree(
        'T 2|T\u00A02',
        33,
        7,
        { stage: 'young', vigor: 'good' },
        limb('A', 4.4, 5.6, 8, 31),
        limb('B', 3.1, 6, 7.5, 26)
      )
    ],
    told: [['', 'same id']]
  }
}

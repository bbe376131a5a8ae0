import { csv } from '../csvFile'
import { limb, tree, type RealInventory } from '../expected'

export const numberedChoices: RealInventory = {
  shape: 'choices with numbers before the words: “1 - good”, “2 - fair”, “semi mature” without a hyphen',
  file: csv(`
Tree,Height (ft),Crown base (ft),Life stage,Vigor,Limb,Limb dia (in),Stem dia (in),Origin (ft),Tip (ft)
T1,30,6,1 - young,1 - good,A,4.1,5,7,28
T1,30,6,1 - young,1 - good,B,2.7,5.4,6.5,24
T2,38,9,2 - semi mature,2 - fair,A,5.1,6.8,12,35
T2,38,9,2 - semi mature,2 - fair,B,3.3,7.4,10,30
T3,45,12,3 - mature,1 - good,A,5.2,9.4,15,40`),
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
        limb('B', 2.7, 5.4, 6.5, 24)
      ),
      tree(
        'T2',
        38,
        9,
        { stage: 'medium', vigor: 'fair' },
        limb('A', 5.1, 6.8, 12, 35),
        limb('B', 3.3, 7.4, 10, 30)
      ),
      tree('T3', 45, 12, { stage: 'mature', vigor: 'good' }, limb('A', 5.2, 9.4, 15, 40))
    ]
  }
}

import { csv } from '../csvFile'
import { limb, tree, type RealInventory } from '../expected'

export const lettersForClasses: RealInventory = {
  shape: 'single letters for classes: condition G, F, P and age Y, SM, M',
  file: csv(`
Tree no.,Spp.,Ht (ft),Crown base ht (ft),Age class (Y/SM/M),Condition (G/F/P),Limb,Limb dia (in),Stem dia (in),Origin (ft),Tip (ft)
1,Red maple,30,6,Y,G,A,4.1,5,7,28
1,Red maple,30,6,Y,G,B,2.7,5.4,6.5,24
2,Pin oak,38,9,SM,F,A,5.1,6.8,12,35
2,Pin oak,38,9,SM,F,B,3.3,7.4,10,30
3,Basswood,45,12,M,G,A,5.2,9.4,15,40
4,Hackberry,27,5,Y,P,A,3.7,4.6,6,25`),
  expected: {
    units: 'in-ft',
    columns: {
      '': 'A tree; B species; C height ft; D crownBase ft; E stage; F vigor; G limb; H diameter in; I stem in; J origin ft; K tip ft'
    },
    trees: [
      tree(
        '1',
        30,
        6,
        { stage: 'young', vigor: 'good' },
        limb('A', 4.1, 5, 7, 28),
        limb('B', 2.7, 5.4, 6.5, 24)
      ),
      tree(
        '2',
        38,
        9,
        { stage: 'medium', vigor: 'fair' },
        limb('A', 5.1, 6.8, 12, 35),
        limb('B', 3.3, 7.4, 10, 30)
      ),
      tree('3', 45, 12, { stage: 'mature', vigor: 'good' }, limb('A', 5.2, 9.4, 15, 40)),
      tree('4', 27, 5, { stage: 'young', vigor: 'poor' }, limb('A', 3.7, 4.6, 6, 25))
    ]
  }
}

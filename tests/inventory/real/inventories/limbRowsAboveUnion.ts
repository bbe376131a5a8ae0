import { csv } from '../csvFile'
import { limb, tree, type RealInventory } from '../expected'

export const limbRowsAboveUnion: RealInventory = {
  shape: 'limbs as rows, tree columns repeated, the stem “above union”, inches and feet',
  file: csv(`
Tree,Species,DBH (in),Height (ft),Crown base (ft),Life stage,Vigor,Limb,Limb diameter (in),Stem diameter above union (in),Starts at (ft),Reaches (ft),Included bark
T1,Red maple,7.2,30,6,young,good,A,4.1,5,7,28,full
T1,Red maple,7.2,30,6,young,good,B,2.7,5.4,6.5,24,none
T1,Red maple,7.2,30,6,young,good,C,3.2,4.6,9,27,none
T2,Pin oak,9.1,36,8,medium,good,A,4.9,6.8,10,33,partial
T2,Pin oak,9.1,36,8,medium,good,B,3.6,7.1,9,30,none`),
  expected: {
    units: 'in-ft',
    columns: {
      '': 'A tree; B species; C trunk in; D height ft; E crownBase ft; F stage; G vigor; H limb; I diameter in; J stem in; K origin ft; L tip ft; M bark'
    },
    trees: [
      tree(
        'T1',
        30,
        6,
        { stage: 'young', vigor: 'good', trunk: 7.2 },
        limb('A', 4.1, 5, 7, 28, 'full'),
        limb('B', 2.7, 5.4, 6.5, 24, 'none'),
        limb('C', 3.2, 4.6, 9, 27, 'none')
      ),
      tree(
        'T2',
        36,
        8,
        { stage: 'medium', vigor: 'good', trunk: 9.1 },
        limb('A', 4.9, 6.8, 10, 33, 'partial'),
        limb('B', 3.6, 7.1, 9, 30, 'none')
      )
    ]
  }
}

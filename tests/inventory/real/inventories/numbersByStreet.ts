import { csv } from '../csvFile'
import { limb, tree, type RealInventory } from '../expected'

export const numbersByStreet: RealInventory = {
  shape: 'tree numbers that start again in every street',
  file: csv(`
Street,No.,Species,Height (ft),Crown base (ft),Life stage,Vigor,Limb,Limb dia (in),Stem dia (in),Origin (ft),Tip (ft)
Mill Lane,1,Red maple,30,6,young,good,A,4.1,5,7,28
Mill Lane,1,Red maple,30,6,young,good,B,2.7,5.4,6.5,24
Mill Lane,2,Hackberry,26,5,young,good,A,3.6,4.4,6,24
Dock Road,1,Pin oak,34,8,young,good,A,4.8,5.9,9,32
Dock Road,1,Pin oak,34,8,young,good,B,3.4,6.2,8.5,28
Dock Road,2,Ginkgo,22,4,young,good,A,2.6,3.3,5,20`),
  expected: {
    units: 'in-ft',
    columns: {
      '': 'A site; B tree; C species; D height ft; E crownBase ft; F stage; G vigor; H limb; I diameter in; J stem in; K origin ft; L tip ft'
    },
    trees: [
      tree(
        '*',
        30,
        6,
        { stage: 'young', vigor: 'good' },
        limb('A', 4.1, 5, 7, 28),
        limb('B', 2.7, 5.4, 6.5, 24)
      ),
      tree('*', 26, 5, { stage: 'young', vigor: 'good' }, limb('A', 3.6, 4.4, 6, 24)),
      tree(
        '*',
        34,
        8,
        { stage: 'young', vigor: 'good' },
        limb('A', 4.8, 5.9, 9, 32),
        limb('B', 3.4, 6.2, 8.5, 28)
      ),
      tree('*', 22, 4, { stage: 'young', vigor: 'good' }, limb('A', 2.6, 3.3, 5, 20))
    ],
    mayAsk: ['B1'],
    told: [['', 'several trees']]
  }
}

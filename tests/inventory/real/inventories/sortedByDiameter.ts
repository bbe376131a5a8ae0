import { csv } from '../csvFile'
import { limb, tree, type RealInventory } from '../expected'

export const sortedByDiameter: RealInventory = {
  shape: 'rows sorted by limb diameter, so that the rows of one tree lie apart',
  file: csv(`
Limb dia (in),Stem dia (in),Tree,Limb,Height (ft),Crown base (ft),Life stage,Vigor,Origin (ft),Tip (ft)
4.4,5.6,T2,A,33,7,young,good,8,31
4.1,5,T1,A,30,6,young,good,7,28
3.6,4.4,T3,A,26,5,young,good,6,24
3.1,6,T2,B,33,7,young,good,7.5,26
2.7,5.4,T1,B,30,6,young,good,6.5,24
2.5,4.8,T3,B,26,5,young,good,5.6,21`),
  expected: {
    units: 'in-ft',
    columns: {
      '': 'A diameter in; B stem in; C tree; D limb; E height ft; F crownBase ft; G stage; H vigor; I origin ft; J tip ft'
    },
    trees: [
      tree(
        'T2',
        33,
        7,
        { stage: 'young', vigor: 'good' },
        limb('A', 4.4, 5.6, 8, 31),
        limb('B', 3.1, 6, 7.5, 26)
      ),
      tree(
        'T1',
        30,
        6,
        { stage: 'young', vigor: 'good' },
        limb('A', 4.1, 5, 7, 28),
        limb('B', 2.7, 5.4, 6.5, 24)
      ),
      tree(
        'T3',
        26,
        5,
        { stage: 'young', vigor: 'good' },
        limb('A', 3.6, 4.4, 6, 24),
        limb('B', 2.5, 4.8, 5.6, 21)
      )
    ]
  }
}

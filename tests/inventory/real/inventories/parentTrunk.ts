import { csv } from '../csvFile'
import { limb, tree, type RealInventory } from '../expected'

export const parentTrunk: RealInventory = {
  shape: 'every limb names its parent: “trunk”, “Main stem”, or a limb in another case',
  file: csv(`
Tree,Height (ft),Crown base (ft),Life stage,Vigor,Limb,Parent,Limb dia (in),Stem dia (in),Origin (ft),Tip (ft)
T1,30,6,young,good,NE scaffold,trunk,4.1,5,7,28
T1,30,6,young,good,SW scaffold,Trunk,2.7,5.4,6.5,24
T1,30,6,young,good,side of NE,NE Scaffold,1.6,3.9,10,20
T2,33,7,young,good,A,Main stem,4.4,5.6,8,31
T2,33,7,young,good,B,stem,3.1,6,7.5,26`),
  expected: {
    units: 'in-ft',
    columns: {
      '': 'A tree; B height ft; C crownBase ft; D stage; E vigor; F limb; G parent; H diameter in; I stem in; J origin ft; K tip ft'
    },
    trees: [
      tree(
        'T1',
        30,
        6,
        { stage: 'young', vigor: 'good' },
        limb('NE scaffold', 4.1, 5, 7, 28),
        limb('SW scaffold', 2.7, 5.4, 6.5, 24),
        limb('side of NE', 1.6, 3.9, 10, 20, null, { Parent: 'NE scaffold' })
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

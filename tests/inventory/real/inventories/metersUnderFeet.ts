import { csv } from '../csvFile'
import { limb, tree, type RealInventory } from '../expected'

export const metersUnderFeet: RealInventory = {
  shape: 'heights in meters under headers that say feet',
  file: csv(`
Tree,DBH (in),Height (ft),Crown base (ft),Life stage,Vigor,Limb,Limb dia (in),Stem dia (in),Origin (ft),Tip (ft)
T1,7.2,9.1,1.8,young,good,A,4.1,5,2.1,8.5
T1,7.2,9.1,1.8,young,good,B,2.7,5.4,2,7.3
T2,9.1,11,2.4,young,good,A,4.9,6.8,3,10.1
T2,9.1,11,2.4,young,good,B,3.6,7.1,2.7,9.1
T3,8.5,10.2,2.2,young,good,A,4.6,5.8,2.6,9.4`),
  expected: {
    units: 'in-ft',
    columns: {
      '': 'A tree; B trunk in; C height ft; D crownBase ft; E stage; F vigor; G limb; H diameter in; I stem in; J origin ft; K tip ft'
    },
    // A tree of 9 ft does not carry a trunk of 7 in: asked, and read as typed until somebody answers.
    trees: [
      tree(
        'T1',
        9.1,
        1.8,
        { stage: 'young', vigor: 'good', trunk: 7.2 },
        limb('A', 4.1, 5, 2.1, 8.5),
        limb('B', 2.7, 5.4, 2, 7.3)
      ),
      tree(
        'T2',
        11,
        2.4,
        { stage: 'young', vigor: 'good', trunk: 9.1 },
        limb('A', 4.9, 6.8, 3, 10.1),
        limb('B', 3.6, 7.1, 2.7, 9.1)
      ),
      tree('T3', 10.2, 2.2, { stage: 'young', vigor: 'good', trunk: 8.5 }, limb('A', 4.6, 5.8, 2.6, 9.4))
    ],
    asked: ['C1|C2'],
    mayAsk: ['D1', 'J1', 'K1'],
    told: [['', 'unit']]
  }
}

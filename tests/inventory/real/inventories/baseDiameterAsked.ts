import { csv } from '../csvFile'
import { limb, tree, type RealInventory } from '../expected'

export const baseDiameterAsked: RealInventory = {
  shape:
    '“Base diameter” may be the limb’s or the trunk’s; it differs from limb to limb, so it is taken for the limb’s and asked',
  file: csv(`
Tree,Height (ft),Crown base (ft),Life stage,Vigor,Base diameter (in),Limb,Stem dia above union (in),Origin (ft),Tip (ft)
T1,30,6,young,good,4.1,A,5,7,28
T1,30,6,young,good,2.7,B,5.4,6.5,24
T2,33,7,young,good,4.4,A,5.6,8,31`),
  expected: {
    units: 'in-ft',
    columns: {
      '': 'A tree; B height ft; C crownBase ft; D stage; E vigor; F diameter in; G limb; H stem in; I origin ft; J tip ft'
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
      tree('T2', 33, 7, { stage: 'young', vigor: 'good' }, limb('A', 4.4, 5.6, 8, 31))
    ],
    asked: ['F1']
  }
}

import { csv } from '../csvFile'
import { limb, tree, type RealInventory } from '../expected'

export const crownBaseAboveLimbs: RealInventory = {
  shape:
    'a crown base above the union of every limb listed, and a height far outside the usual for its trunk',
  file: csv(`
Tree,DBH (in),Height (ft),Crown base (ft),Life stage,Vigor,Limb,Limb dia (in),Stem dia (in),Origin (ft),Tip (ft)
T1,7.2,30,16,young,good,A,4.1,5,7,28
T1,7.2,30,16,young,good,B,2.7,5.4,6.5,24
T2,31,20,5,young,good,A,4.4,5.6,8,18
T2,31,20,5,young,good,B,3.1,6,7.5,16`),
  expected: {
    units: 'in-ft',
    columns: {
      '': 'A tree; B trunk in; C height ft; D crownBase ft; E stage; F vigor; G limb; H diameter in; I stem in; J origin ft; K tip ft'
    },
    trees: [
      tree(
        'T1',
        30,
        16,
        { stage: 'young', vigor: 'good', trunk: 7.2 },
        limb('A', 4.1, 5, 7, 28),
        limb('B', 2.7, 5.4, 6.5, 24)
      ),
      tree(
        'T2',
        20,
        5,
        { stage: 'young', vigor: 'good', trunk: 31 },
        limb('A', 4.4, 5.6, 8, 18),
        limb('B', 3.1, 6, 7.5, 16)
      )
    ],
    told: [
      ['D2', 'crown base above origin'],
      ['C4', 'height for trunk']
    ]
  }
}

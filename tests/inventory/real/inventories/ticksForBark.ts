import { csv } from '../csvFile'
import { limb, tree, type RealInventory } from '../expected'

export const ticksForBark: RealInventory = {
  shape: 'ticks for included bark, dead and rubbing: x, ✓, a blank for no',
  file: csv(`
Tree,Height (ft),Crown base (ft),Life stage,Vigor,Limb,Limb dia (in),Stem dia (in),Origin (ft),Tip (ft),Incl. bark,Dead?,Rubbing
T1,30,6,young,good,A,4.1,5,7,28,x,,
T1,30,6,young,good,B,2.7,5.4,6.5,24,,,
T1,30,6,young,good,C,1.2,4.8,9,17,,x,
T2,33,7,young,good,A,4.4,5.6,8,31,✓,,
T2,33,7,young,good,B,3.1,6,7.5,26,X,,`),
  expected: {
    units: 'in-ft',
    columns: {
      '': 'A tree; B height ft; C crownBase ft; D stage; E vigor; F limb; G diameter in; H stem in; I origin ft; J tip ft; K bark; L live; M rubbing'
    },
    trees: [
      tree(
        'T1',
        30,
        6,
        { stage: 'young', vigor: 'good' },
        limb('A', 4.1, 5, 7, 28, 'full'),
        limb('B', 2.7, 5.4, 6.5, 24),
        limb('C', 1.2, 4.8, 9, 17, null, { 'Live or dead': 'dead' })
      ),
      tree(
        'T2',
        33,
        7,
        { stage: 'young', vigor: 'good' },
        limb('A', 4.4, 5.6, 8, 31, 'full'),
        limb('B', 3.1, 6, 7.5, 26, 'full')
      )
    ]
  }
}

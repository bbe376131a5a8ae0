import { csv } from '../csvFile'
import { limb, tree, type RealInventory } from '../expected'

export const estimatesAndRanges: RealInventory = {
  shape: 'estimated and ranged values among measured ones: “12 est.”, “~14”, “20-25”',
  file: csv(`
Tree,DBH (in),Crown spread (ft),Height (ft),Crown base (ft),Life stage,Vigor,Limb,Limb dia (in),Stem dia (in),Origin (ft),Tip (ft)
T1,7.2,18,30,6,young,good,A,4.1,5,7,28
T1,7.2,18,30,6,young,good,B,2.7,5.4,6.5,24
T2,12 est.,20-25,36,8,medium,good,A,4.9,6.8,10,33
T2,12 est.,20-25,36,8,medium,good,B,3.6,7.1,9,30
T3,~14,>30,40,9,medium,good,A,5.4,7.2,11,37`),
  expected: {
    units: 'in-ft',
    columns: {
      '': 'A tree; B trunk in; C spread ft; D height ft; E crownBase ft; F stage; G vigor; H limb; I diameter in; J stem in; K origin ft; L tip ft'
    },
    trees: [
      tree(
        'T1',
        30,
        6,
        { stage: 'young', vigor: 'good', trunk: 7.2 },
        limb('A', 4.1, 5, 7, 28),
        limb('B', 2.7, 5.4, 6.5, 24)
      ),
      tree(
        'T2',
        36,
        8,
        { stage: 'medium', vigor: 'good', trunk: 12 },
        limb('A', 4.9, 6.8, 10, 33),
        limb('B', 3.6, 7.1, 9, 30)
      ),
      tree('T3', 40, 9, { stage: 'medium', vigor: 'good', trunk: 14 }, limb('A', 5.4, 7.2, 11, 37))
    ],
    told: [
      ['C4', 'range'],
      ['B6', 'range'],
      ['C6', 'range']
    ]
  }
}

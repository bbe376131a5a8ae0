import { csv } from '../csvFile'
import { limb, tree, type RealInventory } from '../expected'

export const smallPercents: RealInventory = {
  shape: 'a percent column with 1 and 0.5 among larger numbers',
  file: csv(`
Tree,Height (ft),Crown base (ft),Life stage,Vigor,Foliage removed (%),Limb,Limb dia (in),Stem dia (in),Origin (ft),Tip (ft)
T1,30,6,young,good,1,A,4.1,5,7,28
T1,30,6,young,good,1,B,2.7,5.4,6.5,24
T2,33,7,young,good,0.5,A,4.4,5.6,8,31
T3,26,5,young,good,10,A,3.6,4.4,6,24`),
  expected: {
    units: 'in-ft',
    columns: {
      '': 'A tree; B height ft; C crownBase ft; D stage; E vigor; F removed; G limb; H diameter in; I stem in; J origin ft; K tip ft'
    },
    // 1 under “%” is one percent: 0.24 may still go. 0.5 is half a percent: 0.245.
    trees: [
      tree(
        'T1',
        30,
        6,
        { stage: 'young', vigor: 'good', more: { 'Foliage removed': '1 %' } },
        limb('A', 4.1, 5, 7, 28),
        limb('B', 2.7, 5.4, 6.5, 24)
      ),
      tree(
        'T2',
        33,
        7,
        { stage: 'young', vigor: 'good', more: { 'Foliage removed': '0.5 %' } },
        limb('A', 4.4, 5.6, 8, 31)
      ),
      tree(
        'T3',
        26,
        5,
        { stage: 'young', vigor: 'good', more: { 'Foliage removed': '10 %' } },
        limb('A', 3.6, 4.4, 6, 24)
      )
    ],
    mayAsk: ['F1']
  }
}

import { csv } from '../csvFile'
import { limb, tree, type RealInventory } from '../expected'

export const twoStemCandidates: RealInventory = {
  shape: 'two columns that may both be the stem at the union: a question, not a plan',
  file: csv(`
Tree,Height (ft),Crown base (ft),Life stage,Vigor,Limb,Limb dia (in),Stem A (in),Stem B (in),Origin (ft),Tip (ft)
T1,30,6,young,good,A,4.1,5,6.4,7,28
T1,30,6,young,good,B,2.7,5.4,6.1,6.5,24
T2,33,7,young,good,A,4.4,5.6,7.1,8,31`),
  expected: {
    units: 'in-ft',
    columns: {
      '': 'A tree; B height ft; C crownBase ft; D stage; E vigor; F limb; G diameter in; H stem|-; I stem|-; J origin ft; K tip ft'
    },
    trees: [
      tree(
        'T1',
        30,
        6,
        { stage: 'young', vigor: 'good' },
        limb('A', 4.1, null, 7, 28),
        limb('B', 2.7, null, 6.5, 24)
      ),
      tree('T2', 33, 7, { stage: 'young', vigor: 'good' }, limb('A', 4.4, null, 8, 31))
    ],
    asked: ['H1|I1'],
    notJudged: ['T1', 'T2'],
    exit: 3
  }
}

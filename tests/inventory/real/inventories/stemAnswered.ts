import { csv } from '../csvFile'
import { limb, tree, type RealInventory } from '../expected'

export const stemAnswered: RealInventory = {
  shape: 'the same two candidates, answered on the command line',
  file: csv(`
Tree,Height (ft),Crown base (ft),Life stage,Vigor,Limb,Limb dia (in),Stem A (in),Stem B (in),Origin (ft),Tip (ft)
T1,30,6,young,good,A,4.1,5,6.4,7,28
T1,30,6,young,good,B,2.7,5.4,6.1,6.5,24
T2,33,7,young,good,A,4.4,5.6,7.1,8,31`),
  expected: {
    units: 'in-ft',
    args: ['--column', 'H=stem above'],
    columns: {
      '': 'A tree; B height ft; C crownBase ft; D stage; E vigor; F limb; G diameter in; H stem in; I stemBelow|-; J origin ft; K tip ft'
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
    ]
  }
}

import { csv } from '../csvFile'
import { limb, tree, type RealInventory } from '../expected'

export const deadInWords: RealInventory = {
  shape: 'live and dead in words under “Limb status”, dead wood with nothing but its diameter',
  file: csv(`
Tree,Height (ft),Crown base (ft),Life stage,Vigor,Limb,Limb status,Limb dia (in),Stem dia (in),Origin (ft),Tip (ft)
T1,30,6,young,good,A,alive,4.1,5,7,28
T1,30,6,young,good,B,alive,2.7,5.4,6.5,24
T1,30,6,young,good,C,dead,1.3,,,
T2,33,7,young,good,A,alive,4.4,5.6,8,31
T2,33,7,young,good,B,dead,2.2,,,`),
  expected: {
    units: 'in-ft',
    columns: {
      '': 'A tree; B height ft; C crownBase ft; D stage; E vigor; F limb; G live; H diameter in; I stem in; J origin ft; K tip ft'
    },
    trees: [
      tree(
        'T1',
        30,
        6,
        { stage: 'young', vigor: 'good' },
        limb('A', 4.1, 5, 7, 28, null, { 'Live or dead': 'live' }),
        limb('B', 2.7, 5.4, 6.5, 24, null, { 'Live or dead': 'live' }),
        limb('C', 1.3, null, null, null, null, { 'Live or dead': 'dead' })
      ),
      tree(
        'T2',
        33,
        7,
        { stage: 'young', vigor: 'good' },
        limb('A', 4.4, 5.6, 8, 31, null, { 'Live or dead': 'live' }),
        limb('B', 2.2, null, null, null, null, { 'Live or dead': 'dead' })
      )
    ],
    mayAsk: ['G1']
  }
}

import { csv } from '../csvFile'
import { limb, tree, type RealInventory } from '../expected'

export const unitsNowhere: RealInventory = {
  shape: 'no unit anywhere; the sizes only make sense in centimeters and meters',
  file: csv(`
Tree,DBH,Height,Crown base,Life stage,Vigor,Limb,Limb dia,Stem dia,Origin,Tip
T1,18.3,9.2,1.8,young,good,A,10.4,12.7,2.1,8.6
T1,18.3,9.2,1.8,young,good,B,6.9,13.8,2,7.4
T2,21,10.4,2.2,young,good,A,11.5,13.2,2.6,9.8
T2,21,10.4,2.2,young,good,B,8.8,14.1,2.4,8.9`),
  expected: {
    units: 'cm-m',
    args: ['--units', 'cm-m'],
    columns: {
      '': 'A tree; B trunk cm; C height m; D crownBase m; E stage; F vigor; G limb; H diameter cm; I stem cm; J origin m; K tip m'
    },
    trees: [
      tree(
        'T1',
        9.2,
        1.8,
        { stage: 'young', vigor: 'good', trunk: 18.3 },
        limb('A', 10.4, 12.7, 2.1, 8.6),
        limb('B', 6.9, 13.8, 2, 7.4)
      ),
      tree(
        'T2',
        10.4,
        2.2,
        { stage: 'young', vigor: 'good', trunk: 21 },
        limb('A', 11.5, 13.2, 2.6, 9.8),
        limb('B', 8.8, 14.1, 2.4, 8.9)
      )
    ]
  }
}

import { csv } from '../csvFile'
import { limb, tree, type RealInventory } from '../expected'

export const unitsRow: RealInventory = {
  shape: 'a row of units under plain names: m and cm where others would expect feet',
  file: csv(`
Tree,Species,Height,Crown base,Life stage,Vigor,Limb,Limb diameter,Stem diameter,Origin,Tip
,,m,m,,,,cm,cm,m,m
T1,Red maple,10,1.8,young,good,A,10.4,12.7,2.1,9.4
T1,Red maple,10,1.8,young,good,B,6.9,13.8,2,7.6
T2,Pin oak,10.4,2.2,young,good,A,11.5,13.2,2.6,9.8`),
  expected: {
    units: 'cm-m',
    columns: {
      '': 'A tree; B species; C height m; D crownBase m; E stage; F vigor; G limb; H diameter cm; I stem cm; J origin m; K tip m'
    },
    trees: [
      tree(
        'T1',
        10,
        1.8,
        { stage: 'young', vigor: 'good' },
        limb('A', 10.4, 12.7, 2.1, 9.4),
        limb('B', 6.9, 13.8, 2, 7.6)
      ),
      tree('T2', 10.4, 2.2, { stage: 'young', vigor: 'good' }, limb('A', 11.5, 13.2, 2.6, 9.8))
    ]
  }
}

import { csv } from '../csvFile'
import { limb, tree, type RealInventory } from '../expected'

export const limbsWithoutIds: RealInventory = {
  shape: 'limbs as rows without any name or number of their own',
  file: csv(`
Tree,Height (m),Crown base (m),Life stage,Vigor,Branch dia (cm),Stem dia above union (cm),Attachment height (m),Branch tip height (m)
T1,9.1,1.7,young,good,10.1,12.4,2,8.6
T1,9.1,1.7,young,good,6.9,13.2,1.9,7.5
T2,10,2,young,good,11.2,13.1,2.4,9.5
T2,10,2,young,good,7.7,13.8,2.2,8.4`),
  expected: {
    units: 'cm-m',
    columns: {
      '': 'A tree; B height m; C crownBase m; D stage; E vigor; F diameter cm; G stem cm; H origin m; I tip m'
    },
    trees: [
      tree(
        'T1',
        9.1,
        1.7,
        { stage: 'young', vigor: 'good' },
        limb('*', 10.1, 12.4, 2, 8.6),
        limb('*', 6.9, 13.2, 1.9, 7.5)
      ),
      tree(
        'T2',
        10,
        2,
        { stage: 'young', vigor: 'good' },
        limb('*', 11.2, 13.1, 2.4, 9.5),
        limb('*', 7.7, 13.8, 2.2, 8.4)
      )
    ]
  }
}

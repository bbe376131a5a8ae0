import { csv } from '../csvFile'
import { limb, tree, type RealInventory } from '../expected'

export const treesOnlyOneMissing: RealInventory = {
  shape: 'a list of trees with limbs for some only, one row per tree where there are none',
  file: csv(`
Tree,DBH (in),Height (ft),Crown base (ft),Life stage,Vigor,Limb,Limb dia (in),Stem dia (in),Origin (ft),Tip (ft)
T1,7.2,30,6,young,good,A,4.1,5,7,28
T1,7.2,30,6,young,good,B,2.7,5.4,6.5,24
T2,12,40,9,medium,good,,,,,
T3,15,44,11,mature,good,,,,,`),
  expected: {
    units: 'in-ft',
    columns: {
      '': 'A tree; B trunk in; C height ft; D crownBase ft; E stage; F vigor; G limb; H diameter in; I stem in; J origin ft; K tip ft'
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
      tree('T2', 40, 9, { stage: 'medium', vigor: 'good', trunk: 12 }),
      tree('T3', 44, 11, { stage: 'mature', vigor: 'good', trunk: 15 })
    ],
    told: [['', 'no limbs']]
  }
}

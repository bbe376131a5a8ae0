import { csv } from '../csvFile'
import { above, limb, tree, type RealInventory } from '../expected'

export const stemBelowUnion: RealInventory = {
  shape: 'the stem measured below the union',
  file: csv(`
Tree,Height (ft),Crown base (ft),Life stage,Vigor,Limb,Limb dia (in),Stem dia below union (in),Origin (ft),Tip (ft)
T1,30,6,young,good,A,4,6.5,7,28
T1,30,6,young,good,B,2.7,7,4.5,24
T2,33,7,young,good,A,4.4,7,8,31`),
  expected: {
    units: 'in-ft',
    columns: {
      '': 'A tree; B height ft; C crownBase ft; D stage; E vigor; F limb; G diameter in; H stemBelow in; I origin ft; J tip ft'
    },
    // Above the union √(6.5² - 4²) = 5.12: ratio 0.78; √(7² - 2.7²) = 6.46: 0.42; √(7² - 4.4²) = 5.44: 0.81.
    trees: [
      tree(
        'T1',
        30,
        6,
        { stage: 'young', vigor: 'good' },
        limb('A', 4, above(6.5, 4), 7, 28),
        limb('B', 2.7, above(7, 2.7), 4.5, 24)
      ),
      tree('T2', 33, 7, { stage: 'young', vigor: 'good' }, limb('A', 4.4, above(7, 4.4), 8, 31))
    ]
  }
}

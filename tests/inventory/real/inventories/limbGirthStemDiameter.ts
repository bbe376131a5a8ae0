import { csv } from '../csvFile'
import { fromGirth, limb, tree, type RealInventory } from '../expected'

export const limbGirthStemDiameter: RealInventory = {
  shape: 'the limb by girth, the stem by diameter, in one table',
  file: csv(`
Tree,Height (m),Crown base (m),Life stage,Vigor,Limb,Limb girth (cm),Stem dia above union (cm),Origin (m),Tip (m)
T1,9.1,1.7,young,good,A,31,12.4,2,8.6
T1,9.1,1.7,young,good,B,22,13,1.9,7.5
T2,10,2,young,good,A,35,13.1,2.4,9.5`),
  expected: {
    units: 'cm-m',
    columns: {
      '': 'A tree; B height m; C crownBase m; D stage; E vigor; F limb; G diameter cm girth; H stem cm; I origin m; J tip m'
    },
    // 31/π = 9.87 cm against 12.4 cm: 0.796; 35/π = 11.14 cm against 13.1 cm: 0.850.
    trees: [
      tree(
        'T1',
        9.1,
        1.7,
        { stage: 'young', vigor: 'good' },
        limb('A', fromGirth(31), 12.4, 2, 8.6),
        limb('B', fromGirth(22), 13, 1.9, 7.5)
      ),
      tree('T2', 10, 2, { stage: 'young', vigor: 'good' }, limb('A', fromGirth(35), 13.1, 2.4, 9.5))
    ],
    told: [['', 'girth']]
  }
}

import { csv } from '../csvFile'
import { limb, tree, type RealInventory } from '../expected'

export const formsStacked: RealInventory = {
  shape: 'one form with its table below another on one sheet, a tree each',
  file: csv(`
Tree:,T1,,,
Height (m):,9.1,Crown base (m):,1.7,
Life stage:,young,Vigor:,good,
Limb,Limb dia (cm),Stem dia (cm),Origin (m),Tip (m)
A,10.1,12.4,2,8.6
B,6.9,13.2,1.9,7.5

Tree:,T2,,,
Height (m):,10,Crown base (m):,2,
Life stage:,young,Vigor:,good,
Limb,Limb dia (cm),Stem dia (cm),Origin (m),Tip (m)
A,11.2,13.1,2.4,9.5
B,7.7,13.8,2.2,8.4`),
  expected: {
    units: 'cm-m',
    columns: { '': 'A limb; B diameter cm; C stem cm; D origin m; E tip m; ...' },
    trees: [
      tree(
        'T1',
        9.1,
        1.7,
        { stage: 'young', vigor: 'good' },
        limb('A', 10.1, 12.4, 2, 8.6),
        limb('B', 6.9, 13.2, 1.9, 7.5)
      ),
      tree(
        'T2',
        10,
        2,
        { stage: 'young', vigor: 'good' },
        limb('A', 11.2, 13.1, 2.4, 9.5),
        limb('B', 7.7, 13.8, 2.2, 8.4)
      )
    ]
  }
}

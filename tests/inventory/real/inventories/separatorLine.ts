import { csv } from '../csvFile'
import { limb, tree, type RealInventory } from '../expected'

export const separatorLine: RealInventory = {
  shape: 'a first line “sep=;” as spreadsheets write it, then the table',
  file: csv(
    `
sep=;
Tree;Height (m);Crown base (m);Life stage;Vigor;Limb;Limb dia (cm);Stem dia (cm);Origin (m);Tip (m)
T1;9,1;1,7;young;good;A;10,1;12,4;2;8,6
T1;9,1;1,7;young;good;B;6,9;13,2;1,9;7,5
T2;10;2;young;good;A;11,2;13,1;2,4;9,5`,
    { newline: '\r\n' }
  ),
  expected: {
    units: 'cm-m',
    columns: {
      '': 'A tree; B height m; C crownBase m; D stage; E vigor; F limb; G diameter cm; H stem cm; I origin m; J tip m'
    },
    trees: [
      tree(
        'T1',
        9.1,
        1.7,
        { stage: 'young', vigor: 'good' },
        limb('A', 10.1, 12.4, 2, 8.6),
        limb('B', 6.9, 13.2, 1.9, 7.5)
      ),
      tree('T2', 10, 2, { stage: 'young', vigor: 'good' }, limb('A', 11.2, 13.1, 2.4, 9.5))
    ]
  }
}

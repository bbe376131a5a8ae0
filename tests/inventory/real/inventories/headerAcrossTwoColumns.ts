import { limb, tree, type RealInventory } from '../expected'
import { workbook } from '../workbookFile'

export const headerAcrossTwoColumns: RealInventory = {
  shape: 'a header merged over two columns for two readings, others merged down over the row of sub-headers',
  file: workbook([
    {
      name: 'Field book',
      rows: `
Tree | Height (m) | Crown base (m) | Life stage | Vigor | Limb | Limb diameter (cm) | | Stem dia above union (cm) | Origin (m) | Tip (m)
 | | | | | | 1st | 2nd | | |
T1 | 9.1 | 1.7 | young | good | A | 10.4 | 9.8 | 12.4 | 2 | 8.6
T1 | 9.1 | 1.7 | young | good | B | 7.2 | 6.6 | 13.2 | 1.9 | 7.5
T2 | 10 | 2 | young | good | A | 11.6 | 10.8 | 13.1 | 2.4 | 9.5`,
      merges: ['A1:A2', 'B1:B2', 'C1:C2', 'D1:D2', 'E1:E2', 'F1:F2', 'G1:H1', 'I1:I2', 'J1:J2', 'K1:K2']
    }
  ]),
  expected: {
    units: 'cm-m',
    columns: {
      'Field book':
        'A tree; B height m; C crownBase m; D stage; E vigor; F limb; G diameter cm; H diameter2 cm; I stem cm; J origin m; K tip m'
    },
    // The mean of two readings: 10.1 of 12.4; 6.9 of 13.2; 11.2 of 13.1.
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
    ],
    mayAsk: ['Field book!G1', 'Field book!H1', 'Field book!H2']
  }
}

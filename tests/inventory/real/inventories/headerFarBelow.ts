import { limb, tree, type RealInventory } from '../expected'
import { workbook } from '../workbookFile'

export const headerFarBelow: RealInventory = {
  shape: 'a letterhead, contacts and remarks in the first eleven rows, the table from column C',
  file: workbook([
    {
      name: 'Letter',
      rows: `
Example Tree Care (invented)
1 Example Street
Phone | 555-0101
 |
To: | B. Person
Re: | structural pruning
Sheet | 1 of 1
Height of trees measured by clinometer.
Limb diameters by tape, in inches.
 |
 |
 | | Tree | Height (ft) | Crown base (ft) | Life stage | Vigor | Limb | Limb dia (in) | Stem dia (in) | Origin (ft) | Tip (ft)
 | | T1 | 30 | 6 | young | good | A | 4.1 | 5 | 7 | 28
 | | T1 | 30 | 6 | young | good | B | 2.7 | 5.4 | 6.5 | 24
 | | T2 | 33 | 7 | young | good | A | 4.4 | 5.6 | 8 | 31`
    }
  ]),
  expected: {
    units: 'in-ft',
    columns: {
      Letter:
        'C tree; D height ft; E crownBase ft; F stage; G vigor; H limb; I diameter in; J stem in; K origin ft; L tip ft'
    },
    trees: [
      tree(
        'T1',
        30,
        6,
        { stage: 'young', vigor: 'good' },
        limb('A', 4.1, 5, 7, 28),
        limb('B', 2.7, 5.4, 6.5, 24)
      ),
      tree('T2', 33, 7, { stage: 'young', vigor: 'good' }, limb('A', 4.4, 5.6, 8, 31))
    ]
  }
}

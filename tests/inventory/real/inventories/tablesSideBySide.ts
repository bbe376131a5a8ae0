import { limb, tree, type RealInventory } from '../expected'
import { workbook } from '../workbookFile'

export const tablesSideBySide: RealInventory = {
  shape: 'the trees at the left, the limbs at the right of an empty column, of unequal length',
  file: workbook([
    {
      name: 'Both',
      rows: `
Tree | Height (ft) | Crown base (ft) | Life stage | Vigor | | Tree | Limb | Limb dia (in) | Stem dia (in) | Origin (ft) | Tip (ft)
T1 | 30 | 6 | young | good | | T1 | A | 4.1 | 5 | 7 | 28
T2 | 33 | 7 | young | good | | T1 | B | 2.7 | 5.4 | 6.5 | 24
 | | | | | | T2 | A | 4.4 | 5.6 | 8 | 31
 | | | | | | T2 | B | 3.1 | 6 | 7.5 | 26`
    }
  ]),
  expected: {
    units: 'in-ft',
    columns: {
      Both: 'A tree; B height ft; C crownBase ft; D stage; E vigor; G tree; H limb; I diameter in; J stem in; K origin ft; L tip ft'
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
      tree(
        'T2',
        33,
        7,
        { stage: 'young', vigor: 'good' },
        limb('A', 4.4, 5.6, 8, 31),
        limb('B', 3.1, 6, 7.5, 26)
      )
    ],
    told: [['', 'joined']]
  }
}

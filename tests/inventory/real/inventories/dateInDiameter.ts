import { limb, tree, type RealInventory } from '../expected'
import { workbook } from '../workbookFile'

export const dateInDiameter: RealInventory = {
  shape: 'a diameter that the spreadsheet turned into a date',
  file: workbook([
    {
      name: 'Limbs',
      rows: `
Tree | Height (ft) | Crown base (ft) | Life stage | Vigor | Limb | Limb dia (in) | Stem dia (in) | Origin (ft) | Tip (ft)
T1 | 30 | 6 | young | good | A | 4.1 | 5 | 7 | 28
T1 | 30 | 6 | young | good | B | @2026-02-03 | 5.4 | 6.5 | 24
T1 | 30 | 6 | young | good | C | 3.2 | 4.6 | 9 | 27`
    }
  ]),
  expected: {
    units: 'in-ft',
    columns: {
      Limbs:
        'A tree; B height ft; C crownBase ft; D stage; E vigor; F limb; G diameter in; H stem in; I origin ft; J tip ft'
    },
    trees: [
      tree(
        'T1',
        30,
        6,
        { stage: 'young', vigor: 'good' },
        limb('A', 4.1, 5, 7, 28),
        limb('B', null, 5.4, 6.5, 24),
        limb('C', 3.2, 4.6, 9, 27)
      )
    ],
    told: [['G3', 'date']]
  }
}

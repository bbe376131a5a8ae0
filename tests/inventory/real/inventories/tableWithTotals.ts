import { limb, tree, type RealInventory } from '../expected'
import { workbook } from '../workbookFile'

export const tableWithTotals: RealInventory = {
  shape: 'an Excel table with a row of totals by SUBTOTAL, and a figure below it',
  file: workbook([
    {
      name: 'Inventory',
      rows: `
Tree | Height (ft) | Crown base (ft) | Life stage | Vigor | Limb | Limb dia (in) | Stem dia (in) | Origin (ft) | Tip (ft)
T1 | 30 | 6 | young | good | A | 4.1 | 5 | 7 | 28
T1 | 30 | 6 | young | good | B | 2.7 | 5.4 | 6.5 | 24
T2 | 33 | 7 | young | good | A | 4.4 | 5.6 | 8 | 31
Total | =SUBTOTAL(101,B2:B4) => 31 | | | | =SUBTOTAL(103,F2:F4) => 3 | =SUBTOTAL(101,G2:G4) => 3.7333 | =SUBTOTAL(101,H2:H4) => 5.3333 | =SUBTOTAL(101,I2:I4) => 7.1667 | =SUBTOTAL(101,J2:J4) => 27.6667`,
      table: { range: 'A1:J5', totals: true }
    }
  ]),
  expected: {
    units: 'in-ft',
    columns: {
      Inventory:
        'A tree; B height ft; C crownBase ft; D stage; E vigor; F limb; G diameter in; H stem in; I origin ft; J tip ft'
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
    ],
    leftOut: { '5': 'total' }
  }
}

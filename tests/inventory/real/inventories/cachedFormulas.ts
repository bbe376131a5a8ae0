import { limb, tree, type RealInventory } from '../expected'
import { workbook } from '../workbookFile'

export const cachedFormulas: RealInventory = {
  shape:
    '.xlsx of another program: texts in the cells, ids and diameters by formulas with their last results',
  file: workbook(
    [
      {
        name: 'Data',
        rows: `
Tree | Height (ft) | Crown base (ft) | Life stage | Vigor | Limb | Limb dia (in) | Stem dia (in) | Origin (ft) | Tip (ft)
="T"&ROW()-1 => T1 | 30 | 6 | young | good | A | =12.88/PI() => 4.1 | =ROUND(5.02,0) => 5 | 7 | =B2-2 => 28
=A2 => T1 | =B2 => 30 | =C2 => 6 | =D2 => young | =E2 => good | B | =8.48/PI() => 2.7 | 5.4 | 6.5 | 24
="T"&2 => T2 | 33 | 7 | young | good | A | 4.4 | 5.6 | 8 | 31
="T"&2 => T2 | 33 | 7 | young | good | B | =B9/0 => #DIV/0! | 6 | 7.5 | 26`
      }
    ],
    'inline'
  ),
  expected: {
    units: 'in-ft',
    columns: {
      Data: 'A tree; B height ft; C crownBase ft; D stage; E vigor; F limb; G diameter in; H stem in; I origin ft; J tip ft'
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
        limb('B', null, 6, 7.5, 26)
      )
    ],
    told: [['G5', 'error']]
  }
}

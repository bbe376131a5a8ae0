import { limb, tree, type RealInventory } from '../expected'
import { workbook } from '../workbookFile'

export const hiddenRows: RealInventory = {
  shape: 'rows hidden by a filter',
  file: workbook([
    {
      name: 'Filtered',
      rows: `
Tree | Height (ft) | Crown base (ft) | Life stage | Vigor | Limb | Limb dia (in) | Stem dia (in) | Origin (ft) | Tip (ft)
T1 | 30 | 6 | young | good | A | 4.1 | 5 | 7 | 28
T1 | 30 | 6 | young | good | B | 2.7 | 5.4 | 6.5 | 24
T2 | 26 | 5 | young | good | A | 3.6 | 4.4 | 6 | 24
T3 | 33 | 7 | young | good | A | 4.4 | 5.6 | 8 | 31`,
      hiddenRows: [4]
    }
  ]),
  expected: {
    units: 'in-ft',
    columns: {
      Filtered:
        'A tree; B height ft; C crownBase ft; D stage; E vigor; F limb; G diameter in; H stem in; I origin ft; J tip ft'
    },
    // Taken in, and said: a hidden row is still the owner's inventory.
    trees: [
      tree(
        'T1',
        30,
        6,
        { stage: 'young', vigor: 'good' },
        limb('A', 4.1, 5, 7, 28),
        limb('B', 2.7, 5.4, 6.5, 24)
      ),
      tree('T2', 26, 5, { stage: 'young', vigor: 'good' }, limb('A', 3.6, 4.4, 6, 24)),
      tree('T3', 33, 7, { stage: 'young', vigor: 'good' }, limb('A', 4.4, 5.6, 8, 31))
    ],
    leftOut: { '4': 'hidden' }
  }
}

import { limb, tree, type RealInventory } from '../expected'
import { workbook } from '../workbookFile'

export const verticalMerges: RealInventory = {
  shape: 'tree cells merged down over the rows of their limbs, two limbs a tree',
  file: workbook([
    {
      name: 'Merged',
      rows: `
Tree | Species | Height (ft) | Crown base (ft) | Life stage | Vigor | Limb | Limb dia (in) | Stem dia (in) | Origin (ft) | Tip (ft)
T1 | Red maple | 30 | 6 | young | good | A | 4.1 | 5 | 7 | 28
 | | | | | | B | 2.7 | 5.4 | 6.5 | 24
T2 | Pin oak | 33 | 7 | young | good | A | 4.4 | 5.6 | 8 | 31
 | | | | | | B | 3.1 | 6 | 7.5 | 26
T3 | Ginkgo | 22 | 4 | young | good | A | 2.6 | 3.3 | 5 | 20`,
      merges: [
        'A2:A3',
        'B2:B3',
        'C2:C3',
        'D2:D3',
        'E2:E3',
        'F2:F3',
        'A4:A5',
        'B4:B5',
        'C4:C5',
        'D4:D5',
        'E4:E5',
        'F4:F5'
      ]
    }
  ]),
  expected: {
    units: 'in-ft',
    columns: {
      Merged:
        'A tree; B species; C height ft; D crownBase ft; E stage; F vigor; G limb; H diameter in; I stem in; J origin ft; K tip ft'
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
      ),
      tree('T3', 22, 4, { stage: 'young', vigor: 'good' }, limb('A', 2.6, 3.3, 5, 20))
    ]
  }
}

import { limb, tree, type RealInventory } from '../expected'
import { workbook } from '../workbookFile'

export const paddedIds: RealInventory = {
  shape: 'ids as numbers on one sheet and padded with zeros on the other',
  file: workbook([
    {
      name: 'Tree list',
      rows: `
Tree | Species | Height (ft) | Crown base (ft) | Life stage | Vigor
7 | Red maple | 30 | 6 | young | good
8 | Pin oak | 33 | 7 | young | good`
    },
    {
      name: 'Limb list',
      rows: `
Tree | Limb | Limb dia (in) | Stem dia (in) | Origin (ft) | Tip (ft)
'007 | A | 4.1 | 5 | 7 | 28
'007 | B | 2.7 | 5.4 | 6.5 | 24
'008 | A | 4.4 | 5.6 | 8 | 31`
    }
  ]),
  expected: {
    units: 'in-ft',
    columns: {
      'Tree list': 'A tree; B species; C height ft; D crownBase ft; E stage; F vigor',
      'Limb list': 'A tree; B limb; C diameter in; D stem in; E origin ft; F tip ft'
    },
    trees: [
      tree(
        '7|007',
        30,
        6,
        { stage: 'young', vigor: 'good' },
        limb('A', 4.1, 5, 7, 28),
        limb('B', 2.7, 5.4, 6.5, 24)
      ),
      tree('8|008', 33, 7, { stage: 'young', vigor: 'good' }, limb('A', 4.4, 5.6, 8, 31))
    ],
    told: [['', 'same id']]
  }
}

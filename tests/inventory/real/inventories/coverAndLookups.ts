import { limb, tree, type RealInventory } from '../expected'
import { workbook } from '../workbookFile'

export const coverAndLookups: RealInventory = {
  shape:
    'a cover sheet and a sheet of lists before the inventory, a hidden sheet with an older survey of the same trees after it',
  file: workbook([
    {
      name: 'Cover',
      rows: `
Tree inventory (invented)
Client | Example Park
Trees | 2
Date | @2026-05-04`
    },
    {
      name: 'Lists',
      rows: `
Species | Life stage | Vigor
Red maple | young | good
Pin oak | medium | fair
 | mature | poor`
    },
    {
      name: 'Inventory',
      rows: `
Tree | Height (ft) | Crown base (ft) | Life stage | Vigor | Limb | Limb dia (in) | Stem dia (in) | Origin (ft) | Tip (ft)
T1 | 30 | 6 | young | good | A | 4.1 | 5 | 7 | 28
T1 | 30 | 6 | young | good | B | 2.7 | 5.4 | 6.5 | 24
T2 | 33 | 7 | young | good | A | 4.4 | 5.6 | 8 | 31`
    },
    {
      name: 'Old survey',
      hidden: true,
      rows: `
Tree | Height (ft) | Crown base (ft) | Life stage | Vigor | Limb | Limb dia (in) | Stem dia (in) | Origin (ft) | Tip (ft)
T1 | 27 | 5 | young | good | A | 3.4 | 4.3 | 7 | 25`
    }
  ]),
  expected: {
    units: 'in-ft',
    columns: {
      Cover: '',
      Lists: '',
      'Old survey': '...',
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
    leftOut: { 'Lists!': 'sheet', 'Old survey!': 'hidden' }
  }
}

import { limb, tree, type RealInventory } from '../expected'
import { workbook } from '../workbookFile'

export const sheetAZone: RealInventory = {
  shape: 'a sheet a zone with the same headers, ids of their own, a price list between',
  file: workbook([
    {
      name: 'North zone',
      rows: `
Tree | Height (ft) | Crown base (ft) | Life stage | Vigor | Limb | Limb dia (in) | Stem dia (in) | Origin (ft) | Tip (ft)
N1 | 30 | 6 | young | good | A | 4.1 | 5 | 7 | 28
N1 | 30 | 6 | young | good | B | 2.7 | 5.4 | 6.5 | 24
N2 | 26 | 5 | young | good | A | 3.6 | 4.4 | 6 | 24`
    },
    {
      name: 'Prices',
      rows: `
Task | Unit | Price
Prune tree under 6 in | each | 45
Haul brush | yard | 30`
    },
    {
      name: 'South zone',
      rows: `
Tree | Height (ft) | Crown base (ft) | Life stage | Vigor | Limb | Limb dia (in) | Stem dia (in) | Origin (ft) | Tip (ft)
S1 | 33 | 7 | young | good | A | 4.4 | 5.6 | 8 | 31
S1 | 33 | 7 | young | good | B | 3.1 | 6 | 7.5 | 26`
    }
  ]),
  expected: {
    units: 'in-ft',
    columns: {
      'North zone':
        'A tree; B height ft; C crownBase ft; D stage; E vigor; F limb; G diameter in; H stem in; I origin ft; J tip ft',
      'South zone':
        'A tree; B height ft; C crownBase ft; D stage; E vigor; F limb; G diameter in; H stem in; I origin ft; J tip ft',
      Prices: ''
    },
    trees: [
      tree(
        'N1',
        30,
        6,
        { stage: 'young', vigor: 'good' },
        limb('A', 4.1, 5, 7, 28),
        limb('B', 2.7, 5.4, 6.5, 24)
      ),
      tree('N2', 26, 5, { stage: 'young', vigor: 'good' }, limb('A', 3.6, 4.4, 6, 24)),
      tree(
        'S1',
        33,
        7,
        { stage: 'young', vigor: 'good' },
        limb('A', 4.4, 5.6, 8, 31),
        limb('B', 3.1, 6, 7.5, 26)
      )
    ],
    leftOut: { 'Prices!': 'sheet', 'South zone!': 'sheet' }
  }
}

import { limb, tree, type RealInventory } from '../expected'
import { workbook } from '../workbookFile'

export const percentFormats: RealInventory = {
  shape:
    'shares as 0.05 under a percent format, as 5 under a plain one, and as the text “5 %”, in one column',
  file: workbook([
    {
      name: 'Shares',
      rows: `
Tree | Height (ft) | Crown base (ft) | Life stage | Vigor | Foliage removed this season (%) | Limb | Limb dia (in) | Stem dia (in) | Origin (ft) | Tip (ft)
T1 | 30 | 6 | young | good | 0.05 as 0% | A | 4.1 | 5 | 7 | 28
T1 | 30 | 6 | young | good | 0.05 as 0% | B | 2.7 | 5.4 | 6.5 | 24
T2 | 33 | 7 | young | good | 5 | A | 4.4 | 5.6 | 8 | 31
T3 | 26 | 5 | young | good | 5 % | A | 3.6 | 4.4 | 6 | 24
T4 | 28 | 5 | young | good | 0.01 as 0.0% | A | 3.9 | 4.8 | 6 | 26`
    }
  ]),
  expected: {
    units: 'in-ft',
    columns: {
      Shares:
        'A tree; B height ft; C crownBase ft; D stage; E vigor; F removed; G limb; H diameter in; I stem in; J origin ft; K tip ft'
    },
    trees: [
      tree(
        'T1',
        30,
        6,
        { stage: 'young', vigor: 'good', more: { 'Foliage removed': '5 %' } },
        limb('A', 4.1, 5, 7, 28),
        limb('B', 2.7, 5.4, 6.5, 24)
      ),
      tree(
        'T2',
        33,
        7,
        { stage: 'young', vigor: 'good', more: { 'Foliage removed': '5 %' } },
        limb('A', 4.4, 5.6, 8, 31)
      ),
      tree(
        'T3',
        26,
        5,
        { stage: 'young', vigor: 'good', more: { 'Foliage removed': '5 %' } },
        limb('A', 3.6, 4.4, 6, 24)
      ),
      tree(
        'T4',
        28,
        5,
        { stage: 'young', vigor: 'good', more: { 'Foliage removed': '1 %' } },
        limb('A', 3.9, 4.8, 6, 26)
      )
    ]
  }
}

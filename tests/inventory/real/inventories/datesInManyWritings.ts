import { limb, tree, type RealInventory } from '../expected'
import { workbook } from '../workbookFile'

export const datesInManyWritings: RealInventory = {
  shape: 'the last pruning as a day, a year, a month in words; planting and inspection dates beside it',
  file: workbook([
    {
      name: 'Care',
      rows: `
Tree | Planted | Inspected on | Last pruned | Height (ft) | Crown base (ft) | Life stage | Vigor | Limb | Limb dia (in) | Stem dia (in) | Origin (ft) | Tip (ft)
T1 | @2014-04-02 | @2027-02-20 | @2023-05-04 | 30 | 6 | young | good | A | 4.1 | 5 | 7 | 28
T1 | @2014-04-02 | @2027-02-20 | @2023-05-04 | 30 | 6 | young | good | B | 2.7 | 5.4 | 6.5 | 24
T2 | 2012 | @2027-02-20 | 2022 | 33 | 7 | young | good | A | 4.4 | 5.6 | 8 | 31
T3 | 2015 | @2027-02-20 | May 2021 | 26 | 5 | young | good | A | 3.6 | 4.4 | 6 | 24`
    }
  ]),
  expected: {
    units: 'in-ft',
    columns: {
      Care: 'A tree; D lastPruned; E height ft; F crownBase ft; G stage; H vigor; I limb; J diameter in; K stem in; L origin ft; M tip ft'
    },
    trees: [
      tree(
        'T1',
        30,
        6,
        { stage: 'young', vigor: 'good', more: { 'Last pruned': '2023-05-04' } },
        limb('A', 4.1, 5, 7, 28),
        limb('B', 2.7, 5.4, 6.5, 24)
      ),
      tree(
        'T2',
        33,
        7,
        { stage: 'young', vigor: 'good', more: { 'Last pruned': 2022 } },
        limb('A', 4.4, 5.6, 8, 31)
      ),
      tree(
        'T3',
        26,
        5,
        { stage: 'young', vigor: 'good', more: { 'Last pruned': '2021-05-01' } },
        limb('A', 3.6, 4.4, 6, 24)
      )
    ]
  }
}

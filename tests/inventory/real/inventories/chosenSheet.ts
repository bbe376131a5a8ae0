import { limb, tree, type RealInventory } from '../expected'
import { workbook } from '../workbookFile'

export const chosenSheet: RealInventory = {
  shape: 'two surveys of the same trees on two sheets, the sheet named on the command line',
  file: workbook([
    {
      name: '2024',
      rows: `
Tree | Height (ft) | Crown base (ft) | Life stage | Vigor | Limb | Limb dia (in) | Stem dia (in) | Origin (ft) | Tip (ft)
T1 | 27 | 5 | young | good | A | 3.4 | 4.3 | 7 | 25
T2 | 30 | 6 | young | good | A | 3.8 | 4.9 | 8 | 28`
    },
    {
      name: '2026',
      rows: `
Tree | Height (ft) | Crown base (ft) | Life stage | Vigor | Limb | Limb dia (in) | Stem dia (in) | Origin (ft) | Tip (ft)
T1 | 30 | 6 | young | good | A | 4.1 | 5 | 7 | 28
T2 | 33 | 7 | young | good | A | 4.4 | 5.6 | 8 | 31`
    }
  ]),
  expected: {
    units: 'in-ft',
    args: ['--sheet', '2026'],
    columns: {
      '2026':
        'A tree; B height ft; C crownBase ft; D stage; E vigor; F limb; G diameter in; H stem in; I origin ft; J tip ft'
    },
    trees: [
      tree('T1', 30, 6, { stage: 'young', vigor: 'good' }, limb('A', 4.1, 5, 7, 28)),
      tree('T2', 33, 7, { stage: 'young', vigor: 'good' }, limb('A', 4.4, 5.6, 8, 31))
    ]
  }
}

import { limb, tree, type RealInventory } from '../expected'
import { workbook } from '../workbookFile'

export const formAboveTable: RealInventory = {
  shape: 'a form of labels and values for one tree above the table of its limbs',
  file: workbook([
    {
      name: 'Tree sheet',
      rows: `
Tree survey (invented) | | | | |
Tree no.: | 14 | | Date: | @2026-05-04 |
Species: | Red maple | | Surveyor: | A. Person |
Height (ft): | 30 | | Crown base (ft): | 6 |
Life stage: | young | | Vigor: | good |
 | | | | |
Limb | Diameter (in) | Stem above (in) | Starts (ft) | Reaches (ft) | Included bark
A | 4.1 | 5 | 7 | 28 | full
B | 2.7 | 5.4 | 6.5 | 24 | none
C | 3.2 | 4.6 | 9 | 27 | none`
    }
  ]),
  expected: {
    units: 'in-ft',
    columns: { 'Tree sheet': 'A limb; B diameter in; C stem in; D origin ft; E tip ft; F bark; ...' },
    trees: [
      tree(
        '14',
        30,
        6,
        { stage: 'young', vigor: 'good' },
        limb('A', 4.1, 5, 7, 28, 'full'),
        limb('B', 2.7, 5.4, 6.5, 24, 'none'),
        limb('C', 3.2, 4.6, 9, 27, 'none')
      )
    ],
    mayAsk: ['Tree sheet!A7']
  }
}

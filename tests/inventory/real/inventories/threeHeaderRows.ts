import { limb, tree, type RealInventory } from '../expected'
import { workbook } from '../workbookFile'

export const threeHeaderRows: RealInventory = {
  shape: 'three header rows: merged titles, names, units; the same name “Height” in two groups',
  file: workbook([
    {
      name: 'Sheet1',
      rows: `
Tree | | | | | | Limb | | | |
No. | Species | DBH | Height | Crown base | Life stage | ID | Dia. | Stem dia. above union | Height of union | Height of tip
 | | cm | m | m | | | cm | cm | m | m
1 | Red maple | 18.3 | 9.2 | 1.8 | young | A | 10.4 | 12.7 | 2.1 | 8.6
1 | Red maple | 18.3 | 9.2 | 1.8 | young | B | 6.9 | 13.8 | 2 | 7.4
2 | Pin oak | 21 | 10.4 | 2.2 | young | A | 11.5 | 13.2 | 2.6 | 9.8
2 | Pin oak | 21 | 10.4 | 2.2 | young | B | 8.8 | 14.1 | 2.4 | 8.9`,
      merges: ['A1:F1', 'G1:K1']
    }
  ]),
  expected: {
    units: 'cm-m',
    columns: {
      Sheet1:
        'A tree; B species; C trunk cm; D height m; E crownBase m; F stage; G limb; H diameter cm; I stem cm; J origin m; K tip m'
    },
    trees: [
      tree(
        '1',
        9.2,
        1.8,
        { stage: 'young', trunk: 18.3 },
        limb('A', 10.4, 12.7, 2.1, 8.6),
        limb('B', 6.9, 13.8, 2, 7.4)
      ),
      tree(
        '2',
        10.4,
        2.2,
        { stage: 'young', trunk: 21 },
        limb('A', 11.5, 13.2, 2.6, 9.8),
        limb('B', 8.8, 14.1, 2.4, 8.9)
      )
    ],
    told: [['', 'assumed']]
  }
}

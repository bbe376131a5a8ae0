import { limb, tree, type RealInventory } from '../expected'
import { workbook } from '../workbookFile'

export const frenchTwoSheets: RealInventory = {
  shape: 'French, two sheets joined by number, the limbs first in the workbook',
  file: workbook([
    {
      name: 'Branches',
      rows: `
N° arbre | N° branche | Diamètre branche (cm) | Diamètre tige au-dessus (cm) | Insertion (m) | Extrémité (m)
1 | 1 | 10.1 | 12.4 | 2 | 8.6
1 | 2 | 6.9 | 13.2 | 1.9 | 7.5
2 | 1 | 11.2 | 13.1 | 2.4 | 9.5`
    },
    {
      name: 'Arbres',
      rows: `
N° arbre | Essence | Hauteur (m) | Base du houppier (m) | Stade | Vigueur
1 | Érable plane | 9.1 | 1.7 | jeune | bonne
2 | Tilleul | 10 | 2 | jeune | bonne`
    }
  ]),
  expected: {
    units: 'cm-m',
    columns: {
      Arbres: 'A tree; B species; C height m; D crownBase m; E stage; F vigor',
      Branches: 'A tree; B limb; C diameter cm; D stem cm; E origin m; F tip m'
    },
    trees: [
      tree(
        '1',
        9.1,
        1.7,
        { stage: 'young', vigor: 'good' },
        limb('1', 10.1, 12.4, 2, 8.6),
        limb('2', 6.9, 13.2, 1.9, 7.5)
      ),
      tree('2', 10, 2, { stage: 'young', vigor: 'good' }, limb('1', 11.2, 13.1, 2.4, 9.5))
    ],
    told: [['', 'joined']]
  }
}

import { csv } from '../csvFile'
import { limb, tree, type RealInventory } from '../expected'

export const frenchTabsUtf16: RealInventory = {
  shape: 'French .csv with tabs and decimal commas, UTF-16 little-endian',
  file: csv(
    `
Arbre\tEssence\tDHP (cm)\tHauteur (m)\tBase du houppier (m)\tStade\tVigueur\tBranche\tDiamètre branche (cm)\tTronc au-dessus de la fourche (cm)\tHauteur d'insertion (m)\tHauteur de l'extrémité (m)\tÉcorce incluse
P1\tÉrable plane\t17,8\t9\t1,7\tjeune\tbonne\tA\t9,8\t12\t2\t8,5\toui
P1\tÉrable plane\t17,8\t9\t1,7\tjeune\tbonne\tB\t7,2\t13,1\t1,9\t7,6\tnon
P2\tTilleul\t20,5\t10,1\t2\tjeune\tbonne\tA\t11\t12,8\t2,4\t9,6\tnon
P2\tTilleul\t20,5\t10,1\t2\tjeune\tbonne\tB\t6,1\t13,5\t2,2\t7,9\tnon`,
    { encoding: 'utf-16le', newline: '\r\n' }
  ),
  expected: {
    units: 'cm-m',
    columns: {
      '': 'A tree; B species; C trunk cm; D height m; E crownBase m; F stage; G vigor; H limb; I diameter cm; J stem cm; K origin m; L tip m; M bark'
    },
    trees: [
      tree(
        'P1',
        9,
        1.7,
        { stage: 'young', vigor: 'good', trunk: 17.8 },
        limb('A', 9.8, 12, 2, 8.5, 'full'),
        limb('B', 7.2, 13.1, 1.9, 7.6, 'none')
      ),
      tree(
        'P2',
        10.1,
        2,
        { stage: 'young', vigor: 'good', trunk: 20.5 },
        limb('A', 11, 12.8, 2.4, 9.6, 'none'),
        limb('B', 6.1, 13.5, 2.2, 7.9, 'none')
      )
    ]
  }
}

import { csv } from '../csvFile'
import { limb, tree, type RealInventory } from '../expected'

export const frenchLetters: RealInventory = {
  shape: 'French letters for yes and no, O and N, and for living or dead wood V and M',
  file: csv(
    `
N° arbre;Hauteur (m);Base du houppier (m);Stade;Vigueur;N° branche;Diam. branche (cm);Diam. tronc au-dessus (cm);Insertion (m);Extrémité (m);Écorce incluse (O/N);Vivante ou morte (V/M)
1;9,1;1,7;jeune;bonne;1;10,1;12,4;2;8,6;O;V
1;9,1;1,7;jeune;bonne;2;6,9;13,2;1,9;7,5;N;V
1;9,1;1,7;jeune;bonne;3;3,2;12;3;5,5;N;M
2;10;2;jeune;bonne;1;11,2;13,1;2,4;9,5;N;V`,
    { encoding: 'windows-1252', newline: '\r\n' }
  ),
  expected: {
    units: 'cm-m',
    columns: {
      '': 'A tree; B height m; C crownBase m; D stage; E vigor; F limb; G diameter cm; H stem cm; I origin m; J tip m; K bark; L live'
    },
    trees: [
      tree(
        '1',
        9.1,
        1.7,
        { stage: 'young', vigor: 'good' },
        limb('1', 10.1, 12.4, 2, 8.6, 'full'),
        limb('2', 6.9, 13.2, 1.9, 7.5, 'none'),
        limb('3', 3.2, 12, 3, 5.5, 'none', { 'Live or dead': 'dead' })
      ),
      tree('2', 10, 2, { stage: 'young', vigor: 'good' }, limb('1', 11.2, 13.1, 2.4, 9.5, 'none'))
    ],
    mayAsk: ['K1', 'L1']
  }
}

import { csv } from '../csvFile'
import { fromGirth, limb, tree, type RealInventory } from '../expected'

export const frenchGirths: RealInventory = {
  shape: 'girths instead of diameters for trunk, limb and stem, French, centimeters',
  file: csv(`
N° arbre;Essence;Circonférence du tronc (cm);Hauteur totale (m);Base du houppier (m);Stade;Vigueur;Branche;Circonférence branche (cm);Circonférence du tronc au-dessus de l'union (cm);Hauteur d'insertion (m);Hauteur de l'extrémité (m)
A1;Érable plane;57;9,1;1,7;jeune;bonne;1;31;39;2;8,6
A1;Érable plane;57;9,1;1,7;jeune;bonne;2;22;41;1,9;7,5
A2;Tilleul;64;10;2;jeune;bonne;1;35;41;2,4;9,5
A2;Tilleul;64;10;2;jeune;bonne;2;24;43;2,2;8,4`),
  expected: {
    units: 'cm-m',
    columns: {
      '': 'A tree; B species; C trunk cm girth; D height m; E crownBase m; F stage; G vigor; H limb; I diameter cm girth; J stem cm girth; K origin m; L tip m'
    },
    // A girth is π times the diameter: 31 against 39 is the ratio 31/39 all the same.
    trees: [
      tree(
        'A1',
        9.1,
        1.7,
        { stage: 'young', vigor: 'good', trunk: fromGirth(57) },
        limb('1', fromGirth(31), fromGirth(39), 2, 8.6),
        limb('2', fromGirth(22), fromGirth(41), 1.9, 7.5)
      ),
      tree(
        'A2',
        10,
        2,
        { stage: 'young', vigor: 'good', trunk: fromGirth(64) },
        limb('1', fromGirth(35), fromGirth(41), 2.4, 9.5),
        limb('2', fromGirth(24), fromGirth(43), 2.2, 8.4)
      )
    ],
    told: [['', 'girth']]
  }
}

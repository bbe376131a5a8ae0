import { csv } from '../csvFile'
import { limb, tree, type RealInventory } from '../expected'
import { workbook } from '../workbookFile'
import { maple, oak, young } from './trees'

const names =
  'Tree,Species,Height (ft),Crown base (ft),Life stage,Vigor,Limb,Limb dia (in),Stem dia (in),Origin (ft),Tip (ft)'
const columns = {
  '': 'A tree; B species; C height ft; D crownBase ft; E stage; F vigor; G limb; H diameter in; I stem in; J origin ft; K tip ft'
}

/** Invented: limbs by the compass below their tree, where "N" and "SE" are no statistics, and a mean at the foot. */
export const compassBelowTree: RealInventory = {
  shape: 'limbs called N, SE and SD below the first row of their tree, and an average at the foot',
  file: csv(`
${names}
T1,Red maple,30,6,young,good,N,4.1,5,7,28
,,,,,,SE,2.7,5.4,6.5,24
T2,Pin oak,33,7,young,good,E,4.4,5.6,8,31
,,,,,,N,3.1,6,7.5,26
Average,,31.5,6.5,,,,3.58,5.5,7.25,27.25`),
  expected: {
    units: 'in-ft',
    columns,
    trees: [maple('T1', ['N', 'SE']), oak('T2', ['E', 'N'])],
    leftOut: { '6': 'total' }
  }
}

/** Invented: trees of a campus by quadrant, with ids that are short for quartiles elsewhere. */
export const quadrantsAsIds: RealInventory = {
  shape: 'trees called Q1, Q3 and SE, as they stand on a court',
  file: workbook([
    {
      name: 'Court',
      rows: `
${names.replaceAll(',', ' | ')}
Q1 | Red maple | 30 | 6 | young | good | A | 4.1 | 5 | 7 | 28
Q1 | Red maple | 30 | 6 | young | good | B | 2.7 | 5.4 | 6.5 | 24
Q3 | Pin oak | 33 | 7 | young | good | A | 4.4 | 5.6 | 8 | 31
Q3 | Pin oak | 33 | 7 | young | good | B | 3.1 | 6 | 7.5 | 26
SE | Pin oak | 33 | 7 | young | good | A | 4.4 | 5.6 | 8 | 31
Mean | | 31.8 | 6.6 | | | | 3.74 | 5.52 | 7.4 | 28`
    }
  ]),
  expected: {
    units: 'in-ft',
    columns: { Court: columns[''] },
    trees: [maple('Q1'), oak('Q3'), tree('SE', 33, 7, young, limb('A', 4.4, 5.6, 8, 31))],
    leftOut: { '7': 'total' }
  }
}

/** Invented: a cemetery whose numbers start anew in each section, with "dto." for what the row above says. */
export const germanDitto: RealInventory = {
  shape: 'Friedhof: Nummern je Feld, „dto.“ und „dgl.“ für die Zeile darüber',
  file: csv(`
Feld;Nr.;Baumart;Höhe (m);Krone ab (m);Ast;Ast-Ø (cm);Stamm-Ø darüber (cm);Ansatz (m);Spitze (m)
A;1;Eibe;6,5;1,8;a;7;13;2,1;5,9
A;dto.;dto.;dto.;dto.;b;5;12;2,8;5
A;2;Spitzahorn;10;2,4;a;11;20;2,9;9,1
B;1;Rotdorn;5,5;1,7;a;6;10;2;4,9
B;2;Bergulme;11;2,6;a;10;21;3,2;9,7
B;dgl.;dgl.;dgl.;dgl.;b;8;19;4;8,8`),
  expected: {
    units: 'cm-m',
    columns: {
      '': 'A -|site; B tree; C species; D height m; E crownBase m; F limb; G diameter cm; H stem cm; I origin m; J tip m'
    },
    trees: [
      tree('1 (A)', 6.5, 1.8, {}, limb('a', 7, 13, 2.1, 5.9), limb('b', 5, 12, 2.8, 5)),
      tree('2 (A)', 10, 2.4, {}, limb('a', 11, 20, 2.9, 9.1)),
      tree('1 (B)', 5.5, 1.7, {}, limb('a', 6, 10, 2, 4.9)),
      tree('2 (B)', 11, 2.6, {}, limb('a', 10, 21, 3.2, 9.7), limb('b', 8, 19, 4, 8.8))
    ],
    told: [['', 'several trees']],
    mayAsk: ['B1']
  }
}

/** Invented: a French landscape firm's survey with an empty site, a stump, and a total without tax. */
export const frenchEmptySites: RealInventory = {
  shape: 'paysagiste : emplacement vide, souche à rogner, total HT, prix par arbre',
  file: csv(`
Repère;Essence;Hauteur (m);Houppier à partir de (m);Branche;Ø branche (cm);Ø tronc à la fourche (cm);Départ (m);Cime (m);Prix HT
R1;Charme;7,5;1,9;a;7;14;2,2;6,8;120
R2;Emplacement vide;;;;;;;;
R3;Souche - à rogner;;;;;;;;90
R4;Micocoulier;9;2,2;a;9;18;2,7;8,1;140
Total HT;;;;;;;;;350`),
  expected: {
    units: 'cm-m',
    columns: {
      '': 'A tree; B species; C height m; D crownBase m; E limb; F diameter cm; G stem cm; H origin m; I tip m; J -'
    },
    trees: [
      tree('R1', 7.5, 1.9, {}, limb('a', 7, 14, 2.2, 6.8)),
      tree('R4', 9, 2.2, {}, limb('a', 9, 18, 2.7, 8.1))
    ],
    leftOut: { '3': 'vacant', '4': 'stump', '6': 'total' },
    mayAsk: ['A1']
  }
}

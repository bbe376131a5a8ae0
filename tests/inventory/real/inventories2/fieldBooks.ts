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

/** Invented: a cemetery whose numbers start again in each section, with "dto." for what the row above says. */
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

/** Invented: a crew's pages, every size with its marks. */
export const marksInEveryCell: RealInventory = {
  shape: 'a crew’s pages: 4½", 31\', 7\'-6", 3 1/4", the lowest branch called the 1st, headers on each page',
  file: csv(`
Oak Hollow College - structural pruning walk,,,,,,,,,,,
,,,,,,,,,,,
Tree #,Species,DBH,Ht,1st live branch,Cond.,Age,Br. #,Br. dia,Trunk dia @ union,Starts @,Top @
U12,Red oak,"9¼""",31',6',G,Young,1,"4½""","8""","7'-6""",28'
U12,Red oak,"9¼""",31',6',G,Young,2,"3 1/4""","7""",9',26'
Tree #,Species,DBH,Ht,1st live branch,Cond.,Age,Br. #,Br. dia,Trunk dia @ union,Starts @,Top @
U20,Honeylocust,"11""","36'-6""",8',F,Medium,1,"5""","9""",10',33'
Average,,"10.1""",33.75',7',,,,"4.25""","8""",8.8',29'`),
  expected: {
    units: 'in-ft',
    columns: {
      '': 'A tree; B species; C trunk in; D height ft; E crownBase ft; F vigor; G stage; H limb; I diameter in; J stem in; K origin ft; L tip ft'
    },
    trees: [
      tree(
        'U12',
        31,
        6,
        { stage: 'young', vigor: 'good', trunk: 9.25 },
        limb('1', 4.5, 8, 7.5, 28),
        limb('2', 3.25, 7, 9, 26)
      ),
      tree('U20', 36.5, 8, { stage: 'medium', vigor: 'fair', trunk: 11 }, limb('1', 5, 9, 10, 33))
    ],
    leftOut: { '6': 'header', '8': 'total' }
  }
}

/** Invented: a consultant's limb table, some sizes estimated from the ground. */
export const estimatedLimbs: RealInventory = {
  shape: 'a limb table with “~2”, “4 est.”, “3.5-4” and “28+”, parents in another case and “Trunk”',
  file: csv(`
Tree ID,Height ft,Lowest live limb ft,Limb ID,Attached to,Limb diameter in,Parent stem diameter in,Attachment height ft,Tip height ft,Bark inclusion
MP-07,41,9,NE Scaffold,Trunk,6,10.5,11,38,strong
MP-07,,,ne-2,ne scaffold,2.5,5,15,33,none
mp-07,,,SW Scaffold,trunk,4 est.,9.5,14,34,none
MP-07\u200b,,,Low W,main stem,~2,11,9,20,none
MP-08,34,7,A,trunk,3.5-4,8,8,30,slight
MP-08,,,B,trunk,3,7.5,10,28+,none`),
  expected: {
    units: 'in-ft',
    columns: {
      '': 'A tree; B height ft; C crownBase ft; D limb; E parent; F diameter in; G stem in; H origin ft; I tip ft; J bark'
    },
    trees: [
      tree(
        'MP-07',
        41,
        9,
        {},
        limb('NE Scaffold', 6, 10.5, 11, 38, 'full'),
        limb('ne-2', 2.5, 5, 15, 33, 'none', { 'Parent limb': 'NE Scaffold' }),
        limb('SW Scaffold', 4, 9.5, 14, 34, 'none'),
        limb('Low W', 2, 11, 9, 20, 'none')
      ),
      tree('MP-08', 34, 7, {}, limb('A', null, 8, 8, 30, 'partial'), limb('B', 3, 7.5, 10, 28, 'none'))
    ],
    told: [
      ['F4', 'range'],
      ['F5', 'range'],
      ['F6', 'range'],
      ['I7', 'range'],
      ['A2', 'same id']
    ]
  }
}

/** Invented: numbers that start again in each street, each tree with one limb called A. */
export const oneLimbCalledA: RealInventory = {
  shape: 'numbers by street, and one limb a tree, always called A',
  file: csv(`
Street,No.,Species,Height ft,Live crown starts ft,Vigor,Limb,Limb dia in,Stem above union in,Union ht ft,Tip ht ft
Ash Rd,1,Red maple,30,6,good,A,4.1,5,7,28
Ash Rd,2,Pin oak,33,7,good,A,4.4,5.6,8,31
Birch Ave,1,Pin oak,33,7,good,A,3.1,6,7.5,26
Birch Ave,2,Sweetgum,30,6,good,A,2.7,5.4,6.5,24`),
  expected: {
    units: 'in-ft',
    columns: {
      '': 'A site; B tree; C species; D height ft; E crownBase ft; F vigor; G limb; H diameter in; I stem in; J origin ft; K tip ft'
    },
    trees: [
      tree('1 (Ash Rd)', 30, 6, { vigor: 'good' }, limb('A', 4.1, 5, 7, 28)),
      tree('2 (Ash Rd)', 33, 7, { vigor: 'good' }, limb('A', 4.4, 5.6, 8, 31)),
      tree('1 (Birch Ave)', 33, 7, { vigor: 'good' }, limb('A', 3.1, 6, 7.5, 26)),
      tree('2 (Birch Ave)', 30, 6, { vigor: 'good' }, limb('A', 2.7, 5.4, 6.5, 24))
    ],
    told: [['', 'several trees']],
    mayAsk: ['B1']
  }
}

/** Invented: a German crew's list. */
export const germanCrewDoubts: RealInventory = {
  shape: 'Kolonne: „ca. 8“, „10-12“, k.A., Stamm und Hauptstamm, Astbasis, Mittelwert',
  file: csv(`
Baum;Art;BHD cm;Baumhöhe m;Kronenbasis m;Ast;Sitzt an;Astdurchmesser cm;Stammdurchmesser an der Astbasis cm;Höhe Astansatz m;Höhe Astspitze m
L3;Linde;28;10,5;2,5;A;Stamm;11;22;3,0;9,5
L3;;;;;B;stamm;ca. 8;20;3,8;8,5
L3;;;;;B1;b;4;8;4,5;7,5
L4;Esche;31;12;3,0;A;Stamm;10-12;25;3,4;10,8
L4;;;;;B;Hauptstamm;9;k.A.;4,2;9,9
Mittelwert;;29,5;11,25;2,75;;;8,5;18,8;3,8;9,2`),
  expected: {
    units: 'cm-m',
    columns: {
      '': 'A tree; B species; C trunk cm; D height m; E crownBase m; F limb; G parent; H diameter cm; I stem cm; J origin m; K tip m'
    },
    trees: [
      tree(
        'L3',
        10.5,
        2.5,
        { trunk: 28 },
        limb('A', 11, 22, 3, 9.5),
        limb('B', 8, 20, 3.8, 8.5),
        limb('B1', 4, 8, 4.5, 7.5, null, { 'Parent limb': 'B' })
      ),
      tree('L4', 12, 3, { trunk: 31 }, limb('A', null, 25, 3.4, 10.8), limb('B', 9, null, 4.2, 9.9))
    ],
    ratios: 1,
    notJudged: ['L4'],
    leftOut: { '7': 'total' },
    told: [
      ['H3', 'range'],
      ['H5', 'range'],
      ['I6', 'missing']
    ]
  }
}

/** Invented: a French list whose tree columns are headed by bare words. */
export const frenchBareWords: RealInventory = {
  shape: 'Numéro, Diamètre, Hauteur nus avant « Branche n° » ; 007 et 7 ; unités dans les cellules',
  file: csv(`
Numéro;Essence;Diamètre cm;Hauteur m;Branche n°;Diam. branche;Diam. tronc;Attache m;Bout m;Inclusion
007;Chêne;25;10,4;1;10 cm;20 cm;3;9,2;o
7;Chêne;25;10,4;2;8 cm;19 cm;4;8,4;n
 008 ;Hêtre;28;11;1;11 cm;22 cm;3,2;9,9;n
008;Hêtre;28;11;2;7 cm;20 cm;4,5;9;n`),
  expected: {
    units: 'cm-m',
    columns: {
      '': 'A tree; B species; C trunk cm; D height m; E limb; F diameter cm; G stem cm; H origin m; I tip m; J bark'
    },
    trees: [
      tree(
        '007',
        10.4,
        null,
        { trunk: 25 },
        limb('1', 10, 20, 3, 9.2, 'full'),
        limb('2', 8, 19, 4, 8.4, 'none')
      ),
      tree(
        '008',
        11,
        null,
        { trunk: 28 },
        limb('1', 11, 22, 3.2, 9.9, 'none'),
        limb('2', 7, 20, 4.5, 9, 'none')
      )
    ],
    told: [['A2', 'same id']],
    mayAsk: ['A1']
  }
}

/** Invented: gardeners of a Spanish campus. */
export const spanishGardeners: RealInventory = {
  shape: 'jardineros: unidades bajo los nombres, „Desde“ y „Hasta“, estado B, R y M, una fila Total',
  file: workbook([
    {
      name: 'Hoja1',
      rows: `
Inventario del campus
Árbol | Especie | Tronco | Altura | Copa desde | Rama | Diámetro de rama | Tronco en la unión | Desde | Hasta | Corteza incluida | Estado | Precio
 | | cm | m | m | | cm | cm | m | m | s/n | | €
C1 | Almez | 18 | 7.5 | 1.9 | a | 7 | 14 | 2.2 | 6.8 | x | B | 60
C2 | Tipuana | 22 | 9 | 2.2 | a | 9 | 18 | 2.7 | 8.1 | | R | 60
C3 | Jacarandá | 20 | 8.2 | 2 | a | 8 | 15 | 2.5 | 7.6 | x | M | 60
Total | 3 | | | | 3 | | | | | | | 180`
    }
  ]),
  expected: {
    units: 'cm-m',
    columns: {
      Hoja1:
        'A tree; B species; C trunk cm; D height m; E crownBase m; F limb; G diameter cm; H stem cm; I origin m; J tip m; K bark; L vigor; M -'
    },
    trees: [
      tree('C1', 7.5, 1.9, { trunk: 18, vigor: 'good' }, limb('a', 7, 14, 2.2, 6.8, 'full')),
      tree('C2', 9, 2.2, { trunk: 22, vigor: 'fair' }, limb('a', 9, 18, 2.7, 8.1, 'none')),
      tree('C3', 8.2, 2, { trunk: 20, vigor: 'poor' }, limb('a', 8, 15, 2.5, 7.6, 'full'))
    ],
    ratios: 1,
    leftOut: { '7': 'total' }
  }
}

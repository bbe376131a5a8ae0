import { csv } from '../csvFile'
import { limb, tree, type RealInventory } from '../expected'
import { maple, oak } from './trees'

const names =
  'Tree,Species,Height (ft),Crown base (ft),Life stage,Vigor,Limb,Limb dia (in),Stem dia (in),Origin (ft),Tip (ft),Notes'
const columns = {
  '': 'A tree; B species; C height ft; D crownBase ft; E stage; F vigor; G limb; H diameter in; I stem in; J origin ft; K tip ft; L notes|treeNotes'
}

/** Invented: remarks that are words for an empty site elsewhere, beside trees that were measured. */
export const stumpInTheNotes: RealInventory = {
  shape: 'notes “stump”, “removed” and “vacant lot side” beside measured trees, whose limbs stand below them',
  file: csv(`
${names}
T1,Red maple,30,6,young,good,A,4.1,5,7,28,Stump of an old tree nearby
,,,,,,B,2.7,5.4,6.5,24,removed
T2,Pin oak,33,7,young,good,A,4.4,5.6,8,31,stump
,,,,,,B,3.1,6,7.5,26,vacant lot side`),
  expected: { units: 'in-ft', columns, trees: [maple('T1'), oak('T2')] }
}

/** Invented: a tree that is gone, with limbs measured before it went. */
export const limbsOfAFelledTree: RealInventory = {
  shape: 'a felled tree whose limbs still stand below it, between two trees that stand',
  file: csv(`
${names}
T1,Red maple,30,6,young,good,A,4.1,5,7,28,
,,,,,,B,2.7,5.4,6.5,24,
T2,Removed,30,6,young,good,A,4.1,5,7,28,
,,,,,,B,3,6,8,25,
T3,Pin oak,33,7,young,good,A,4.4,5.6,8,31,
,,,,,,B,3.1,6,7.5,26,`),
  expected: {
    units: 'in-ft',
    columns,
    trees: [maple('T1'), oak('T3')],
    leftOut: { '4': 'removed', '5': 'removed' }
  }
}

/** Invented: the stems were never measured, though there is a column for them. */
export const stemsNeverMeasured: RealInventory = {
  shape: 'ein Blatt, dessen Spalte der Stammdurchmesser leer blieb',
  file: csv(`
Baum;Art;Höhe (m);Kronenansatz (m);Ast;Ast-Ø (cm);Stammdurchmesser an der Gabel (cm);Ansatz (m);Spitze (m)
1;Linde;10;2,4;1;10;;2,9;9
1;Linde;10;2,4;2;8;;3,6;8
2;Ahorn;9;2,1;1;9;;2,6;8`),
  expected: {
    units: 'cm-m',
    columns: {
      '': 'A tree; B species; C height m; D crownBase m; E limb; F diameter cm; G stem cm; H origin m; I tip m'
    },
    trees: [
      tree('1', 10, 2.4, {}, limb('1', 10, null, 2.9, 9), limb('2', 8, null, 3.6, 8)),
      tree('2', 9, 2.1, {}, limb('1', 9, null, 2.6, 8))
    ],
    ratios: 0,
    notJudged: ['1', '2'],
    told: [['G2', 'missing']],
    exit: 3
  }
}

/** Invented: roles under "Limb class", and 0 for a limb that grows on no other. */
export const limbClasses: RealInventory = {
  shape:
    'Limb class with Leader, Codominant and Branch; Grows on 2.0, 0 and Trunk; dead and broken by letters',
  file: csv(`
Tree,Height ft,Crown base ft,Age class,Vigor,Limb no,Limb class,Grows on,Dia in,Stem dia in,Origin ft,Tip ft,Dead?
7,34,7,Semi-mature,Good,1,Leader,,8,,7,34,N
7,34,7,Semi-mature,Good,2,Codominant,,6,7.5,9,31,N
7,34,7,Semi-mature,Good,3,Branch,2.0,2,5,14,25,Y
7,34,7,Semi-mature,Good,4,Branch,0,1.5,7,12,20,N
8,35,8,SM,VG,1,Branch,Trunk,4,9,10,29,N`),
  expected: {
    units: 'in-ft',
    columns: {
      '': 'A tree; B height ft; C crownBase ft; D stage; E vigor; F limb; G role; H parent; I diameter in; J stem in; K origin ft; L tip ft; M live'
    },
    trees: [
      tree(
        '7',
        34,
        7,
        { stage: 'medium', vigor: 'good' },
        limb('1', 8, null, 7, 34, null, { Role: 'leader' }),
        limb('2', 6, 7.5, 9, 31),
        limb('3', 2, 5, 14, 25, null, { 'Parent limb': '2', 'Live or dead': 'dead' }),
        limb('4', 1.5, 7, 12, 20)
      ),
      tree('8', 35, 8, { stage: 'medium', vigor: 'good' }, limb('1', 4, 9, 10, 29))
    ],
    ratios: 1,
    mayAsk: ['G1']
  }
}

/** Invented: heights as they are spoken in French. */
export const metersSpoken: RealInventory = {
  shape: 'hauteurs « 10m20 », « 2m », diamètres « 25cm », écorce incluse légère ou forte',
  file: csv(`
Arbre;Essence;Ø tronc;Hauteur;Base du houppier;Charpentière;Ø charpentière;Ø tronc au-dessus;Départ;Sommet;Écorce incluse
1;Tilleul;25cm;10m20;2m40;a;10cm;20cm;2m90;9m30;légère
1;Tilleul;25cm;10m20;2m40;b;8cm;19cm;3m60;8m05;aucune
2;Charme;20cm;8m50;2m;a;8cm;15cm;2m50;7m60;forte`),
  expected: {
    units: 'cm-m',
    columns: {
      '': 'A tree; B species; C trunk cm; D height m; E crownBase m; F limb; G diameter cm; H stem cm; I origin m; J tip m; K bark'
    },
    trees: [
      tree(
        '1',
        10.2,
        2.4,
        { trunk: 25 },
        limb('a', 10, 20, 2.9, 9.3, 'partial'),
        limb('b', 8, 19, 3.6, 8.05, 'none')
      ),
      tree('2', 8.5, 2, { trunk: 20 }, limb('a', 8, 15, 2.5, 7.6, 'full'))
    ]
  }
}

/** Invented: units in the plural, as they are often written in Spanish. */
export const unitsInThePlural: RealInventory = {
  shape: 'medidas “10 cms” y “2,9 mts.” en cada celda, ninguna unidad en los nombres',
  file: csv(`
Nº;Especie;DAP;Altura total;Altura de copa;Rama;Diámetro rama;Diámetro tronco sobre la rama;Altura nacimiento;Altura punta
1;Liquidámbar;25 cms;10,2 mts;2,4 mts;a;10 cms;20 cms;2,9 mts;9,3 mts
1;Liquidámbar;25 cms;10,2 mts;2,4 mts;b;8 cms;19 cms;3,6 mts;8,2 mts
2;Jacarandá;20 cms;8,5 mts;2 mts;a;8 cms;15 cms;2,5 mts.;7,6 mts.`),
  expected: {
    units: 'cm-m',
    columns: {
      '': 'A tree; B species; C trunk cm; D height m; E crownBase m; F limb; G diameter cm; H stem cm; I origin m; J tip m'
    },
    trees: [
      tree('1', 10.2, 2.4, { trunk: 25 }, limb('a', 10, 20, 2.9, 9.3), limb('b', 8, 19, 3.6, 8.2)),
      tree('2', 8.5, 2, { trunk: 20 }, limb('a', 8, 15, 2.5, 7.6))
    ]
  }
}

/** Invented: a town with two languages, in names and cells. */
export const bothLanguagesInCells: RealInventory = {
  shape: 'bilingue : « Hauteur / Height (m) », « Bonne / Good », « Oui / Yes »',
  file: csv(`
Arbre / Tree,Essence / Species,DHP / DBH (cm),Hauteur / Height (m),Base de la cime / Crown base (m),Condition / État,Branche / Limb,Diam. branche / Limb diam. (cm),Diam. tige au-dessus / Stem diam. above (cm),Insertion / Origin (m),Extrémité / Tip (m),Écorce incluse / Included bark
1,Érable / Maple,25,10.2,2.4,Bonne / Good,1,10,20,2.9,9.3,Oui / Yes
1,Érable / Maple,25,10.2,2.4,Bonne / Good,2,8,19,3.6,8.2,Non / No
2,Frêne / Ash,22,9,2.1,Moyenne / Fair,1,9,17,2.6,8,Non / No`),
  expected: {
    units: 'cm-m',
    columns: {
      '': 'A tree; B species; C trunk cm; D height m; E crownBase m; F vigor; G limb; H diameter cm; I stem cm; J origin m; K tip m; L bark'
    },
    trees: [
      tree(
        '1',
        10.2,
        2.4,
        { trunk: 25, vigor: 'good' },
        limb('1', 10, 20, 2.9, 9.3, 'full'),
        limb('2', 8, 19, 3.6, 8.2, 'none')
      ),
      tree('2', 9, 2.1, { trunk: 22, vigor: 'fair' }, limb('1', 9, 17, 2.6, 8, 'none'))
    ]
  }
}

/** Invented: a tree whose sizes were mistyped twice is still one tree. */
export const slipsInTreeSizes: RealInventory = {
  shape: 'height and trunk of a tree repeated with “two” and -3, which are no other tree',
  file: csv(`
Tree,Species,DBH (in),Height (ft),Crown base (ft),Limb,Limb dia (in),Stem dia (in),Origin (ft),Tip (ft)
T1,Red maple,7.2,30,6,A,4.1,5,7,28
T1,Red maple,-3,two,6,B,2.7,5.4,6.5,24
T2,Pin oak,8,33,7,A,4.4,5.6,8,31`),
  expected: {
    units: 'in-ft',
    columns: {
      '': 'A tree; B species; C trunk in; D height ft; E crownBase ft; F limb; G diameter in; H stem in; I origin ft; J tip ft'
    },
    trees: [
      maple('T1', ['A', 'B'], { trunk: 7.2 }),
      tree('T2', 33, 7, { trunk: 8 }, limb('A', 4.4, 5.6, 8, 31))
    ],
    told: [
      ['C3', 'two values'],
      ['D3', 'two values']
    ]
  }
}

/** Invented: a stem that could not be reached is no sign of the leader. */
export const stemOutOfReach: RealInventory = {
  shape:
    'Stammdurchmesser „n.e.“ und „nicht zugänglich“ an den einzigen Ästen ihrer Bäume; Himmelsrichtungen mit O',
  file: csv(`
Baum Nr.;Baumart;Baumhöhe (m);Höhe Kronenansatz (m);Ast;Richtung;Ø Ast (cm);Ø Stamm oberhalb Abzweig (cm);Höhe Abzweig (m);Höhe Astspitze (m)
1;Spitzahorn;10,5;2,4;1;NO;11;21;2,9;9,4
2;Hainbuche;9;2;1;O;9;n.e.;2,6;8
3;Linde;9,8;2,2;1;Südwest;9;nicht zugänglich;2,8;8,7`),
  expected: {
    units: 'cm-m',
    columns: {
      '': 'A tree; B species; C height m; D crownBase m; E limb; F bearing; G diameter cm; H stem cm; I origin m; J tip m'
    },
    trees: [
      tree('1', 10.5, 2.4, {}, limb('1', 11, 21, 2.9, 9.4, null, { Bearing: 45 })),
      tree('2', 9, 2, {}, limb('1', 9, null, 2.6, 8, null, { Bearing: 90 })),
      tree('3', 9.8, 2.2, {}, limb('1', 9, null, 2.8, 8.7, null, { Bearing: 225 }))
    ],
    ratios: 1,
    notJudged: ['2', '3'],
    told: [
      ['H3', 'missing'],
      ['H4', 'missing']
    ]
  }
}

/** Invented: heights that are mostly estimates are heights. */
export const heightsMostlyEstimated: RealInventory = {
  shape: 'Gärtner: Höhen „ca. 9“ in den meisten Zeilen, Ast links und rechts, ab und bis',
  file: csv(`
Nr;Art;Stamm cm;Höhe m;unterster Ast m;Ast;Ast-Ø cm;Stamm-Ø darüber cm;ab m;bis m
1;Linde;22;ca. 9;2,1;links;9;17;2,6;8
1;Linde;22;ca. 9;2,1;rechts;7;16;3,2;7,2
2;Ahorn;25;10;2,4;Straße;11;20;2,9;9,1`),
  expected: {
    units: 'cm-m',
    columns: {
      '': 'A tree; B species; C trunk cm; D height m; E crownBase m; F limb; G diameter cm; H stem cm; I origin m; J tip m'
    },
    trees: [
      tree('1', 9, 2.1, { trunk: 22 }, limb('links', 9, 17, 2.6, 8), limb('rechts', 7, 16, 3.2, 7.2)),
      tree('2', 10, 2.4, { trunk: 25 }, limb('Straße', 11, 20, 2.9, 9.1))
    ],
    told: [['D2', 'range']],
    mayAsk: ['E1']
  }
}

/** Invented: the header explains the numbers below it; bare names from low to high. */
export const legendInHeader: RealInventory = {
  shape: 'Condition (1=good 2=fair 3=poor) over numbers; Low and High for where a limb starts and ends',
  file: csv(`
Park,Tree No.,Species,Height (ft),Clear to (ft),Condition (1=good 2=fair 3=poor),Scaffold,Scaffold dia (in),Stem dia (in),Low (ft),High (ft)
North,1,Red maple,30,6,1,A,4.1,5,7,28
North,1,Red maple,30,6,1,B,2.7,5.4,6.5,24
South,2,Pin oak,33,7,3,A,4.4,5.6,8,31
South,2,Pin oak,33,7,3,B,3.1,6,7.5,26`),
  expected: {
    units: 'in-ft',
    columns: {
      '': 'A site; B tree; C species; D height ft; E crownBase ft; F vigor; G limb; H diameter in; I stem in; J origin ft; K tip ft'
    },
    trees: [maple('1', ['A', 'B'], { vigor: 'good' }), oak('2', ['A', 'B'], { vigor: 'poor' })],
    ratios: 1,
    mayAsk: ['E1', 'F1', 'J1', 'K1']
  }
}

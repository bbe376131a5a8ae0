import { csv } from '../csvFile'
import type { RealInventory } from '../expected'
import { workbook } from '../workbookFile'
import { barkOnFirst, lime, limeTrunk, maple, noBark, oak, plane, planeTrunk } from './trees'

/** Invented: a header whose words were typed into three cells, one below the other. */
export const wordsDownThreeRows: RealInventory = {
  shape: 'each header typed down three cells: Tree / height / (ft)',
  file: csv(`
,Tree,Crown,Life,,,Limb,Stem,Limb,Limb
Tree,height,base,stage,Vigor,Limb,dia.,dia.,origin,tip
,(ft),(ft),,,,(in),(in),(ft),(ft)
T1,30,6,young,good,A,4.1,5,7,28
T1,30,6,young,good,B,2.7,5.4,6.5,24
T2,33,7,young,good,A,4.4,5.6,8,31
T2,33,7,young,good,B,3.1,6,7.5,26`),
  expected: {
    units: 'in-ft',
    columns: {
      '': 'A tree; B height ft; C crownBase ft; D stage; E vigor; F limb; G diameter in; H stem in; I origin ft; J tip ft'
    },
    trees: [maple('T1'), oak('T2')]
  }
}

/** Invented: an official form with its columns numbered. */
export const columnNumbersBelow: RealInventory = {
  shape: 'German form with a row of column numbers below the header: 1, 2, 3 …',
  file: workbook([
    {
      name: 'Erhebung',
      rows: `
Erhebungsbogen Jungbaumpflege | | | | | | | | |
Baum-Nr. | Baumhöhe (m) | Kronenansatz (m) | Altersstufe | Vitalität | Ast-Nr. | Ast-Ø (cm) | Stamm-Ø über Gabel (cm) | Ansatz (m) | Spitze (m)
1 | 2 | 3 | 4 | 5 | 6 | 7 | 8 | 9 | 10
1 | 9.1 | 1.7 | jung | gut | 1 | 10.1 | 12.4 | 2 | 8.6
1 | 9.1 | 1.7 | jung | gut | 2 | 6.9 | 13.2 | 1.9 | 7.5
2 | 10 | 2 | jung | gut | 1 | 11.2 | 13.1 | 2.4 | 9.5
2 | 10 | 2 | jung | gut | 2 | 7.7 | 13.8 | 2.2 | 8.4`
    }
  ]),
  expected: {
    units: 'cm-m',
    columns: {
      Erhebung:
        'A tree; B height m; C crownBase m; D stage; E vigor; F limb; G diameter cm; H stem cm; I origin m; J tip m'
    },
    trees: [lime('1'), plane('2')],
    told: [['', 'header']]
  }
}

/** Invented: an official form with its columns lettered. */
export const columnLettersBelow: RealInventory = {
  shape: 'a row of letters in brackets below the header: (a), (b), (c) …',
  file: csv(`
Tree,Height (ft),Crown base (ft),Life stage,Vigor,Limb,Limb dia (in),Stem dia (in),Origin (ft),Tip (ft)
(a),(b),(c),(d),(e),(f),(g),(h),(i),(j)
T1,30,6,young,good,A,4.1,5,7,28
T1,30,6,young,good,B,2.7,5.4,6.5,24
T2,33,7,young,good,A,4.4,5.6,8,31
T2,33,7,young,good,B,3.1,6,7.5,26`),
  expected: {
    units: 'in-ft',
    columns: {
      '': 'A tree; B height ft; C crownBase ft; D stage; E vigor; F limb; G diameter in; H stem in; I origin ft; J tip ft'
    },
    trees: [maple('T1'), oak('T2')]
  }
}

/** Invented: units above the names. */
export const unitsRowAbove: RealInventory = {
  shape: 'the row of units stands above the row of names',
  file: csv(`
,m,m,,,,cm,cm,m,m
Tree,Height,Crown base,Life stage,Vigor,Limb,Limb dia,Stem dia,Origin,Tip
1,9.1,1.7,young,good,1,10.1,12.4,2,8.6
1,9.1,1.7,young,good,2,6.9,13.2,1.9,7.5
2,10,2,young,good,1,11.2,13.1,2.4,9.5
2,10,2,young,good,2,7.7,13.8,2.2,8.4`),
  expected: {
    units: 'cm-m',
    columns: {
      '': 'A tree; B height m; C crownBase m; D stage; E vigor; F limb; G diameter cm; H stem cm; I origin m; J tip m'
    },
    trees: [lime('1'), plane('2')]
  }
}

/** Invented: an example for those who fill the table in. */
export const exampleRow: RealInventory = {
  shape: 'a filled-in example in the first row below the header, called EXAMPLE',
  file: csv(`
Tree,Species,Height (ft),Crown base (ft),Life stage,Vigor,Limb,Limb dia (in),Stem dia (in),Origin (ft),Tip (ft)
EXAMPLE,Elm,40,9,young,good,A,5.5,7,10,38
T1,Red maple,30,6,young,good,A,4.1,5,7,28
T1,Red maple,30,6,young,good,B,2.7,5.4,6.5,24
T2,Pin oak,33,7,young,good,A,4.4,5.6,8,31
T2,Pin oak,33,7,young,good,B,3.1,6,7.5,26`),
  expected: {
    units: 'in-ft',
    columns: {
      '': 'A tree; B species; C height ft; D crownBase ft; E stage; F vigor; G limb; H diameter in; I stem in; J origin ft; K tip ft'
    },
    trees: [maple('T1'), oak('T2')],
    leftOut: { '2': 'note' }
  }
}

/** Invented: a bilingual office in Quebec. */
export const twoLanguageRows: RealInventory = {
  shape: 'a French header row and the English one below it',
  file: csv(`
Arbre,Essence,Hauteur (m),Base du houppier (m),Stade,Vigueur,Branche,Diamètre de la branche (cm),Diamètre de la tige au-dessus (cm),Insertion (m),Extrémité (m)
Tree,Species,Height (m),Crown base (m),Life stage,Vigor,Limb,Limb diameter (cm),Stem diameter above (cm),Origin (m),Tip (m)
1,Tilleul,9.1,1.7,jeune,bonne,1,10.1,12.4,2,8.6
1,Tilleul,9.1,1.7,jeune,bonne,2,6.9,13.2,1.9,7.5
2,Platane,10,2,jeune,bonne,1,11.2,13.1,2.4,9.5
2,Platane,10,2,jeune,bonne,2,7.7,13.8,2.2,8.4`),
  expected: {
    units: 'cm-m',
    columns: {
      '': 'A tree; B species; C height m; D crownBase m; E stage; F vigor; G limb; H diameter cm; I stem cm; J origin m; K tip m'
    },
    trees: [lime('1'), plane('2')]
  }
}

/** Invented: the same office, both languages in a cell. */
export const twoLanguagesInACell: RealInventory = {
  shape: 'French and English in one header cell, parted by a slash, DHP/DBH',
  file: csv(`
No d'arbre / Tree no.,Essence / Species,DHP / DBH (cm),Hauteur / Height (m),Base du houppier / Crown base (m),Stade / Stage,Vigueur / Vigor,Branche / Limb,Diam. branche / Limb dia. (cm),Diam. tige au-dessus / Stem dia. above (cm),Départ / Origin (m),Bout / Tip (m),Écorce incluse / Included bark
1,Tilleul / Linden,18,9.1,1.7,jeune,bonne,1,10.1,12.4,2,8.6,oui
1,Tilleul / Linden,18,9.1,1.7,jeune,bonne,2,6.9,13.2,1.9,7.5,non
2,Platane / Plane,21,10,2,jeune,bonne,1,11.2,13.1,2.4,9.5,non
2,Platane / Plane,21,10,2,jeune,bonne,2,7.7,13.8,2.2,8.4,non`),
  expected: {
    units: 'cm-m',
    columns: {
      '': 'A tree; B species; C trunk cm; D height m; E crownBase m; F stage; G vigor; H limb; I diameter cm; J stem cm; K origin m; L tip m; M bark'
    },
    trees: [barkOnFirst(lime('1', ['1', '2'], limeTrunk)), noBark(plane('2', ['1', '2'], planeTrunk))]
  }
}

import { csv } from '../csvFile'
import { limb, tree, type RealInventory } from '../expected'
import { lime, maple, oak, plane, young } from './trees'

const names =
  'Tree,Height (ft),Crown base (ft),Life stage,Vigor,Limb,Limb dia (in),Stem dia (in),Origin (ft),Tip (ft)'
const columns =
  'A tree; B height ft; C crownBase ft; D stage; E vigor; F limb; G diameter in; H stem in; I origin ft; J tip ft'

/** Invented: the unit in every cell, written as it came. */
export const unitInEveryCell: RealInventory = {
  shape: 'units in the cells in many writings: 30ft, 30 FT., 4.1in, 10.414cm, 8.5344 m',
  file: csv(`
Tree,Height,Crown base,Life stage,Vigor,Limb,Limb dia,Stem dia,Origin,Tip
T1,30ft,6 feet,young,good,A,4.1in,5 in.,7 ft,8.5344 m
T1,30 FT.,6 feet,young,good,B,6.858cm,5.4 inch,6.5feet,24'
T2,33 Ft,7ft,young,good,A,"4.4""",142.24 mm,8ft.,31 ft
T2,33 ft,7 ft,young,good,B,3.1 IN,6 inches,7.5 ft,26 ft`),
  expected: {
    units: 'in-ft',
    columns: { '': columns.replaceAll(/ (ft|in)\b/g, '') },
    trees: [maple('T1'), oak('T2')]
  }
}

/** Invented: German cells with units and decimal commas. */
export const germanUnitsInCells: RealInventory = {
  shape: 'German cells with units and commas: „9,1 m“, „10,1cm“, „ca. 10 m“',
  file: csv(`
Baum;Höhe;Kronenansatz;Altersstufe;Vitalität;Ast;Ast-Ø;Stamm-Ø über Gabel;Ansatz;Spitze
1;9,1 m;1,7 m;jung;gut;1;10,1cm;12,4 cm;2 m;8,6m
1;9,1 m;1,7 m;jung;gut;2;6,9 cm;13,2 cm;190 cm;7,5 m
2;ca. 10 m;2m;jung;gut;1;112 mm;13,1 cm;2,4 m;9,5 m
2;ca. 10 m;2m;jung;gut;2;7,7 cm;13,8 cm;2,2 m;8,4 m`),
  expected: {
    units: 'cm-m',
    columns: {
      '': 'A tree; B height; C crownBase; D stage; E vigor; F limb; G diameter; H stem; I origin; J tip'
    },
    trees: [lime('1'), plane('2')],
    told: [['B4', 'range']]
  }
}

/** Invented: a Swiss file in millimeters. */
export const swissThousands: RealInventory = {
  shape: 'Swiss: apostrophes for thousands in millimeters',
  file: csv(`
Baum;Höhe (mm);Kronenansatz (mm);Altersstufe;Vitalität;Ast;Ast-Ø (mm);Stamm-Ø über Gabel (mm);Ansatz (mm);Spitze (mm)
1;9'100;1'700;jung;gut;1;101;124;2'000;8'600
1;9'100;1'700;jung;gut;2;69;132;1'900;7'500
2;10’000;2’000;jung;gut;1;112;131;2’400;9’500
2;10’000;2’000;jung;gut;2;77;138;2’200;8’400`),
  expected: {
    units: 'cm-m',
    columns: {
      '': 'A tree; B height mm; C crownBase mm; D stage; E vigor; F limb; G diameter mm; H stem mm; I origin mm; J tip mm'
    },
    trees: [lime('1'), plane('2')]
  }
}

/** Invented: doubts about values, each written differently. */
export const doubtsInManyWritings: RealInventory = {
  shape: 'doubtful values: 30?, ca. 33, 7 (est), 31 e, >26, (4.4), 3.1+',
  file: csv(`
${names}
T1,30?,6,young,good,A,4.1,5,7 (est),28
T1,30?,6,young,good,B,2.7,5.4,6.5,24
T2,ca. 33,7,young,good,A,(4.4),5.6,8,31 e
T2,ca. 33,7,young,good,B,3.1,6,7.5 ft?,26`),
  expected: {
    units: 'in-ft',
    columns: { '': columns },
    trees: [maple('T1'), tree('T2', 33, 7, young, limb('A', null, 5.6, 8, 31), limb('B', 3.1, 6, 7.5, 26))],
    told: [
      ['B2', 'range'],
      ['B4', 'range'],
      ['I2', 'range'],
      ['G4', 'number'],
      ['J4', 'range']
    ]
  }
}

/** Invented: one comma among points. */
export const oneCommaAmongPoints: RealInventory = {
  shape: 'one diameter with a comma among diameters with points, in a file parted by semicolons',
  file: csv(`
${names.replaceAll(',', ';')}
T1;30;6;young;good;A;4,1;5;7;28
T1;30;6;young;good;B;2.7;5.4;6.5;24
T2;33;7;young;good;A;4.4;5.6;8;31
T2;33;7;young;good;B;3.1;6;7.5;26`),
  expected: {
    units: 'in-ft',
    columns: { '': columns },
    trees: [maple('T1'), oak('T2')],
    mayAsk: ['G2', 'G1']
  }
}

/** Invented: the tree's condition says that there is nothing to train. */
export const deadAndRemovedTrees: RealInventory = {
  shape:
    'a tree whose condition is “Dead”, another whose status is “Removed 2025”, with limbs measured before',
  file: csv(`
Tree,Status,Height (ft),Crown base (ft),Condition,Age,Limb,Limb dia (in),Stem dia (in),Origin (ft),Tip (ft)
T1,active,30,6,good,young,A,4.1,5,7,28
T1,active,30,6,good,young,B,2.7,5.4,6.5,24
T2,active,33,7,dead,young,A,4.4,5.6,8,31
T2,active,33,7,dead,young,B,3.1,6,7.5,26
T3,Removed 2025,26,5,good,young,A,3.6,4.4,6,24`),
  expected: {
    units: 'in-ft',
    columns: {
      '': 'A tree; B -; C height ft; D crownBase ft; E vigor; F stage; G limb; H diameter in; I stem in; J origin ft; K tip ft'
    },
    trees: [maple('T1'), oak('T2', ['A', 'B'], { stage: 'young', vigor: 'poor' })],
    told: [['E4', 'assumed']],
    leftOut: { '6': 'removed' },
    mayAsk: ['B1']
  }
}

/** Invented: rows that the surveyor took back. */
export const rowsTakenBack: RealInventory = {
  shape: 'rows taken back in the notes: “VOID”, “entered twice, ignore”',
  file: csv(`
${names},Remarks
T1,30,6,young,good,A,4.1,5,7,28,
T1,30,6,young,good,B,2.7,5.4,6.5,24,
T1,30,6,young,good,C,2.7,5.4,6.5,24,"VOID - entered twice, ignore"
T2,33,7,young,good,A,4.4,5.6,8,31,
T2,33,7,young,good,B,3.1,6,7.5,26,`),
  expected: {
    units: 'in-ft',
    columns: { '': `${columns}; K notes|treeNotes` },
    trees: [
      tree(
        'T1',
        30,
        6,
        young,
        limb('A', 4.1, 5, 7, 28),
        limb('B', 2.7, 5.4, 6.5, 24),
        limb('C', 2.7, 5.4, 6.5, 24)
      ),
      oak('T2')
    ],
    mayAsk: ['K1']
  }
}

/** Invented: ids that go on. */
export const continuedIds: RealInventory = {
  shape: 'the id of the second page says that it goes on: “T1 (cont.)”, “T1 cont’d”',
  file: csv(`
${names}
T1,30,6,young,good,A,4.1,5,7,28
T1 (cont.),30,6,young,good,B,2.7,5.4,6.5,24
T2,33,7,young,good,A,4.4,5.6,8,31
T2 cont'd,33,7,young,good,B,3.1,6,7.5,26`),
  expected: {
    units: 'in-ft',
    columns: { '': columns },
    trees: [maple('T1'), oak('T2')],
    told: [['', 'same id']]
  }
}

/** Invented: rows of lines drawn with characters. */
export const drawnLines: RealInventory = {
  shape: 'lines drawn with hyphens and equal signs between header, trees and total',
  file: csv(`
${names}
----,----,----,----,----,----,----,----,----,----
T1,30,6,young,good,A,4.1,5,7,28
T1,30,6,young,good,B,2.7,5.4,6.5,24
----,----,----,----,----,----,----,----,----,----
T2,33,7,young,good,A,4.4,5.6,8,31
T2,33,7,young,good,B,3.1,6,7.5,26
====,====,====,====,====,====,====,====,====,====
Sum,,,,,4,14.3,22,29,109`),
  expected: {
    units: 'in-ft',
    columns: { '': columns },
    trees: [maple('T1'), oak('T2')],
    leftOut: { '9': 'total' }
  }
}

/** Invented: whether a limb is dead, in the words of each language. */
export const limbDeadInWords: RealInventory = {
  shape: 'French: “Branche morte” with oui and non',
  file: csv(`
Arbre;Hauteur (m);Base du houppier (m);Stade;Vigueur;Branche;Diamètre de branche (cm);Diamètre de tige au-dessus (cm);Insertion (m);Extrémité (m);Branche morte
1;9,1;1,7;jeune;bonne;1;10,1;12,4;2;8,6;non
1;9,1;1,7;jeune;bonne;2;6,9;13,2;1,9;7,5;oui
2;10;2;jeune;bonne;1;11,2;13,1;2,4;9,5;non
2;10;2;jeune;bonne;2;7,7;13,8;2,2;8,4;non`),
  expected: {
    units: 'cm-m',
    columns: {
      '': 'A tree; B height m; C crownBase m; D stage; E vigor; F limb; G diameter cm; H stem cm; I origin m; J tip m; K live'
    },
    trees: [
      tree(
        '1',
        9.1,
        1.7,
        young,
        limb('1', 10.1, 12.4, 2, 8.6),
        limb('2', 6.9, 13.2, 1.9, 7.5, null, { 'Live or dead': 'dead' })
      ),
      plane('2')
    ],
    mayAsk: ['K1']
  }
}

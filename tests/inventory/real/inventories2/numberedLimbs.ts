import { csv } from '../csvFile'
import { limb, tree, type RealInventory } from '../expected'
import { workbook } from '../workbookFile'
import { lime, maple, oak, plane, young } from './trees'

const pairOfLimbs =
  'A tree; B height ft; C crownBase ft; D stage; E vigor; F diameter in; G stem in; H origin ft; I tip ft; J diameter in; K stem in; L origin ft; M tip ft'

/** Invented: an export of nested records. */
export const nestedNames: RealInventory = {
  shape: 'an export of nested records: tree.height_ft, limbs[0].diameter_in, limbs[1] …',
  file: csv(`
tree.id,tree.height_ft,tree.crown_base_ft,tree.life_stage,tree.vigor,limbs[0].diameter_in,limbs[0].stem_diameter_in,limbs[0].origin_ft,limbs[0].tip_ft,limbs[1].diameter_in,limbs[1].stem_diameter_in,limbs[1].origin_ft,limbs[1].tip_ft
T1,30,6,young,good,4.1,5,7,28,2.7,5.4,6.5,24
T2,33,7,young,good,4.4,5.6,8,31,3.1,6,7.5,26`),
  expected: {
    units: 'in-ft',
    columns: { '': pairOfLimbs },
    trees: [maple('T1', ['*', '*']), oak('T2', ['*', '*'])]
  }
}

/** Invented: short names of groups. */
export const shortGroupNames: RealInventory = {
  shape: 'groups L1 and L2: “L1 dia”, “L1 stem”, “L1 from”, “L1 to”, “L2 dia” …',
  file: csv(`
Tree,Height (ft),Crown base (ft),Life stage,Vigor,L1 dia (in),L1 stem (in),L1 from (ft),L1 to (ft),L2 dia (in),L2 stem (in),L2 from (ft),L2 to (ft)
T1,30,6,young,good,4.1,5,7,28,2.7,5.4,6.5,24
T2,33,7,young,good,4.4,5.6,8,31,3.1,6,7.5,26`),
  expected: {
    units: 'in-ft',
    columns: { '': pairOfLimbs },
    trees: [maple('T1', ['*', '*']), oak('T2', ['*', '*'])],
    mayAsk: ['F1', 'G1', 'H1', 'I1']
  }
}

/** Invented: limbs called by their order in words. */
export const ordinalGroups: RealInventory = {
  shape: 'groups titled in words: Lowest limb, Second limb',
  file: workbook([
    {
      name: 'Park trees',
      rows: `
 | | | | | Lowest limb | | | | Second limb | | |
Tree | Height (ft) | Crown base (ft) | Life stage | Vigor | Diameter (in) | Stem above (in) | Starts (ft) | Ends (ft) | Diameter (in) | Stem above (in) | Starts (ft) | Ends (ft)
T1 | 30 | 6 | young | good | 4.1 | 5 | 7 | 28 | 2.7 | 5.4 | 6.5 | 24
T2 | 33 | 7 | young | good | 4.4 | 5.6 | 8 | 31 | 3.1 | 6 | 7.5 | 26`,
      merges: ['F1:I1', 'J1:M1']
    }
  ]),
  expected: {
    units: 'in-ft',
    columns: { 'Park trees': pairOfLimbs },
    trees: [maple('T1', ['*', '*']), oak('T2', ['*', '*'])]
  }
}

/** Invented: limbs of each tree under the points of the compass. */
export const compassGroups: RealInventory = {
  shape: 'groups titled by the side the limb grows on, titles not merged: North, South',
  file: csv(`
,,,,,North limb,,,,South limb,,,
Tree,Height (ft),Crown base (ft),Life stage,Vigor,Limb dia (in),Stem dia (in),Origin (ft),Tip (ft),Limb dia (in),Stem dia (in),Origin (ft),Tip (ft)
T1,30,6,young,good,4.1,5,7,28,2.7,5.4,6.5,24
T2,33,7,young,good,4.4,5.6,8,31,3.1,6,7.5,26`),
  expected: {
    units: 'in-ft',
    columns: { '': pairOfLimbs },
    trees: [maple('T1', ['*', '*']), oak('T2', ['*', '*'])]
  }
}

/** Invented: bare numbers over the groups. */
export const bareNumbersAbove: RealInventory = {
  shape: 'only the numbers 1 and 2 stand above the groups of columns',
  file: csv(`
,,,,,1,,,,2,,,
Tree,Height (ft),Crown base (ft),Life stage,Vigor,Limb dia (in),Stem dia (in),Origin (ft),Tip (ft),Limb dia (in),Stem dia (in),Origin (ft),Tip (ft)
T1,30,6,young,good,4.1,5,7,28,2.7,5.4,6.5,24
T2,33,7,young,good,4.4,5.6,8,31,3.1,6,7.5,26`),
  expected: {
    units: 'in-ft',
    columns: { '': pairOfLimbs },
    trees: [maple('T1', ['*', '*']), oak('T2', ['*', '*'])]
  }
}

/** Invented: German groups, all diameters first. */
export const germanInterleaved: RealInventory = {
  shape: 'German groups by measure: Ast 1 Ø, Ast 2 Ø, then Stamm-Ø bei Ast 1, bei Ast 2, …',
  file: csv(`
Baum-Nr.;Höhe (m);Kronenansatz (m);Altersstufe;Vitalität;Ast 1 Ø (cm);Ast 2 Ø (cm);Stamm-Ø über Ast 1 (cm);Stamm-Ø über Ast 2 (cm);Ansatz Ast 1 (m);Ansatz Ast 2 (m);Spitze Ast 1 (m);Spitze Ast 2 (m)
1;9,1;1,7;jung;gut;10,1;6,9;12,4;13,2;2;1,9;8,6;7,5
2;10;2;jung;gut;11,2;7,7;13,1;13,8;2,4;2,2;9,5;8,4`),
  expected: {
    units: 'cm-m',
    columns: {
      '': 'A tree; B height m; C crownBase m; D stage; E vigor; F diameter cm; G diameter cm; H stem cm; I stem cm; J origin m; K origin m; L tip m; M tip m'
    },
    trees: [lime('1', ['*', '*']), plane('2', ['*', '*'])]
  }
}

/** Invented: room for ten limbs, of which two are used. */
export const roomForTen: RealInventory = {
  shape: 'room for ten limbs in a row, of which most are blank',
  file: csv(
    [
      [
        'Tree,Height (ft),Crown base (ft),Life stage,Vigor',
        ...Array.from({ length: 10 }, (_none, at) =>
          ['dia (in)', 'stem dia (in)', 'origin (ft)', 'tip (ft)']
            .map((name) => `Limb ${String(at + 1)} ${name}`)
            .join(',')
        )
      ].join(','),
      `T1,30,6,young,good,4.1,5,7,28,2.7,5.4,6.5,24${','.repeat(32)}`,
      `T2,33,7,young,good,4.4,5.6,8,31,3.1,6,7.5,26${','.repeat(32)}`
    ].join('\n')
  ),
  expected: {
    units: 'in-ft',
    columns: { '': `${pairOfLimbs}; ...` },
    trees: [maple('T1', ['*', '*']), oak('T2', ['*', '*'])]
  }
}

/** Invented: a French pruner's row a tree. */
export const frenchGroups: RealInventory = {
  shape: 'French, branches 1 and 2 in a row: « Branche 1 : Ø », « Branche 1 : axe »',
  file: csv(`
Arbre;Hauteur (m);Base du houppier (m);Stade;Vigueur;Branche 1 : Ø (cm);Branche 1 : Ø axe au-dessus (cm);Branche 1 : départ (m);Branche 1 : sommet (m);Branche 2 : Ø (cm);Branche 2 : Ø axe au-dessus (cm);Branche 2 : départ (m);Branche 2 : sommet (m)
1;9,1;1,7;jeune;bonne;10,1;12,4;2;8,6;6,9;13,2;1,9;7,5
2;10;2;jeune;bonne;11,2;13,1;2,4;9,5;7,7;13,8;2,2;8,4`),
  expected: {
    units: 'cm-m',
    columns: {
      '': 'A tree; B height m; C crownBase m; D stage; E vigor; F diameter cm; G stem cm; H origin m; I tip m; J diameter cm; K stem cm; L origin m; M tip m'
    },
    trees: [lime('1', ['*', '*']), plane('2', ['*', '*'])]
  }
}

/** Invented: groups whose second one lacks a column. */
export const unevenGroups: RealInventory = {
  shape: 'groups of unequal width: the second limb has no column for the stem',
  file: csv(`
Tree,Height (ft),Crown base (ft),Life stage,Vigor,Limb 1 dia (in),Limb 1 stem dia (in),Limb 1 origin (ft),Limb 1 tip (ft),Limb 2 dia (in),Limb 2 origin (ft),Limb 2 tip (ft)
T1,30,6,young,good,4.1,5,7,28,2.7,6.5,24
T2,33,7,young,good,4.4,5.6,8,31,3.1,7.5,26`),
  expected: {
    units: 'in-ft',
    columns: {
      '': 'A tree; B height ft; C crownBase ft; D stage; E vigor; F diameter in; G stem in; H origin ft; I tip ft; J diameter in; K origin ft; L tip ft'
    },
    trees: [
      tree('T1', 30, 6, young, limb('*', 4.1, 5, 7, 28), limb('*', 2.7, null, 6.5, 24)),
      tree('T2', 33, 7, young, limb('*', 4.4, 5.6, 8, 31), limb('*', 3.1, null, 7.5, 26))
    ],
    told: [['', 'missing']]
  }
}

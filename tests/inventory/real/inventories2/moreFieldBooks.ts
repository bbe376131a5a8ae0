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

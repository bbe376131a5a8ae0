import { csv } from '../csvFile'
import type { RealInventory } from '../expected'
import { workbook } from '../workbookFile'
import { maple, mapleTrunk, oak, oakTrunk, young } from './trees'

/** Invented: the table turned on its side. */
export const transposed: RealInventory = {
  shape: 'turned on its side: measures down the rows, a limb a column',
  file: csv(`
Tree,T1,T1,T2,T2
Species,Red maple,Red maple,Pin oak,Pin oak
Height (ft),30,30,33,33
Crown base (ft),6,6,7,7
Life stage,young,young,young,young
Vigor,good,good,good,good
Limb,A,B,A,B
Limb dia (in),4.1,2.7,4.4,3.1
Stem dia (in),5,5.4,5.6,6
Origin (ft),7,6.5,8,7.5
Tip (ft),28,24,31,26`),
  expected: { units: 'in-ft', columns: { '': '...' }, trees: [maple('T1'), oak('T2')] }
}

/** Invented: one measurement a row, as statistics programs like it. */
export const oneMeasurementARow: RealInventory = {
  shape: 'one measurement a row: tree, limb, variable, value, unit',
  file: csv(`
tree,limb,variable,value,unit
T1,,height,30,ft
T1,,crown base,6,ft
T1,A,limb diameter,4.1,in
T1,A,stem diameter,5,in
T1,A,origin,7,ft
T1,A,tip,28,ft
T1,B,limb diameter,2.7,in
T1,B,stem diameter,5.4,in
T1,B,origin,6.5,ft
T1,B,tip,24,ft`),
  expected: { units: 'in-ft', columns: { '': '...' }, trees: [maple('T1', ['A', 'B'], {})], ratios: 1 }
}

/** Invented: a record kind in the first column. */
export const recordKinds: RealInventory = {
  shape: 'rows of trees and rows of limbs under the same columns, told apart by a record kind',
  file: csv(`
Rec,ID,Dia (in),Top (ft),Base (ft),Stem (in),Age,Vigor
TREE,T1,7.2,30,6,,young,good
LIMB,A,4.1,28,7,5,,
LIMB,B,2.7,24,6.5,5.4,,
TREE,T2,8,33,7,,young,good
LIMB,A,4.4,31,8,5.6,,
LIMB,B,3.1,26,7.5,6,,`),
  expected: {
    units: 'in-ft',
    columns: { '': '...' },
    trees: [maple('T1', ['A', 'B'], mapleTrunk), oak('T2', ['A', 'B'], oakTrunk)],
    mayAsk: ['A1', 'B1', 'C1', 'D1', 'E1']
  }
}

/** Invented: a row for the tree, then rows for its limbs. */
export const treeRowThenLimbRows: RealInventory = {
  shape: 'a row of its own for the tree with its sizes, its limbs in the rows below it',
  file: csv(`
Tree,Species,DBH (in),Height (ft),Crown base (ft),Life stage,Vigor,Limb,Limb dia (in),Stem dia (in),Origin (ft),Tip (ft)
T1,Red maple,7.2,30,6,young,good,,,,,
,,,,,,,A,4.1,5,7,28
,,,,,,,B,2.7,5.4,6.5,24
T2,Pin oak,8,33,7,young,good,,,,,
,,,,,,,A,4.4,5.6,8,31
,,,,,,,B,3.1,6,7.5,26`),
  expected: {
    units: 'in-ft',
    columns: {
      '': 'A tree; B species; C trunk in; D height ft; E crownBase ft; F stage; G vigor; H limb; I diameter in; J stem in; K origin ft; L tip ft'
    },
    trees: [maple('T1', ['A', 'B'], mapleTrunk), oak('T2', ['A', 'B'], oakTrunk)]
  }
}

/** Invented: the tree named on a line of its own. */
export const treeLines: RealInventory = {
  shape: 'a line “Tree 12 - Red maple” above the limbs of each tree, heights in the rows, blank rows between',
  file: csv(`
Limb,Limb dia (in),Stem dia (in),Origin (ft),Tip (ft),Tree height (ft),Crown base (ft),Life stage,Vigor
Tree 12 - Red maple,,,,,,,,
A,4.1,5,7,28,30,6,young,good
B,2.7,5.4,6.5,24,30,6,young,good

Tree 13 - Pin oak,,,,,,,,
A,4.4,5.6,8,31,33,7,young,good
B,3.1,6,7.5,26,33,7,young,good`),
  expected: {
    units: 'in-ft',
    columns: {
      '': 'A limb; B diameter in; C stem in; D origin ft; E tip ft; F height ft; G crownBase ft; H stage; I vigor'
    },
    trees: [maple('12|Tree 12|Tree 12 - Red maple'), oak('13|Tree 13|Tree 13 - Pin oak')]
  }
}

/** Invented: the tree and its sizes on a line of words. */
export const treeLinesWithSizes: RealInventory = {
  shape:
    'a line of words with the tree’s sizes above its limbs: “Tree 12 - Red maple, 30 ft tall, crown from 6 ft”',
  file: csv(`
"Tree 12 - Red maple, 30 ft tall, crown from 6 ft, young, good vigor",,,,
Limb,Limb dia (in),Stem dia (in),Origin (ft),Tip (ft)
A,4.1,5,7,28
B,2.7,5.4,6.5,24
,,,,
"Tree 13 - Pin oak, 33 ft tall, crown from 7 ft, young, good vigor",,,,
Limb,Limb dia (in),Stem dia (in),Origin (ft),Tip (ft)
A,4.4,5.6,8,31
B,3.1,6,7.5,26`),
  expected: {
    units: 'in-ft',
    columns: { '': 'A limb; B diameter in; C stem in; D origin ft; E tip ft; ...' },
    trees: [maple('12|Tree 12|*'), oak('13|Tree 13|*')]
  }
}

/** Invented: two trees side by side. */
export const treesSideBySide: RealInventory = {
  shape: 'two trees side by side, each with its name above its own small table',
  file: workbook([
    {
      name: 'Sheet1',
      rows: `
Tree 1 | | | | | | Tree 2 | | | |
Height (ft) | 30 | Crown base (ft) | 6 | | | Height (ft) | 33 | Crown base (ft) | 7 |
Life stage | young | Vigor | good | | | Life stage | young | Vigor | good |
Limb | Dia (in) | Stem dia (in) | Origin (ft) | Tip (ft) | | Limb | Dia (in) | Stem dia (in) | Origin (ft) | Tip (ft)
A | 4.1 | 5 | 7 | 28 | | A | 4.4 | 5.6 | 8 | 31
B | 2.7 | 5.4 | 6.5 | 24 | | B | 3.1 | 6 | 7.5 | 26`
    }
  ]),
  expected: {
    units: 'in-ft',
    columns: { Sheet1: '...' },
    trees: [maple('1|Tree 1'), oak('2|Tree 2')]
  }
}

/** Invented: one tree, one limb, no table. */
export const oneFormOneLimb: RealInventory = {
  shape: 'a form without any table: one tree and one limb, label and value',
  file: csv(`
Tree tag:,T1
Species:,Red maple
Tree height (ft):,30
Crown base (ft):,6
Life stage:,young
Vigor:,good
Limb:,A
Limb diameter (in):,4.1
Stem diameter above union (in):,5
Origin height (ft):,7
Tip height (ft):,28`),
  expected: { units: 'in-ft', columns: { '': '...' }, trees: [maple('T1', ['A'])], ratios: 1 }
}

/** Invented: one row and nothing else. */
export const oneRowOnly: RealInventory = {
  shape: 'a single row: one tree, one limb',
  file: csv(`
Tree #,Tree ht (ft),Crown base ht (ft),Life stage,Vigor,Limb #,Limb dia (in),Stem dia (in),Origin ht (ft),Tip ht (ft)
1,30,6,young,good,1,4.1,5,7,28`),
  expected: {
    units: 'in-ft',
    columns: {
      '': 'A tree; B height ft; C crownBase ft; D stage; E vigor; F limb; G diameter in; H stem in; I origin ft; J tip ft'
    },
    trees: [maple('1', ['1'])],
    ratios: 1
  }
}

/** Invented: a limb's key that holds the tree's. */
export const treeWithinLimbKey: RealInventory = {
  shape: 'no column for the tree: the limb’s id “T1-A” holds it',
  file: csv(`
Limb ID,Tree species,Tree height (ft),Crown base (ft),Life stage,Vigor,Limb dia (in),Stem dia (in),Origin (ft),Tip (ft)
T1-A,Red maple,30,6,young,good,4.1,5,7,28
T1-B,Red maple,30,6,young,good,2.7,5.4,6.5,24
T2-A,Pin oak,33,7,young,good,4.4,5.6,8,31
T2-B,Pin oak,33,7,young,good,3.1,6,7.5,26`),
  expected: {
    units: 'in-ft',
    columns: {
      '': 'A limb; B species; C height ft; D crownBase ft; E stage; F vigor; G diameter in; H stem in; I origin ft; J tip ft'
    },
    trees: [maple('T1|*', ['A|T1-A', 'B|T1-B'], young), oak('T2|*', ['A|T2-A', 'B|T2-B'], young)],
    mayAsk: ['A1']
  }
}

import { csv } from '../csvFile'
import { limb, tree, type RealInventory } from '../expected'
import { workbook } from '../workbookFile'
import { barkOnFirst, maple, mapleTrunk, noBark, oak, young } from './trees'

const names =
  'Tree | Height (ft) | Crown base (ft) | Life stage | Vigor | Limb | Limb dia (in) | Stem dia (in) | Origin (ft) | Tip (ft)'
const rows = `T1 | 30 | 6 | young | good | A | 4.1 | 5 | 7 | 28
T1 | 30 | 6 | young | good | B | 2.7 | 5.4 | 6.5 | 24
T2 | 33 | 7 | young | good | A | 4.4 | 5.6 | 8 | 31
T2 | 33 | 7 | young | good | B | 3.1 | 6 | 7.5 | 26`
const columns =
  'A tree; B height ft; C crownBase ft; D stage; E vigor; F limb; G diameter in; H stem in; I origin ft; J tip ft'
const trees = [maple('T1'), oak('T2')]

/** Invented: a survey and its converted copy. */
export const convertedCopy: RealInventory = {
  shape: 'the same survey on two sheets, in feet and, converted, in meters: one of them is meant',
  file: workbook([
    { name: 'US', rows: `\n${names}\n${rows}` },
    {
      name: 'SI',
      rows: `
Tree | Height (m) | Crown base (m) | Life stage | Vigor | Limb | Limb dia (cm) | Stem dia (cm) | Origin (m) | Tip (m)
T1 | 9.14 | 1.83 | young | good | A | 10.4 | 12.7 | 2.13 | 8.53
T1 | 9.14 | 1.83 | young | good | B | 6.9 | 13.7 | 1.98 | 7.32
T2 | 10.06 | 2.13 | young | good | A | 11.2 | 14.2 | 2.44 | 9.45
T2 | 10.06 | 2.13 | young | good | B | 7.9 | 15.2 | 2.29 | 7.92`
    }
  ]),
  expected: { units: 'in-ft', columns: { US: columns }, trees, leftOut: { 'SI!': 'sheet' } }
}

/** Invented: a draft and its correction. */
export const draftAndFinal: RealInventory = {
  shape: 'sheets “Draft” and “Final” with the same trees and limbs: the final one is meant',
  file: workbook([
    {
      name: 'Draft',
      rows: `\n${names}\n${rows.replace('| 4.1 |', '| 3.6 |').replaceAll('| 33 |', '| 32 |')}`
    },
    { name: 'Final', rows: `\n${names}\n${rows}` }
  ]),
  expected: { units: 'in-ft', columns: { Final: columns }, trees, leftOut: { 'Draft!': 'sheet' } }
}

/** Invented: each visit appended below the last. */
export const visitsBelowOneAnother: RealInventory = {
  shape: 'the survey of 2026 appended below that of 2023, told apart by the date: the later one is meant',
  file: csv(`
Date,Tree,Height (ft),Crown base (ft),Life stage,Vigor,Limb,Limb dia (in),Stem dia (in),Origin (ft),Tip (ft)
2023-05-01,T1,24,5,young,good,A,2.9,3.6,7,22
2023-05-01,T1,24,5,young,good,B,1.8,4,6.5,19
2023-05-01,T2,27,6,young,good,A,3.1,4.2,8,25
2023-05-01,T2,27,6,young,good,B,2.2,4.5,7.5,21
2026-05-01,T1,30,6,young,good,A,4.1,5,7,28
2026-05-01,T1,30,6,young,good,B,2.7,5.4,6.5,24
2026-05-01,T2,33,7,young,good,A,4.4,5.6,8,31
2026-05-01,T2,33,7,young,good,B,3.1,6,7.5,26`),
  expected: {
    units: 'in-ft',
    columns: {
      '': 'A -; B tree; C height ft; D crownBase ft; E stage; F vigor; G limb; H diameter in; I stem in; J origin ft; K tip ft'
    },
    trees,
    mayAsk: ['A1', 'B1'],
    told: [['', 'date']]
  }
}

/** Invented: the trunk year by year on a sheet of its own. */
export const trunkYearByYear: RealInventory = {
  shape: 'a second sheet with the trunk’s diameter year by year: the latest is the tree’s, or none',
  file: workbook([
    { name: 'Inventory', rows: `\n${names}\n${rows.split('\n').slice(0, 2).join('\n')}` },
    { name: 'Rings', rows: '\nTree | Year | DBH (in)\nT1 | 2024 | 6.4\nT1 | 2025 | 6.8\nT1 | 2026 | 7.2' }
  ]),
  expected: {
    units: 'in-ft',
    columns: { Inventory: columns, Rings: '...' },
    trees: [maple('T1', ['A', 'B'], mapleTrunk)],
    mayAsk: ['Rings!C1']
  }
}

/** Invented: two readings of a tree's height. */
export const heightsReadTwice: RealInventory = {
  shape: 'height and crown base read again with every limb, a few inches apart: still one tree',
  file: csv(`
Tree,Height (ft),Crown base (ft),Life stage,Vigor,Limb,Limb dia (in),Stem dia (in),Origin (ft),Tip (ft)
T1,30,6,young,good,A,4.1,5,7,28
T1,30.5,6.2,young,good,B,2.7,5.4,6.5,24
T2,33,7,young,good,A,4.4,5.6,8,31
T2,33,7.2,young,good,B,3.1,6,7.5,26`),
  expected: { units: 'in-ft', columns: { '': columns }, trees, told: [['', 'two values']] }
}

/** Invented: the decimal commas were not quoted. */
export const commasNotQuoted: RealInventory = {
  shape: 'decimal commas without quotes in a file parted by commas: the rows are longer than the header',
  file: csv(`
Tree,Height (m),Crown base (m),Limb,Limb dia (cm),Stem dia (cm),Origin (m),Tip (m)
1,9,1,1,7,1,10,1,12,4,2,0,8,6
1,9,1,1,7,2,6,9,13,2,1,9,7,5`),
  expected: {
    units: 'cm-m',
    columns: { '': '...' },
    trees: [],
    exit: 3,
    told: [['', 'header']]
  }
}

/** Invented: the limb is thicker than its tree. */
export const limbThickerThanTrunk: RealInventory = {
  shape: 'limb and stem in millimeters in one row of inches: the limb is thicker than the trunk',
  file: csv(`
Tree,DBH (in),Height (ft),Crown base (ft),Life stage,Vigor,Limb,Limb dia (in),Stem dia (in),Origin (ft),Tip (ft)
T1,7.2,30,6,young,good,A,104,127,7,28
T1,7.2,30,6,young,good,B,2.7,5.4,6.5,24`),
  expected: {
    units: 'in-ft',
    columns: {
      '': 'A tree; B trunk in; C height ft; D crownBase ft; E stage; F vigor; G limb; H diameter in; I stem in; J origin ft; K tip ft'
    },
    trees: [
      tree('T1', 30, 6, { ...young, trunk: 7.2 }, limb('A', 104, 127, 7, 28), limb('B', 2.7, 5.4, 6.5, 24))
    ],
    told: [['H2', 'thicker']]
  }
}

/** Invented: which limbs are dead. */
export const limbDeadSnakeCase: RealInventory = {
  shape: 'limb_dead and bark_included with yes and no',
  file: csv(`
tree_id,tree_height_ft,crown_base_ft,life_stage,vigor,limb_id,limb_dia_in,stem_dia_in,origin_ft,tip_ft,bark_included,limb_dead
T1,30,6,young,good,A,4.1,5,7,28,yes,no
T1,30,6,young,good,B,2.7,5.4,6.5,24,no,no
T2,33,7,young,good,A,4.4,5.6,8,31,no,no
T2,33,7,young,good,B,3.1,6,7.5,26,no,no`),
  expected: {
    units: 'in-ft',
    columns: { '': `${columns}; K bark; L live` },
    trees: [barkOnFirst(maple('T1')), noBark(oak('T2'))]
  }
}

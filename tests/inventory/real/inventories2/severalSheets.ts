import type { RealInventory } from '../expected'
import { workbook } from '../workbookFile'
import { maple, mapleTrunk, oak, oakTrunk } from './trees'

const treeSheet = `
Tree | Species | DBH (in) | Height (ft) | Crown base (ft) | Life stage | Vigor
T1 | Red maple | 7.2 | 30 | 6 | young | good
T2 | Pin oak | 8 | 33 | 7 | young | good`
const treeColumns = 'A tree; B species; C trunk in; D height ft; E crownBase ft; F stage; G vigor'
const limbColumns = 'A tree; B limb; C diameter in; D stem in; E origin ft; F tip ft'
const withTrunks = [maple('T1', ['A', 'B'], mapleTrunk), oak('T2', ['A', 'B'], oakTrunk)]
const header = 'Tree | Limb | Limb dia (in) | Stem dia (in) | Origin (ft) | Tip (ft)'

/** Invented: three people measured limbs, each on a sheet of their own. */
export const limbsOnThreeSheets: RealInventory = {
  shape: 'trees on one sheet, limbs on three, names with apostrophes: “Kim’s limbs”, “Bo’s limbs”',
  file: workbook([
    { name: "Day 1 'trees'", rows: treeSheet },
    { name: "Bo's limbs", rows: `\n${header}\nT1 | A | 4.1 | 5 | 7 | 28` },
    { name: 'Kim’s limbs', rows: `\n${header}\nT1 | B | 2.7 | 5.4 | 6.5 | 24\nT2 | A | 4.4 | 5.6 | 8 | 31` },
    { name: 'Rest', rows: `\n${header}\nT2 | B | 3.1 | 6 | 7.5 | 26` }
  ]),
  expected: {
    units: 'in-ft',
    columns: {
      "Day 1 'trees'": treeColumns,
      "Bo's limbs": limbColumns,
      'Kim’s limbs': limbColumns,
      Rest: limbColumns
    },
    trees: withTrunks,
    told: [['', 'joined']]
  }
}

/** Invented: the sheet's name is the tree's. */
export const sheetNameIsTree: RealInventory = {
  shape: 'a sheet of trees, and a sheet of limbs for each tree whose name is the tree’s id',
  file: workbook([
    { name: 'Trees', rows: treeSheet },
    {
      name: 'T1',
      rows: `
Limb | Limb dia (in) | Stem dia (in) | Origin (ft) | Tip (ft)
A | 4.1 | 5 | 7 | 28
B | 2.7 | 5.4 | 6.5 | 24`
    },
    {
      name: 'T2',
      rows: `
Limb | Limb dia (in) | Stem dia (in) | Origin (ft) | Tip (ft)
A | 4.4 | 5.6 | 8 | 31
B | 3.1 | 6 | 7.5 | 26`
    }
  ]),
  expected: {
    units: 'in-ft',
    columns: { Trees: treeColumns, T1: 'A limb; B diameter in; C stem in; D origin ft; E tip ft', T2: '...' },
    trees: withTrunks
  }
}

/** Invented: the two sheets write the ids differently. */
export const prefixOnOneSheet: RealInventory = {
  shape: 'ids with a prefix on the sheet of trees, bare numbers on the sheet of limbs',
  file: workbook([
    {
      name: 'Trees',
      rows: `
Tree | Height (ft) | Crown base (ft) | Life stage | Vigor
T-01 | 30 | 6 | young | good
T-02 | 33 | 7 | young | good`
    },
    {
      name: 'Limbs',
      rows: `
${header}
1 | A | 4.1 | 5 | 7 | 28
1 | B | 2.7 | 5.4 | 6.5 | 24
2 | A | 4.4 | 5.6 | 8 | 31
2 | B | 3.1 | 6 | 7.5 | 26`
    }
  ]),
  expected: {
    units: 'in-ft',
    columns: { Trees: 'A tree; B height ft; C crownBase ft; D stage; E vigor', Limbs: limbColumns },
    trees: [maple('T-01|1'), oak('T-02|2')],
    told: [['', 'same id']]
  }
}

/** Invented: a summary that the spreadsheet made of the limbs. */
export const summaryBefore: RealInventory = {
  shape: 'a summary sheet before the data: number, mean and largest limb of each tree',
  file: workbook([
    {
      name: 'Summary',
      rows: `
Tree | No. of limbs | Mean limb dia (in) | Max limb dia (in) | Mean stem dia (in) | Highest tip (ft) | Hours | Price
T1 | 2 | 3.4 | 4.1 | 5.2 | 28 | 1.5 | 180
T2 | 2 | 3.75 | 4.4 | 5.8 | 31 | 1.5 | 180
Grand total | 4 | 3.58 | 4.4 | 5.5 | 31 | 3 | 360`
    },
    {
      name: 'Data',
      rows: `
Tree | Height (ft) | Crown base (ft) | Life stage | Vigor | Limb | Limb dia (in) | Stem dia (in) | Origin (ft) | Tip (ft)
T1 | 30 | 6 | young | good | A | 4.1 | 5 | 7 | 28
T1 | 30 | 6 | young | good | B | 2.7 | 5.4 | 6.5 | 24
T2 | 33 | 7 | young | good | A | 4.4 | 5.6 | 8 | 31
T2 | 33 | 7 | young | good | B | 3.1 | 6 | 7.5 | 26`
    }
  ]),
  expected: {
    units: 'in-ft',
    columns: {
      Data: 'A tree; B height ft; C crownBase ft; D stage; E vigor; F limb; G diameter in; H stem in; I origin ft; J tip ft'
    },
    trees: [maple('T1'), oak('T2')],
    leftOut: { 'Summary!': 'sheet' }
  }
}

const surveyed = `
Tree | Height (ft) | Crown base (ft) | Life stage | Vigor | Limb | Limb dia (in) | Stem dia (in) | Origin (ft) | Tip (ft)`

/** Invented: the survey of three years ago on a sheet of its own. */
export const surveysOfTwoYears: RealInventory = {
  shape: 'a sheet a year, the same trees and limbs on both: the later one is meant, or it is asked',
  file: workbook([
    {
      name: '2023',
      rows: `${surveyed}
T1 | 24 | 5 | young | good | A | 2.9 | 3.6 | 7 | 22
T1 | 24 | 5 | young | good | B | 1.8 | 4 | 6.5 | 19
T2 | 27 | 6 | young | good | A | 3.1 | 4.2 | 8 | 25
T2 | 27 | 6 | young | good | B | 2.2 | 4.5 | 7.5 | 21`
    },
    {
      name: '2026',
      rows: `${surveyed}
T1 | 30 | 6 | young | good | A | 4.1 | 5 | 7 | 28
T1 | 30 | 6 | young | good | B | 2.7 | 5.4 | 6.5 | 24
T2 | 33 | 7 | young | good | A | 4.4 | 5.6 | 8 | 31
T2 | 33 | 7 | young | good | B | 3.1 | 6 | 7.5 | 26`
    }
  ]),
  expected: {
    units: 'in-ft',
    columns: {
      '2026':
        'A tree; B height ft; C crownBase ft; D stage; E vigor; F limb; G diameter in; H stem in; I origin ft; J tip ft'
    },
    trees: [maple('T1'), oak('T2')],
    leftOut: { '2023!': 'sheet' }
  }
}

/** Invented: a new workbook's blank sheets and a chart's data. */
export const blankSheets: RealInventory = {
  shape: 'blank sheets before and after, the table from column D and row 12 on',
  file: workbook([
    { name: 'Sheet1', rows: '' },
    {
      name: 'Sheet2',
      rows: `
${'\n'.repeat(9)}
 | | | Prepared for: Lakeview Board | | | | | | | | |
 | | | Tree | Height (ft) | Crown base (ft) | Life stage | Vigor | Limb | Limb dia (in) | Stem dia (in) | Origin (ft) | Tip (ft)
 | | | T1 | 30 | 6 | young | good | A | 4.1 | 5 | 7 | 28
 | | | T1 | 30 | 6 | young | good | B | 2.7 | 5.4 | 6.5 | 24
 | | | T2 | 33 | 7 | young | good | A | 4.4 | 5.6 | 8 | 31
 | | | T2 | 33 | 7 | young | good | B | 3.1 | 6 | 7.5 | 26`
    },
    { name: 'Sheet3', rows: '' }
  ]),
  expected: {
    units: 'in-ft',
    columns: {
      Sheet2:
        'D tree; E height ft; F crownBase ft; G stage; H vigor; I limb; J diameter in; K stem in; L origin ft; M tip ft'
    },
    trees: [maple('T1'), oak('T2')]
  }
}

/** Invented: limbs of the second sheet carry the tree's sizes too, rounded. */
export const sizesOnBothSheets: RealInventory = {
  shape: 'the height on the sheet of trees and, rounded, on the sheet of limbs',
  file: workbook([
    {
      name: 'Trees',
      rows: `
Tag | Height (ft) | Crown base (ft) | Life stage | Vigor | Photo | Lat | Lon
T1 | 30 | 6 | young | good | IMG_1.jpg | 41.2031 | -83.5110
T2 | 33 | 7 | young | good | IMG_2.jpg | 41.2034 | -83.5114`
    },
    {
      name: 'Limbs',
      rows: `
Tag | Tree height (ft) | Limb | Limb dia (in) | Stem dia (in) | Origin (ft) | Tip (ft) | Photo
T1 | 30 | A | 4.1 | 5 | 7 | 28 | IMG_11.jpg
T1 | 30 | B | 2.7 | 5.4 | 6.5 | 24 | IMG_12.jpg
T2 | 35 | A | 4.4 | 5.6 | 8 | 31 | IMG_13.jpg
T2 | 35 | B | 3.1 | 6 | 7.5 | 26 | IMG_14.jpg`
    }
  ]),
  expected: {
    units: 'in-ft',
    columns: {
      Trees: 'A tree; B height ft; C crownBase ft; D stage; E vigor',
      Limbs: 'A tree; B height ft; C limb; D diameter in; E stem in; F origin ft; G tip ft'
    },
    trees: [maple('T1'), oak('T2')],
    told: [['', 'two values']]
  }
}

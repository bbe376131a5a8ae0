import { csv } from '../csvFile'
import { limb, tree, type RealInventory } from '../expected'
import { workbook } from '../workbookFile'
import { maple, oak, young } from './trees'

const names =
  'Tree,Species,Height (ft),Crown base (ft),Life stage,Vigor,Limb,Limb dia (in),Stem dia (in),Origin (ft),Tip (ft)'
const mapleRows = `T1,Red maple,30,6,young,good,A,4.1,5,7,28
T1,Red maple,30,6,young,good,B,2.7,5.4,6.5,24`
const oakRows = `T2,Pin oak,33,7,young,good,A,4.4,5.6,8,31
T2,Pin oak,33,7,young,good,B,3.1,6,7.5,26`
const columns = {
  '': 'A tree; B species; C height ft; D crownBase ft; E stage; F vigor; G limb; H diameter in; I stem in; J origin ft; K tip ft'
}
const trees = [maple('T1'), oak('T2')]

/** Invented: a table with the usual statistics below. */
export const statisticsBelow: RealInventory = {
  shape: 'statistics below the rows: n, Mean, SD, Min, Max, Median',
  file: csv(`
${names}
${mapleRows}
${oakRows}
n,,4,4,,,4,4,4,4,4
Mean,,31.5,6.5,,,,3.58,5.5,7.25,27.25
SD,,1.73,0.58,,,,0.8,0.42,0.65,2.99
Min,,30,6,,,,2.7,5,6.5,24
Max,,33,7,,,,4.4,6,8,31
Median,,31.5,6.5,,,,3.6,5.5,7.25,27`),
  expected: { units: 'in-ft', columns, trees, told: [['', 'total']] }
}

/** Invented: sums above the rows they are of. */
export const totalsOnTop: RealInventory = {
  shape: 'a row of totals directly below the header, above the data',
  file: csv(`
${names}
All trees,,63,13,,,4,14.3,22,29,109
${mapleRows}
${oakRows}`),
  expected: { units: 'in-ft', columns, trees, leftOut: { '2': 'total' } }
}

/** Invented: a subtotal and a blank row after every tree, in other words each time. */
export const subtotalsInWords: RealInventory = {
  shape: 'a line after every tree: “Tree T1: 2 limbs, 6.8 in”, then a blank row',
  file: csv(`
${names}
${mapleRows}
"Tree T1: 2 limbs, 6.8 in in all",,,,,,,,,,
,,,,,,,,,,
${oakRows}
"Tree T2: 2 limbs, 7.5 in in all",,,,,,,,,,`),
  expected: { units: 'in-ft', columns, trees, leftOut: { '4': 'note', '8': 'note' } }
}

/** Invented: comments between the rows, begun by a star or a dash. */
export const commentsBetween: RealInventory = {
  shape: 'comments as rows of their own between the limbs, begun with * or --',
  file: csv(`
${names}
T1,Red maple,30,6,young,good,A,4.1,5,7,28
* nest 3 ft out on A - wait until August,,,,,,,,,,
T1,Red maple,30,6,young,good,B,2.7,5.4,6.5,24
-- lunch --,,,,,,,,,,
${oakRows}
checked by office 5/9,,,,,,,,,,`),
  expected: { units: 'in-ft', columns, trees, leftOut: { '3': 'note', '5': 'note', '8': 'note' } }
}

/** Invented: pages with a title, a slightly different header, and a page number. */
export const pagesWithTitles: RealInventory = {
  shape: 'printed pages: title, header, rows, “Page 1 of 2”, the title again, the header with (cont.)',
  file: csv(`
Young tree survey,,,,,,,,,,
${names}
${mapleRows}
Page 1 of 2,,,,,,,,,,
Young tree survey (continued),,,,,,,,,,
${names.replace('Tree,', 'Tree (cont.),')}
${oakRows}
Page 2 of 2,,,,,,,,,,`),
  expected: {
    units: 'in-ft',
    columns: { '': `${columns['']}; ...` },
    trees,
    leftOut: { '5': 'note', '6': 'note', '10': 'note' }
  }
}

/** Invented: a form with the numbers filled in beforehand. */
export const numbersFilledIn: RealInventory = {
  shape: 'tree numbers filled in beforehand, most rows not measured yet',
  file: csv(`
${names}
${mapleRows}
${oakRows}
T3,,,,,,,,,,
T4,,,,,,,,,,
T5,,,,,,,,,,`),
  expected: {
    units: 'in-ft',
    columns,
    trees: [...trees, ...['T3', 'T4', 'T5'].map((id) => tree(id, null, null, {}))]
  }
}

/** Invented: words for the value above. */
export const wordsForDitto: RealInventory = {
  shape: 'words for the value above: same, see above, as above, “',
  file: csv(`
${names}
T1,Red maple,30,6,young,good,A,4.1,5,7,28
same,same,same,same,same,same,B,2.7,5.4,6.5,24
T2,Pin oak,33,7,young,good,A,4.4,5.6,8,31
as above,see above,as above,as above,as above,see above,B,3.1,6,7.5,26`),
  expected: { units: 'in-ft', columns, trees, mayAsk: ['A1'] }
}

/** Invented: remarks where sizes are expected. */
export const remarksInSizes: RealInventory = {
  shape: 'remarks in the cells of sizes: “dead - remove”, “couldn’t reach”, “see photo”, “#N/A”',
  file: csv(`
${names},Dead?
T1,Red maple,30,6,young,good,A,4.1,5,7,28,
T1,Red maple,30,6,young,good,B,couldn't reach,5.4,6.5,24,
T1,Red maple,30,6,young,good,C,3.2,4.6,9,see photo,
T2,Pin oak,33,7,young,good,A,4.4,5.6,8,31,
T2,Pin oak,33,7,young,good,B,3.1,#N/A,7.5,26,dead - remove`),
  expected: {
    units: 'in-ft',
    columns: { '': `${columns['']}; L live|notes|-` },
    trees: [
      tree(
        'T1',
        30,
        6,
        young,
        limb('A', 4.1, 5, 7, 28),
        limb('B', null, 5.4, 6.5, 24),
        limb('C', 3.2, 4.6, 9, null)
      ),
      tree(
        'T2',
        33,
        7,
        young,
        limb('A', 4.4, 5.6, 8, 31),
        limb('B', 3.1, null, 7.5, 26, null, { 'Live or dead': 'dead' })
      )
    ],
    told: [
      ['H3', 'number'],
      ['K4', 'number'],
      ['I6', 'error']
    ],
    mayAsk: ['L1']
  }
}

/** Invented: what each word means, above the table. */
export const keyAbove: RealInventory = {
  shape: 'a key of the columns above the table: “Limb | letter from the lowest up”',
  file: workbook([
    {
      name: 'Survey',
      rows: `
How to fill in | | | | | | | | | |
Tree | number on the tag | | | | | | | | |
Height | in feet, by clinometer | | | | | | | | |
Limb | letter, from the lowest up | | | | | | | | |
Stem | inches, just above the union | | | | | | | | |
 | | | | | | | | | |
${names.replaceAll(',', ' | ')}
${mapleRows.replaceAll(',', ' | ')}
${oakRows.replaceAll(',', ' | ')}`
    }
  ]),
  expected: { units: 'in-ft', columns: { Survey: columns[''] }, trees }
}

/** Invented: two tables of the same kind below one another, columns in another order in the second. */
export const secondTableReordered: RealInventory = {
  shape: 'a second table of the same kind below, its columns in another order',
  file: csv(`
${names}
${mapleRows}

Limb,Limb dia (in),Stem dia (in),Tip (ft),Origin (ft),Tree,Species,Height (ft),Crown base (ft),Vigor,Life stage
A,4.4,5.6,31,8,T2,Pin oak,33,7,good,young
B,3.1,6,26,7.5,T2,Pin oak,33,7,good,young`),
  expected: { units: 'in-ft', columns: { '': '...' }, trees }
}

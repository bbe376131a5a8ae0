import type { RealInventory } from '../expected'
import { workbook } from '../workbookFile'
import { csv } from '../csvFile'
import { lime, limeTrunk, maple, mapleTrunk, oak, oakTrunk, plane, planeTrunk } from './trees'

const treeSheet = `
Tree | Height (ft) | Crown base (ft) | Life stage | Vigor
T1 | 30 | 6 | young | good
T2 | 33 | 7 | young | good`
const treeColumns = 'A tree; B height ft; C crownBase ft; D stage; E vigor'
const limbSheet = `
Tree | Limb | Limb dia (in) | Stem dia (in) | Origin (ft) | Tip (ft)
T1 | A | 4.1 | 5 | 7 | 28
T1 | B | 2.7 | 5.4 | 6.5 | 24
T2 | A | 4.4 | 5.6 | 8 | 31
T2 | B | 3.1 | 6 | 7.5 | 26`
const limbColumns = 'A tree; B limb; C diameter in; D stem in; E origin ft; F tip ft'

/** Invented: what else a firm keeps by tree and limb. */
export const historyPhotosCosts: RealInventory = {
  shape: 'sheets of photos, costs and past work by tree and limb beside the trees and limbs',
  file: workbook([
    { name: 'Trees', rows: treeSheet },
    { name: 'Limbs', rows: limbSheet },
    {
      name: 'Photos',
      rows: `
Tree | Limb | File | Taken
T1 | A | IMG_1.jpg | @2026-05-04
T1 | A | IMG_2.jpg | @2026-05-04
T2 | B | IMG_3.jpg | @2026-05-04`
    },
    {
      name: 'Costs',
      rows: `
Tree | Limb | Hours | Price
T1 | A | 0.5 | 60
T2 | A | 0.75 | 90
Total | | 1.25 | 150`
    },
    {
      name: 'Past work',
      rows: `
Tree | Date | Work | By
T1 | @2022-03-10 | watered | crew 1
T1 | @2023-03-12 | staked | crew 2
T2 | @2023-03-12 | mulched | crew 2`
    }
  ]),
  expected: {
    units: 'in-ft',
    columns: { Trees: treeColumns, Limbs: limbColumns },
    trees: [maple('T1'), oak('T2')],
    leftOut: { 'Photos!': 'sheet', 'Costs!': 'sheet', 'Past work!': 'sheet' }
  }
}

/** Invented: what is known of a tree lies on two sheets. */
export const treesOnTwoSheets: RealInventory = {
  shape: 'trunks on one sheet, heights on another, limbs on a third',
  file: workbook([
    { name: 'Trunks', rows: '\nTree | Species | DBH (in)\nT1 | Red maple | 7.2\nT2 | Pin oak | 8' },
    { name: 'Heights', rows: treeSheet },
    { name: 'Limbs', rows: limbSheet }
  ]),
  expected: {
    units: 'in-ft',
    columns: { Trunks: 'A tree; B species; C trunk in', Heights: treeColumns, Limbs: limbColumns },
    trees: [maple('T1', ['A', 'B'], mapleTrunk), oak('T2', ['A', 'B'], oakTrunk)],
    told: [['', 'joined']]
  }
}

/** Invented: a survey app's two tables with global ids. */
export const globalIds: RealInventory = {
  shape:
    'a survey app’s two sheets: globalid on the trees, parentglobalid on the limbs, tree numbers on the trees only',
  file: workbook([
    {
      name: 'tree_0',
      rows: `
ObjectID | GlobalID | tree_no | height_ft | crown_base_ft | life_stage | vigor | CreationDate | Creator | x | y
1 | {a1f0-01} | T1 | 30 | 6 | young | good | @2026-05-04 | crew1 | -83.511 | 41.203
2 | {a1f0-02} | T2 | 33 | 7 | young | good | @2026-05-04 | crew1 | -83.512 | 41.204`
    },
    {
      name: 'limb_1',
      rows: `
ObjectID | GlobalID | limb_no | limb_diameter_in | stem_diameter_in | origin_ft | tip_ft | ParentGlobalID | CreationDate
1 | {b7-01} | A | 4.1 | 5 | 7 | 28 | {a1f0-01} | @2026-05-04
2 | {b7-02} | B | 2.7 | 5.4 | 6.5 | 24 | {a1f0-01} | @2026-05-04
3 | {b7-03} | A | 4.4 | 5.6 | 8 | 31 | {a1f0-02} | @2026-05-04
4 | {b7-04} | B | 3.1 | 6 | 7.5 | 26 | {a1f0-02} | @2026-05-04`
    }
  ]),
  expected: {
    units: 'in-ft',
    columns: {
      tree_0: 'A -; B tree|-; C tree; D height ft; E crownBase ft; F stage; G vigor',
      limb_1: 'A -; B -; C limb; D diameter in; E stem in; F origin ft; G tip ft; H tree|-'
    },
    trees: [maple('T1'), oak('T2')],
    mayAsk: ['tree_0!B1', 'limb_1!H1']
  }
}

/** Invented: numbers that a program wrote with a point. */
export const idsWithPoint: RealInventory = {
  shape: 'ids “1.0” on one sheet, 1 on the other, “#1” in no',
  file: workbook([
    { name: 'Trees', rows: treeSheet.replace('T1', "'1.0").replace('T2', "'2.0") },
    { name: 'Limbs', rows: limbSheet.replaceAll('T1', '#1').replaceAll('T2', '#2') }
  ]),
  expected: {
    units: 'in-ft',
    columns: { Trees: treeColumns, Limbs: limbColumns },
    trees: [maple('1|1.0|#1'), oak('2|2.0|#2')],
    told: [['', 'same id']]
  }
}

/** Invented: sites, trees, limbs, each on a sheet; numbers start again in each site. */
export const sitesTreesLimbs: RealInventory = {
  shape: 'sites, trees and limbs on three sheets, tree numbers start again in each site',
  file: workbook([
    {
      name: 'Sites',
      rows: '\nSite | Address | Contact\nNorth | 1 Demo Rd | K. Person\nSouth | 9 Demo Rd | L. Person'
    },
    {
      name: 'Trees',
      rows: `
Site | Tree | Height (ft) | Crown base (ft) | Life stage | Vigor
North | 1 | 30 | 6 | young | good
South | 1 | 33 | 7 | young | good`
    },
    {
      name: 'Limbs',
      rows: `
Site | Tree | Limb | Limb dia (in) | Stem dia (in) | Origin (ft) | Tip (ft)
North | 1 | A | 4.1 | 5 | 7 | 28
North | 1 | B | 2.7 | 5.4 | 6.5 | 24
South | 1 | A | 4.4 | 5.6 | 8 | 31
South | 1 | B | 3.1 | 6 | 7.5 | 26`
    }
  ]),
  expected: {
    units: 'in-ft',
    columns: {
      Trees: 'A site; B tree; C height ft; D crownBase ft; E stage; F vigor',
      Limbs: 'A site; B tree; C limb; D diameter in; E stem in; F origin ft; G tip ft'
    },
    trees: [maple('*'), oak('*')],
    told: [['', 'several trees']],
    leftOut: { 'Sites!': 'sheet' }
  }
}

/** Invented: limbs in groups of columns on the second sheet. */
export const groupsOnSecondSheet: RealInventory = {
  shape: 'trees on one sheet, their limbs in numbered groups of columns on the other',
  file: workbook([
    { name: 'Trees', rows: treeSheet },
    {
      name: 'Structure',
      rows: `
Tree | Limb 1 dia (in) | Limb 1 stem dia (in) | Limb 1 origin (ft) | Limb 1 tip (ft) | Limb 2 dia (in) | Limb 2 stem dia (in) | Limb 2 origin (ft) | Limb 2 tip (ft)
T1 | 4.1 | 5 | 7 | 28 | 2.7 | 5.4 | 6.5 | 24
T2 | 4.4 | 5.6 | 8 | 31 | 3.1 | 6 | 7.5 | 26`
    }
  ]),
  expected: {
    units: 'in-ft',
    columns: { Trees: treeColumns, Structure: '...' },
    trees: [maple('T1', ['*', '*']), oak('T2', ['*', '*'])]
  }
}

/** Invented: names and numbers of the trees. */
export const namesAndNumbers: RealInventory = {
  shape: 'the sheet of trees has “Tree” (a name) and “ID” (the number that the limbs use)',
  file: workbook([
    {
      name: 'Trees',
      rows: `
Tree | ID | Height (ft) | Crown base (ft) | Life stage | Vigor
Big maple | 101 | 30 | 6 | young | good
Gate oak | 102 | 33 | 7 | young | good`
    },
    {
      name: 'Limbs',
      rows: limbSheet.replace('Tree |', 'Tree ID |').replaceAll('T1', '101').replaceAll('T2', '102')
    }
  ]),
  expected: {
    units: 'in-ft',
    columns: {
      Trees: 'A -|species|treeNotes|tree; B tree|-; C height ft; D crownBase ft; E stage; F vigor',
      Limbs: limbColumns
    },
    trees: [maple('101|Big maple'), oak('102|Gate oak')],
    mayAsk: ['Trees!A1', 'Trees!B1']
  }
}

/** Invented: a code list that looks like a list of trees. */
export const codeLists: RealInventory = {
  shape: 'a sheet of species codes with common heights and spreads, an empty template, the inventory last',
  file: workbook([
    {
      name: 'Species',
      rows: `
Species code | Species | Mature height (m) | Spread (m)
TC | Linden | 25 | 15
PA | Plane | 30 | 20
AC | Maple | 15 | 10`
    },
    {
      name: 'Template',
      rows: '\nTree | Height (m) | Crown base (m) | Limb | Limb dia (cm) | Stem dia (cm) | Origin (m) | Tip (m)'
    },
    {
      name: 'Inventory',
      rows: `
Tree | Species code | DBH (cm) | Height (m) | Crown base (m) | Life stage | Vigor | Limb | Limb dia (cm) | Stem dia (cm) | Origin (m) | Tip (m)
1 | TC | 18 | 9.1 | 1.7 | young | good | 1 | 10.1 | 12.4 | 2 | 8.6
1 | TC | 18 | 9.1 | 1.7 | young | good | 2 | 6.9 | 13.2 | 1.9 | 7.5
2 | PA | 21 | 10 | 2 | young | good | 1 | 11.2 | 13.1 | 2.4 | 9.5
2 | PA | 21 | 10 | 2 | young | good | 2 | 7.7 | 13.8 | 2.2 | 8.4`
    }
  ]),
  expected: {
    units: 'cm-m',
    columns: {
      Inventory:
        'A tree; B species; C trunk cm; D height m; E crownBase m; F stage; G vigor; H limb; I diameter cm; J stem cm; K origin m; L tip m'
    },
    trees: [lime('1', ['1', '2'], limeTrunk), plane('2', ['1', '2'], planeTrunk)],
    leftOut: { 'Species!': 'sheet' }
  }
}

/** Invented: nobody headed the first column. */
export const firstColumnUnnamed: RealInventory = {
  shape: 'the column of the trees has no header',
  file: csv(`
,Height (ft),Crown base (ft),Life stage,Vigor,Limb,Limb dia (in),Stem dia (in),Origin (ft),Tip (ft)
T1,30,6,young,good,A,4.1,5,7,28
T1,30,6,young,good,B,2.7,5.4,6.5,24
T2,33,7,young,good,A,4.4,5.6,8,31
T2,33,7,young,good,B,3.1,6,7.5,26`),
  expected: {
    units: 'in-ft',
    columns: {
      '': 'A tree; B height ft; C crownBase ft; D stage; E vigor; F limb; G diameter in; H stem in; I origin ft; J tip ft'
    },
    trees: [maple('T1'), oak('T2')],
    mayAsk: ['A1']
  }
}

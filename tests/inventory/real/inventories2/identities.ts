import { csv } from '../csvFile'
import type { RealInventory } from '../expected'
import { workbook } from '../workbookFile'
import { lime, maple, oak, plane } from './trees'

const surveyed =
  'Height (ft),Crown base (ft),Life stage,Vigor,Limb,Limb dia (in),Stem dia (in),Origin (ft),Tip (ft)'
const limbs = (before: string, after: string) => `${before},30,6,young,good,A,4.1,5,7,28
${before},30,6,young,good,B,2.7,5.4,6.5,24
${after},33,7,young,good,A,4.4,5.6,8,31
${after},33,7,young,good,B,3.1,6,7.5,26`
const fromC =
  'C height ft; D crownBase ft; E stage; F vigor; G limb; H diameter in; I stem in; J origin ft; K tip ft'

/** Invented: a golf course numbers the trees of each hole. */
export const treesByHole: RealInventory = {
  shape: 'golf course: tree numbers start again at every hole, the kind is the same',
  file: csv(`\nHole,Tree,${surveyed}\n${limbs('1,1', '2,1')}`),
  expected: {
    units: 'in-ft',
    columns: { '': `A site|tree|-; B tree; ${fromC}` },
    trees: [maple('*'), oak('*')],
    told: [['', 'several trees']],
    mayAsk: ['A1', 'B1']
  }
}

/** Invented: section lines, numbers start again under each. */
export const sectionsRestart: RealInventory = {
  shape: 'lines “SECTION A”, “SECTION B” between the rows, tree numbers start again below each',
  file: csv(`
Tree,Species,${surveyed}
SECTION A - north lawn,,,,,,,,,,
1,Red maple,30,6,young,good,A,4.1,5,7,28
1,Red maple,30,6,young,good,B,2.7,5.4,6.5,24
SECTION B - parking lot,,,,,,,,,,
1,Pin oak,33,7,young,good,A,4.4,5.6,8,31
1,Pin oak,33,7,young,good,B,3.1,6,7.5,26`),
  expected: {
    units: 'in-ft',
    columns: { '': `A tree; B species; ${fromC}` },
    trees: [maple('*'), oak('*')],
    leftOut: { '2': 'note', '5': 'note' },
    told: [['', 'several trees']]
  }
}

/** Invented: street names on lines of their own, numbers go on. */
export const streetLines: RealInventory = {
  shape: 'street names as lines of their own among the rows, numbers go on through all streets',
  file: csv(`
No.,Species,${surveyed}
MAPLE AVENUE,,,,,,,,,,
${limbs('1,Red maple', '2,Pin oak').split('\n').slice(0, 2).join('\n')}
2ND STREET,,,,,,,,,,
${limbs('1,Red maple', '2,Pin oak').split('\n').slice(2).join('\n')}`),
  expected: {
    units: 'in-ft',
    columns: { '': `A tree; B species; ${fromC}` },
    trees: [maple('1'), oak('2')],
    leftOut: { '2': 'note', '5': 'note' },
    mayAsk: ['A1']
  }
}

/** Invented: no tree number, only the address and which tree of it. */
export const treesByAddress: RealInventory = {
  shape: 'street, house number and which tree in front of it, no number of the tree’s own',
  file: csv(`
Street,House no.,Tree at address,Species,${surveyed}
Birch St,112,1,Red maple,30,6,young,good,A,4.1,5,7,28
Birch St,112,1,Red maple,30,6,young,good,B,2.7,5.4,6.5,24
Birch St,112,2,Pin oak,33,7,young,good,A,4.4,5.6,8,31
Birch St,112,2,Pin oak,33,7,young,good,B,3.1,6,7.5,26
Birch St,118,1,Red maple,30,6,young,good,A,4.1,5,7,28
Birch St,118,1,Red maple,30,6,young,good,B,2.7,5.4,6.5,24`),
  expected: {
    units: 'in-ft',
    columns: {
      '': 'A site|-; B site|-; C tree; D species; E height ft; F crownBase ft; G stage; H vigor; I limb; J diameter in; K stem in; L origin ft; M tip ft'
    },
    trees: [maple('*'), oak('*'), maple('*')],
    told: [['', 'several trees']],
    mayAsk: ['A1', 'B1', 'C1']
  }
}

/** Invented: a homeowners' board describes its trees. */
export const describedTrees: RealInventory = {
  shape: 'homeowners’ board: trees by description, limbs by description, rough words beside',
  file: csv(`
Which tree,Lot,Kind,About how tall (ft),Crown starts at (ft),Age,Health,Which limb,Limb thickness (in),Trunk thickness above it (in),Starts at (ft),Goes up to (ft),Complaint?
Maple by the pool,14,maple,30,6,young,good,over the fence,4.1,5,7,28,yes
Maple by the pool,14,maple,30,6,young,good,street side,2.7,5.4,6.5,24,no
Oak at the mailbox,15,oak,33,7,young,good,over the drive,4.4,5.6,8,31,no
Oak at the mailbox,15,oak,33,7,young,good,lowest one,3.1,6,7.5,26,no`),
  expected: {
    units: 'in-ft',
    columns: {
      '': 'A tree; B site|-; C species; D height ft; E crownBase ft; F stage; G vigor; H limb; I diameter in; J stem in; K origin ft; L tip ft; M -'
    },
    trees: [
      maple('Maple by the pool', ['over the fence', 'street side']),
      oak('Oak at the mailbox', ['over the drive', 'lowest one'])
    ],
    mayAsk: ['A1', 'D1', 'H1', 'I1', 'J1']
  }
}

/** Invented: limbs named by direction. */
export const limbsByDirection: RealInventory = {
  shape: 'limbs named by the direction they grow in, and nothing else',
  file: csv(`
Tree,Height (ft),Crown base (ft),Life stage,Vigor,Limb direction,Limb dia (in),Stem dia (in),Origin (ft),Tip (ft)
T1,30,6,young,good,N,4.1,5,7,28
T1,30,6,young,good,SW,2.7,5.4,6.5,24
T2,33,7,young,good,E,4.4,5.6,8,31
T2,33,7,young,good,NW,3.1,6,7.5,26`),
  expected: {
    units: 'in-ft',
    columns: {
      '': 'A tree; B height ft; C crownBase ft; D stage; E vigor; F limb|bearing; G diameter in; H stem in; I origin ft; J tip ft'
    },
    trees: [maple('T1', ['*', '*']), oak('T2', ['*', '*'])],
    mayAsk: ['F1']
  }
}

/** Invented: limb ids that the spreadsheet took for days. */
export const limbIdsBecameDates: RealInventory = {
  shape: 'limb ids “1-1”, “1-2” that the spreadsheet turned into days',
  file: workbook([
    {
      name: 'Survey',
      rows: `
Tree | Height (ft) | Crown base (ft) | Life stage | Vigor | Limb | Limb dia (in) | Stem dia (in) | Origin (ft) | Tip (ft)
1 | 30 | 6 | young | good | @2026-01-01 | 4.1 | 5 | 7 | 28
1 | 30 | 6 | young | good | @2026-01-02 | 2.7 | 5.4 | 6.5 | 24
2 | 33 | 7 | young | good | @2026-02-01 | 4.4 | 5.6 | 8 | 31
2 | 33 | 7 | young | good | @2026-02-02 | 3.1 | 6 | 7.5 | 26`
    }
  ]),
  expected: {
    units: 'in-ft',
    columns: {
      Survey:
        'A tree; B height ft; C crownBase ft; D stage; E vigor; F limb; G diameter in; H stem in; I origin ft; J tip ft'
    },
    trees: [maple('1', ['*', '*']), oak('2', ['*', '*'])],
    told: [['F2', 'date']],
    mayAsk: ['F1']
  }
}

/** Invented: every limb is called by what it is. */
export const limbsAllScaffold: RealInventory = {
  shape: 'the limb column says what it is, the same word for each: scaffold, scaffold',
  file: csv(`
Tree,Height (ft),Crown base (ft),Life stage,Vigor,Limb,Limb dia (in),Stem dia (in),Origin (ft),Tip (ft)
T1,30,6,young,good,scaffold,4.1,5,7,28
T1,30,6,young,good,scaffold,2.7,5.4,6.5,24
T2,33,7,young,good,scaffold,4.4,5.6,8,31
T2,33,7,young,good,scaffold,3.1,6,7.5,26`),
  expected: {
    units: 'in-ft',
    columns: {
      '': 'A tree; B height ft; C crownBase ft; D stage; E vigor; F limb|role; G diameter in; H stem in; I origin ft; J tip ft'
    },
    trees: [maple('T1', ['*', '*']), oak('T2', ['*', '*'])],
    told: [['', 'duplicate']],
    mayAsk: ['F1']
  }
}

/** Invented: a nursery counts plants within blocks and rows. */
export const blockRowPlant: RealInventory = {
  shape: 'nursery: block, row and plant number make up the tree, centimeters',
  file: csv(`
Block,Row,Plant no.,Height (m),Crown base (m),Stage,Vigor,Branch,Branch dia (cm),Leader dia above (cm),Branch origin (m),Branch tip (m)
A,1,1,9.1,1.7,young,good,1,10.1,12.4,2,8.6
A,1,1,9.1,1.7,young,good,2,6.9,13.2,1.9,7.5
A,2,1,10,2,young,good,1,11.2,13.1,2.4,9.5
A,2,1,10,2,young,good,2,7.7,13.8,2.2,8.4`),
  expected: {
    units: 'cm-m',
    columns: {
      '': 'A zone; B site; C tree; D height m; E crownBase m; F stage; G vigor; H limb; I diameter cm; J stem cm; K origin m; L tip m'
    },
    trees: [lime('*'), plane('*')],
    told: [['', 'several trees']],
    mayAsk: ['A1', 'B1', 'C1', 'J1']
  }
}

/** Invented: rows in the order in which the work is to be done. */
export const sortedByPriority: RealInventory = {
  shape: 'rows by priority, a rank in the first column, the trees mixed',
  file: csv(`
Priority,Tree no.,Limb no.,Ht (ft),Crown base (ft),Life stage,Vigor,Limb dia (in),Stem dia (in),Origin (ft),Tip (ft),Action,Est. hrs
1,T1,A,30,6,young,good,4.1,5,7,28,reduce,0.5
2,T2,A,33,7,young,good,4.4,5.6,8,31,reduce,0.75
3,T2,B,33,7,young,good,3.1,6,7.5,26,keep,0
4,T1,B,30,6,young,good,2.7,5.4,6.5,24,remove,0.25`),
  expected: {
    units: 'in-ft',
    columns: {
      '': 'A -; B tree; C limb; D height ft; E crownBase ft; F stage; G vigor; H diameter in; I stem in; J origin ft; K tip ft; L -; M -'
    },
    trees: [maple('T1'), oak('T2')]
  }
}

import { csv } from '../csvFile'
import { limb, tree, type RealInventory } from '../expected'
import { workbook } from '../workbookFile'
import { lime, maple, oak, plane, young } from './trees'

const names =
  'Tree,Height (ft),Crown base (ft),Life stage,Vigor,Limb,Limb dia (in),Stem dia (in),Origin (ft),Tip (ft)'
const columns =
  'A tree; B height ft; C crownBase ft; D stage; E vigor; F limb; G diameter in; H stem in; I origin ft; J tip ft'

/** Invented: commas for decimals in a file parted by commas. */
export const decimalCommasQuoted: RealInventory = {
  shape: 'Quebec: decimal commas within quotes, the file parted by commas',
  file: csv(`
No arbre,Essence,DHP (cm),Hauteur (m),Base du houppier (m),Stade,Vigueur,Branche,Diamètre branche (cm),Diamètre tige au-dessus (cm),Insertion (m),Cime de la branche (m)
1,Tilleul,"18,0","9,1","1,7",jeune,bonne,1,"10,1","12,4","2,0","8,6"
1,Tilleul,"18,0","9,1","1,7",jeune,bonne,2,"6,9","13,2","1,9","7,5"
2,Platane,"21,0","10,0","2,0",jeune,bonne,1,"11,2","13,1","2,4","9,5"
2,Platane,"21,0","10,0","2,0",jeune,bonne,2,"7,7","13,8","2,2","8,4"`),
  expected: {
    units: 'cm-m',
    columns: {
      '': 'A tree; B species; C trunk cm; D height m; E crownBase m; F stage; G vigor; H limb; I diameter cm; J stem cm; K origin m; L tip m'
    },
    trees: [
      { ...lime('1'), trunk: 18 },
      { ...plane('2'), trunk: 21 }
    ]
  }
}

/** Invented: an accounting program's report with thousands and money. */
export const accountingReport: RealInventory = {
  shape:
    'accounting report: lines of its own above and below, thousands with commas in quotes, prices with $',
  file: csv(`
"Greenfield Demo Landscapes, Inc."
"Job detail by tree"
"As of May 9, 2026"

"Job","Tree","Description","Tree height (mm)","Crown base (mm)","Life stage","Vigor","Limb","Limb dia (mm)","Stem dia (mm)","Origin (mm)","Tip (mm)","Qty","Rate","Amount"
"1,204","1","Linden","9,100","1,700","young","good","1","101","124","2,000","8,600","1","$95.00","$95.00"
"1,204","1","Linden","9,100","1,700","young","good","2","69","132","1,900","7,500","1","$95.00","$95.00"
"1,204","2","Plane","10,000","2,000","young","good","1","112","131","2,400","9,500","1","$1,095.00","$1,095.00"
"1,204","2","Plane","10,000","2,000","young","good","2","77","138","2,200","8,400","1","$95.00","$95.00"
"","Total","","","","","","","","","","","4","","$1,380.00"
"Friday, May 9, 2026 04:12 PM GMT-7"`),
  expected: {
    units: 'cm-m',
    columns: {
      '': 'A -; B tree; C species|treeNotes|-; D height mm; E crownBase mm; F stage; G vigor; H limb; I diameter mm; J stem mm; K origin mm; L tip mm; M -; N -; O -'
    },
    trees: [lime('1'), plane('2')],
    leftOut: { '10': 'total' }
  }
}

/** Invented: every number is a text. */
export const numbersAsTexts: RealInventory = {
  shape: 'every number stored as text, some with spaces or the unit’s mark behind them',
  file: workbook([
    {
      name: 'Export',
      rows: `
Tree | Height | Crown base | Life stage | Vigor | Limb | Limb dia | Stem dia | Origin | Tip
'1 | 30' | 6' | young | good | 'A | 4.1" | 5" | 7' | 28'
'1 | 30' | 6' | young | good | 'B | 2.7" | 5.4" | 6.5' | 24'
'2 | 33 ' | 7 ' | young | good | 'A | 4.4 ” | 5.6 ” | 8 ’ | 31 ’
'2 | 33 ' | 7 ' | young | good | 'B | 3.1 ” | 6 ” | 7.5 ’ | 26 ’`
    }
  ]),
  expected: {
    units: 'in-ft',
    columns: { Export: columns.replaceAll(/ (ft|in)\b/g, '') },
    trees: [maple('1'), oak('2')]
  }
}

/** Invented: check boxes. */
export const checkBoxes: RealInventory = {
  shape: 'check boxes: TRUE and FALSE for included bark, dead, broken, rubbing',
  file: csv(`
${names},Included bark,Dead,Broken,Rubbing,Photo taken
T1,30,6,young,good,A,4.1,5,7,28,TRUE,FALSE,FALSE,FALSE,TRUE
T1,30,6,young,good,B,2.7,5.4,6.5,24,FALSE,FALSE,TRUE,FALSE,TRUE
T2,33,7,young,good,A,4.4,5.6,8,31,FALSE,FALSE,FALSE,TRUE,FALSE
T2,33,7,young,good,B,3.1,6,7.5,26,FALSE,TRUE,FALSE,FALSE,FALSE`),
  expected: {
    units: 'in-ft',
    columns: { '': `${columns}; K bark; L live; M broken; N rubbing; O -` },
    trees: [
      tree(
        'T1',
        30,
        6,
        young,
        limb('A', 4.1, 5, 7, 28, 'full'),
        limb('B', 2.7, 5.4, 6.5, 24, 'none', { Broken: 'yes' })
      ),
      tree(
        'T2',
        33,
        7,
        young,
        limb('A', 4.4, 5.6, 8, 31, 'none', { Rubbing: 'yes' }),
        limb('B', 3.1, 6, 7.5, 26, 'none', { 'Live or dead': 'dead' })
      )
    ],
    mayAsk: ['L1', 'M1', 'N1']
  }
}

/** Invented: a blank check box is the empty box. */
export const drawnBoxes: RealInventory = {
  shape: 'drawn boxes ☐ and ☒, a question with the answers as its columns: None, Partial, Full',
  file: csv(`
${names},Bark none,Bark partial,Bark full
T1,30,6,young,good,A,4.1,5,7,28,☐,☐,☒
T1,30,6,young,good,B,2.7,5.4,6.5,24,☒,☐,☐
T2,33,7,young,good,A,4.4,5.6,8,31,☐,☒,☐
T2,33,7,young,good,B,3.1,6,7.5,26,☒,☐,☐`),
  expected: {
    units: 'in-ft',
    columns: { '': `${columns}; ...` },
    trees: [
      tree('T1', 30, 6, young, limb('A', 4.1, 5, 7, 28, 'full'), limb('B', 2.7, 5.4, 6.5, 24, 'none')),
      tree('T2', 33, 7, young, limb('A', 4.4, 5.6, 8, 31, 'partial'), limb('B', 3.1, 6, 7.5, 26, 'none'))
    ],
    mayAsk: ['K1', 'L1', 'M1']
  }
}

/** Invented: shares in many writings. */
export const sharesInWords: RealInventory = {
  shape: 'foliage already removed as “5 pct”, “10 percent”, “0.05”, “none”, “<5%”',
  file: csv(`
Tree,Height (ft),Crown base (ft),Life stage,Vigor,Foliage removed this season (%),Limb,Limb dia (in),Stem dia (in),Origin (ft),Tip (ft)
T1,30,6,young,good,5 pct,A,4.1,5,7,28
T1,30,6,young,good,5 pct,B,2.7,5.4,6.5,24
T2,33,7,young,good,10 percent,A,4.4,5.6,8,31
T2,33,7,young,good,10 percent,B,3.1,6,7.5,26
T3,26,5,young,good,none,A,3.6,4.4,6,24`),
  expected: {
    units: 'in-ft',
    columns: {
      '': 'A tree; B height ft; C crownBase ft; D stage; E vigor; F removed; G limb; H diameter in; I stem in; J origin ft; K tip ft'
    },
    trees: [
      { ...maple('T1'), more: { 'Foliage removed': '5 %' } },
      { ...oak('T2'), more: { 'Foliage removed': '10 %' } },
      tree('T3', 26, 5, { ...young, more: { 'Foliage removed': '0 %' } }, limb('A', 3.6, 4.4, 6, 24))
    ]
  }
}

/** Invented: sizes in classes. */
export const sizesInClasses: RealInventory = {
  shape: 'heights in classes: “20-30”, “30+”, trunk in classes, an age in years, health as a percentage',
  file: csv(`
Tree,DBH class (in),Height class (ft),Crown base (ft),Age (years),Health (%),Limb,Limb dia (in),Stem dia (in),Origin (ft),Tip (ft)
T1,6-12,20-30,6,12,90,A,4.1,5,7,28
T1,6-12,20-30,6,12,90,B,2.7,5.4,6.5,24
T2,6-12,30+,7,14,85,A,4.4,5.6,8,31
T2,6-12,30+,7,14,85,B,3.1,6,7.5,26`),
  expected: {
    exit: 3,
    units: 'in-ft',
    columns: {
      '': 'A tree; B trunk|-; C height|-; D crownBase ft; E stage|-; F vigor|-; G limb; H diameter in; I stem in; J origin ft; K tip ft'
    },
    trees: [
      { ...maple('T1', ['A', 'B'], {}), height: null },
      { ...oak('T2', ['A', 'B'], {}), height: null }
    ],
    mayAsk: ['B1', 'C1', 'E1', 'F1']
  }
}

/** Invented: zero and minus one for what was not measured. */
export const zeroForMissing: RealInventory = {
  shape: '0, -1 and 999 for what was not measured',
  file: csv(`
${names}
T1,30,6,young,good,A,4.1,5,7,28
T1,30,6,young,good,B,2.7,0,6.5,24
T2,33,7,young,good,A,4.4,5.6,8,999
T2,33,7,young,good,B,-1,6,7.5,26`),
  expected: {
    ratios: 1,
    units: 'in-ft',
    columns: { '': columns },
    trees: [
      tree('T1', 30, 6, young, limb('A', 4.1, 5, 7, 28), limb('B', 2.7, null, 6.5, 24)),
      tree('T2', 33, 7, young, limb('A', 4.4, 5.6, 8, null), limb('B', null, 6, 7.5, 26))
    ],
    told: [
      ['H3', 'missing'],
      ['J4', 'unit'],
      ['G5', 'missing']
    ]
  }
}

/** Invented: meters and centimeters without a point. */
export const lostDecimalPoint: RealInventory = {
  shape: 'one value whose decimal point was lost: 41 instead of 4.1',
  file: csv(`
${names}
T1,30,6,young,good,A,41,5,7,28
T1,30,6,young,good,B,2.7,5.4,6.5,24
T2,33,7,young,good,A,4.4,5.6,8,31
T2,33,7,young,good,B,3.1,6,7.5,26`),
  expected: {
    units: 'in-ft',
    columns: { '': columns },
    trees: [tree('T1', 30, 6, young, limb('A', 41, 5, 7, 28), limb('B', 2.7, 5.4, 6.5, 24)), oak('T2')],
    mayAsk: ['G1']
  }
}

/** Invented: units once, in a line above. */
export const unitsInTheTitle: RealInventory = {
  shape: 'the units stand once, in a line above: “Diameters in cm, heights in m”, the headers have none',
  file: csv(`
Jungbaumkontrolle Schulhof (erfunden);;;;;;;;;
Alle Durchmesser in cm, Höhen in m;;;;;;;;;
Baum;Höhe;Kronenansatz;Altersstufe;Vitalität;Ast;Astdurchmesser;Stammdurchmesser über Gabel;Ansatzhöhe;Spitzenhöhe
1;9,1;1,7;jung;gut;1;10,1;12,4;2;8,6
1;9,1;1,7;jung;gut;2;6,9;13,2;1,9;7,5
2;10;2;jung;gut;1;11,2;13,1;2,4;9,5
2;10;2;jung;gut;2;7,7;13,8;2,2;8,4`),
  expected: {
    units: 'cm-m',
    columns: {
      '': 'A tree; B height m; C crownBase m; D stage; E vigor; F limb; G diameter cm; H stem cm; I origin m; J tip m'
    },
    trees: [lime('1'), plane('2')]
  }
}

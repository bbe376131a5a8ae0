import { csv } from '../csvFile'
import { limb, tree, type RealInventory } from '../expected'
import { workbook } from '../workbookFile'

/** Invented: neither sheet calls its key a tree's; the same header stands on both. */
export const registerNumbers: RealInventory = {
  shape: 'trees on one sheet, limbs on another, both with “Reg. no.”, beside a sheet of notes',
  file: workbook([
    { name: 'Read me', rows: '\nMeasured in April by two people. The office has the key.' },
    {
      name: 'Tree register',
      rows: `
Reg. no. | Species | Trunk dia 4.5 ft (in) | Total height (ft) | Live crown from (ft) | Age class | Condition | Nearest path
P-1 | Bur oak | 13 | 38 | 7 | young | good | Loop
P-2 | Sycamore | 11 | 36 | 8 | young | good | Loop
P-3 | Ginkgo | 6 | 24 | 6 | young | good | Pond`
    },
    {
      name: 'Scaffold limbs',
      rows: `
Reg. no. | Limb no. | Limb base dia (in) | Leader dia just above (in) | Attached at (ft) | Highest point (ft)
P-1 | 1 | 6 | 10 | 9 | 35
P-1 | 2 | 4 | 9 | 12 | 31
P-2 | 1 | 5 | 8.5 | 10 | 33
P-2 | 2 | 3 | 7.5 | 14 | 30`
    }
  ]),
  expected: {
    units: 'in-ft',
    columns: {
      'Tree register':
        'A tree; B species; C trunk in; D height ft; E crownBase ft; F stage; G vigor; H site|-',
      'Scaffold limbs': 'A tree; B limb; C diameter in; D stem in; E origin ft; F tip ft'
    },
    trees: [
      tree(
        'P-1',
        38,
        7,
        { stage: 'young', vigor: 'good', trunk: 13, more: { Species: 'Bur oak' } },
        limb('1', 6, 10, 9, 35),
        limb('2', 4, 9, 12, 31)
      ),
      tree(
        'P-2',
        36,
        8,
        { stage: 'young', vigor: 'good', trunk: 11, more: { Species: 'Sycamore' } },
        limb('1', 5, 8.5, 10, 33),
        limb('2', 3, 7.5, 14, 30)
      ),
      tree('P-3', 24, 6, { stage: 'young', vigor: 'good', trunk: 6, more: { Species: 'Ginkgo' } })
    ],
    asked: ['Tree register!A1'],
    mayAsk: ['Tree register!B1'],
    told: [['', 'joined']]
  }
}

/** Invented: a bare "Height" above the limbs is where they start, as the other table has the trees'. */
export const heightOfTheUnion: RealInventory = {
  shape: 'two tables below one another; “Height (ft)” of a limb is that of its union',
  file: csv(`
TREES,,,,,,,
Tree,Species,DBH (in),Hgt (ft),Clear trunk (ft),Stage,Vigor,
A,Swamp white oak,10,33,7,Young,Good,
B,Freeman maple,9,31,6,Young,Good,
C,Kentucky coffeetree,7,25,8,Young,Fair,
,,,,,,,
LIMBS OF CONCERN,,,,,,,
Tree,Limb,Diameter (in),Trunk at limb (in),Height (ft),Tip (ft),Angle,Inc bark
A,1,4,8,9,29,50,N
A,2,3,7,12,28,55,N
B,1,5,7,8,29,30,Y
B,2,3.5,6,11,27,40,N
C,1,3,5,9,22,45,N`),
  expected: {
    units: 'in-ft',
    columns: {},
    trees: [
      tree(
        'A',
        33,
        7,
        { stage: 'young', vigor: 'good', trunk: 10, more: { Species: 'Swamp white oak' } },
        limb('1', 4, 8, 9, 29, 'none', { Angle: 50 }),
        limb('2', 3, 7, 12, 28, 'none', { Angle: 55 })
      ),
      tree(
        'B',
        31,
        6,
        { stage: 'young', vigor: 'good', trunk: 9, more: { Species: 'Freeman maple' } },
        limb('1', 5, 7, 8, 29, 'full', { Angle: 30 }),
        limb('2', 3.5, 6, 11, 27, 'none', { Angle: 40 })
      ),
      tree(
        'C',
        25,
        8,
        { stage: 'young', vigor: 'fair', trunk: 7, more: { Species: 'Kentucky coffeetree' } },
        limb('1', 3, 5, 9, 22, 'none', { Angle: 45 })
      )
    ],
    asked: ['E8'],
    mayAsk: ['D8']
  }
}

/** Invented: a street of young trees with codes under "Plot", and one limb in each row. */
export const codesUnderPlot: RealInventory = {
  shape: 'one row per tree with its worst limb; the only codes stand under “Plot”',
  file: csv(`
Plot|Species|Trunk (in)|Ht (ft)|Crown base (ft)|Stage|Vigor|Worst limb dia (in)|Stem dia above it (in)|Starts (ft)|Ends (ft)|Staked
Y-01|Acer rubrum|3|15|4|young|good|1.25|2.25|5|13|no
Y-02|Acer rubrum|3.5|16|4|young|good|1.5|2.5|5|14|no
Y-03|Quercus bicolor|4|17|4|young|good|1.5|3|5.5|14|no
Y-04|Tilia cordata|3|14|4|young|good|1.5|2|4.5|13|yes`),
  expected: {
    units: 'in-ft',
    columns: {
      '': 'A tree; B species; C trunk in; D height ft; E crownBase ft; F stage; G vigor; H diameter in; I stem in; J origin ft; K tip ft; L -'
    },
    trees: [
      ['Y-01', 'Acer rubrum', 3, 15, 1.25, 2.25, 5, 13] as const,
      ['Y-02', 'Acer rubrum', 3.5, 16, 1.5, 2.5, 5, 14] as const,
      ['Y-03', 'Quercus bicolor', 4, 17, 1.5, 3, 5.5, 14] as const,
      ['Y-04', 'Tilia cordata', 3, 14, 1.5, 2, 4.5, 13] as const
    ].map(([id, species, trunk, height, diameter, stem, origin, tip]) =>
      tree(
        id,
        height,
        4,
        { stage: 'young', vigor: 'good', trunk, more: { Species: species } },
        limb('*', diameter, stem, origin, tip)
      )
    ),
    asked: ['A1'],
    mayAsk: ['H1', 'I1']
  }
}

/** Invented: a gardener's book with a low ditto mark, a note with an exclamation mark and a total that counts. */
export const gardenBook: RealInventory = {
  shape: 'Gartenbuch: „ unter dem Namen, „Leiter mitbringen!“ zwischen den Zeilen, „Total 3 Bäume“ darunter',
  file: csv(
    `
Baum;Stamm cm;Höhe m;Ast;Ast-Ø cm;Stamm-Ø darüber cm;ab m;bis m;Rinde eingewachsen
Linde am Tor;26;10;links;9;18;2,5;8,4;nein
„;;;rechts;8;17;3,2;8,1;nein
Leiter mitbringen!;;;;;;;;
Ahorn Hof;24;9,5;rechts;11;15;2,2;9;ja
Eiche Zaun;30;11;Süd;12;21;3;10;nein
Total 3 Bäume;;;;;;;;`,
    { encoding: 'windows-1252' }
  ),
  expected: {
    units: 'cm-m',
    columns: {
      '': 'A tree; B trunk cm; C height m; D limb; E diameter cm; F stem cm; G origin m; H tip m; I bark'
    },
    trees: [
      tree(
        'Linde am Tor',
        10,
        null,
        { trunk: 26 },
        limb('links', 9, 18, 2.5, 8.4, 'none'),
        limb('rechts', 8, 17, 3.2, 8.1, 'none')
      ),
      tree('Ahorn Hof', 9.5, null, { trunk: 24 }, limb('rechts', 11, 15, 2.2, 9, 'full')),
      tree('Eiche Zaun', 11, null, { trunk: 30 }, limb('Süd', 12, 21, 3, 10, 'none'))
    ],
    leftOut: { '4': 'note', '7': 'total' }
  }
}

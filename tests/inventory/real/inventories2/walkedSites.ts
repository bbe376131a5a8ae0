import { csv } from '../csvFile'
import { limb, tree, type RealInventory } from '../expected'
import { workbook } from '../workbookFile'

/** Invented: an estimator types the units once, above the table. */
export const unitsInTitle: RealInventory = {
  shape:
    'the units of all columns in a line above the headers, the tree on its first row, “Trunk Dia @ Attach”',
  file: csv(`
Oakfield Business Park - structural pruning walk 3/14,,,,,,,,,,,
"All diameters in inches, heights in feet",,,,,,,,,,,

Tag #,Species,DBH,Ht,Cond.,Branch,Attach Ht,Branch Dia,Trunk Dia @ Attach,Branch Tip Ht,Incl. Bark,Notes
101,Red maple,14,42,G,lower SW,9.5,5,9,34,Y,
,,,,,2,12,3.5,8.5,30,N,
,,,,,3,15,2,8,27,N,
102,Honeylocust,11,38,F,1,8,4.5,8,31,Y,near bench
,,,,,2,10.5,3,7,29,N,
104,Littleleaf linden,12,36,F,1,6.5,5.5,7.5,32,Y,
,,,,,2,9,3,6.5,26,N,`),
  expected: {
    units: 'in-ft',
    columns: {
      '': 'A tree; B species; C trunk in; D height ft; E vigor; F limb; G origin ft; H diameter in; I stem in; J tip ft; K bark; L notes|treeNotes'
    },
    trees: [
      tree(
        '101',
        42,
        null,
        { trunk: 14, vigor: 'good' },
        limb('lower SW', 5, 9, 9.5, 34, 'full'),
        limb('2', 3.5, 8.5, 12, 30, 'none'),
        limb('3', 2, 8, 15, 27, 'none')
      ),
      tree(
        '102',
        38,
        null,
        { trunk: 11, vigor: 'fair' },
        limb('1', 4.5, 8, 8, 31, 'full'),
        limb('2', 3, 7, 10.5, 29, 'none')
      ),
      tree(
        '104',
        36,
        null,
        { trunk: 12, vigor: 'fair' },
        limb('1', 5.5, 7.5, 6.5, 32, 'full'),
        limb('2', 3, 6.5, 9, 26, 'none')
      )
    ],
    told: [['D4', 'unit']]
  }
}

/** Invented: answers of volunteers to a form on their telephones. */
export const formInWholeWords: RealInventory = {
  shape: 'headers that ask in whole words: how old, how healthy, “main stem just past it”, “where they part”',
  file: workbook([
    {
      name: 'Form responses 1',
      rows: `
Tree number | Tree species | Trunk diameter at breast height (inches) | Height of tree (feet) | Height of lowest live branch (feet) | How old | How healthy | Which limb competes | Thickness of that limb (inches) | Thickness of main stem just past it (inches) | Height where they part (feet) | Height the limb reaches (feet) | Bark trapped in the fork
1 | Red oak | 12 | 39 | 7 | young | good | north | 6 | 9.5 | 9 | 33 | yes
2 | Elm | 10 | 35 | 6 | young | good | street | 5.5 | 8 | 8 | 31 | yes
3 | Linden | 9 | 31 | 6 | young | fair | east | 3 | 7 | 7 | 24 | no
4 | Maple | 13 | 40 | 7 | mature | good | south-west | 7 | 10.5 | 9.5 | 36 | no`
    }
  ]),
  expected: {
    units: 'in-ft',
    columns: {
      'Form responses 1':
        'A tree; B species; C trunk in; D height ft; E crownBase ft; F stage; G vigor; H limb; I diameter in; J stem in; K origin ft; L tip ft; M bark'
    },
    trees: [
      tree('1', 39, 7, { trunk: 12, stage: 'young', vigor: 'good' }, limb('north', 6, 9.5, 9, 33, 'full')),
      tree('2', 35, 6, { trunk: 10, stage: 'young', vigor: 'good' }, limb('street', 5.5, 8, 8, 31, 'full')),
      tree('3', 31, 6, { trunk: 9, stage: 'young', vigor: 'fair' }, limb('east', 3, 7, 7, 24, 'none')),
      tree(
        '4',
        40,
        7,
        { trunk: 13, stage: 'mature', vigor: 'good' },
        limb('south-west', 7, 10.5, 9.5, 36, 'none')
      )
    ],
    mayAsk: ['H1', 'K1']
  }
}

/** Invented: a sheet a tree, what is known of the tree in its title only. */
export const sizesInSheetTitles: RealInventory = {
  shape: 'a sheet a tree, its number, kind and sizes in one line above the limbs',
  file: workbook([
    {
      name: '7',
      rows: `
Tree 7 - Elm, 11 in DBH, 36 ft tall
Limb | Diameter in | Trunk above in | Union ft | Top ft | Notes
a | 6 | 9 | 9 | 31 | tight fork
b | 3 | 8.5 | 11 | 28 |`
    },
    {
      name: '8',
      rows: `
Tree 8 - Red oak, 13 in DBH, 40 ft tall
Limb | Diameter in | Trunk above in | Union ft | Top ft | Notes
a | 5 | 10.5 | 10 | 33 |`
    },
    {
      name: '9',
      rows: `
Tree 9 - Linden, 10 in DBH, 34 ft tall
Limb | Diameter in | Trunk above in | Union ft | Top ft | Notes
a | 5.5 | 8 | 8 | 30 |
b | 4 | 7.5 | 9 | 28 |`
    }
  ]),
  expected: {
    units: 'in-ft',
    columns: {
      '7': 'A limb; B diameter in; C stem in; D origin ft; E tip ft; F notes; ...',
      '8': '...',
      '9': '...'
    },
    trees: [
      tree('7', 36, null, { trunk: 11 }, limb('a', 6, 9, 9, 31), limb('b', 3, 8.5, 11, 28)),
      tree('8', 40, null, { trunk: 13 }, limb('a', 5, 10.5, 10, 33)),
      tree('9', 34, null, { trunk: 10 }, limb('a', 5.5, 8, 8, 30), limb('b', 4, 7.5, 9, 28))
    ],
    told: [['', 'joined']]
  }
}

/** Invented: a French gardener's table, each size with the unit that came to mind. */
export const frenchUnitsAsTheyCome: RealInventory = {
  shape:
    'français, tabulations : unités dans les cellules, „env. 7 cm“, „0,30 m“ de tronc, une remarque entre les lignes',
  file: csv(`
Arbre	Espèce	Ø tronc	Haut.	Nb	Branche	Ø branche	Ø axe	Départ	Sommet	Écorce	Remarque
1	Érable	25 cm	10 m	2	A	11 cm	19 cm	3 m	8,5 m	incluse	
					B	env. 7 cm	18 cm	3,6 m	8 m		
2	Tilleul	0,30 m	12 m	1	A	14 cm	24 cm	3,5 m	10 m	incluse	au-dessus du trottoir
revoir n° 2 en hiver											
3	Charme	19 cm	8 m	1	A	6 cm	15 cm	2,4 m	6,5 m		`),
  expected: {
    units: 'cm-m',
    columns: {
      '': 'A tree; B species; C trunk cm; D height m; E -; F limb; G diameter cm; H stem cm; I origin m; J tip m; K bark; L notes|treeNotes'
    },
    trees: [
      tree('1', 10, null, { trunk: 25 }, limb('A', 11, 19, 3, 8.5, 'full'), limb('B', 7, 18, 3.6, 8)),
      tree('2', 12, null, { trunk: 30 }, limb('A', 14, 24, 3.5, 10, 'full')),
      tree('3', 8, null, { trunk: 19 }, limb('A', 6, 15, 2.4, 6.5))
    ],
    leftOut: { '5': 'note' },
    told: [
      ['G3', 'range'],
      ['C4', 'unit']
    ],
    mayAsk: ['H1']
  }
}

/** Invented: as short as German headers get. */
export const germanLettersAndUnits: RealInventory = {
  shape: 'deutsch: H, KA, „Ø Stamm ü. Ast“, die Einheiten in der zweiten Zeile',
  file: csv(`
Baum	Art	Ø Stamm	H	KA	Ast	Ø Ast	Ø Stamm ü. Ast	H Ansatz	H Spitze	Bem.
		cm	m	m		cm	cm	m	m	
A	Linde	24	10	2,2	1	11	18	3	8,5	Druckzwiesel
A	Linde	24	10	2,2	2	6	17	3,5	7	
B	Esche	30	13	3	1	9	24	3,8	10	
C	Ahorn	21	9	2	1	12	16	2,8	8	`),
  expected: {
    units: 'cm-m',
    columns: {
      '': 'A tree; B species; C trunk cm; D height m; E crownBase m; F limb; G diameter cm; H stem cm; I origin m; J tip m; K notes|treeNotes'
    },
    trees: [
      tree('A', 10, 2.2, { trunk: 24 }, limb('1', 11, 18, 3, 8.5), limb('2', 6, 17, 3.5, 7)),
      tree('B', 13, 3, { trunk: 30 }, limb('1', 9, 24, 3.8, 10)),
      tree('C', 9, 2, { trunk: 21 }, limb('1', 12, 16, 2.8, 8))
    ],
    mayAsk: ['E1']
  }
}

import { limb, tree, type RealInventory } from '../expected'
import { workbook } from '../workbookFile'

export const titledGroups: RealInventory = {
  shape: 'two header rows: merged titles “Limb A”, “Limb B” over the names of their columns',
  file: workbook([
    {
      name: 'Survey',
      rows: `
 | | | | | Limb A | | | | Limb B | | |
Tree | Height (ft) | Crown base (ft) | Life stage | Vigor | Dia (in) | Stem (in) | From (ft) | To (ft) | Dia (in) | Stem (in) | From (ft) | To (ft)
T1 | 30 | 6 | young | good | 4.1 | 5 | 7 | 28 | 2.7 | 5.4 | 6.5 | 24
T2 | 33 | 7 | young | good | 4.4 | 5.6 | 8 | 31 | 3.1 | 6 | 7.5 | 26
T3 | 26 | 5 | young | good | 3.6 | 4.4 | 6 | 24 | | | |`,
      merges: ['F1:I1', 'J1:M1']
    }
  ]),
  expected: {
    units: 'in-ft',
    columns: {
      Survey:
        'A tree; B height ft; C crownBase ft; D stage; E vigor; F diameter in; G stem in; H origin ft; I tip ft; J diameter in; K stem in; L origin ft; M tip ft'
    },
    trees: [
      tree(
        'T1',
        30,
        6,
        { stage: 'young', vigor: 'good' },
        limb('Limb A|A', 4.1, 5, 7, 28),
        limb('Limb B|B', 2.7, 5.4, 6.5, 24)
      ),
      tree(
        'T2',
        33,
        7,
        { stage: 'young', vigor: 'good' },
        limb('Limb A|A', 4.4, 5.6, 8, 31),
        limb('Limb B|B', 3.1, 6, 7.5, 26)
      ),
      tree('T3', 26, 5, { stage: 'young', vigor: 'good' }, limb('Limb A|A', 3.6, 4.4, 6, 24))
    ]
  }
}

import { limb, tree, type RealInventory } from '../expected'
import { workbook } from '../workbookFile'

export const twoSheetsJoined: RealInventory = {
  shape: 'a sheet of trees and a sheet of limbs, joined by the tree’s id',
  file: workbook([
    {
      name: 'Trees',
      rows: `
Tree ID | Species | DBH (in) | Height (ft) | Crown base (ft) | Life stage | Vigor
T1 | Red maple | 7.2 | 30 | 6 | young | good
T2 | Hackberry | 6.4 | 26 | 5 | young | good
T3 | Ginkgo | 5 | 22 | 4 | young | good`
    },
    {
      name: 'Limbs',
      rows: `
Tree ID | Limb | Limb dia (in) | Stem dia (in) | Origin (ft) | Tip (ft) | Included bark
T1 | A | 4.1 | 5 | 7 | 28 | full
T1 | B | 2.7 | 5.4 | 6.5 | 24 | none
T2 | A | 3.6 | 4.4 | 6 | 24 | none
T9 | A | 3.1 | 4.4 | 6 | 24 | none`
    }
  ]),
  expected: {
    units: 'in-ft',
    columns: {
      Trees: 'A tree; B species; C trunk in; D height ft; E crownBase ft; F stage; G vigor',
      Limbs: 'A tree; B limb; C diameter in; D stem in; E origin ft; F tip ft; G bark'
    },
    // T9 stands among the limbs only: a tree of its own, without a height.
    trees: [
      tree(
        'T1',
        30,
        6,
        { stage: 'young', vigor: 'good', trunk: 7.2 },
        limb('A', 4.1, 5, 7, 28, 'full'),
        limb('B', 2.7, 5.4, 6.5, 24, 'none')
      ),
      tree('T2', 26, 5, { stage: 'young', vigor: 'good', trunk: 6.4 }, limb('A', 3.6, 4.4, 6, 24, 'none')),
      tree('T3', 22, 4, { stage: 'young', vigor: 'good', trunk: 5 }),
      tree('T9', null, null, {}, limb('A', 3.1, 4.4, 6, 24, 'none'))
    ],
    notJudged: ['T9'],
    told: [
      ['', 'joined'],
      ['Limbs!A5', 'orphan']
    ]
  }
}

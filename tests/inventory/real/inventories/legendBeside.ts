import { limb, tree, type RealInventory } from '../expected'
import { workbook } from '../workbookFile'

export const legendBeside: RealInventory = {
  shape: 'a legend in the columns to the right, with words that look like headers',
  file: workbook([
    {
      name: 'Survey',
      rows: `
Tree | Height (ft) | Crown base (ft) | Age class | Condition | Limb | Limb dia (in) | Stem dia (in) | Origin (ft) | Tip (ft) | | Legend |
T1 | 30 | 6 | Y | G | A | 4.1 | 5 | 7 | 28 | | Age class | Y young, SM semi-mature, M mature
T1 | 30 | 6 | Y | G | B | 2.7 | 5.4 | 6.5 | 24 | | Condition | G good, F fair, P poor
T2 | 38 | 9 | SM | F | A | 5.1 | 6.8 | 12 | 35 | | Limb | A is the largest
T2 | 38 | 9 | SM | F | B | 3.3 | 7.4 | 10 | 30 | | |`
    }
  ]),
  expected: {
    units: 'in-ft',
    columns: {
      Survey:
        'A tree; B height ft; C crownBase ft; D stage; E vigor; F limb; G diameter in; H stem in; I origin ft; J tip ft'
    },
    trees: [
      tree(
        'T1',
        30,
        6,
        { stage: 'young', vigor: 'good' },
        limb('A', 4.1, 5, 7, 28),
        limb('B', 2.7, 5.4, 6.5, 24)
      ),
      tree(
        'T2',
        38,
        9,
        { stage: 'medium', vigor: 'fair' },
        limb('A', 5.1, 6.8, 12, 35),
        limb('B', 3.3, 7.4, 10, 30)
      )
    ],
    leftOut: { '2': 'block' }
  }
}

import { limb, tree, type RealInventory } from '../expected'
import { workbook } from '../workbookFile'

export const tapeReadings: RealInventory = {
  shape: 'lengths as a tape is read, units in the cells: 3½", 4\'-6", 12 in., Ø 4.5, feet and inches',
  file: workbook([
    {
      name: 'Tape',
      rows: `
Tree | Height | Crown base | Life stage | Vigor | Limb | Limb dia. (in) | Stem dia. (in) | Origin (ft) | Tip (ft)
T1 | 30' | 6'-6" | young | good | A | 4½" | 5 1/2" | 7'-6" | 28'
T1 | 30' | 6'-6" | young | good | B | 2¾ | Ø 5.5 | 7' 0" | 24 ft
T2 | 33 ft. | 7' | young | good | A | 4 in. | 5'' | 8’-3” | 31’
T2 | 33 ft. | 7' | young | good | B | see note | 5.6 in dia | 7.5 | 26`
    }
  ]),
  expected: {
    units: 'in-ft',
    columns: {
      Tape: 'A tree; B height; C crownBase; D stage; E vigor; F limb; G diameter in; H stem in; I origin ft; J tip ft'
    },
    trees: [
      tree(
        'T1',
        30,
        6.5,
        { stage: 'young', vigor: 'good' },
        limb('A', 4.5, 5.5, 7.5, 28),
        limb('B', 2.75, 5.5, 7, 24)
      ),
      tree(
        'T2',
        33,
        7,
        { stage: 'young', vigor: 'good' },
        limb('A', 4, 5, 8.25, 31),
        limb('B', null, 5.6, 7.5, 26)
      )
    ],
    told: [['G5', 'number']]
  }
}

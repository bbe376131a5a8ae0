import { csv } from '../csvFile'
import { limb, tree, type RealInventory } from '../expected'
import { threeHundredText } from './manyRows'

export const threeHundredColumns: RealInventory = {
  shape: 'three hundred columns, most of them numbered readings of an instrument',
  file: csv(threeHundredText),
  expected: {
    units: 'in-ft',
    columns: {
      '': 'C tree; H species; M trunk in; R height ft; W crownBase ft; AB stage; AG vigor; AL limb; AQ diameter in; AS zone; AV stem in; BA origin ft; BF tip ft'
    },
    trees: [
      tree(
        'T1',
        30,
        6,
        { stage: 'young', vigor: 'good', trunk: 7.2 },
        limb('A', 4.1, 5, 7, 28),
        limb('B', 2.7, 5.4, 6.5, 24)
      ),
      tree(
        'T2',
        33,
        7,
        { stage: 'young', vigor: 'good', trunk: 8.4 },
        limb('A', 4.4, 5.6, 8, 31),
        limb('B', 3.1, 6, 7.5, 26)
      )
    ]
  }
}

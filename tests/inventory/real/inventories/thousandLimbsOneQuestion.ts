import { csv } from '../csvFile'
import { limb, tree, type RealInventory } from '../expected'
import { thousandLimbsText } from './manyRows'

export const thousandLimbsOneQuestion: RealInventory = {
  shape: '1,000 limbs whose stem column, if it is one, has a name that says nothing',
  file: csv(thousandLimbsText),
  expected: {
    units: 'in-ft',
    columns: {
      '': 'A tree; B height ft; C crownBase ft; D stage; E vigor; F limb; G diameter in; H stem|-; I origin ft; J tip ft'
    },
    trees: Array.from({ length: 500 }, (_none, at) =>
      tree(
        'T' + String(at + 1),
        30,
        6,
        { stage: 'young', vigor: 'good' },
        limb('A', 4.1, null, 7, 28),
        limb('B', 2.7, null, 6.5, 24)
      )
    ),
    asked: ['H1'],
    notJudged: ['T1', 'T500'],
    exit: 3
  }
}

import { csv } from '../csvFile'
import { limb, tree, type RealInventory } from '../expected'
import { thousandFaultsText } from './manyRows'

export const thousandLimbsSeveralFaults: RealInventory = {
  shape: '1,000 limbs with four faults, each of them in hundreds of rows',
  file: csv(thousandFaultsText),
  expected: {
    units: 'in-ft',
    columns: {
      '': 'A tree; B height ft; C crownBase ft; D access; E vigor; F limb; G diameter in; H stem in; I origin ft; J tip ft; K bark'
    },
    trees: Array.from({ length: 500 }, (_none, at) =>
      tree(
        'T' + String(at + 1),
        30,
        6,
        {},
        limb('A', at % 2 === 0 ? 4.1 : null, 5, 7, 28),
        limb('B', 2.7, 5.4, 6.5, 24)
      )
    ),
    told: [
      ['G4', 'missing'],
      ['D2', 'choice'],
      ['E2', 'choice'],
      ['K2', 'choice'],
      ['', 'assumed']
    ]
  }
}

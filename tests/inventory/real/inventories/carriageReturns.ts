import { csv } from '../csvFile'
import { limb, tree, type RealInventory } from '../expected'

export const carriageReturns: RealInventory = {
  shape: 'lines ended by carriage returns alone, UTF-16 big-endian, tabs',
  file: csv(
    `
Tree\tHeight (ft)\tCrown base (ft)\tLife stage\tVigor\tLimb\tLimb dia (in)\tStem dia (in)\tOrigin (ft)\tTip (ft)
T1\t30\t6\tyoung\tgood\tA\t4.1\t5\t7\t28
T1\t30\t6\tyoung\tgood\tB\t2.7\t5.4\t6.5\t24
T2\t33\t7\tyoung\tgood\tA\t4.4\t5.6\t8\t31`,
    { encoding: 'utf-16be', newline: '\r' }
  ),
  expected: {
    units: 'in-ft',
    columns: {
      '': 'A tree; B height ft; C crownBase ft; D stage; E vigor; F limb; G diameter in; H stem in; I origin ft; J tip ft'
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
      tree('T2', 33, 7, { stage: 'young', vigor: 'good' }, limb('A', 4.4, 5.6, 8, 31))
    ]
  }
}

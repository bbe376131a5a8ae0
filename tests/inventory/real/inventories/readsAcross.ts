import { csv } from '../csvFile'
import { limb, tree, type RealInventory } from '../expected'

export const readsAcross: RealInventory = {
  shape: 'headers in an unusual order, the limb before the tree, the id last',
  file: csv(`
Tip ht (ft),Origin ht (ft),Stem dia at union (in),Branch dia (in),Branch,Vigour,Age class,Ht to live crown (ft),Overall ht (ft),Common name,Tree tag no.
28,7,5,4.1,A,good,young,6,30,Red maple,501
24,6.5,5.4,2.7,B,good,young,6,30,Red maple,501
31,8,5.6,4.4,A,good,young,7,33,Pin oak,502
26,7.5,6,3.1,B,good,young,7,33,Pin oak,502`),
  expected: {
    units: 'in-ft',
    columns: {
      '': 'A tip ft; B origin ft; C stem in; D diameter in; E limb; F vigor; G stage; H crownBase ft; I height ft; J species; K tree'
    },
    trees: [
      tree(
        '501',
        30,
        6,
        { stage: 'young', vigor: 'good' },
        limb('A', 4.1, 5, 7, 28),
        limb('B', 2.7, 5.4, 6.5, 24)
      ),
      tree(
        '502',
        33,
        7,
        { stage: 'young', vigor: 'good' },
        limb('A', 4.4, 5.6, 8, 31),
        limb('B', 3.1, 6, 7.5, 26)
      )
    ]
  }
}

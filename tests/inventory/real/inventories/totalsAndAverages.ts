import { csv } from '../csvFile'
import { limb, tree, type RealInventory } from '../expected'

export const totalsAndAverages: RealInventory = {
  shape: 'subtotals, an average and a total among the rows, a tax line and a line to sign below',
  file: csv(`
Tree,Species,Height (ft),Crown base (ft),Life stage,Vigor,Limb,Limb dia (in),Stem dia (in),Origin (ft),Tip (ft)
T1,Red maple,30,6,young,good,A,4.1,5,7,28
T1,Red maple,30,6,young,good,B,2.7,5.4,6.5,24
Subtotal,,,,,,2,,,,
T2,Basswood,31,7,young,good,A,4.5,5.4,8,29
T2,Basswood,31,7,young,good,B,2.9,5.8,7.4,25
Subtotal,,,,,,2,,,,
Average,,30.5,6.5,,,,3.55,5.4,7.2,26.5
TOTAL,,,,,,4,,,,
Tax 8 %,,,,,,,,,,
Accepted: ___________,,,,,,,,,,`),
  expected: {
    units: 'in-ft',
    columns: {
      '': 'A tree; B species; C height ft; D crownBase ft; E stage; F vigor; G limb; H diameter in; I stem in; J origin ft; K tip ft'
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
        31,
        7,
        { stage: 'young', vigor: 'good' },
        limb('A', 4.5, 5.4, 8, 29),
        limb('B', 2.9, 5.8, 7.4, 25)
      )
    ],
    leftOut: { '4': 'total', '7': 'total', '8': 'total', '9': 'total', '11': 'note' }
  }
}

import { csv } from '../csvFile'
import { limb, tree, type RealInventory } from '../expected'

export const streetDecoys: RealInventory = {
  shape: 'a street survey full of what is near the trees: kerb, sign, wires, pavement, distances',
  file: csv(`
Tree no.,Dist. to kerb (ft),Kerb height (in),Pavement width (ft),Sign height (ft),Wire height (ft),Species,DBH (in),Tree height (ft),Crown base (ft),Life stage,Vigor,Pavement condition,Limb,Limb dia (in),Distance to roof (ft),Stem dia above union (in),Origin (ft),Tip (ft),Nest height (ft)
1,4,6,5,7,24,Red maple,7.2,30,6,young,good,poor,A,4.1,12,5,7,28,
1,4,6,5,7,24,Red maple,7.2,30,6,young,good,poor,B,2.7,15,5.4,6.5,24,18
2,3,6,5,7,26,Pin oak,8.4,33,7,young,good,fair,A,4.4,9,5.6,8,31,
2,3,6,5,7,26,Pin oak,8.4,33,7,young,good,fair,B,3.1,11,6,7.5,26,`),
  expected: {
    units: 'in-ft',
    columns: {
      '': 'A tree; G species; H trunk in; I height ft; J crownBase ft; K stage; L vigor; N limb; O diameter in; Q stem in; R origin ft; S tip ft'
    },
    trees: [
      tree(
        '1',
        30,
        6,
        { stage: 'young', vigor: 'good', trunk: 7.2 },
        limb('A', 4.1, 5, 7, 28),
        limb('B', 2.7, 5.4, 6.5, 24)
      ),
      tree(
        '2',
        33,
        7,
        { stage: 'young', vigor: 'good', trunk: 8.4 },
        limb('A', 4.4, 5.6, 8, 31),
        limb('B', 3.1, 6, 7.5, 26)
      )
    ]
  }
}

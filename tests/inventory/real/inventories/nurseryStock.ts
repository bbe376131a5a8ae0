import { csv } from '../csvFile'
import { tree, type RealInventory } from '../expected'

export const nurseryStock: RealInventory = {
  shape:
    'a nursery’s stock list: caliper, its height, pot, price and count, no limbs and no trunk at breast height',
  file: csv(`
Lot no.,Botanical name,Caliper (in),Caliper ht. (in),Height (ft),Lowest branch (ft),Stage,Vigor,Pot size (gal),Qty,Price
L-01,Acer rubrum,2.5,6,14,4,planting,good,45,12,210.00
L-02,Quercus palustris,3,6,15,4.5,planting,good,65,8,260.00
L-03,Ginkgo biloba,2,6,11,3.5,planting,good,30,20,240.00`),
  expected: {
    units: 'in-ft',
    columns: {
      '': 'A tree; B species; C caliper in; D caliperHeight in; E height ft; F crownBase ft; G stage; H vigor'
    },
    trees: [
      tree('L-01', 14, 4, {
        stage: 'planting',
        vigor: 'good',
        more: { 'Caliper (in)': 2.5, 'Caliper height (in)': 6 }
      }),
      tree('L-02', 15, 4.5, {
        stage: 'planting',
        vigor: 'good',
        more: { 'Caliper (in)': 3, 'Caliper height (in)': 6 }
      }),
      tree('L-03', 11, 3.5, {
        stage: 'planting',
        vigor: 'good',
        more: { 'Caliper (in)': 2, 'Caliper height (in)': 6 }
      })
    ],
    mayAsk: ['A1', 'F1'],
    told: [['', 'no limbs']]
  }
}

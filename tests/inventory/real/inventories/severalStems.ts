import { csv } from '../csvFile'
import { together, tree, type RealInventory } from '../expected'

export const severalStems: RealInventory = {
  shape: 'a list of trees with several stems in one cell, and how many',
  file: csv(`
Tree ID,Species,Stems,DBH (in),Height (ft),Crown base (ft),Life stage,Vigor
1,River birch,2,10/9,34,7,medium,good
2,Serviceberry,3,6/5/4,22,3,medium,good
3,Pin oak,1,11.5,38,9,medium,good`),
  expected: {
    units: 'in-ft',
    columns: {
      '': 'A tree; B species; C stems|-; D trunk in; E height ft; F crownBase ft; G stage; H vigor'
    },
    // Two stems, not two readings: √(10² + 9²) = 13.45, not 9.5; √(6² + 5² + 4²) = 8.77.
    trees: [
      tree('1', 34, 7, { stage: 'medium', vigor: 'good', trunk: together(10, 9) }),
      tree('2', 22, 3, { stage: 'medium', vigor: 'good', trunk: together(6, 5, 4) }),
      tree('3', 38, 9, { stage: 'medium', vigor: 'good', trunk: 11.5 })
    ],
    told: [
      ['D2', 'stems'],
      ['D3', 'stems']
    ]
  }
}

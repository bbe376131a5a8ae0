import { tree, type RealInventory } from '../expected'
import { workbook } from '../workbookFile'

export const treesWithHiddenColumns: RealInventory = {
  shape: '.xlsx table of trees with hidden columns, one of which holds the heights',
  file: workbook(
    [
      {
        name: 'Park',
        rows: `
Tag # | Common name | Trunk dia. (in) | Overall ht (ft) | Lowest live branch (ft) | Maturity | Health | Lat | Lon
201 | Red maple | 9 | 32 | 7 | young | good | 41.2031 | -83.5110
202 | Pin oak | 14 | 41 | 9 | semi-mature | fair | 41.2034 | -83.5114
203 | Hackberry | 11 | 36 | 8 | semi-mature | good | 41.2037 | -83.5118`,
        hiddenColumns: ['D', 'H', 'I'],
        table: { range: 'A1:I4' }
      }
    ],
    'inline'
  ),
  expected: {
    units: 'in-ft',
    columns: { Park: 'A tree; B species; C trunk in; D height ft; E crownBase ft; F stage; G vigor' },
    trees: [
      tree('201', 32, 7, { stage: 'young', vigor: 'good', trunk: 9 }),
      tree('202', 41, 9, { stage: 'medium', vigor: 'fair', trunk: 14 }),
      tree('203', 36, 8, { stage: 'medium', vigor: 'good', trunk: 11 })
    ],
    mayAsk: ['Park!F1'],
    told: [['', 'no limbs']]
  }
}

import { csv } from '../csvFile'
import { limb, tree, type RealInventory } from '../expected'

export const camelCaseMetric: RealInventory = {
  shape: 'camelCase headers with the unit as the last word, millimeters and meters',
  file: csv(`
treeId,speciesName,dbhMm,treeHeightM,crownBaseM,ageClass,vigorClass,limbNo,limbDiaMm,stemDiaAboveMm,originHeightM,tipHeightM,includedBark
7,Ginkgo,172,8.9,1.7,young,good,1,96,119,2,8.4,none
7,Ginkgo,172,8.9,1.7,young,good,2,71,126,1.9,7.2,none
8,Pin oak,205,10.3,2.1,young,good,1,112,131,2.5,9.7,full
8,Pin oak,205,10.3,2.1,young,good,2,64,139,2.3,8.2,none`),
  expected: {
    units: 'cm-m',
    columns: {
      '': 'A tree; B species; C trunk mm; D height m; E crownBase m; F stage; G vigor; H limb; I diameter mm; J stem mm; K origin m; L tip m; M bark'
    },
    trees: [
      tree(
        '7',
        8.9,
        1.7,
        { stage: 'young', vigor: 'good', trunk: 17.2 },
        limb('1', 9.6, 11.9, 2, 8.4, 'none'),
        limb('2', 7.1, 12.6, 1.9, 7.2, 'none')
      ),
      tree(
        '8',
        10.3,
        2.1,
        { stage: 'young', vigor: 'good', trunk: 20.5 },
        limb('1', 11.2, 13.1, 2.5, 9.7, 'full'),
        limb('2', 6.4, 13.9, 2.3, 8.2, 'none')
      )
    ]
  }
}

import { csv } from '../csvFile'
import { tree, type RealInventory } from '../expected'

export const consultantAppendix: RealInventory = {
  shape:
    'a British consultant’s appendix: tree reference, stem diameter at 1.5 m, four crown radii, no limbs',
  file: csv(`
Appendix B: schedule of trees (invented)

Tree ref.,Species,Ht (m),Stem dia. at 1.5 m (mm),Crown N (m),Crown E (m),Crown S (m),Crown W (m),HLC (m),Age class,Physiological condition,Comments
T1,Field maple,11,320,3,3.5,3,2.5,2.5,SM,Good,twin union at 3 m
T2,Hornbeam,13,380,4,4,3.5,4,3,SM,Fair,
T3,Wild cherry,9,240,2.5,2,2.5,3,2,Y,Good,close to path`),
  expected: {
    units: 'cm-m',
    columns: {
      '': 'A tree; B species; C height m; D trunk mm; I crownBase m; J stage; K vigor; L treeNotes|notes|-'
    },
    trees: [
      tree('T1', 11, 2.5, { stage: 'medium', vigor: 'good', trunk: 32 }),
      tree('T2', 13, 3, { stage: 'medium', vigor: 'fair', trunk: 38 }),
      tree('T3', 9, 2, { stage: 'young', vigor: 'good', trunk: 24 })
    ],
    mayAsk: ['D3', 'I3', 'J3', 'K3', 'E3'],
    told: [['', 'no limbs']]
  }
}

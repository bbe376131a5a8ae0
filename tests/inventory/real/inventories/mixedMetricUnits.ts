import { csv } from '../csvFile'
import { limb, tree, type RealInventory } from '../expected'

export const mixedMetricUnits: RealInventory = {
  shape: 'four units in one table, each said in its header: trunk cm, limb mm, tree m, limb heights ft',
  file: csv(`
Tree,Trunk dia [cm],Tree ht/m,Crown base/m,Life stage,Vigor,Limb,"Limb dia, mm",Stem dia above union mm,Origin in ft,Tip in ft
T1,18.3,9.144,1.8288,young,good,A,104,127,7,28
T1,18.3,9.144,1.8288,young,good,B,69,138,6.5,24
T2,21.4,10.0584,2.1336,young,good,A,115,142,8,31`),
  expected: {
    units: 'in-ft',
    columns: {
      '': 'A tree; B trunk cm; C height m; D crownBase m; E stage; F vigor; G limb; H diameter mm; I stem mm; J origin ft; K tip ft'
    },
    // 9.144 m is 30 ft, 10.0584 m is 33 ft.
    trees: [
      tree(
        'T1',
        30,
        6,
        { stage: 'young', vigor: 'good', trunk: 18.3 / 2.54 },
        limb('A', 104 / 25.4, 127 / 25.4, 7, 28),
        limb('B', 69 / 25.4, 138 / 25.4, 6.5, 24)
      ),
      tree(
        'T2',
        33,
        7,
        { stage: 'young', vigor: 'good', trunk: 21.4 / 2.54 },
        limb('A', 115 / 25.4, 142 / 25.4, 8, 31)
      )
    ],
    mayAsk: ['B1', 'H1']
  }
}

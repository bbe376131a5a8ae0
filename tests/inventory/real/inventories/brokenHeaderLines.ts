import { csv } from '../csvFile'
import { limb, tree, type RealInventory } from '../expected'

export const brokenHeaderLines: RealInventory = {
  shape: 'headers broken over lines inside quotes, notes with commas and line breaks',
  file: csv(
    `
"Tree
no.",Species,"Tree
height
(ft)","Crown
base
(ft)","Life
stage",Vigor,"Limb
no.","Limb
dia.
(in)","Stem dia.
just above
union
(in)","Origin
ht (ft)","Tip ht
(ft)",Notes
1,Red maple,29,6,young,good,1,4,4.9,6.5,27,"long, heavy end
over the lawn (invented)"
1,Red maple,29,6,young,good,2,2.8,5.3,6,23,"seam, no bark
seen"
2,Basswood,32,7,young,good,1,4.6,5.5,8,30,
2,Basswood,32,7,young,good,2,3,5.9,7.2,25,"""second"" leader"`,
    { newline: '\r\n' }
  ),
  expected: {
    units: 'in-ft',
    columns: {
      '': 'A tree; B species; C height ft; D crownBase ft; E stage; F vigor; G limb; H diameter in; I stem in; J origin ft; K tip ft; L notes|treeNotes|-'
    },
    trees: [
      tree(
        '1',
        29,
        6,
        { stage: 'young', vigor: 'good' },
        limb('1', 4, 4.9, 6.5, 27),
        limb('2', 2.8, 5.3, 6, 23)
      ),
      tree(
        '2',
        32,
        7,
        { stage: 'young', vigor: 'good' },
        limb('1', 4.6, 5.5, 8, 30),
        limb('2', 3, 5.9, 7.2, 25)
      )
    ]
  }
}

import { csv } from '../csvFile'
import { limb, tree, type RealInventory } from '../expected'

export const suffixedGroups: RealInventory = {
  shape: 'numbered groups with the number at the end: limb_dia_1, stem_dia_1 …, all diameters first',
  file: csv(`
tree_id,height_m,crown_base_m,life_stage,vigor,limb_dia_cm_1,limb_dia_cm_2,stem_dia_cm_1,stem_dia_cm_2,origin_m_1,origin_m_2,tip_m_1,tip_m_2
1,9.1,1.7,young,good,10.1,6.9,12.4,13.2,2,1.9,8.6,7.5
2,10,2,young,good,11.2,7.7,13.1,13.8,2.4,2.2,9.5,8.4
3,7.8,1.5,young,good,8,,10.2,,1.8,,7.3,`),
  expected: {
    units: 'cm-m',
    columns: {
      '': 'A tree; B height m; C crownBase m; D stage; E vigor; F diameter cm; G diameter cm; H stem cm; I stem cm; J origin m; K origin m; L tip m; M tip m'
    },
    trees: [
      tree(
        '1',
        9.1,
        1.7,
        { stage: 'young', vigor: 'good' },
        limb('Limb 1|1', 10.1, 12.4, 2, 8.6),
        limb('Limb 2|2', 6.9, 13.2, 1.9, 7.5)
      ),
      tree(
        '2',
        10,
        2,
        { stage: 'young', vigor: 'good' },
        limb('Limb 1|1', 11.2, 13.1, 2.4, 9.5),
        limb('Limb 2|2', 7.7, 13.8, 2.2, 8.4)
      ),
      tree('3', 7.8, 1.5, { stage: 'young', vigor: 'good' }, limb('Limb 1|1', 8, 10.2, 1.8, 7.3))
    ]
  }
}

import { csv } from '../csvFile'
import { limb, tree, type RealInventory } from '../expected'

export const studentThesis: RealInventory = {
  shape: 'a student’s data: short names with units, plots and treatments beside, NA for missing',
  file: csv(`
plot,treatment,tree_no,h_tot_m,h_crown_base_m,dbh_mm,branch_no,d_branch_mm,d_stem_above_mm,h_attach_m,h_tip_m,angle_deg,incl_bark
1,control,1,9.1,1.7,181,1,101,124,2,8.6,25,yes
1,control,1,9.1,1.7,181,2,69,132,1.9,7.5,40,no
1,pruned,2,10,2,204,1,112,131,2.4,9.5,22,no
1,pruned,2,10,2,204,2,77,138,2.2,8.4,NA,no`),
  expected: {
    units: 'cm-m',
    columns: {
      '': 'A site|-; C tree; D height m; E crownBase m; F trunk mm; G limb; H diameter mm; I stem mm; J origin m; K tip m; L angle; M bark'
    },
    // Neither life stage nor vigor: said once, and as what the trees were planned.
    trees: [
      tree(
        '1',
        9.1,
        1.7,
        { trunk: 18.1 },
        limb('1', 10.1, 12.4, 2, 8.6, 'full', { Angle: 25 }),
        limb('2', 6.9, 13.2, 1.9, 7.5, 'none', { Angle: 40 })
      ),
      tree(
        '2',
        10,
        2,
        { trunk: 20.4 },
        limb('1', 11.2, 13.1, 2.4, 9.5, 'none', { Angle: 22 }),
        limb('2', 7.7, 13.8, 2.2, 8.4, 'none')
      )
    ],
    mayAsk: ['L1'],
    told: [['', 'assumed']]
  }
}

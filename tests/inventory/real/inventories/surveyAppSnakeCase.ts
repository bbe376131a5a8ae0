import { csv } from '../csvFile'
import { limb, tree, type RealInventory } from '../expected'

export const surveyAppSnakeCase: RealInventory = {
  shape: 'export of a survey app: snake_case, a row number of its own, coordinates, inspector, photo',
  file: csv(`
objectid,tree_id,species_common,dbh_in,tree_ht_ft,crown_base_ft,life_stage,vigor,limb_id,limb_dia_in,stem_dia_above_in,union_ht_ft,tip_ht_ft,incl_bark,gps_lat,gps_lon,inspector,photo_ref,created_at
101,T-01,Hackberry,6.8,28,5,young,good,A,3.9,4.7,6,26,partial,41.20311,-83.51102,A. Person,IMG_1.jpg,2026-05-04
102,T-01,Hackberry,6.8,28,5,young,good,B,2.9,5.1,5.5,23,none,41.20311,-83.51102,A. Person,IMG_2.jpg,2026-05-04
103,T-02,Red maple,8.4,33,7,young,good,A,4.4,5.6,8,31,none,41.20355,-83.51170,B. Person,IMG_3.jpg,2026-05-05
104,T-02,Red maple,8.4,33,7,young,good,B,3.1,6,7.5,26,none,41.20355,-83.51170,B. Person,IMG_4.jpg,2026-05-05`),
  expected: {
    units: 'in-ft',
    columns: {
      '': 'B tree; C species; D trunk in; E height ft; F crownBase ft; G stage; H vigor; I limb; J diameter in; K stem in; L origin ft; M tip ft; N bark'
    },
    trees: [
      tree(
        'T-01',
        28,
        5,
        { stage: 'young', vigor: 'good', trunk: 6.8 },
        limb('A', 3.9, 4.7, 6, 26, 'partial'),
        limb('B', 2.9, 5.1, 5.5, 23, 'none')
      ),
      tree(
        'T-02',
        33,
        7,
        { stage: 'young', vigor: 'good', trunk: 8.4 },
        limb('A', 4.4, 5.6, 8, 31, 'none'),
        limb('B', 3.1, 6, 7.5, 26, 'none')
      )
    ]
  }
}

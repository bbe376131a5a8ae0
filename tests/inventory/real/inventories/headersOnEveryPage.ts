import { csv } from '../csvFile'
import { limb, tree, type RealInventory } from '../expected'

export const headersOnEveryPage: RealInventory = {
  shape: 'the header row repeated on every printed page, with a blank row before it',
  file: csv(`
SITE_ID,SPECIES,HT_FT,CROWN_BASE_FT,AGE_CLASS,VIGOR,LIMB,LIMB_DIA_IN,STEM_DIA_IN,ORIGIN_FT,TIP_FT
S1,Red maple,30,6,young,good,A,4.1,5,7,28
S1,Red maple,30,6,young,good,B,2.7,5.4,6.5,24

SITE_ID,SPECIES,HT_FT,CROWN_BASE_FT,AGE_CLASS,VIGOR,LIMB,LIMB_DIA_IN,STEM_DIA_IN,ORIGIN_FT,TIP_FT
S2,Hackberry,27,5,young,good,A,3.7,4.6,6,25
S2,Hackberry,27,5,young,good,B,2.8,5,5.6,22`),
  expected: {
    units: 'in-ft',
    columns: {
      '': 'A tree; B species; C height ft; D crownBase ft; E stage; F vigor; G limb; H diameter in; I stem in; J origin ft; K tip ft'
    },
    trees: [
      tree(
        'S1',
        30,
        6,
        { stage: 'young', vigor: 'good' },
        limb('A', 4.1, 5, 7, 28),
        limb('B', 2.7, 5.4, 6.5, 24)
      ),
      tree(
        'S2',
        27,
        5,
        { stage: 'young', vigor: 'good' },
        limb('A', 3.7, 4.6, 6, 25),
        limb('B', 2.8, 5, 5.6, 22)
      )
    ],
    mayAsk: ['A1'],
    leftOut: { '5': 'header' }
  }
}

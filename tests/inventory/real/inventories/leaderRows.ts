import { csv } from '../csvFile'
import { limb, tree, type RealInventory } from '../expected'

export const leaderRows: RealInventory = {
  shape: 'the leader as a row of its own among the limbs, with a role, without a stem',
  file: csv(`
Tree,Height (ft),Crown base (ft),Life stage,Vigor,Part,Role,Dia. at base (in),Stem above (in),Starts (ft),Reaches (ft)
T1,30,6,young,good,L,central leader,5,,7,30
T1,30,6,young,good,A,scaffold,4.1,5,7,28
T1,30,6,young,good,B,scaffold,2.7,5.4,6.5,24
T2,33,7,young,good,L,central leader,5.6,,8,33
T2,33,7,young,good,A,scaffold,4.4,5.6,8,31
T2,33,7,young,good,B,temporary,1.4,6,5,12`),
  expected: {
    units: 'in-ft',
    columns: {
      '': 'A tree; B height ft; C crownBase ft; D stage; E vigor; F limb; G role; H diameter in; I stem in; J origin ft; K tip ft'
    },
    trees: [
      tree(
        'T1',
        30,
        6,
        { stage: 'young', vigor: 'good' },
        limb('L', 5, null, 7, 30, null, { Role: 'leader' }),
        limb('A', 4.1, 5, 7, 28),
        limb('B', 2.7, 5.4, 6.5, 24)
      ),
      tree(
        'T2',
        33,
        7,
        { stage: 'young', vigor: 'good' },
        limb('L', 5.6, null, 8, 33, null, { Role: 'leader' }),
        limb('A', 4.4, 5.6, 8, 31),
        limb('B', 1.4, 6, 5, 12, null, { Role: 'temporary' })
      )
    ],
    mayAsk: ['F1', 'H1']
  }
}

import { csv } from '../csvFile'
import { limb, tree, type RealInventory } from '../expected'

export const notesBelow: RealInventory = {
  shape: 'notes, a legend and who surveyed below the rows, all in the first column',
  file: csv(`
Tree,Height (ft),Crown base (ft),Life stage,Vigor,Limb,Limb dia (in),Stem dia (in),Origin (ft),Tip (ft)
T1,28,5,young,good,A,3.9,4.8,6,26
T1,28,5,young,good,B,2.7,5.2,5.5,22
T2,33,7,young,good,A,4.7,5.6,8,31

Notes:
Diameters by tape to the nearest tenth of an inch. Heights by clinometer.
Vigor: good / fair / poor as judged on the day.
Surveyed by A. Person and B. Person (invented)`),
  expected: {
    units: 'in-ft',
    columns: {
      '': 'A tree; B height ft; C crownBase ft; D stage; E vigor; F limb; G diameter in; H stem in; I origin ft; J tip ft'
    },
    trees: [
      tree(
        'T1',
        28,
        5,
        { stage: 'young', vigor: 'good' },
        limb('A', 3.9, 4.8, 6, 26),
        limb('B', 2.7, 5.2, 5.5, 22)
      ),
      tree('T2', 33, 7, { stage: 'young', vigor: 'good' }, limb('A', 4.7, 5.6, 8, 31))
    ],
    leftOut: { '6': 'note', '7': 'note', '8': 'note', '9': 'note' }
  }
}

import { csv } from '../csvFile'
import { limb, tree, type RealInventory } from '../expected'

export const numberedGroups: RealInventory = {
  shape: 'one row per tree, limbs in numbered column groups: Limb 1 …, Limb 2 …, Limb 3 …',
  file: csv(`
Tree,Species,Height (ft),Crown base (ft),Life stage,Vigor,Limb 1 dia (in),Limb 1 stem (in),Limb 1 origin (ft),Limb 1 tip (ft),Limb 2 dia (in),Limb 2 stem (in),Limb 2 origin (ft),Limb 2 tip (ft),Limb 3 dia (in),Limb 3 stem (in),Limb 3 origin (ft),Limb 3 tip (ft)
T1,Red maple,30,6,young,good,4.1,5,7,28,2.7,5.4,6.5,24,3.2,4.6,9,27
T2,Hackberry,26,5,young,good,3.6,4.4,6,24,2.5,4.8,5.6,21,,,,
T3,Ginkgo,22,4,young,good,2.6,3.3,5,20,,,,,,,,`),
  expected: {
    units: 'in-ft',
    columns: {
      '': 'A tree; B species; C height ft; D crownBase ft; E stage; F vigor; G diameter in; H stem in; I origin ft; J tip ft; K diameter in; L stem in; M origin ft; N tip ft; O diameter in; P stem in; Q origin ft; R tip ft'
    },
    trees: [
      tree(
        'T1',
        30,
        6,
        { stage: 'young', vigor: 'good' },
        limb('Limb 1|1', 4.1, 5, 7, 28),
        limb('Limb 2|2', 2.7, 5.4, 6.5, 24),
        limb('Limb 3|3', 3.2, 4.6, 9, 27)
      ),
      tree(
        'T2',
        26,
        5,
        { stage: 'young', vigor: 'good' },
        limb('Limb 1|1', 3.6, 4.4, 6, 24),
        limb('Limb 2|2', 2.5, 4.8, 5.6, 21)
      ),
      tree('T3', 22, 4, { stage: 'young', vigor: 'good' }, limb('Limb 1|1', 2.6, 3.3, 5, 20))
    ]
  }
}

import { csv } from '../csvFile'
import { limb, tree, type RealInventory } from '../expected'

export const thousandsInMillimeters: RealInventory = {
  shape: 'millimeters throughout, thousands by point or by space, decimals by comma',
  file: csv(`
Baum;Höhe (mm);Kronenansatz (mm);Altersstufe;Vitalität;Ast;Ast-Ø (mm);Stamm-Ø über Gabel (mm);Ansatz (mm);Spitze (mm)
B1;9.200;1.800;jung;gut;1;104,5;127;2.100;8.600
B1;9.200;1.800;jung;gut;2;69;138,5;2.000;7.400
B2;10 400;2 200;jung;gut;1;115;132;2 600;9 800
B2;10 400;2 200;jung;gut;2;88;141;2.400,5;8 900`),
  expected: {
    units: 'cm-m',
    columns: {
      '': 'A tree; B height mm; C crownBase mm; D stage; E vigor; F limb; G diameter mm; H stem mm; I origin mm; J tip mm'
    },
    trees: [
      tree(
        'B1',
        9.2,
        1.8,
        { stage: 'young', vigor: 'good' },
        limb('1', 10.45, 12.7, 2.1, 8.6),
        limb('2', 6.9, 13.85, 2, 7.4)
      ),
      tree(
        'B2',
        10.4,
        2.2,
        { stage: 'young', vigor: 'good' },
        limb('1', 11.5, 13.2, 2.6, 9.8),
        limb('2', 8.8, 14.1, 2.4005, 8.9)
      )
    ]
  }
}

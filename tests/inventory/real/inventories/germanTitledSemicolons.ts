import { csv } from '../csvFile'
import { limb, tree, type RealInventory } from '../expected'

export const germanTitledSemicolons: RealInventory = {
  shape: 'German .csv with title lines above, semicolons, decimal commas, Windows-1252',
  file: csv(
    `
Gehölzaufnahme Lindenhof (erfunden)
Stand Mai 2026, zu zweit gemessen

Baum-Nr.;Baumart;BHD (cm);Höhe (m);Kronenansatz (m);Altersstufe;Vitalität;Ast;Ast-Ø (cm);Stamm-Ø über Gabel (cm);Ansatzhöhe (m);Spitzenhöhe (m);Rinde eingewachsen
L1;Winterlinde;18,5;9,2;1,8;jung;gut;1;10,4;12,7;2,1;8,6;ja
L1;Winterlinde;18,5;9,2;1,8;jung;gut;2;6,9;13,8;2;7,4;nein
L2;Spitzahorn;21;10,4;2,2;jung;gut;1;11,5;13,2;2,6;9,8;nein
L2;Spitzahorn;21;10,4;2,2;jung;gut;2;8,8;14,1;2,4;8,9;nein`,
    { encoding: 'windows-1252', newline: '\r\n' }
  ),
  expected: {
    units: 'cm-m',
    columns: {
      '': 'A tree; B species; C trunk cm; D height m; E crownBase m; F stage; G vigor; H limb; I diameter cm; J stem cm; K origin m; L tip m; M bark'
    },
    trees: [
      tree(
        'L1',
        9.2,
        1.8,
        { stage: 'young', vigor: 'good', trunk: 18.5 },
        limb('1', 10.4, 12.7, 2.1, 8.6, 'full'),
        limb('2', 6.9, 13.8, 2, 7.4, 'none')
      ),
      tree(
        'L2',
        10.4,
        2.2,
        { stage: 'young', vigor: 'good', trunk: 21 },
        limb('1', 11.5, 13.2, 2.6, 9.8, 'none'),
        limb('2', 8.8, 14.1, 2.4, 8.9, 'none')
      )
    ]
  }
}

import { limb, tree, type RealInventory } from '../expected'
import { workbook } from '../workbookFile'

export const sheetATree: RealInventory = {
  shape: 'a sheet a tree, each with a German form and its table of limbs',
  file: workbook([
    {
      name: 'Baum 1',
      rows: `
Baum-Nr. | 1 | |
Baumart | Winterlinde | |
Baumhöhe (m) | 9.2 | Kronenansatz (m) | 1.8
Altersstufe | jung | Vitalität | gut
Ast | Ast-Ø (cm) | Stamm-Ø über Gabel (cm) | Ansatz (m) | Spitze (m)
1 | 10.4 | 12.7 | 2.1 | 8.6
2 | 6.9 | 13.8 | 2 | 7.4`
    },
    {
      name: 'Baum 2',
      rows: `
Baum-Nr. | 2 | |
Baumart | Spitzahorn | |
Baumhöhe (m) | 10.4 | Kronenansatz (m) | 2.2
Altersstufe | jung | Vitalität | gut
Ast | Ast-Ø (cm) | Stamm-Ø über Gabel (cm) | Ansatz (m) | Spitze (m)
1 | 11.5 | 13.2 | 2.6 | 9.8
2 | 8.8 | 14.1 | 2.4 | 8.9`
    }
  ]),
  expected: {
    units: 'cm-m',
    columns: {
      'Baum 1': 'A limb; B diameter cm; C stem cm; D origin m; E tip m; ...',
      'Baum 2': 'A limb; B diameter cm; C stem cm; D origin m; E tip m; ...'
    },
    trees: [
      tree(
        '1',
        9.2,
        1.8,
        { stage: 'young', vigor: 'good' },
        limb('1', 10.4, 12.7, 2.1, 8.6),
        limb('2', 6.9, 13.8, 2, 7.4)
      ),
      tree(
        '2',
        10.4,
        2.2,
        { stage: 'young', vigor: 'good' },
        limb('1', 11.5, 13.2, 2.6, 9.8),
        limb('2', 8.8, 14.1, 2.4, 8.9)
      )
    ]
  }
}

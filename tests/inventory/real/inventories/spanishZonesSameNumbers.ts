import { limb, tree, type RealInventory } from '../expected'
import { workbook } from '../workbookFile'

export const spanishZonesSameNumbers: RealInventory = {
  shape: 'Spanish, a sheet a zone, the numbers begin at 1 on every sheet',
  file: workbook([
    {
      name: 'Zona A',
      rows: `
Nº árbol | Especie | Altura (m) | Base de la copa (m) | Etapa de vida | Vigor | Rama | Diámetro de rama (cm) | Tronco sobre la unión (cm) | Inserción (m) | Punta (m)
1 | Arce | 8.8 | 1.6 | joven | bueno | A | 9.4 | 11.6 | 1.9 | 8.3
1 | Arce | 8.8 | 1.6 | joven | bueno | B | 6.6 | 12.2 | 1.8 | 7.1`
    },
    {
      name: 'Zona B',
      rows: `
Nº árbol | Especie | Altura (m) | Base de la copa (m) | Etapa de vida | Vigor | Rama | Diámetro de rama (cm) | Tronco sobre la unión (cm) | Inserción (m) | Punta (m)
1 | Roble | 9.6 | 2 | joven | bueno | A | 10.2 | 12.4 | 2.3 | 9
1 | Roble | 9.6 | 2 | joven | bueno | B | 8.1 | 12.9 | 2.2 | 8.4
2 | Tilo | 9 | 1.9 | joven | bueno | A | 9.9 | 12 | 2.1 | 8.5`
    }
  ]),
  expected: {
    units: 'cm-m',
    columns: {
      'Zona A':
        'A tree; B species; C height m; D crownBase m; E stage; F vigor; G limb; H diameter cm; I stem cm; J origin m; K tip m',
      'Zona B':
        'A tree; B species; C height m; D crownBase m; E stage; F vigor; G limb; H diameter cm; I stem cm; J origin m; K tip m'
    },
    trees: [
      tree(
        '*',
        8.8,
        1.6,
        { stage: 'young', vigor: 'good' },
        limb('A', 9.4, 11.6, 1.9, 8.3),
        limb('B', 6.6, 12.2, 1.8, 7.1)
      ),
      tree(
        '*',
        9.6,
        2,
        { stage: 'young', vigor: 'good' },
        limb('A', 10.2, 12.4, 2.3, 9),
        limb('B', 8.1, 12.9, 2.2, 8.4)
      ),
      tree('*', 9, 1.9, { stage: 'young', vigor: 'good' }, limb('A', 9.9, 12, 2.1, 8.5))
    ],
    told: [['', 'several trees']],
    leftOut: { 'Zona B!': 'sheet' }
  }
}

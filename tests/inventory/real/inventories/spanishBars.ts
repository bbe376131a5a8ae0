import { csv } from '../csvFile'
import { limb, tree, type RealInventory } from '../expected'

export const spanishBars: RealInventory = {
  shape: 'Spanish text with bars between, UTF-8 with its mark, accents left out in some headers',
  file: csv(
    `
Nº árbol|Especie|DAP (cm)|Altura (m)|Base de la copa (m)|Etapa de vida|Vigor|Rama|Diametro rama (cm)|Diámetro del tronco sobre la unión (cm)|Altura de inserción (m)|Altura de la punta (m)|Corteza incluida
1|Arce|16.5|8.8|1.6|joven|bueno|A|9.4|11.6|1.9|8.3|sí
1|Arce|16.5|8.8|1.6|joven|bueno|B|6.6|12.2|1.8|7.1|no
2|Roble|19|9.6|2|joven|bueno|A|10.2|12.4|2.3|9|no
2|Roble|19|9.6|2|joven|bueno|B|8.1|12.9|2.2|8.4|no`,
    { encoding: 'utf-8-bom' }
  ),
  expected: {
    units: 'cm-m',
    columns: {
      '': 'A tree; B species; C trunk cm; D height m; E crownBase m; F stage; G vigor; H limb; I diameter cm; J stem cm; K origin m; L tip m; M bark'
    },
    trees: [
      tree(
        '1',
        8.8,
        1.6,
        { stage: 'young', vigor: 'good', trunk: 16.5 },
        limb('A', 9.4, 11.6, 1.9, 8.3, 'full'),
        limb('B', 6.6, 12.2, 1.8, 7.1, 'none')
      ),
      tree(
        '2',
        9.6,
        2,
        { stage: 'young', vigor: 'good', trunk: 19 },
        limb('A', 10.2, 12.4, 2.3, 9, 'none'),
        limb('B', 8.1, 12.9, 2.2, 8.4, 'none')
      )
    ]
  }
}

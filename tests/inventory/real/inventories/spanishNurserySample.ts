import { csv } from '../csvFile'
import { limb, tree, type RealInventory } from '../expected'

export const spanishNurserySample: RealInventory = {
  shape: 'Spanish nursery sample with limbs, calibre in millimeters, a comma for decimals',
  file: csv(
    `
Lote;Especie;Calibre (mm);Altura (m);Primera rama viva (m);Etapa;Vigor;Rama n.º;Diám. rama (mm);Diám. del eje sobre la unión (mm);Nace a (m);Llega a (m)
V1;Arce;62;4,6;1,1;plantación;bueno;1;31;38;1,3;4,3
V1;Arce;62;4,6;1,1;plantación;bueno;2;22;40;1,2;3,7
V2;Tilo;70;5;1,2;plantación;bueno;1;34;41;1,5;4,7
V2;Tilo;70;5;1,2;plantación;bueno;2;26;43;1,3;4,2`,
    { encoding: 'windows-1252', newline: '\r\n' }
  ),
  expected: {
    units: 'cm-m',
    columns: {
      '': 'A tree; B species; C caliper mm; D height m; E crownBase m; F stage; G vigor; H limb; I diameter mm; J stem mm; K origin m; L tip m'
    },
    trees: [
      tree(
        'V1',
        4.6,
        1.1,
        { stage: 'planting', vigor: 'good', more: { 'Caliper (mm)': 62 } },
        limb('1', 3.1, 3.8, 1.3, 4.3),
        limb('2', 2.2, 4, 1.2, 3.7)
      ),
      tree(
        'V2',
        5,
        1.2,
        { stage: 'planting', vigor: 'good', more: { 'Caliper (mm)': 70 } },
        limb('1', 3.4, 4.1, 1.5, 4.7),
        limb('2', 2.6, 4.3, 1.3, 4.2)
      )
    ],
    mayAsk: ['A1', 'E1']
  }
}

import { csv } from '../csvFile'
import { fromGirth, tree, type RealInventory } from '../expected'

export const germanStreetTrees: RealInventory = {
  shape: 'German municipal list of trees alone, trunk by girth, planting year, state of the work',
  file: csv(
    `
Lfd. Nr.;Straße;Baumart;Stammumfang (cm);Höhe (m);Kronenansatz (m);Kronenbreite (m);Altersstufe;Vitalität;Pflanzjahr;Status
1;Uferweg (erfunden);Winterlinde;88;11;2,6;6;jung;gut;2009;offen
2;Uferweg (erfunden);Spitzahorn;132;14;3;8;mittel;gut;1996;erledigt
3;Am Speicher (erfunden);Stieleiche;96;12;2,8;7;jung;gut;2007;offen`,
    { encoding: 'windows-1252' }
  ),
  expected: {
    units: 'cm-m',
    columns: {
      '': 'A tree; B site; C species; D trunk cm girth; E height m; F crownBase m; G spread m; H stage; I vigor'
    },
    trees: [
      tree('1', 11, 2.6, { stage: 'young', vigor: 'good', trunk: fromGirth(88) }),
      tree('2', 14, 3, { stage: 'medium', vigor: 'good', trunk: fromGirth(132) }),
      tree('3', 12, 2.8, { stage: 'young', vigor: 'good', trunk: fromGirth(96) })
    ],
    mayAsk: ['A1', 'K1'],
    told: [
      ['', 'girth'],
      ['', 'no limbs']
    ]
  }
}

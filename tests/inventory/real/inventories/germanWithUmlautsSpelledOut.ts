import { csv } from '../csvFile'
import { limb, tree, type RealInventory } from '../expected'

export const germanWithUmlautsSpelledOut: RealInventory = {
  shape: 'German headers in ASCII with underscores, ja and nein, semicolons with decimal points',
  file: csv(`
baum_nr;baumart;stammdurchmesser_cm;baumhoehe_m;kronenansatz_m;altersstufe;vitalitaet;ast_nr;ast_durchmesser_cm;stamm_oberhalb_cm;ansatzhoehe_m;spitzenhoehe_m;rinde_eingewachsen;tot
1;Winterlinde;18.5;9.2;1.8;jung;gut;1;10.4;12.7;2.1;8.6;ja;nein
1;Winterlinde;18.5;9.2;1.8;jung;gut;2;6.9;13.8;2;7.4;nein;nein
1;Winterlinde;18.5;9.2;1.8;jung;gut;3;3.1;11.9;3;5.5;nein;ja
2;Spitzahorn;21;10.4;2.2;jung;mittel;1;11.5;13.2;2.6;9.8;nein;nein`),
  expected: {
    units: 'cm-m',
    columns: {
      '': 'A tree; B species; C trunk cm; D height m; E crownBase m; F stage; G vigor; H limb; I diameter cm; J stem cm; K origin m; L tip m; M bark; N live'
    },
    trees: [
      tree(
        '1',
        9.2,
        1.8,
        { stage: 'young', vigor: 'good', trunk: 18.5 },
        limb('1', 10.4, 12.7, 2.1, 8.6, 'full'),
        limb('2', 6.9, 13.8, 2, 7.4, 'none'),
        limb('3', 3.1, 11.9, 3, 5.5, 'none', { 'Live or dead': 'dead' })
      ),
      tree(
        '2',
        10.4,
        2.2,
        { stage: 'young', vigor: 'fair', trunk: 21 },
        limb('1', 11.5, 13.2, 2.6, 9.8, 'none')
      )
    ]
  }
}

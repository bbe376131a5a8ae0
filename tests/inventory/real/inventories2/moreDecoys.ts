import type { Field } from '../../../../shared/columns'
import type { Decoy } from '../decoys'
import type { Language } from '../words/phrasing'

/** Lines of `header > field it looks like > values`, the values parted by semicolons. */
function decoysOf(language: Language, group: Decoy['group'], lines: string): Decoy[] {
  return lines
    .trim()
    .split('\n')
    .map((line) => {
      const [header = '', tempts = '', values = ''] = line.trim().split(' > ')
      return {
        language,
        header: header.replace(/^\? /, ''),
        tempts: tempts === '-' ? null : (tempts as Field),
        values: values.split(';').map((each) => each.trim()),
        group,
        ambiguous: header.startsWith('? ')
      }
    })
}

/** Further columns that are not the plan's. Ours, from how the trade keeps its lists (common practice, no source). */
export const moreDecoys: readonly Decoy[] = [
  ...decoysOf(
    'en',
    'tree',
    `
Crown length (ft) > crownBase > 24;26;22;28
Live crown ratio (%) > crownBase > 80;75;70;82
Crown depth (ft) > crownBase > 24;26;22;28
Crown radius N (ft) > spread > 8;9;7;10
Crown density (%) > vigor > 80;70;60;90
? Height in 2019 (ft) > height > 18;20;17;22
Target height (ft) > height > 35;40;30;45
Height at planting (ft) > height > 8;9;8;10
? DBH 2019 (in) > trunk > 3.1;4.2;3.5;5
DBH class > trunk > 6-12;0-6;6-12;12-18
Basal area (sq ft) > trunk > 0.2;0.3;0.25;0.4
Critical root zone (ft) > spread > 10;12;9;14
Tree protection radius (ft) > spread > 10;12;9;14
Tree value ($) > tree > 1200;850;2400;600
Neighbor tree > tree > T9;T8;T7;T3
Nearest tree (ft) > spread > 12;20;16;14
Replaces tree > tree > R1;R2;R3;R4
Stem count > stem > 1;2;1;3
Stem no. > stem > 1;1;1;1
Stem distance (ft) > stem > 12;20;16;14
Age (years) > stage > 8;12;10;15
Vigor of turf > vigor > good;fair;good;poor
Branch drop risk > limb > low;high;low;low
Leaf-out date > lastPruned > 2026-04-02;2026-04-09;2026-04-04;2026-04-11
Next pruning due > lastPruned > 2028;2029;2028;2030
Pruning cycle (yr) > lastPruned > 3;5;3;4
Clear trunk desired (ft) > crownBase > 8;10;8;9`
  ),
  ...decoysOf(
    'en',
    'limb',
    `
Proposed diameter (in) > diameter > 2.5;3;2;3.5
? Limb dia 2023 (in) > diameter > 2.5;3;2;3.5
? Stem dia 2023 (in) > stem > 4.5;5;4;5.5
Limb/stem ratio > diameter > 0.8;0.5;0.7;0.6
Ratio (%) > diameter > 80;50;70;60
? Cut diameter planned (in) > diameter > 2;1.5;2.5;1
Cut height (ft) > origin > 12;14;10;15
Target tip (ft) > tip > 18;20;16;22
Tip after cut (ft) > tip > 18;20;16;22
Limb weight (lb) > diameter > 45;60;30;80
Limb hours > length > 0.5;0.25;0.75;0.5
Limb cost > diameter > 45;60;30;80
Limb priority > limb > 1;2;3;1
Origin (% of height) > origin > 20;25;22;30
Stem taper (in/ft) > stem > 0.2;0.3;0.25;0.2
Included angle of sun > bark > low;high;low;low`
  ),
  ...decoysOf(
    'de',
    'tree',
    `
Kronenlänge (m) > crownBase > 7.4;8;6.5;9
Zielhöhe (m) > height > 12;14;12;15
Stammzahl > stem > 1;2;1;1
Alter (Jahre) > stage > 8;12;10;15
Nächster Schnitt > lastPruned > 2028;2029;2028;2030`
  ),
  ...decoysOf(
    'fr',
    'tree',
    `
Longueur du houppier (m) > crownBase > 7.4;8;6.5;9
Hauteur souhaitée (m) > height > 12;14;12;15
Âge (ans) > stage > 8;12;10;15
Nombre de tiges > stem > 1;2;1;1`
  ),
  ...decoysOf(
    'es',
    'tree',
    `
Longitud de copa (m) > crownBase > 7.4;8;6.5;9
Altura deseada (m) > height > 12;14;12;15
Edad (años) > stage > 8;12;10;15
Número de troncos > stem > 1;2;1;1`
  )
]

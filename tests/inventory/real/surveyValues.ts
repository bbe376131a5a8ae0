import type { Field } from '../../../shared/columns'
import type { Language } from './words/phrasing'

/** A small invented survey, four trees of three limbs, into which one column is put. Its plain headers by language. */
export const plainHeaders: Readonly<Record<Language, Readonly<Partial<Record<Field, string>>>>> = {
  en: {
    tree: 'Tree ID',
    species: 'Species',
    trunk: 'DBH (in)',
    height: 'Tree height (ft)',
    crownBase: 'Crown base (ft)',
    stage: 'Life stage',
    vigor: 'Vigor',
    limb: 'Limb',
    diameter: 'Limb diameter (in)',
    stem: 'Stem diameter (in)',
    origin: 'Origin height (ft)',
    tip: 'Tip height (ft)',
    bark: 'Included bark'
  },
  de: {
    tree: 'Baum-Nr.',
    species: 'Baumart',
    trunk: 'BHD (cm)',
    height: 'Baumhöhe (m)',
    crownBase: 'Kronenansatz (m)',
    stage: 'Altersstufe',
    vigor: 'Vitalität',
    limb: 'Ast',
    diameter: 'Astdurchmesser (cm)',
    stem: 'Stammdurchmesser über Gabel (cm)',
    origin: 'Ansatzhöhe (m)',
    tip: 'Spitzenhöhe (m)',
    bark: 'Eingewachsene Rinde'
  },
  fr: {
    tree: 'N° arbre',
    species: 'Espèce',
    trunk: 'DHP (cm)',
    height: "Hauteur de l'arbre (m)",
    crownBase: 'Base du houppier (m)',
    stage: 'Stade de développement',
    vigor: 'Vigueur',
    limb: 'Branche',
    diameter: 'Diamètre branche (cm)',
    stem: 'Diamètre du tronc au-dessus de la fourche (cm)',
    origin: "Hauteur d'insertion (m)",
    tip: "Hauteur de l'extrémité (m)",
    bark: 'Écorce incluse'
  },
  es: {
    tree: 'N.º de árbol',
    species: 'Especie',
    trunk: 'DAP (cm)',
    height: 'Altura del árbol (m)',
    crownBase: 'Base de la copa (m)',
    stage: 'Etapa de vida',
    vigor: 'Vigor',
    limb: 'Rama',
    diameter: 'Diámetro de rama (cm)',
    stem: 'Diámetro del tronco sobre la unión (cm)',
    origin: 'Altura de inserción (m)',
    tip: 'Altura de la punta (m)',
    bark: 'Corteza incluida'
  }
}

type Words = Readonly<Record<Language, readonly string[]>>
const same = (...list: string[]): Words => ({ en: list, de: list, fr: list, es: list })

/** What the trees hold, four values, and the limbs, twelve; lengths in millimeters. */
export const lengths: Readonly<Partial<Record<Field, readonly number[]>>> = {
  trunk: [180, 230, 140, 310],
  height: [9500, 11200, 6800, 13100],
  crownBase: [1800, 2400, 1500, 3000],
  spread: [6000, 7500, 4000, 9000],
  clearance: [2400, 2400, 4200, 4200],
  caliper: [190, 240, 150, 320],
  caliperHeight: [300, 300, 300, 300],
  matureHeight: [18000, 21000, 15000, 24000],
  lowestPermanent: [2400, 2400, 4200, 4200],
  diameter: [110, 62, 45, 140, 80, 55, 84, 50, 38, 180, 120, 70],
  diameter2: [104, 66, 43, 146, 78, 57, 80, 52, 36, 174, 126, 66],
  stem: [135, 128, 112, 170, 158, 150, 104, 98, 90, 240, 226, 210],
  stemBelow: [178, 149, 126, 226, 182, 165, 138, 114, 102, 305, 262, 226],
  origin: [2000, 2700, 3600, 2600, 3300, 4400, 1600, 2200, 2900, 3200, 4300, 5400],
  tip: [9000, 7600, 6900, 10600, 8300, 7800, 6400, 5200, 4700, 12400, 10100, 9200],
  length: [7100, 5200, 3900, 8200, 5400, 4300, 4900, 3300, 2500, 9400, 6300, 4900],
  lowestFoliage: [3000, 3300, 4000, 3600, 4100, 5000, 2200, 2700, 3300, 4400, 5100, 6000],
  lateralHeight: [5000, 4700, 5000, 6000, 5600, 6100, 3700, 3600, 3800, 7200, 7000, 7100],
  breakHeight: [5000, 4700, 5000, 6000, 5600, 6100, 3700, 3600, 3800, 7200, 7000, 7100],
  lateral: [45, 26, 20, 60, 34, 24, 36, 22, 16, 78, 50, 30],
  cut: [70, 40, 30, 90, 52, 36, 54, 32, 25, 116, 78, 46]
}

export const texts: Readonly<Partial<Record<Field, Words>>> = {
  tree: same('T1', 'T2', 'T3', 'T4'),
  species: {
    en: ['Red maple', 'Pin oak', 'Hackberry', 'Red maple'],
    de: ['Spitzahorn', 'Stieleiche', 'Winterlinde', 'Spitzahorn'],
    fr: ['Érable plane', 'Chêne pédonculé', 'Tilleul', 'Érable plane'],
    es: ['Arce', 'Roble', 'Tilo', 'Arce']
  },
  stage: {
    en: ['young', 'medium', 'young', 'mature'],
    de: ['jung', 'mittel', 'jung', 'alt'],
    fr: ['jeune', 'adulte', 'jeune', 'mature'],
    es: ['joven', 'maduro', 'joven', 'adulto']
  },
  vigor: {
    en: ['good', 'fair', 'good', 'good'],
    de: ['gut', 'mittel', 'gut', 'gut'],
    fr: ['bonne', 'moyenne', 'bonne', 'bonne'],
    es: ['bueno', 'regular', 'bueno', 'bueno']
  },
  growth: {
    en: ['fast', 'slow', 'medium', 'fast'],
    de: ['schnell', 'langsam', 'mittel', 'schnell'],
    fr: ['rapide', 'lente', 'moyenne', 'rapide'],
    es: ['rápido', 'lento', 'medio', 'rápido']
  },
  removed: same('5', '0', '10', '5'),
  localLimit: same('25', '25', '20', '20'),
  dieback: same('5', '0', '10', '0'),
  clearanceSide: same('N', 'S', 'N', 'W'),
  access: {
    en: ['open', 'fenced', 'open', 'open'],
    de: ['offen', 'eingezäunt', 'offen', 'offen'],
    fr: ['ouvert', 'clôturé', 'ouvert', 'ouvert'],
    es: ['abierto', 'vallado', 'abierto', 'abierto']
  },
  site: same('North row', 'North row', 'South row', 'South row'),
  zone: same('A', 'A', 'B', 'B'),
  lastPruned: same('2022', '2023', '2021', '2022'),
  treeNotes: same('near the gate (invented)', '', 'two stakes', ''),
  limb: same('A', 'B', 'C'),
  measured: { en: ['above'], de: ['über'], fr: ['dessus'], es: ['encima'] },
  parent: same('', 'A', ''),
  role: { en: ['limb'], de: ['Ast'], fr: ['branche'], es: ['rama'] },
  permanent: {
    en: ['yes', 'no', 'no'],
    de: ['ja', 'nein', 'nein'],
    fr: ['oui', 'non', 'non'],
    es: ['sí', 'no', 'no']
  },
  bark: {
    en: ['full', 'none', 'none'],
    de: ['ja', 'nein', 'nein'],
    fr: ['oui', 'non', 'non'],
    es: ['sí', 'no', 'no']
  },
  angle: same('25', '40', '55'),
  bearing: same('90', '210', '330'),
  live: { en: ['live'], de: ['lebend'], fr: ['vivante'], es: ['viva'] },
  broken: same('', '', 'x'),
  rubbing: same('x', '', ''),
  decay: same('', 'x', ''),
  lastCutShare: same('25', '50', '25'),
  lastCutDate: same('2022', '2023', '2022'),
  foliageShare: same('20', '10', '8'),
  notes: same('', 'thin bark', '')
}

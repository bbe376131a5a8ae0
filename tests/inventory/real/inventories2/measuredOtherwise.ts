import { csv } from '../csvFile'
import { limb, tree, type ExpectedTree, type RealInventory } from '../expected'
import { maple, oak, young } from './trees'

const start = 'Tree,Height (ft),Crown base (ft),Life stage,Vigor,Limb'
const startColumns = 'A tree; B height ft; C crownBase ft; D stage; E vigor; F limb'
const rows = (...ends: readonly string[]) =>
  ['T1,30,6,young,good,A', 'T1,30,6,young,good,B', 'T2,33,7,young,good,A', 'T2,33,7,young,good,B']
    .map((row, at) => `${row},${ends[at] ?? ''}`)
    .join('\n')
const without = (...keys: readonly ('diameter' | 'stem' | 'origin' | 'tip')[]): ExpectedTree[] =>
  [maple('T1'), oak('T2')].map((each) => ({
    ...each,
    limbs: each.limbs.map((limb) => ({ ...limb, ...Object.fromEntries(keys.map((key) => [key, null])) }))
  }))

/** Invented: radii. */
export const radii: RealInventory = {
  shape: 'radii of limb and stem instead of diameters',
  file: csv(
    `\n${start},Limb radius (in),Stem radius (in),Origin (ft),Tip (ft)\n${rows('2.05,2.5,7,28', '1.35,2.7,6.5,24', '2.2,2.8,8,31', '1.55,3,7.5,26')}`
  ),
  expected: {
    units: 'in-ft',
    columns: { '': `${startColumns}; G -; H -; I origin ft; J tip ft` },
    trees: without('diameter', 'stem'),
    exit: 3,
    mayAsk: ['G1', 'H1']
  }
}

/** Invented: areas of the cross-section. */
export const crossSections: RealInventory = {
  shape: 'cross-sections of limb and stem instead of diameters',
  file: csv(
    `\n${start},Limb area (sq in),Stem area (sq in),Origin (ft),Tip (ft)\n${rows('13.2,19.6,7,28', '5.7,22.9,6.5,24', '15.2,24.6,8,31', '7.5,28.3,7.5,26')}`
  ),
  expected: {
    units: 'in-ft',
    columns: { '': `${startColumns}; G -; H -; I origin ft; J tip ft` },
    trees: without('diameter', 'stem'),
    exit: 3,
    mayAsk: ['G1', 'H1']
  }
}

/** Invented: heights from the union, not from the ground. */
export const tipFromUnion: RealInventory = {
  shape: 'the tip measured from the union up: “Tip above union (ft)”',
  file: csv(
    `\n${start},Limb dia (in),Stem dia (in),Origin (ft),Tip above union (ft)\n${rows('4.1,5,7,21', '2.7,5.4,6.5,17.5', '4.4,5.6,8,23', '3.1,6,7.5,18.5')}`
  ),
  expected: {
    exit: 3,
    units: 'in-ft',
    columns: { '': `${startColumns}; G diameter in; H stem in; I origin ft; J -` },
    trees: without('tip'),
    mayAsk: ['J1']
  }
}

/** Invented: heights down from the top. */
export const downFromTop: RealInventory = {
  shape: 'union and tip measured down from the top of the tree',
  file: csv(
    `\n${start},Limb dia (in),Stem dia (in),Union below top (ft),Tip below top (ft)\n${rows('4.1,5,23,2', '2.7,5.4,23.5,6', '4.4,5.6,25,2', '3.1,6,25.5,7')}`
  ),
  expected: {
    exit: 3,
    units: 'in-ft',
    columns: { '': `${startColumns}; G diameter in; H stem in; I -; J -` },
    trees: without('origin', 'tip'),
    mayAsk: ['I1', 'J1']
  }
}

/** Invented: limbs measured in three places along them. */
export const alongTheLimb: RealInventory = {
  shape: 'the limb’s diameter at its base, halfway and at its end',
  file: csv(
    `\n${start},Limb dia at base (in),Limb dia halfway (in),Limb dia at end (in),Stem dia (in),Origin (ft),Tip (ft)\n${rows('4.1,2.5,0.5,5,7,28', '2.7,1.6,0.4,5.4,6.5,24', '4.4,2.7,0.5,5.6,8,31', '3.1,1.9,0.4,6,7.5,26')}`
  ),
  expected: {
    units: 'in-ft',
    columns: { '': `${startColumns}; G diameter in; H -; I -; J stem in; K origin ft; L tip ft` },
    trees: [maple('T1'), oak('T2')],
    mayAsk: ['G1', 'H1', 'I1']
  }
}

/** Invented: the stem at the ground and at breast height, and none at the union. */
export const stemElsewhere: RealInventory = {
  shape: 'the stem at the ground and at breast height, none at the union',
  file: csv(
    `\n${start},Limb dia (in),Stem dia at ground (in),Stem dia at 4.5 ft (in),Origin (ft),Tip (ft)\n${rows('4.1,8.8,7.2,7,28', '2.7,8.8,7.2,6.5,24', '4.4,9.6,8,8,31', '3.1,9.6,8,7.5,26')}`
  ),
  expected: {
    units: 'in-ft',
    columns: { '': `${startColumns}; G diameter in; H -; I trunk in; J origin ft; K tip ft` },
    trees: without('stem').map((each, at) => ({ ...each, trunk: at === 0 ? 7.2 : 8 })),
    exit: 3,
    mayAsk: ['H1', 'I1']
  }
}

/** Invented: the stem above and below the union, both. */
export const aboveAndBelow: RealInventory = {
  shape: 'the stem both above and below the union',
  file: csv(
    `\n${start},Limb dia (in),Stem below (in),Stem above (in),Origin (ft),Tip (ft)\n${rows('4.1,6.5,5,7,28', '2.7,6,5.4,6.5,24', '4.4,7.1,5.6,8,31', '3.1,6.8,6,7.5,26')}`
  ),
  expected: {
    units: 'in-ft',
    columns: { '': `${startColumns}; G diameter in; H stemBelow|- in; I stem in; J origin ft; K tip ft` },
    trees: [maple('T1'), oak('T2')]
  }
}

/** Invented: the limb by its length. */
export const lengthInsteadOfTip: RealInventory = {
  shape: 'the limb’s length and angle instead of its tip',
  file: csv(
    `\n${start},Limb dia (in),Stem dia (in),Origin (ft),Length (ft),Angle (deg)\n${rows('4.1,5,7,22,30', '2.7,5.4,6.5,20,45', '4.4,5.6,8,24,30', '3.1,6,7.5,21,45')}`
  ),
  expected: {
    exit: 3,
    units: 'in-ft',
    columns: { '': `${startColumns}; G diameter in; H stem in; I origin ft; J length ft; K angle` },
    trees: without('tip').map((each, tree) => ({
      ...each,
      limbs: each.limbs.map((limb, at) => ({
        ...limb,
        more: { 'Length (ft)': [22, 20, 24, 21][2 * tree + at] ?? '', Angle: at === 0 ? 30 : 45 }
      }))
    })),
    mayAsk: ['J1', 'K1']
  }
}

/** Invented: feet that are inches. */
export const inchesUnderFeet: RealInventory = {
  shape: 'heights typed in inches under headers that say feet, for one tree of two',
  file: csv(`
${start},Limb dia (in),Stem dia (in),Origin (ft),Tip (ft)
T1,30,6,young,good,A,4.1,5,7,28
T1,30,6,young,good,B,2.7,5.4,6.5,24
T2,396,84,young,good,A,4.4,5.6,96,372
T2,396,84,young,good,B,3.1,6,90,312`),
  expected: {
    units: 'in-ft',
    columns: { '': `${startColumns}; G diameter in; H stem in; I origin ft; J tip ft` },
    trees: [
      maple('T1'),
      tree('T2', 396, 84, young, limb('A', 4.4, 5.6, 96, 372), limb('B', 3.1, 6, 90, 312))
    ],
    told: [['B4', 'unit']]
  }
}

/** Invented: millimeters under centimeters. */
export const millimetersUnderCentimeters: RealInventory = {
  shape: 'diameters typed in millimeters under headers that say centimeters',
  file: csv(`
Tree,Height (m),Crown base (m),DBH (cm),Life stage,Vigor,Limb,Limb dia (cm),Stem dia (cm),Origin (m),Tip (m)
1,9.1,1.7,18,young,good,1,101,124,2,8.6
1,9.1,1.7,18,young,good,2,69,132,1.9,7.5
2,10,2,21,young,good,1,112,131,2.4,9.5`),
  expected: {
    units: 'cm-m',
    columns: {
      '': 'A tree; B height m; C crownBase m; D trunk cm; E stage; F vigor; G limb; H diameter cm; I stem cm; J origin m; K tip m'
    },
    trees: [
      tree('1', 9.1, 1.7, { ...young, trunk: 18 }, limb('1', 101, 124, 2, 8.6), limb('2', 69, 132, 1.9, 7.5)),
      tree('2', 10, 2, { ...young, trunk: 21 }, limb('1', 112, 131, 2.4, 9.5))
    ],
    told: [['H1', 'unit']]
  }
}

import { csv } from '../csvFile'
import type { RealInventory } from '../expected'
import { lime, limeTrunk, maple, mapleTrunk, oak, oakTrunk, plane, planeTrunk } from './trees'

/** Invented: every size in both systems, side by side. */
export const bothSystems: RealInventory = {
  shape: 'every measure twice, in inches or feet and in centimeters or meters beside it',
  file: csv(`
Tree,DBH (in),DBH (cm),Height (ft),Height (m),Crown base (ft),Crown base (m),Life stage,Vigor,Limb,Limb dia (in),Limb dia (cm),Stem dia (in),Stem dia (cm),Origin (ft),Origin (m),Tip (ft),Tip (m)
T1,7.2,18.3,30,9.14,6,1.83,young,good,A,4.1,10.4,5,12.7,7,2.13,28,8.53
T1,7.2,18.3,30,9.14,6,1.83,young,good,B,2.7,6.9,5.4,13.7,6.5,1.98,24,7.32
T2,8,20.3,33,10.06,7,2.13,young,good,A,4.4,11.2,5.6,14.2,8,2.44,31,9.45
T2,8,20.3,33,10.06,7,2.13,young,good,B,3.1,7.9,6,15.2,7.5,2.29,26,7.92`),
  expected: {
    units: 'in-ft',
    columns: {
      '': 'B trunk in; D height ft; F crownBase ft; K diameter in; M stem in; O origin ft; Q tip ft; L -; N -; ...'
    },
    trees: [maple('T1', ['A', 'B'], mapleTrunk), oak('T2', ['A', 'B'], oakTrunk)],
    mayAsk: ['B1', 'C1', 'D1', 'E1', 'K1', 'L1', 'M1', 'N1', 'O1', 'P1', 'Q1', 'R1']
  }
}

/** Invented: a survey repeated after three years in the same table. */
export const twoYearsSideBySide: RealInventory = {
  shape: 'the sizes of 2023 and of 2026 side by side: the latest are meant, or it is asked',
  file: csv(`
Tree,Height 2023 (ft),Height 2026 (ft),Crown base (ft),Life stage,Vigor,Limb,Limb dia 2023 (in),Limb dia 2026 (in),Stem dia 2023 (in),Stem dia 2026 (in),Origin (ft),Tip 2023 (ft),Tip 2026 (ft)
T1,24,30,6,young,good,A,2.9,4.1,3.6,5,7,22,28
T1,24,30,6,young,good,B,1.8,2.7,4,5.4,6.5,19,24
T2,27,33,7,young,good,A,3.1,4.4,4.2,5.6,8,25,31
T2,27,33,7,young,good,B,2.2,3.1,4.5,6,7.5,21,26`),
  expected: {
    units: 'in-ft',
    columns: {
      '': 'A tree; B -; C height ft; D crownBase ft; E stage; F vigor; G limb; H -; I diameter in; J -; K stem in; L origin ft; M -; N tip ft'
    },
    trees: [maple('T1'), oak('T2')],
    mayAsk: ['B1', 'C1', 'H1', 'I1', 'J1', 'K1', 'M1', 'N1']
  }
}

/** Invented: what is there and what the work should leave. */
export const presentAndProposed: RealInventory = {
  shape: 'proposed sizes beside the present ones: cut back to, height after pruning, ratio now and after',
  file: csv(`
Tree,Height (ft),Proposed height (ft),Crown base (ft),Proposed crown base (ft),Life stage,Vigor,Limb,Limb dia (in),Stem dia (in),Ratio now,Ratio after (target),Origin (ft),Tip (ft),Cut back to (ft),Cut to lateral of (in)
T1,30,30,6,8,young,good,A,4.1,5,0.82,0.5,7,28,18,1.5
T1,30,30,6,8,young,good,B,2.7,5.4,0.5,0.4,6.5,24,19,1
T2,33,33,7,9,young,good,A,4.4,5.6,0.79,0.5,8,31,20,1.75
T2,33,33,7,9,young,good,B,3.1,6,0.52,0.4,7.5,26,20,1.25`),
  expected: {
    units: 'in-ft',
    columns: {
      '': 'A tree; B height ft; C -; D crownBase ft; E -; F stage; G vigor; H limb; I diameter in; J stem in; K -; L -; M origin ft; N tip ft; O -; P lateral|-; ...'
    },
    trees: [maple('T1'), oak('T2')],
    mayAsk: ['O1', 'P1', 'C1', 'E1']
  }
}

/** Invented: feet in one column, the odd inches in the next. */
export const feetAndInchesColumns: RealInventory = {
  shape: 'heights over two columns: whole feet and the inches left over',
  file: csv(`
Tree,Height ft,Height in,Crown base ft,Crown base in,Life stage,Vigor,Limb,Limb dia (in),Stem dia (in),Origin ft,Origin in,Tip ft,Tip in
T1,30,0,6,0,young,good,A,4.1,5,7,0,28,0
T1,30,0,6,0,young,good,B,2.7,5.4,6,6,24,0
T2,33,0,7,0,young,good,A,4.4,5.6,8,0,31,0
T2,33,0,7,0,young,good,B,3.1,6,7,6,26,0`),
  expected: {
    units: 'in-ft',
    columns: { '': 'A tree; F stage; G vigor; H limb; I diameter in; J stem in; ...' },
    trees: [maple('T1'), oak('T2')],
    mayAsk: ['B1', 'C1', 'D1', 'E1', 'K1', 'L1', 'M1', 'N1']
  }
}

/** Invented: limb and stem in one cell with a slash. */
export const limbSlashStem: RealInventory = {
  shape: 'limb and stem diameter in one cell: “4.1/5.0” under “Limb/stem dia (in)”',
  file: csv(`
Tree,Height (ft),Crown base (ft),Life stage,Vigor,Limb,Limb/stem dia (in),Origin (ft),Tip (ft)
T1,30,6,young,good,A,4.1/5.0,7,28
T1,30,6,young,good,B,2.7/5.4,6.5,24
T2,33,7,young,good,A,4.4/5.6,8,31
T2,33,7,young,good,B,3.1/6.0,7.5,26`),
  expected: {
    units: 'in-ft',
    columns: {
      '': 'A tree; B height ft; C crownBase ft; D stage; E vigor; F limb; H origin ft; I tip ft; ...'
    },
    trees: [maple('T1'), oak('T2')],
    mayAsk: ['G1']
  }
}

/** Invented: origin and tip in one cell. */
export const fromToInOneCell: RealInventory = {
  shape: 'origin and tip in one cell: “7-28” under “From-to (ft)”',
  file: csv(`
Tree,Height (ft),Crown base (ft),Life stage,Vigor,Limb,Limb dia (in),Stem dia (in),From-to (ft)
T1,30,6,young,good,A,4.1,5,7-28
T1,30,6,young,good,B,2.7,5.4,6.5-24
T2,33,7,young,good,A,4.4,5.6,8-31
T2,33,7,young,good,B,3.1,6,7.5-26`),
  expected: {
    units: 'in-ft',
    columns: {
      '': 'A tree; B height ft; C crownBase ft; D stage; E vigor; F limb; G diameter in; H stem in; ...'
    },
    trees: [maple('T1'), oak('T2')],
    mayAsk: ['I1']
  }
}

/** Invented: a column that says the unit of each row. */
export const unitOfEachRow: RealInventory = {
  shape: 'a column that says the unit of each row: “in” here, “cm” there',
  file: csv(`
Tree,Height (ft),Crown base (ft),Life stage,Vigor,Limb,Limb dia,Stem dia,Dia. unit,Origin (ft),Tip (ft)
T1,30,6,young,good,A,4.1,5,in,7,28
T1,30,6,young,good,B,6.858,13.716,cm,6.5,24
T2,33,7,young,good,A,11.176,14.224,cm,8,31
T2,33,7,young,good,B,3.1,6,in,7.5,26`),
  expected: {
    units: 'in-ft',
    columns: { '': 'A tree; F limb; G diameter; H stem; ...' },
    trees: [maple('T1'), oak('T2')],
    mayAsk: ['I1', 'G1', 'H1']
  }
}

/** Invented: heights as a share of the tree's. */
export const heightsAsShares: RealInventory = {
  shape: 'origin and tip as a percentage of the tree’s height',
  file: csv(`
Tree,Height (ft),Crown base (ft),Life stage,Vigor,Limb,Limb dia (in),Stem dia (in),Origin (% of tree height),Tip (% of tree height)
T1,30,6,young,good,A,4.1,5,23,93
T1,30,6,young,good,B,2.7,5.4,22,80
T2,33,7,young,good,A,4.4,5.6,24,94
T2,33,7,young,good,B,3.1,6,23,79`),
  expected: {
    exit: 3,
    units: 'in-ft',
    columns: {
      '': 'A tree; B height ft; C crownBase ft; D stage; E vigor; F limb; G diameter in; H stem in; I -; J -'
    },
    trees: [maple('T1'), oak('T2')].map((each) => ({
      ...each,
      limbs: each.limbs.map((limb) => ({ ...limb, origin: null, tip: null }))
    })),
    mayAsk: ['I1', 'J1']
  }
}

/** Invented: the living part of the crown by its length. */
export const crownLengthNotBase: RealInventory = {
  shape: 'crown length and live crown ratio instead of the crown base',
  file: csv(`
Tree,Height (ft),Crown length (ft),LCR (%),Life stage,Vigor,Limb,Limb dia (in),Stem dia (in),Origin (ft),Tip (ft)
T1,30,24,80,young,good,A,4.1,5,7,28
T1,30,24,80,young,good,B,2.7,5.4,6.5,24
T2,33,26,79,young,good,A,4.4,5.6,8,31
T2,33,26,79,young,good,B,3.1,6,7.5,26`),
  expected: {
    units: 'in-ft',
    columns: {
      '': 'A tree; B height ft; C -; D -; E stage; F vigor; G limb; H diameter in; I stem in; J origin ft; K tip ft'
    },
    trees: [maple('T1'), oak('T2')].map((each) => ({ ...each, crownBase: null })),
    mayAsk: ['C1']
  }
}

/** Invented: a German office that writes both the girth and the diameter it computed. */
export const girthAndDiameter: RealInventory = {
  shape: 'German, the girth of limb and stem and the diameter computed from it side by side',
  file: csv(`
Baum;Baumhöhe (m);Kronenansatz (m);BHD (cm);StU (cm);Altersstufe;Vitalität;Ast;Astumfang (cm);Ast-Ø (cm);Stammumfang über Gabel (cm);Stamm-Ø über Gabel (cm);Ansatz (m);Spitze (m)
1;9,1;1,7;18;57;jung;gut;1;32;10,1;39;12,4;2;8,6
1;9,1;1,7;18;57;jung;gut;2;22;6,9;41;13,2;1,9;7,5
2;10;2;21;66;jung;gut;1;35;11,2;41;13,1;2,4;9,5
2;10;2;21;66;jung;gut;2;24;7,7;43;13,8;2,2;8,4`),
  expected: {
    units: 'cm-m',
    columns: {
      '': 'A tree; B height m; C crownBase m; D trunk cm; F stage; G vigor; H limb; J diameter cm; L stem cm; M origin m; N tip m; ...'
    },
    trees: [lime('1', ['1', '2'], limeTrunk), plane('2', ['1', '2'], planeTrunk)],
    mayAsk: ['D1', 'E1', 'I1', 'J1', 'K1', 'L1']
  }
}

import { csv } from '../csvFile'
import type { RealInventory } from '../expected'
import { maple, oak, plane, lime } from './trees'

const columns =
  'A tree; B height ft; C crownBase ft; D stage; E vigor; F diameter in; G stem in; H origin ft; I tip ft; J diameter in; K stem in; L origin ft; M tip ft'
const trees = [maple('T1', ['*', '*']), oak('T2', ['*', '*'])]
const mayAsk = ['F1', 'G1', 'H1', 'I1', 'J1', 'K1', 'L1', 'M1']

/** One row per tree, two limbs in each, their columns named as given. */
const called = (shape: string, names: readonly string[]): RealInventory => ({
  shape,
  file: csv(`
Tree,Height (ft),Crown base (ft),Life stage,Vigor,${names.join(',')}
T1,30,6,young,good,4.1,5,7,28,2.7,5.4,6.5,24
T2,33,7,young,good,4.4,5.6,8,31,3.1,6,7.5,26`),
  expected: { units: 'in-ft', columns: { '': columns }, trees, mayAsk }
})
const measures = ['dia (in)', 'stem dia (in)', 'origin (ft)', 'tip (ft)']
const before = (...limbs: readonly string[]) =>
  limbs.flatMap((limb) => measures.map((each) => `${limb} ${each}`))
const plain = ['Limb dia (in)', 'Stem dia (in)', 'Origin (ft)', 'Tip (ft)']
const after = (...ends: readonly string[]) => ends.flatMap((end) => plain.map((each) => each + end))

/** Invented: ordinals in figures. */
export const ordinalsInFigures = called(
  'limbs of a row as “1st limb …”, “2nd limb …”',
  before('1st limb', '2nd limb')
)

/** Invented: ordinals in words. */
export const ordinalsInWords = called(
  'limbs of a row as “First limb …”, “Second limb …”',
  before('First limb', 'Second limb')
)

/** Invented: letters in the middle. */
export const lettersInTheMiddle = called(
  'limbs of a row as “Limb A dia”, “Limb B dia”',
  before('Limb A', 'Limb B')
)

/** Invented: Roman figures. */
export const romanFigures = called('limbs of a row as “Limb I …”, “Limb II …”', before('Limb I', 'Limb II'))

/** Invented: number signs. */
export const numberSigns = called('limbs of a row as “Limb #1 …”, “Limb #2 …”', before('Limb #1', 'Limb #2'))

/** Invented: sides of the tree. */
export const sidesOfTheTree = called('limbs of a row as “N limb …”, “S limb …”', before('N limb', 'S limb'))

/** Invented: one above the other. */
export const lowerAndUpper = called(
  'limbs of a row as “Lower limb …”, “Upper limb …”',
  before('Lower limb', 'Upper limb')
)

/** Invented: a number in brackets at the end. */
export const numbersInBrackets = called(
  'limbs of a row by a number in brackets at the end',
  after(' (1)', ' (2)')
)

/** Invented: what a data program adds to a name that it has met before. */
export const pointOneAdded = called('a data program’s “.1” behind every repeated name', after('', '.1'))

/** Invented: what a spreadsheet's table adds to a name that it has met before. */
export const twoAdded = called('a spreadsheet table’s “2” behind every repeated name', after('', '2'))

/** Invented: German letters. */
export const germanLetters: RealInventory = {
  shape: 'Äste einer Zeile als „Ast A …“, „Ast B …“',
  file: csv(`
Baum;Baumhöhe (m);Kronenansatz (m);Altersstufe;Vitalität;Ast A Ø (cm);Ast A Stamm-Ø (cm);Ast A Ansatz (m);Ast A Spitze (m);Ast B Ø (cm);Ast B Stamm-Ø (cm);Ast B Ansatz (m);Ast B Spitze (m)
1;9,1;1,7;jung;gut;10,1;12,4;2;8,6;6,9;13,2;1,9;7,5
2;10;2;jung;gut;11,2;13,1;2,4;9,5;7,7;13,8;2,2;8,4`),
  expected: {
    units: 'cm-m',
    columns: { '': columns.replaceAll(' ft', ' m').replaceAll(' in', ' cm') },
    trees: [lime('1', ['*', '*']), plane('2', ['*', '*'])],
    mayAsk
  }
}

import { csv } from '../csvFile'
import type { RealInventory } from '../expected'
import { barkOnFirst, lime, maple, mapleTrunk, oak, oakTrunk, plane, noBark } from './trees'

/** Invented: survey answers of an online form. */
export const formQuestions: RealInventory = {
  shape: 'answers of an online form: a time stamp first, whole questions for headers',
  file: csv(`
Timestamp,Your name,What is the tree's number?,What kind of tree is it?,How tall is the tree? (feet),How high is the lowest living branch? (feet),How old is the tree?,How healthy does it look?,Which limb is it?,How thick is the limb at its base? (inches),How thick is the stem just above the limb? (inches),How high does the limb start? (feet),How high does the limb reach? (feet),Is there bark squeezed between limb and stem?
2026/05/04 9:12:33 AM,Volunteer 1,T1,Red maple,30,6,Young,Good,A,4.1,5,7,28,Yes
2026/05/04 9:15:01 AM,Volunteer 1,T1,Red maple,30,6,Young,Good,B,2.7,5.4,6.5,24,No
2026/05/04 9:31:47 AM,Volunteer 2,T2,Pin oak,33,7,Young,Good,A,4.4,5.6,8,31,No
2026/05/04 9:36:10 AM,Volunteer 2,T2,Pin oak,33,7,Young,Good,B,3.1,6,7.5,26,No`),
  expected: {
    units: 'in-ft',
    columns: {
      '': 'C tree; D species; E height ft; F crownBase ft; G stage; H vigor; I limb; J diameter in; K stem in; L origin ft; M tip ft; N bark'
    },
    trees: [barkOnFirst(maple('T1')), noBark(oak('T2'))],
    mayAsk: ['J1', 'K1', 'N1', 'G1']
  }
}

/** Invented: a school project, typed in a hurry. */
export const misspelledHeaders: RealInventory = {
  shape: 'every header misspelled',
  file: csv(`
Tre no,Specis,Hieght (ft),Crwon base (ft),Lief stage,Vigro,Lmib,Limb daimeter (in),Steam diameter (in),Orgin (ft),Tpi (ft)
T1,Red maple,30,6,young,good,A,4.1,5,7,28
T1,Red maple,30,6,young,good,B,2.7,5.4,6.5,24
T2,Pin oak,33,7,young,good,A,4.4,5.6,8,31
T2,Pin oak,33,7,young,good,B,3.1,6,7.5,26`),
  expected: {
    units: 'in-ft',
    columns: {
      '': 'A tree; B species; C height ft; D crownBase ft; E stage; F vigor; G limb; H diameter in; I stem in; J origin ft; K tip ft'
    },
    trees: [maple('T1'), oak('T2')],
    mayAsk: ['A1', 'C1', 'D1', 'E1', 'F1', 'G1', 'H1', 'I1', 'J1', 'K1']
  }
}

/** Invented: a database table, all capitals, words run together. */
export const capitalsRunTogether: RealInventory = {
  shape: 'capitals without spaces, the unit run into the name, NULL for what is not there',
  file: csv(`
OBJECTID,TREENO,SPECIESNAME,TREEHEIGHTFT,CROWNBASEFT,LIFESTAGE,VIGOR,LIMBNO,LIMBDIAIN,STEMDIAIN,LIMBORIGINFT,LIMBTIPFT,LASTEDITUSER,SHAPELENGTH
101,T1,RED MAPLE,30,6,YOUNG,GOOD,A,4.1,5,7,28,USER1,NULL
102,T1,RED MAPLE,30,6,YOUNG,GOOD,B,2.7,5.4,6.5,24,USER1,NULL
103,T2,PIN OAK,33,7,YOUNG,GOOD,A,4.4,5.6,8,31,USER1,NULL
104,T2,PIN OAK,33,7,YOUNG,GOOD,B,3.1,NULL,7.5,26,USER1,NULL`),
  expected: {
    units: 'in-ft',
    columns: {
      '': 'B tree; C species; D height ft; E crownBase ft; F stage; G vigor; H limb; I diameter in; J stem in; K origin ft; L tip ft'
    },
    trees: [
      maple('T1'),
      {
        ...oak('T2'),
        limbs: oak('T2').limbs.map((each) => (each.id === 'B' ? { ...each, stem: null } : each))
      }
    ],
    told: [['J5', 'missing']]
  }
}

/** Invented: a geographic file, whose column names may have ten letters. */
export const tenLetterNames: RealInventory = {
  shape: 'names cut to ten letters, coordinates and editors beside',
  file: csv(`
FID,TREE_NO,SPP_COMMON,DBH_IN,TREE_HT_FT,CRNBASE_FT,AGE_CLASS,VIGOR,LIMB_NO,LIMBDIA_IN,STEMDIA_IN,ORIGIN_FT,TIP_HT_FT,POINT_X,POINT_Y,CREATED_BY,CREATED_DT
0,1,Red maple,7.2,30,6,Y,G,1,4.1,5,7,28,451203.5,5101201.7,crew1,2026-05-04
1,1,Red maple,7.2,30,6,Y,G,2,2.7,5.4,6.5,24,451203.5,5101201.7,crew1,2026-05-04
2,2,Pin oak,8,33,7,Y,G,1,4.4,5.6,8,31,451240.1,5101244.2,crew1,2026-05-04
3,2,Pin oak,8,33,7,Y,G,2,3.1,6,7.5,26,451240.1,5101244.2,crew1,2026-05-04`),
  expected: {
    units: 'in-ft',
    columns: {
      '': 'B tree; C species; D trunk in; E height ft; F crownBase ft; G stage; H vigor; I limb; J diameter in; K stem in; L origin ft; M tip ft'
    },
    trees: [maple('1', ['1', '2'], mapleTrunk), oak('2', ['1', '2'], oakTrunk)]
  }
}

/** Invented: a field sheet of numbered questions. */
export const numberedHeaders: RealInventory = {
  shape: 'headers numbered like questions: “1. Tree”, “2. Height (ft)”',
  file: csv(`
1. Tree,2. Species,3. Height (ft),4. Crown base (ft),5. Life stage,6. Vigor,7. Limb,8. Limb diameter (in),9. Stem diameter above limb (in),10. Limb starts at (ft),11. Limb ends at (ft)
T1,Red maple,30,6,young,good,A,4.1,5,7,28
T1,Red maple,30,6,young,good,B,2.7,5.4,6.5,24
T2,Pin oak,33,7,young,good,A,4.4,5.6,8,31
T2,Pin oak,33,7,young,good,B,3.1,6,7.5,26`),
  expected: {
    units: 'in-ft',
    columns: {
      '': 'A tree; B species; C height ft; D crownBase ft; E stage; F vigor; G limb; H diameter in; I stem in; J origin ft; K tip ft'
    },
    trees: [maple('T1'), oak('T2')]
  }
}

/** Invented: an appendix with footnotes. */
export const footnoteMarks: RealInventory = {
  shape: 'headers with footnote marks and superscripts, the footnotes below the rows',
  file: csv(`
Tree¹,Height² (ft),Crown base³ (ft),Age*,Vigor†,Limb,Limb dia⁴ (in),Stem dia⁵ (in),Union ht (ft)‡,Tip ht§ (ft)
T1,30,6,young,good,A,4.1,5,7,28
T1,30,6,young,good,B,2.7,5.4,6.5,24
T2,33,7,young,good,A,4.4,5.6,8,31
T2,33,7,young,good,B,3.1,6,7.5,26

¹ Tag on the north side.,,,,,,,,,
² By clinometer to the nearest foot.,,,,,,,,,
"⁵ Just above the union, by tape.",,,,,,,,,`),
  expected: {
    units: 'in-ft',
    columns: {
      '': 'A tree; B height ft; C crownBase ft; D stage; E vigor; F limb; G diameter in; H stem in; I origin ft; J tip ft'
    },
    trees: [maple('T1'), oak('T2')],
    leftOut: { '7': 'note', '8': 'note', '9': 'note' }
  }
}

/** Invented: instructions kept within the headers. */
export const instructionsInHeaders: RealInventory = {
  shape: 'headers that hold the instructions: allowed answers, examples, where to measure',
  file: csv(`
"Tree (tag, e.g. T12)","Height (ft, e.g. 32.5)",Crown base (ft; lowest live branch counts),Life stage (newly planted / young / medium / mature),Vigor (good/fair/poor),"Limb (letter, lowest first)","Limb diameter: outside the collar, in inches to the nearest tenth","Stem diameter: of the parent stem just above the union, in inches","Origin: height of the union above ground, ft","Tip: height of its highest twig above ground, ft",Included bark (Y/N)
T1,30,6,young,good,A,4.1,5,7,28,Y
T1,30,6,young,good,B,2.7,5.4,6.5,24,N
T2,33,7,young,good,A,4.4,5.6,8,31,N
T2,33,7,young,good,B,3.1,6,7.5,26,N`),
  expected: {
    units: 'in-ft',
    columns: {
      '': 'A tree; B height ft; C crownBase ft; D stage; E vigor; F limb; G diameter in; H stem in; I origin ft; J tip ft; K bark'
    },
    trees: [barkOnFirst(maple('T1')), noBark(oak('T2'))],
    mayAsk: ['G1', 'H1', 'I1', 'J1']
  }
}

/** Invented: units put first or in the middle. */
export const unitsInOddPlaces: RealInventory = {
  shape: 'the unit before the name, in the middle, after a slash or a dash',
  file: csv(`
tree-id,m Höhe Baum,m / Kronenansatz,Altersstufe,Vitalität,ast-id,cm-Durchmesser Ast,Stamm-cm über Gabel,Ansatz - m,Spitze [in m]
1,9.1,1.7,jung,gut,1,10.1,12.4,2,8.6
1,9.1,1.7,jung,gut,2,6.9,13.2,1.9,7.5
2,10,2,jung,gut,1,11.2,13.1,2.4,9.5
2,10,2,jung,gut,2,7.7,13.8,2.2,8.4`),
  expected: {
    units: 'cm-m',
    columns: {
      '': 'A tree; B height m; C crownBase m; D stage; E vigor; F limb; G diameter cm; H stem cm; I origin m; J tip m'
    },
    trees: [lime('1'), plane('2')],
    mayAsk: ['B1', 'C1', 'G1', 'H1', 'I1', 'J1']
  }
}

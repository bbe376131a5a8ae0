import { csv } from '../csvFile'
import { limb, tree, type RealInventory } from '../expected'
import { workbook } from '../workbookFile'
import { lime, limeTrunk, maple, mapleTrunk, oak, oakTrunk, plane, planeTrunk, young } from './trees'

/** Invented: a phone's spreadsheet, as short as thumbs like it. */
export const phoneNotes: RealInventory = {
  shape: 'phone spreadsheet: tr, sp, ht, cb, br, br d, st d, from, to, no units',
  file: csv(`
tr,sp,dbh,ht,cb,br,br d,st d,from,to,ok?
1,maple,7.2,30,6,a,4.1,5,7,28,y
1,maple,7.2,30,6,b,2.7,5.4,6.5,24,y
2,oak,8,33,7,a,4.4,5.6,8,31,n
2,oak,8,33,7,b,3.1,6,7.5,26,y`),
  expected: {
    units: 'in-ft',
    columns: {
      '': 'A tree; B species; C trunk in; D height ft; E crownBase ft; F limb; G diameter in; H stem in; I origin ft; J tip ft; K -'
    },
    trees: [maple('1', ['a', 'b'], { trunk: 7.2 }), oak('2', ['a', 'b'], { trunk: 8 })],
    told: [['', 'unit']],
    mayAsk: ['A1', 'E1', 'F1', 'G1', 'H1']
  }
}

/** Invented: a landscape firm's work list. */
export const workList: RealInventory = {
  shape: 'landscape firm: work, crew, hours, rate and amount beside the sizes, risk words, a total',
  file: csv(`
Client,Tree,Type,Tree ht (ft),Crown base (ft),Age class,Condition,Branch,Branch dia (in),Trunk dia at branch (in),Attach ht (ft),Top of branch (ft),Work,Risk,Crew,Hrs,Rate ($),Amount ($)
Demo HOA,T1,Maple,30,6,Young,Good,A,4.1,5,7,28,reduce by half,Moderate,2,0.5,95,95
Demo HOA,T1,Maple,30,6,Young,Good,B,2.7,5.4,6.5,24,leave,Low,2,0,95,0
Demo HOA,T2,Oak,33,7,Young,Good,A,4.4,5.6,8,31,reduce by half,Moderate,2,0.75,95,142.5
Demo HOA,T2,Oak,33,7,Young,Good,B,3.1,6,7.5,26,remove,Low,2,0.25,95,47.5
,,,,,,,,,,,,,,,1.5,,285`),
  expected: {
    units: 'in-ft',
    columns: {
      '': 'A -; B tree; C species; D height ft; E crownBase ft; F stage; G vigor; H limb; I diameter in; J stem in; K origin ft; L tip ft; M -|notes; N -; O -; P -; Q -; R -'
    },
    trees: [maple('T1'), oak('T2')],
    leftOut: { '6': 'total' },
    mayAsk: ['C1', 'J1']
  }
}

/** Invented: a British consultant's schedule. */
export const britishSchedule: RealInventory = {
  shape: 'British schedule: branch and stem in millimeters “above fork”, category, remaining years',
  file: csv(`
Tree ref.,Species,Stem dia. @ 1.5 m (mm),Ht (m),Ht of lowest branch (m),Life stage,Physiological condition,Branch ref.,Branch Ø (mm),Stem Ø above fork (mm),Ht of fork (m),Ht of branch tip (m),Cat.,Rem. yrs,Prelim. recs
T1,Lime,180,9.1,1.7,Y,Good,1,101,124,2,8.6,B2,40+,Reduce
T1,Lime,180,9.1,1.7,Y,Good,2,69,132,1.9,7.5,B2,40+,-
T2,London plane,210,10,2,SM,Fair,1,112,131,2.4,9.5,A1,40+,Reduce
T2,London plane,210,10,2,SM,Fair,2,77,138,2.2,8.4,A1,40+,-`),
  expected: {
    units: 'cm-m',
    columns: {
      '': 'A tree; B species; C trunk mm; D height m; E crownBase m; F stage; G vigor; H limb; I diameter mm; J stem mm; K origin m; L tip m; M -; N -; O -|notes|treeNotes'
    },
    trees: [
      lime('T1', ['1', '2'], limeTrunk),
      plane('T2', ['1', '2'], { stage: 'medium', vigor: 'fair', trunk: 21 })
    ]
  }
}

/** Invented: an Austrian town. */
export const austrianTown: RealInventory = {
  shape: 'österreichische Gemeinde: Standort, Katasternummer, Vitalitätsstufe 0 bis 4, Stämmling',
  file: csv(`
Standort;Katasternr.;Baumnr.;Baumart;StU in cm;BHD in cm;Höhe in m;Kronenansatz in m;Kronen-Ø in m;Altersphase;Vitalitätsstufe (0-4);Stämmling/Starkast;Ø Stämmling in cm;Ø Stamm oberhalb in cm;Abgang in m;reicht bis m;eingew. Rinde
Hauptplatz;77/3;1;Winterlinde;56,5;18;9,1;1,7;5;Jugendphase;0;1;10,1;12,4;2;8,6;ja
Hauptplatz;77/3;1;Winterlinde;56,5;18;9,1;1,7;5;Jugendphase;0;2;6,9;13,2;1,9;7,5;nein
Hauptplatz;77/3;2;Platane;66;21;10;2;6;Jugendphase;0;1;11,2;13,1;2,4;9,5;nein
Hauptplatz;77/3;2;Platane;66;21;10;2;6;Jugendphase;0;2;7,7;13,8;2,2;8,4;nein`),
  expected: {
    units: 'cm-m',
    columns: {
      '': 'A site; B -; C tree; D species; E trunk|- cm; F trunk cm; G height m; H crownBase m; I spread m; J stage; K vigor|-; L limb; M diameter cm; N stem cm; O origin m; P tip m; Q bark'
    },
    trees: [
      tree(
        '1',
        9.1,
        1.7,
        { stage: 'young', trunk: 18 },
        limb('1', 10.1, 12.4, 2, 8.6, 'full'),
        limb('2', 6.9, 13.2, 1.9, 7.5, 'none')
      ),
      tree(
        '2',
        10,
        2,
        { stage: 'young', trunk: 21 },
        limb('1', 11.2, 13.1, 2.4, 9.5, 'none'),
        limb('2', 7.7, 13.8, 2.2, 8.4, 'none')
      )
    ],
    mayAsk: ['E1', 'F1', 'K1', 'L1', 'N1', 'Q1'],
    asked: ['K2']
  }
}

/** Invented: a French climber's notebook. */
export const frenchClimber: RealInventory = {
  shape: 'carnet d’un élagueur: charpentière, Ø base, Ø axe au-dessus, départ, arrivée, à faire',
  file: csv(`
Arbre n°;Essence;H totale (m);H 1re branche (m);Âge;État;Charpentière;Ø base (cm);Ø de l'axe au-dessus (cm);Départ (m);Arrivée (m);Écorce incluse;À faire
1;Tilleul;9,1;1,7;jeune;bon;1;10,1;12,4;2;8,6;oui;réduire
1;Tilleul;9,1;1,7;jeune;bon;2;6,9;13,2;1,9;7,5;non;rien
2;Platane;10;2;jeune;bon;1;11,2;13,1;2,4;9,5;non;réduire
2;Platane;10;2;jeune;bon;2;7,7;13,8;2,2;8,4;non;rien`),
  expected: {
    units: 'cm-m',
    columns: {
      '': 'A tree; B species; C height m; D crownBase m; E stage; F vigor; G limb; H diameter cm; I stem cm; J origin m; K tip m; L bark; M -|notes'
    },
    trees: [
      tree(
        '1',
        9.1,
        1.7,
        young,
        limb('1', 10.1, 12.4, 2, 8.6, 'full'),
        limb('2', 6.9, 13.2, 1.9, 7.5, 'none')
      ),
      tree('2', 10, 2, young, limb('1', 11.2, 13.1, 2.4, 9.5, 'none'), limb('2', 7.7, 13.8, 2.2, 8.4, 'none'))
    ],
    mayAsk: ['H1', 'I1', 'K1', 'G1']
  }
}

/** Invented: a Mexican park. */
export const mexicanPark: RealInventory = {
  shape: 'parque mexicano: DAP, fuste limpio, rama, grosor, nace a, llega a, sí y no',
  file: csv(`
Folio,No. de árbol,Especie,DAP (cm),Altura total (m),Fuste limpio (m),Edad,Estado,Rama,Grosor rama (cm),Grosor del tronco arriba de la rama (cm),Nace a (m),Llega a (m),Corteza incluida,Fotografía
5501,1,Tilo,18,9.1,1.7,joven,bueno,1,10.1,12.4,2,8.6,sí,IMG1
5502,1,Tilo,18,9.1,1.7,joven,bueno,2,6.9,13.2,1.9,7.5,no,IMG2
5503,2,Plátano,21,10,2,joven,bueno,1,11.2,13.1,2.4,9.5,no,IMG3
5504,2,Plátano,21,10,2,joven,bueno,2,7.7,13.8,2.2,8.4,no,IMG4`),
  expected: {
    units: 'cm-m',
    columns: {
      '': 'A -; B tree; C species; D trunk cm; E height m; F crownBase m; G stage; H vigor; I limb; J diameter cm; K stem cm; L origin m; M tip m; N bark; O -'
    },
    trees: [
      tree(
        '1',
        9.1,
        1.7,
        { ...young, trunk: 18 },
        limb('1', 10.1, 12.4, 2, 8.6, 'full'),
        limb('2', 6.9, 13.2, 1.9, 7.5, 'none')
      ),
      tree(
        '2',
        10,
        2,
        { ...young, trunk: 21 },
        limb('1', 11.2, 13.1, 2.4, 9.5, 'none'),
        limb('2', 7.7, 13.8, 2.2, 8.4, 'none')
      )
    ],
    mayAsk: ['F1', 'H1', 'J1', 'K1']
  }
}

/** Invented: a Spanish town hall, the girth of the trunk. */
export const spanishTownHall: RealInventory = {
  shape: 'ayuntamiento: perímetro del tronco, cruz, ramas en otra hoja con el mismo código',
  file: workbook([
    {
      name: 'Arbolado',
      rows: `
Ayuntamiento de Ejemplo - Arbolado viario | | | | | |
Código | Especie | Perímetro (cm) | Altura (m) | Altura de la cruz (m) | Edad | Vigor
A-001 | Tilo | 56.5 | 9.1 | 1.7 | joven | bueno
A-002 | Plátano | 66 | 10 | 2 | joven | bueno`
    },
    {
      name: 'Ramas',
      rows: `
Código | Rama nº | Ø rama (cm) | Ø tronco sobre la rama (cm) | Altura de inserción (m) | Altura de la punta (m)
A-001 | 1 | 10.1 | 12.4 | 2 | 8.6
A-001 | 2 | 6.9 | 13.2 | 1.9 | 7.5
A-002 | 1 | 11.2 | 13.1 | 2.4 | 9.5
A-002 | 2 | 7.7 | 13.8 | 2.2 | 8.4`
    }
  ]),
  expected: {
    units: 'cm-m',
    columns: {
      Arbolado: 'A tree; B species; C trunk cm girth; D height m; E crownBase m; F stage; G vigor',
      Ramas: 'A tree; B limb; C diameter cm; D stem cm; E origin m; F tip m'
    },
    trees: [
      lime('A-001', ['1', '2'], { ...young, trunk: 56.5 / Math.PI }),
      plane('A-002', ['1', '2'], { ...young, trunk: 66 / Math.PI })
    ],
    mayAsk: ['Arbolado!A2', 'Arbolado!C2', 'Arbolado!E2', 'Ramas!A1']
  }
}

/** Invented: a campus crew. */
export const campusCrew: RealInventory = {
  shape:
    'campus: building, tag, GPS in one cell, inspector, date, photo, stems counted beside the stem’s diameter',
  file: csv(`
Bldg,Tag,Common,GPS,Inspector,Date,# stems,Stem no.,DBH,Tree Ht,Crown Base,Age,Cond.,Limb,Limb Dia.,Stem Dia. Above,Limb Base Ht,Limb Top Ht,Photo
Library,T1,Red maple,"41.2031, -83.5110",K. Person,5/4/2026,1,1,7.2,30,6,Y,G,A,4.1,5,7,28,P1020
Library,T1,Red maple,"41.2031, -83.5110",K. Person,5/4/2026,1,1,7.2,30,6,Y,G,B,2.7,5.4,6.5,24,P1021
Gym,T2,Pin oak,"41.2034, -83.5114",K. Person,5/4/2026,1,1,8,33,7,Y,G,A,4.4,5.6,8,31,P1022
Gym,T2,Pin oak,"41.2034, -83.5114",K. Person,5/4/2026,1,1,8,33,7,Y,G,B,3.1,6,7.5,26,P1023`),
  expected: {
    units: 'in-ft',
    columns: {
      '': 'A site|-; B tree; C species; F -; G -; H -; I trunk in; J height ft; K crownBase ft; L stage; M vigor; N limb; O diameter in; P stem in; Q origin ft; R tip ft'
    },
    trees: [maple('T1', ['A', 'B'], mapleTrunk), oak('T2', ['A', 'B'], oakTrunk)],
    told: [['', 'unit']]
  }
}

/** Invented: German and English mixed. */
export const mixedLanguages: RealInventory = {
  shape: 'German and English mixed within one header row and within the cells',
  file: csv(`
Tree Nr.,Art,DBH cm,Höhe (m),Crown base m,Stage,Vitalität,Limb Nr.,Ast dia (cm),Stem Ø above (cm),Ansatz / origin (m),Tip Höhe (m)
1,Linde,18,9.1,1.7,jung,good,1,10.1,12.4,2,8.6
1,Linde,18,9.1,1.7,jung,good,2,6.9,13.2,1.9,7.5
2,Platane,21,10,2,young,gut,1,11.2,13.1,2.4,9.5
2,Platane,21,10,2,young,gut,2,7.7,13.8,2.2,8.4`),
  expected: {
    units: 'cm-m',
    columns: {
      '': 'A tree; B species; C trunk cm; D height m; E crownBase m; F stage; G vigor; H limb; I diameter cm; J stem cm; K origin m; L tip m'
    },
    trees: [lime('1', ['1', '2'], limeTrunk), plane('2', ['1', '2'], planeTrunk)]
  }
}

/** Invented: a statistics program's table with its own row numbers. */
export const rowNumbersFirst: RealInventory = {
  shape: 'a first column without a header that numbers the rows from 0, booleans and NaN',
  file: csv(`
,tree,height_ft,crown_base_ft,life_stage,vigor,limb,limb_diameter_in,stem_diameter_in,origin_ft,tip_ft,is_dead
0,T1,30.0,6.0,young,good,A,4.1,5.0,7.0,28.0,False
1,T1,30.0,6.0,young,good,B,2.7,5.4,6.5,24.0,False
2,T2,33.0,7.0,young,good,A,4.4,5.6,8.0,31.0,False
3,T2,33.0,7.0,young,good,B,3.1,NaN,7.5,26.0,False`),
  expected: {
    units: 'in-ft',
    columns: {
      '': 'A -; B tree; C height ft; D crownBase ft; E stage; F vigor; G limb; H diameter in; I stem in; J origin ft; K tip ft; L live'
    },
    trees: [maple('T1'), tree('T2', 33, 7, young, limb('A', 4.4, 5.6, 8, 31), limb('B', 3.1, null, 7.5, 26))],
    told: [['I5', 'number']],
    mayAsk: ['L1']
  }
}

/** Invented: a list of tags that mean nothing by themselves, explained on another sheet. */
export const codedNames: RealInventory = {
  shape: 'columns V1 to V8, explained on a sheet of their own',
  file: workbook([
    {
      name: 'Data',
      rows: `
V1 | V2 | V3 | V4 | V5 | V6 | V7 | V8
T1 | 30 | 6 | A | 4.1 | 5 | 7 | 28
T1 | 30 | 6 | B | 2.7 | 5.4 | 6.5 | 24
T2 | 33 | 7 | A | 4.4 | 5.6 | 8 | 31
T2 | 33 | 7 | B | 3.1 | 6 | 7.5 | 26`
    },
    {
      name: 'Codebook',
      rows: `
Variable | Meaning
V1 | Tree
V2 | Height (ft)
V3 | Crown base (ft)
V4 | Limb
V5 | Limb diameter (in)
V6 | Stem diameter above the union (in)
V7 | Origin height (ft)
V8 | Tip height (ft)`
    }
  ]),
  expected: {
    units: 'in-ft',
    columns: { Data: '...' },
    trees: [maple('T1', ['A', 'B'], {}), oak('T2', ['A', 'B'], {})]
  }
}

/** Invented: helper columns that a spreadsheet's owner hid. */
export const helperColumns: RealInventory = {
  shape: 'hidden helper columns: a joined key, a looked-up height in meters, a computed ratio',
  file: workbook([
    {
      name: 'Limbs',
      rows: `
Key | Tree | Height (ft) | Height m | Crown base (ft) | Life stage | Vigor | Limb | Limb dia (in) | Stem dia (in) | Ratio | Origin (ft) | Tip (ft)
=B2&"-"&H2 => T1-A | T1 | 30 | =C2*0.3048 => 9.144 | 6 | young | good | A | 4.1 | 5 | =I2/J2 => 0.82 | 7 | 28
=B3&"-"&H3 => T1-B | T1 | 30 | =C3*0.3048 => 9.144 | 6 | young | good | B | 2.7 | 5.4 | =I3/J3 => 0.5 | 6.5 | 24
=B4&"-"&H4 => T2-A | T2 | 33 | =C4*0.3048 => 10.0584 | 7 | young | good | A | 4.4 | 5.6 | =I4/J4 => 0.79 | 8 | 31
=B5&"-"&H5 => T2-B | T2 | 33 | =C5*0.3048 => 10.0584 | 7 | young | good | B | 3.1 | 6 | =I5/J5 => 0.52 | 7.5 | 26`,
      hiddenColumns: ['A', 'D', 'K']
    }
  ]),
  expected: {
    units: 'in-ft',
    columns: {
      Limbs:
        'A -; B tree; C height ft; D -; E crownBase ft; F stage; G vigor; H limb; I diameter in; J stem in; K -; L origin ft; M tip ft'
    },
    trees: [maple('T1'), oak('T2')],
    mayAsk: ['A1', 'C1', 'D1']
  }
}

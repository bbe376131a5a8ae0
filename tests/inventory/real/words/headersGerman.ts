import { phrasings, type Phrasing } from './phrasing'

const of = phrasings.bind(null, 'de')

const ofTrees: Phrasing[] = [
  ...of(
    'tree',
    `
    Baum-Nr.
    Baum Nr
    Baumnummer
    Baum-ID
    BaumID
    baum_nr
    Baumnr.
    Nr. des Baumes
    Baumkennung
    Baumplakette
    Plakettennummer
    Baum Numer
    ? Nr.
    ? Lfd. Nr.
    ? Kennung`
  ),
  ...of('tree', 'Baum\n? Nummer', { context: 'alone' }),
  ...of(
    'species',
    'Baumart\nArt\nBaumart (deutsch)\nBotanischer Name\nArt (lat.)\nGehölzart\nGattung / Art\nBaumart wiss.\nbaumart\nWissenschaftlicher Name\n? Gattung\n? Sorte'
  ),
  ...of(
    'trunk',
    `
    BHD (cm) :: cm
    BHD [cm] :: cm
    Brusthöhendurchmesser (cm) :: cm
    Brusthoehendurchmesser cm :: cm
    Stammdurchmesser (cm) :: cm
    Stamm-Ø cm :: cm
    Stammdurchm. in 1,3 m (cm) :: cm
    Stamm Ø 1,30 m (cm) :: cm
    Durchmesser Stamm (cm) :: cm
    stammdurchmesser_cm :: cm
    StammDm (cm) :: cm
    Stammdurchmeser (cm) :: cm
    ? Stammstärke (cm) :: cm`
  ),
  ...of(
    'trunk',
    `
    Stammumfang (cm) :: cm
    Stammumfang in 1 m Höhe (cm) :: cm
    StU (cm) :: cm
    Stamm-Umfang cm :: cm
    Umfang Stamm (cm) :: cm
    stammumfang_cm :: cm`,
    { measure: 'girth' }
  ),
  ...of('trunk', 'Umfang (cm) :: cm\nUmfang', { measure: 'girth', context: 'alone' }),
  ...of('trunk', 'Durchmesser (cm) :: cm', { context: 'alone' }),
  ...of(
    'height',
    `
    Baumhöhe (m) :: m
    Baumhoehe m :: m
    Gesamthöhe (m) :: m
    Höhe des Baumes (m) :: m
    Höhe Baum [m] :: m
    baumhoehe_m :: m
    BaumHöhe
    Baumhöhe¶in m :: m
    Wuchshöhe (m) :: m
    Baum-H. (m) :: m`
  ),
  ...of('height', 'Höhe (m) :: m\nHoehe\nHöhe in m :: m\nH (m) :: m', { context: 'tree group' }),
  ...of(
    'crownBase',
    `
    Kronenansatz (m) :: m
    Kronenansatzhöhe (m) :: m
    Kronenansatzhoehe m :: m
    Höhe Kronenansatz (m) :: m
    Kronenbasis (m) :: m
    kronenansatz_m :: m
    Höhe des Kronenansatzes [m] :: m
    Beginn der Krone (m) :: m
    Unterster lebender Ast (m) :: m
    Kronenunterkante (m) :: m
    Kronenansaz (m) :: m
    ? Stammhöhe bis Krone (m) :: m`
  ),
  ...of(
    'spread',
    'Kronenbreite (m) :: m\nKronendurchmesser (m) :: m\nKronen-Ø m :: m\nKronendurchm. [m] :: m\nBreite der Krone (m) :: m\nkronenbreite_m :: m'
  ),
  ...of(
    'stage',
    'Altersstufe\nAltersklasse\nEntwicklungsphase\nAlterungsphase\nEntwicklungsstufe\nLebensphase\nReifestadium\n? Alter'
  ),
  ...of(
    'vigor',
    'Vitalität\nVitalitaet\nVitalitätsstufe\nVitalitätsklasse\nZustand des Baumes\nGesundheitszustand\nvitalitaet\nVitalitat\n? Zustand'
  ),
  ...of('growth', 'Wuchskraft\nZuwachs\nWachstum\nWachstumsrate'),
  ...of(
    'removed',
    'Bereits entfernt (%) :: %\nLaub entfernt diese Saison (%) :: %\nEntnommene Blattmasse %  :: %'
  ),
  ...of(
    'clearance',
    'Lichtraumprofil (m) :: m\nLichte Höhe (m) :: m\nErforderliche Durchfahrtshöhe (m) :: m\nLichtraumhöhe m :: m'
  ),
  ...of('dieback', 'Totholzanteil Krone (%) :: %\nAbgestorbener Kronenanteil (%) :: %'),
  ...of('access', 'Zugänglichkeit\nZugang\nErreichbarkeit'),
  ...of('site', 'Standort\nStraße\nStrasse\nAdresse\nOrt\nStandort (Straße)'),
  ...of('zone', 'Bezirk\nOrtsteil\nStadtteil\nPflegebezirk\nRevier\nBereich\nStadtbezirk-Nr.'),
  ...of(
    'lastPruned',
    'Letzter Schnitt\nZuletzt geschnitten\nDatum letzter Schnitt\nLetzte Pflege (Jahr)\nletzter_schnitt'
  ),
  ...of('matureHeight', 'Endhöhe (m) :: m\nHöhe ausgewachsen (m) :: m'),
  ...of('treeNotes', 'Bemerkung Baum\nBemerkungen zum Baum\nBaum Notiz')
]

const ofLimbs: Phrasing[] = [
  ...of(
    'limb',
    'Ast\nAst-Nr.\nAstnummer\nAst Nr\nAst-ID\nast_nr\nStämmling\nStaemmling Nr.\nAstbezeichnung\nNr. des Astes\nAst / Stämmling\n? Starkast'
  ),
  ...of('limb', '? Nr.', { context: 'limb group' }),
  ...of(
    'diameter',
    `
    Ast-Ø (cm) :: cm
    Ast Ø cm :: cm
    Astdurchmesser (cm) :: cm
    Astdurchm. [cm] :: cm
    Durchmesser Ast (mm) :: mm
    Durchmesser des Astes (cm) :: cm
    Ast Dm cm :: cm
    astdurchmesser_mm :: mm
    Ast-Durchmesser an der Basis (cm) :: cm
    Stämmling-Ø (cm) :: cm
    Astdurchmeser (cm) :: cm
    ? Aststärke (cm) :: cm`
  ),
  ...of('diameter', 'Ø (cm) :: cm\nDurchmesser (cm) :: cm\nDm. cm :: cm', { context: 'limb group' }),
  ...of('diameter', 'Astumfang (cm) :: cm\nUmfang des Astes (cm) :: cm\nAst-Umfang cm :: cm', {
    measure: 'girth'
  }),
  ...of('diameter2', 'Ast-Ø 2 (cm) :: cm\nAstdurchmesser 2. Messung (cm) :: cm'),
  ...of(
    'stem',
    `
    Stm Ø ob. Gabel
    Stamm-Ø über Gabel (cm) :: cm
    Stamm-Ø ueber Vergabelung cm :: cm
    Stammdurchmesser oberhalb der Gabel (cm) :: cm
    Stammdurchmesser über Astansatz (cm) :: cm
    Stamm oberhalb Ast (cm) :: cm
    Ø Stamm an der Gabelung (cm) :: cm
    Durchmesser Stamm oberhalb (mm) :: mm
    stamm_oberhalb_mm :: mm
    Stammstärke über dem Ast (cm) :: cm
    Stammdurchm. am Astansatz (cm) :: cm
    Stammdurchmesser¶oberhalb Gabel¶(cm) :: cm
    ? Stamm am Ast (cm) :: cm`
  ),
  ...of('stem', 'Stamm-Ø (cm) :: cm\nStamm Ø cm :: cm\nStamm (cm) :: cm', { context: 'limb group' }),
  ...of('stem', 'Stammumfang über Gabel (cm) :: cm\nUmfang Stamm oberhalb Ast (cm) :: cm', {
    measure: 'girth'
  }),
  ...of(
    'stemBelow',
    'Stamm-Ø unter Gabel (cm) :: cm\nStammdurchmesser unterhalb der Gabel (cm) :: cm\nStamm unterhalb Ast cm :: cm\nstamm_unterhalb_mm :: mm'
  ),
  ...of('measured', 'Stamm gemessen über/unter\nGemessen ober-/unterhalb'),
  ...of(
    'origin',
    `
    Ansatzhöhe (m) :: m
    Ansatzhöhe Ast (m) :: m
    Astansatz (m) :: m
    Astansatzhoehe m :: m
    Höhe Astansatz (m) :: m
    Höhe der Gabel (m) :: m
    Gabelhöhe (m) :: m
    ansatzhoehe_m :: m
    Ast beginnt bei (m) :: m
    Höhe der Vergabelung [m] :: m`
  ),
  ...of('origin', 'Ansatz (m) :: m\nvon (m) :: m\nbeginnt bei (m) :: m', { context: 'limb group' }),
  ...of(
    'tip',
    `
    Spitzenhöhe (m) :: m
    Astspitze (m) :: m
    Höhe Astspitze (m) :: m
    Astspitzenhoehe m :: m
    Ast reicht bis (m) :: m
    spitze_m :: m
    Höhe der Spitze [m] :: m
    Oberkante Ast (m) :: m
    Ast endet bei (m) :: m`
  ),
  ...of('tip', 'Spitze (m) :: m\nbis (m) :: m\nreicht bis (m) :: m', { context: 'limb group' }),
  ...of('parent', 'Mutterast\nTragast\nSitzt an Ast\nElternast'),
  ...of('role', 'Rolle\nAstrolle\nFunktion des Astes\nLeittrieb / Ast'),
  ...of('breakHeight', 'Bruchhöhe (m) :: m\nAst gebrochen bei (m) :: m'),
  ...of('permanent', 'Dauerast\nDauerast (j/n)\nDauerhafter Ast\nDauerhaft / temporär'),
  ...of(
    'lowestPermanent',
    'Unterster Dauerast (m) :: m\nHöhe des untersten Dauerasts (m) :: m\nDauerkrone ab (m) :: m\nunterster_dauerast_m :: m'
  ),
  ...of(
    'bark',
    `
    Eingewachsene Rinde
    eingew. Rinde
    Rindeneinschluss
    Rinde eingewachsen (j/n)
    Rindeneinschluß
    rindeneinschluss
    Eingeschlossene Rinde
    Eingewachsne Rinde
    ? Rinde`
  ),
  ...of('angle', 'Astwinkel (Grad) :: deg\nWinkel zur Senkrechten\nWinkel (°) :: deg'),
  ...of('bearing', 'Himmelsrichtung\nRichtung des Astes\nAzimut\nAstrichtung'),
  ...of('live', 'Lebend / tot\nAst lebend?\nTot (j/n)\nAbgestorben'),
  ...of('broken', 'Gebrochen\nAst gebrochen\nBruch'),
  ...of('rubbing', 'Reibend\nReibt\nKreuzt / reibt'),
  ...of('decay', 'Fäule\nFäule oder Riss\nFaeule / Riss\nRiss'),
  ...of('length', 'Astlänge (m) :: m\nLänge des Astes (m) :: m\nastlaenge_m :: m'),
  ...of('lowestFoliage', 'Unterste Belaubung (m) :: m\nLaub des Astes beginnt bei (m) :: m'),
  ...of('lateral', 'Seitenast-Ø (cm) :: cm\nDurchmesser Seitenast (cm) :: cm'),
  ...of('cut', 'Schnittdurchmesser (cm) :: cm\nSchnitt-Ø cm :: cm\nSchnittstellendurchmesser (cm) :: cm'),
  ...of('lastCutDate', 'Letzter Schnitt am Ast\nDatum des letzten Astschnitts'),
  ...of('foliageShare', 'Laubanteil (%) :: %\nAnteil am Laub (%) :: %'),
  ...of('notes', 'Bemerkung Ast\nBemerkungen zum Ast\nNotiz zum Ast')
]

/** Run together, misspelled, lettered, or asked in a whole sentence; and words that fewer people use. */
const further: Phrasing[] = [
  ...of('crownBase', 'Höhe unterster Grünast (m) :: m\nKronenanfang (m) :: m'),
  ...of('height', 'Wipfelhöhe (m) :: m')
]

export const german: readonly Phrasing[] = [...ofTrees, ...ofLimbs, ...further]

import type { Words } from './notion'

/** Umlauts as they fold (u) and as they are typed without them (ue). */
export const german: Words = {
  tree: 'baum baeume baume baums bm einzelbaum strassenbaum pflanze geholz gehoelz exemplar',
  limb: `
    ast aste aeste asten aesten leitast starkast stammling staemmling stammlinge staemmlinge zweig
    gerustast geruestast grobast`,
  stem: 'stiel achse achs stammling staemmling',
  leader: 'leittrieb terminaltrieb mitteltrieb gipfeltrieb leitachse stammverlangerung stammverlaengerung',
  trunk: 'schaft stamm stamme staemme stm hauptstamm stammes',
  parent: `
    mutter mutterstamm tragende trag tragend eltern hauptachse tragachse ubergeordnete uebergeordnete`,
  crown: 'krone kronen',
  lateral: 'seitenast seitenaste seitenaeste seitenzweig seitentrieb zugast seitlicher.ast nebenast',
  foliage: `
    laub belaubung blatt blatter blaetter blattmasse laubmasse grunmasse gruenmasse beblatterung
    beblaetterung`,
  union: `
    gabel gabelung vergabelung zwiesel astansatz astgabel astgabelung anbindung astanbindung verzweigung
    astkragen vergabelungsstelle abzweig abzweigung`,
  bark: 'rinde rinden borke',
  diameter: 'durchmesser durchm dicke dmr dm dmesser dch starke staerke',
  size: 'grosse groesse',
  girth: 'umfang umf umfange stu astu',
  dbh: 'bhd brusthohendurchmesser brusthoehendurchmesser',
  gbh: 'bhu brusthohenumfang brusthoehenumfang',
  breast: 'brusthohe brusthoehe bh',
  caliper: 'kaliber baumschulmass',
  height: 'hohe hoch hoehe hohen hoehen h ho wuchshohe wuchshoehe wipfelhohe wipfelhoehe',
  elevation: '',
  width: 'breite ausladung',
  length: 'lange laenge lang',
  crownBase: `
    ka kah kronenansatz grunastansatz gruenastansatz`,
  above: 'oberhalb uber ueber ob ober uberhalb obere',
  aboveGround: 'uber.boden ueber.boden vom.boden uber.gelande',
  below: 'unterhalb unter untere',
  lowest: 'unterster tiefster erster niedrigster unterste tiefste erste',
  highest: 'hochster hoechster oberster hochste hoechste oberste',
  base: 'ansatz basis unterkante beginn unterseite uk fuss unteres.ende anfang',
  tip: 'spitze spitzen ende oberkante reicht ok endet gipfel wipfel oberes.ende',
  hangs: 'hangt.bis haengt.bis hangt.herab haengt.herab',
  origin: `
    ansatz ansatzhohe ansatzhoehe beginn beginnt abgang abgangs ansetzt setzt.an ansatzstelle ursprung
    entspringt astabgang ansatzpunkt startet
    anfang`,
  from: 'von ab',
  to: 'bis bis.zu',
  at: 'bei an am in auf auf.hohe auf.hoehe wo in.hohe in.hoehe',
  on: 'an auf am',
  id: `
    inventar nummer nr kennung kennzeichen lfd laufende schild.nr bezeichner kurzel kuerzel nrn num
    kennziffer buchstabe marke los partie`,
  tag: 'plakette plaketten marke',
  name: 'name bezeichnung namen benennung',
  naming: `
    botanischer deutscher deutsch wissenschaftlicher wiss lateinischer lat trivial botanisch
    wissenschaftlich lateinisch gemeiner volkstumlicher bot`,
  species: 'baumart gattung art holzart geholzart gehoelzart sorte spezies arten baumsorte baumgattung',
  kind: 'typ sorte',
  spot: 'standort',
  area: `
    strasse adresse ort lage platz str anschrift strassenname gelande stelle plz`,
  zone: `
    zone bezirk stadtbezirk stadtteil ortsteil quartier revier abschnitt sektor gebiet bereich viertel
    stadtviertel gemarkung abteilung teilgebiet teilbereich pflegebezirk ortschaft`,
  grounds: 'park parkanlage anlage grunanlage gruenanlage friedhof objekt',
  notes: 'bemerkung notiz anmerkung hinweis kommentar beobachtung bem anm vermerk',
  stage: `
    altersklasse altersstufe altersphase lebensphase entwicklungsphase reifephase alterungsphase
    entwicklungsstufe entwicklungsstadium reifestadium reifestufe lebensabschnitt altersgruppe
    wuchsphase stadium phase lebensstadium reife`,
  age: 'alter alters baumalter',
  form: 'wuchsform habitus kronenform baumform',
  vigor: `
    vitalitat vitalitaet vitalitats vitalitaets zustand gesundheit gesundheits baumzustand vital
    kondition vit vit.stufe`,
  rating: 'kategorie stufe note bewertung noten klasse beurteilung einstufung grad.der wertung',
  growth: 'zuwachs wachstum wuchs dickenzuwachs wuchskraft triebzuwachs wachstums wuchsleistung',
  rate: `
    rate klasse stufe jahrlich jaehrlich jahrlicher jaehrlicher geschwindigkeit leistung pro.jahr
    je.jahr`,
  live: 'lebend lebendig gruner gruen grun',
  dead: 'tot toter totes totholz abgestorben abgestorbener durr duerr totast',
  status: 'status stand',
  dieback: 'absterben zurucksterben zuruecksterben totholzanteil verlichtung kronenverlichtung absterbe',
  mature: `
    endhohe endhoehe endgrosse endgroesse ausgewachsen ausgewachsener endgultig reif erreichbare
    zu.erwartende erwartete erwachsen`,
  clearance: `
    lichtraum lichtraumprofil durchfahrtshohe durchfahrtshoehe durchgangshohe durchgangshoehe
    lichtraumhohe lichtraumhoehe freiraum aufastung aufastungshohe`,
  clear: 'lichte licht frei freie',
  needed: `
    erforderlich benotigt benoetigt soll notig noetig notwendig gefordert geforderte vorgeschrieben
    mindest bedarf`,
  side: 'seite seiten',
  bearing: 'himmelsrichtung richtung azimut ausrichtung kompass orientierung',
  aspect: 'exposition',
  angle: 'winkel neigung neigungswinkel',
  lean: 'schiefstand schraglage schraeglage neigt',
  vertical: 'lotrecht senkrechte senkrecht vertikale vertikal lot',
  access: 'zugang zuganglichkeit zugaenglichkeit erreichbarkeit zufahrt erreichbar zuganglich anfahrbarkeit',
  included: 'eingewachsen einwuchs eingeschlossen einschluss eingewachsne eingew eingeklemmt eingerollt',
  includedBark: 'rindeneinschluss rindeneinwuchs eingewachsene einwachsend einwachsende.rinde druckzwiesel',
  parentOn: `
    entspringt.aus entspringt.an sitzt.an wachst.aus waechst.aus kommt.aus wachst.an sitzt.auf
    entspringt.von`,
  role: 'rolle funktion aufgabe rang',
  temporary: 'temporar temporaer zeitweilig',
  permanent: 'dauerhaft dauerast dauerkrone permanent bleibend',
  broken: 'gebrochen bruch abgebrochen angebrochen astbruch ausgebrochen hangend haengend',
  rubbing: 'reibend reibt kreuzend kreuzt reibung scheuert scheuernd reibe',
  decay: 'faule faeule riss hohlung hoehlung morsch faulnis faeulnis risse faul gerissen',
  cut: 'schnitt schnittstelle schnitte astschnitt schnittflache schnittstellen schnittwunde',
  pruned: `
    geschnitten schnittmassnahme pflege gepflegt schnitt pflegeschnitt baumschnitt kronenpflege
    beschnitten baumpflege`,
  last: 'letzter letzte letztes zuletzt vorheriger vorige letztmals letztmalig',
  date: 'datum tag dat',
  year: 'jahr jahre',
  share: 'anteil prozent proz anteile',
  removed: 'entnommen entfernt entnahme weggenommen abgenommen entnommene',
  already: 'bereits schon',
  season: 'saison dieses.jahr vegetationsperiode heuer diesjahrig wuchsperiode',
  limit: `
    grenze obergrenze hochstens hoechstens limit grenzwert maximal zulassig zulaessig max erlaubt
    hochstmass`,
  local: 'ortlich oertlich satzung ortlicher kommunal baumschutzsatzung lokal',
  visit: 'besuch',
  existing: 'aktuell aktuelle derzeit vorhanden bestehend',
  inYear: '',
  second: 'zweite zweiter zweites',
  total: 'gesamt gesamte ges insgesamt ganz',
  observed: 'beobachtet geschatzt geschaetzt',
  measured: 'gemessen messung messstelle messpunkt mess',
  proposed: 'geplant vorgesehen vorgeschlagen',
  caliperHeight: '',
  elsewhere: `
    am.boden auf.boden bodenhohe bodenhoehe stammfuss am.stammfuss stockhohe stockhoehe wurzelhals
    am.wurzelhals`,
  key: '',
  forkHeight: '',
  small: '',
  tall: '',
  thing: `
    maschine gerat geraet hubsteiger hebebuhne bordstein gehweg schild mast laterne gebaude gebaeude
    haus wand zaun leitung freileitung pfahl stubben wurzel rohr baumrost rost mulch baumscheibe hecke
    baumgrube pflanzgrube topf ballen wurzelballen seil wunde leiter nest kabel stutze auto parkplatz
    fahrbahn fahrrad bank brucke tor treppe dach fenster kanal schacht gully hydrant ampel poller mauer
    kronensicherung gurt anker schraube hohlraum gestell geruest oberleitung lampe leuchte
    verkehrszeichen stumpf hausnummer hausnr hsnr pflock stamm.schutz rasen teich carport garage nachbar
    nachbarbaum benachbart`,
  money: 'preis kosten betrag wert gehalt rechnungsbetrag honorar gebuhr gebuehr budget euro mwst',
  person: `
    kunde eigentumer eigentuemer prufer pruefer kontrolleur bearbeiter telefon email erfasser gutachter
    auftraggeber aufgenommen.von erfasst.von kolonne team ansprechpartner handy fax besitzer firma`,
  geo: `
    rechtswert hochwert breitengrad langengrad laengengrad koordinate nn uber.nn meereshohe gelandehohe
    hohenlage ostwert nordwert geokoordinate`,
  planting: `
    gepflanzt pflanz pflanzung pflanzjahr pflanzdatum baujahr pflanztiefe pflanzabstand standzeit
    baujahrs
    ersetzt ersatz ersatzbaum`,
  nursery: 'baumschule baumschul baumschulware',
  inspection: `
    kontrolle aufnahme begehung aufnahmedatum besichtigung prufung pruefung regelkontrolle nachste
    naechste inspektion erfassung erfassungs aufnahmetag kontroll eingabe`,
  record: `
    foto bild rechnung rechnungs auftrag auftrags flurstuck flurstueck datei lieferschein grundstuck
    grundbuch kataster akte akten karte plan vertrag anlage.nr flur aktenzeichen legende`,
  quantity: `
    abstand entfernung tiefe gewicht volumen flache flaeche qm radius gefalle feuchte schlankheitsgrad
    verhaltnis verhaeltnis stunden dauer menge wind
    klima winterharte winterhaerte
    starkster staerkster dickster grosster groesster starkste staerkste dickste grosste groesste`,
  work: `
    bearbeitung bearbeitungs massnahme dringlichkeit prioritat prioritaet risiko gefahr
    verkehrssicherheit bewasserung bewaesserung denkmal naturdenkmal schutz schutzstatus krankheit
    schadling schaedling pilz befall bearbeitungsstand verkehrssicherungs schaden
    nach.schnitt nach.pflege`,
  ground: 'boden bodenart belag untergrund nutzung bodentyp bodenbelag substrat',
  count: 'anzahl stuckzahl stueckzahl wieviele zahl.der',
  noise: `
    wann wo der uber.boden ueber.boden vom.boden uber.gelande uber.erdboden vorhandensein dt die das den
    dem des ein eine einer eines einem einen und oder mit zu zum zur vom im je pro ca etwa circa
    mittlere mittlerer mittel durchschnittliche aktuell aktuelle derzeit vorhanden genau ja nein wert.in
    angabe angaben daten feld ist wird wie welche welcher diese dieser dieses zz zum.zeitpunkt sich es
    punkt hauptsachlich allgemeiner allgemein nur jeweils jetzt mm.in des.jeweiligen messwert werte
    stelle`
}

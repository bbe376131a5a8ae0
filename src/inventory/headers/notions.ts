/**
 * What the words of a header stand for. A notion is one idea that headers are built from: "Stem diameter above union" is
 * stem, diameter, above, union, in whatever order or language it is written. Words are given folded: lower case, without
 * accents, "ß" as "ss"; a word of several parts is tried before its parts. German umlauts are listed as they fold (u) and
 * as they are typed without them (ue).
 *
 * Each list is ordered English, German, French, Spanish. Common trade use, no source.
 */
export const notionWords = {
  tree: 'tree trees|baum baeume|arbre arbres|arbol arboles',
  limb: 'limb limbs branch branches scaffold scaffolds bough br brnch lmb|ast aste aeste leitast starkast seitenast|branche branches charpentiere|rama ramas brazo',
  stem: 'stem stems stm|stammling stammlinge stiel|tige tiges|fuste tallo tallos',
  trunk:
    'trunk trunks bole main.stem main.trunk central.leader leader|stamm hauptstamm mutterstamm|tronc troncs fut|tronco troncos',
  parent: 'parent carrying bearing.limb parent.stem|mutterast tragast tragende|porteuse mere porteur|madre principal',
  diameter:
    'diameter diameters dia diam diams d thickness caliper.of ø ⌀ dm|durchmesser durchm dicke dmr|diametre diametres epaisseur|diametro diametros grosor',
  girth:
    'girth girths circumference circ circumf gbh cbh|umfang stammumfang umf|circonference circonf circo|circunferencia perimetro contorno',
  dbh: 'dbh breast breast.height d.b.h diameter.at.breast.height|bhd brusthohe brusthoehe|dhp hauteur.de.poitrine poitrine|dap altura.de.pecho pecho',
  caliper: 'caliper calliper calipers|kaliber|calibre|calibre',
  height: 'height heights ht hgt hght h elevation agl|hohe hoehe hohen|hauteur hauteurs haut|altura alturas alt',
  width: 'width spread wide|breite|largeur envergure|ancho anchura',
  length: 'length long len|lange laenge|longueur long|longitud largo',
  crownBase: 'hlc htlc hcb hblc cbh.ht clb lcb|ka kah|hbh hph|hbc',
  crown: 'crown canopy head|krone kronen|houppier couronne cime.du.houppier|copa corona',
  base: 'base bottom|ansatz basis unterkante|base bas|base',
  union:
    'union fork crotch junction attachment.point collar at.union|gabel gabelung vergabelung zwiesel astansatz|fourche insertion enfourchement|horquilla union insercion bifurcacion',
  above: 'above over just.above abv|oberhalb uber ueber ob|dessus au.dessus|encima arriba sobre por.encima',
  below: 'below under beneath just.below blw|unterhalb unter|dessous au.dessous sous|debajo bajo por.debajo',
  lowest: 'lowest low first bottommost lower start.of|unterster unterste unterstes tiefster tiefste erster erste erstes|basse plus.basse premiere premier bas.du|baja mas.baja primera primer inferior',
  highest: 'highest uppermost topmost|hochster hoechster oberste|haute plus.haute|alta mas.alta superior',
  live: 'live living alive green lv status|lebend lebende lebender gruner grune|vivant vivante vivantes vif vert|viva vivo verde',
  dead: 'dead deadwood dieback.of.wood|tot tote totes totholz|mort morte bois.mort|muerta muerto seca',
  foliage: 'foliage leaf leaves leafing lf|laub belaubung blatter blaetter|feuillage feuilles|follaje hojas',
  tip: 'tip tips top tops reach reaches end ends uppermost.point apex|spitze astspitze ende oberkante reicht|pointe extremite cime sommet bout atteint|punta extremo alcanza llega',
  origin:
    'origin origins start starts begin begins emerges leaves.trunk attached attachment attaches attach arises|ansatzhohe ansatzhoehe beginn beginnt abgang|depart naissance origine debut|origen inicio nace arranque comienza',
  id: 'id ids no nr num number nbr # tag tags code label identifier ref reference uid|nummer nummern kennung kennzeichen baumnummer|numero numeros num identifiant etiquette code matricule|numero num codigo etiqueta placa identificador',
  name: 'name names|name bezeichnung|nom|nombre',
  species:
    'species sp spp taxon taxa genus botanical botanic latin scientific common.name cultivar variety tree.type type.of.tree|baumart gattung art botanischer artname holzart|essence espece especes nom.latin|especie especies variedad',
  kind: 'kind type|sorte typ|type sorte|tipo clase',
  stage:
    'stage life.stage age ageclass age.class maturity.class growth.stage|alter altersklasse altersstufe altersphase lebensphase entwicklungsphase reifephase|age stade classe.dage stade.de.developpement|edad etapa fase clase.de.edad madurez',
  vigor:
    'vigor vigour vitality health condition cond healthiness|vitalitat vitalitaet wuchskraft zustand gesundheit|vigueur vitalite etat sante|vigor vitalidad estado salud condicion',
  growth: 'growth grows increment growing|zuwachs wachstum wuchs dickenzuwachs|croissance accroissement|crecimiento incremento',
  rate: 'rate class per.year annual yearly speed|rate klasse jahrlich jaehrlich jahr|taux classe annuel annuelle|tasa clase anual',
  clearance:
    'clearance clear clr clearances headroom|lichtraum lichtraumprofil durchfahrtshohe lichte durchgangshohe|gabarit degagement|galibo despeje gálibo',
  needed: 'needed required req reqd desired target wanted|erforderlich erforderliche benotigt soll notig|requis requise necessaire voulu demande exige|requerido requerida necesario necesaria exigido',
  side: 'side sides|seite seiten|cote|lado',
  bearing: 'bearing compass azimuth azi direction orientation quadrant|himmelsrichtung richtung azimut ausrichtung|orientation azimut cap direction|rumbo orientacion azimut direccion',
  aspect: 'aspect exposure facing|exposition lage|exposition|exposicion',
  angle: 'angle inclination degrees|winkel neigung|angle inclinaison|angulo inclinacion',
  lean: 'lean leaning|schiefstand|penche|inclinado',
  vertical: 'vertical plumb upright|lotrecht senkrechte vertikale|verticale|vertical',
  bark: 'bark|rinde|ecorce|corteza',
  included: 'included inclusion incl inc embedded ingrown|eingewachsene eingewachsen einwuchs eingeschlossene|incluse inclusion entre.ecorce incluses|incluida inclusion',
  parentOn: 'grows.from comes.from arises.from on.limb|entspringt|issue.de|sale.de nace.de',
  role: 'role function purpose|rolle funktion|role fonction|papel funcion',
  permanent: 'permanent perm keep|bleibend dauerhaft|permanente|permanente',
  broken: 'broken break breakage torn snapped hanger hanging|gebrochen bruch abgebrochen|cassee casse rompue rupture|rota quebrada rotura',
  rubbing: 'rubbing rubs rub crossing crosses cross|reibend reibt kreuzend|frottante frotte croisee|roza rozando cruzada',
  decay: 'decay decayed rot rotten crack cracks cracked cavity cavities hollow split|faule faeule riss hohlung hoehlung morsch|pourriture carie fissure cavite|pudricion grieta cavidad podredumbre',
  dieback: 'dieback die.back|absterben zurucksterben dürre|deperissement descente.de.cime|muerte.regresiva puntas.secas',
  lateral: 'lateral laterals side.branch subordinate.branch|seitenzweig seitentrieb zugast|laterale rameau tire.seve|lateral ramal tirasavia',
  cut: 'cut cuts cutting pruning.cut|schnitt schnitte schnittstelle|coupe coupes taille.de|corte cortes',
  measured: 'measured measure measurement meas taken|gemessen messung messstelle|mesure mesuree|medido medida',
  proposed: 'proposed planned recommended|geplant vorgesehen|propose prevue|propuesto previsto',
  last: 'last previous latest prior visit|letzter letzte letztes|dernier derniere|ultimo ultima',
  pruned: 'pruned pruning prune prunned trimmed|geschnitten schnittmassnahme pflege gepflegt|taillee taille elagage elague|podado poda',
  date: 'date dates when day|datum wann|date quand|fecha cuando',
  year: 'year yr years|jahr|annee an|ano',
  share: 'share portion fraction proportion percent percentage pct %|anteil prozent|part pourcentage proportion|porcentaje proporcion parte cuota',
  removed: 'removed removal taken.off took|entnommen entfernt entnahme|enleve retire enlevement|retirado eliminado quitado',
  already: 'already|bereits schon|deja|ya',
  season: 'season this.season this.year|saison dieses.jahr vegetationsperiode|saison cette.annee|temporada este.ano',
  limit: 'limit max maximum cap ceiling|grenze obergrenze hochstens|limite maximum plafond|limite maximo',
  local: 'local ordinance city bylaw|ortlich oertlich satzung|local locale reglement|local ordenanza',
  access: 'access accessibility|zugang zuganglichkeit erreichbarkeit|acces accessibilite|acceso accesibilidad',
  site: 'site location street address place road park block zone area situ lot|standort strasse adresse ort lage.des|emplacement rue adresse lieu site|sitio ubicacion calle direccion.postal lugar',
  mature: 'mature maturity eventual ultimate final|endhohe endgrosse ausgewachsen|adulte terme|adulta final madura',
  notes: 'note notes remark remarks comment comments memo observations obs|bemerkung bemerkungen notiz notizen anmerkung anmerkungen hinweis|remarque remarques note notes commentaire commentaires observation|nota notas observaciones comentarios comentario',
  second: 'second 2nd 2 b other.way|zweite zweiter zweites|deuxieme second|segunda segundo',
  total: 'total overall full whole|gesamt gesamte|totale total|total',
  observed: 'observed estimated visual|beobachtet geschatzt|observee estimee|observada estimada',
  form: 'form habit architecture|wuchsform habitus kronenform|port forme|porte forma',
  count: 'count how.many quantity qty|anzahl|nombre.de|cantidad',
  at: 'at height.of|bei in.hohe||'
} as const

export type Notion = keyof typeof notionWords

/** Small words that carry nothing here. */
export const noiseWords =
  'of the a an at to for in on from is it its and or by with per de du des la le les l d un une der die das den dem des am im ein eine el los las del al en y o et ou und von vom zum zur bis en sur au aux a por para con just own est approx ca about ab where what how point field value data info reading meas. ground level grade above.ground the.ground'.split(
    ' '
  )

/**
 * Words that tell that a column is about something else: furniture of the street, money, people, the planting. A header
 * with one of them names no field, whatever else it says.
 */
export const decoyWords =
  ('kerb curb grate sign signs pavement paving sidewalk footpath footway mulch distance dist setback offset building house wall fence wire wires ' +
    'powerline line lines pole lamp light utility price cost fee charge invoice amount rate.card budget paid value.of tax phone tel email mail fax contact client customer ' +
    'owner inspector surveyor surveyed assessor arborist crew photo photos picture image file url link lat latitude lon long.itude longitude gps utm easting northing ' +
    'planted planting plant.date nursery supplier soil ph irrigation stake stakes tie ties guard root roots rootball pit volume weight hours hrs minutes ' +
    'priority urgency risk rating score hazard target.type occupancy permit tpo protected heritage status.of order job work task quote estimate ' +
    'window door car parking lane traffic speed bench bin shelter hydrant manhole sewer drain gutter roof solar panel tank well pond pool bridge step steps gate.width ' +
    'bordstein gehweg abstand entfernung schild mast laterne preis kosten rechnung betrag telefon foto bild pflanzjahr pflanzdatum gepflanzt boden bewasserung pfahl ' +
    'gebaude haus wand zaun leitung freileitung kunde eigentumer prufer kontrolleur ' +
    'trottoir bordure panneau poteau lampadaire distance prix cout facture montant telephone photo plantation plante sol arrosage tuteur batiment maison mur cloture ligne client proprietaire inspecteur ' +
    'bordillo acera senal poste farola distancia precio coste costo factura importe telefono foto plantado plantacion suelo riego tutor edificio casa muro valla linea cliente propietario inspector').split(
    ' '
  )

import { phrasings, type Phrasing } from './phrasing'

const of = phrasings.bind(null, 'fr')

const ofTrees: Phrasing[] = [
  ...of(
    'tree',
    "N° arbre\nNo d'arbre\nNuméro de l'arbre\nNumero arbre\nID arbre\nidArbre\narbre_id\nRéf. arbre\nIdentifiant de l'arbre\nN° d’arbre\n? N°\n? Réf.\n? Identifiant"
  ),
  ...of('tree', 'Arbre', { context: 'alone' }),
  ...of(
    'species',
    "Essence\nEspèce\nEspece\nNom commun\nNom scientifique\nNom latin\nEspèce d'arbre\nnom_scientifique\nGenre / espèce\n? Genre\n? Variété"
  ),
  ...of(
    'trunk',
    `
    DHP (cm) :: cm
    Diamètre à hauteur de poitrine (cm) :: cm
    Diamètre du tronc (cm) :: cm
    Diametre tronc cm :: cm
    Diam. tronc (cm) :: cm
    Ø tronc (cm) :: cm
    Diamètre à 1,30 m (cm) :: cm
    Diam. à 1,3 m (cm) :: cm
    diam_tronc_cm :: cm
    Diamêtre du tronc (cm) :: cm
    ? D130 (cm) :: cm
    ? Grosseur du tronc (cm) :: cm`
  ),
  ...of(
    'trunk',
    'Circonférence du tronc (cm) :: cm\nCirconférence à 1,30 m (cm) :: cm\nCirconference tronc cm :: cm\nCirc. tronc (cm) :: cm\ncirconf_tronc_cm :: cm',
    { measure: 'girth' }
  ),
  ...of('trunk', 'Circonférence (cm) :: cm\nCirc. (cm) :: cm', { measure: 'girth', context: 'alone' }),
  ...of('trunk', 'Diamètre (cm) :: cm', { context: 'alone' }),
  ...of(
    'height',
    "Hauteur totale (m) :: m\nHauteur de l'arbre (m) :: m\nHauteur arbre m :: m\nHt. totale (m) :: m\nHaut. arbre (m) :: m\nhauteur_arbre_m :: m\nHauteur¶de l'arbre (m) :: m\nhauteurTotaleM :: m\nHautuer totale (m) :: m"
  ),
  ...of('height', 'Hauteur (m) :: m\nHaut. (m) :: m\nHauteur\nH (m) :: m', { context: 'tree group' }),
  ...of(
    'crownBase',
    `
    Hauteur de la base du houppier (m) :: m
    Base du houppier (m) :: m
    Hauteur base houppier m :: m
    Base de la couronne (m) :: m
    Hauteur première branche vivante (m) :: m
    Première branche vivante (m) :: m
    base_houppier_m :: m
    Ht base du houppier (m) :: m
    Début du houppier (m) :: m
    Bas de la couronne (m) :: m
    ? Hauteur sous houppier (m) :: m
    ? Hauteur du fût (m) :: m`
  ),
  ...of(
    'spread',
    'Diamètre du houppier (m) :: m\nLargeur de la couronne (m) :: m\nDiam. couronne (m) :: m\nEnvergure (m) :: m\nlargeur_houppier_m :: m'
  ),
  ...of(
    'stage',
    "Stade de développement\nStade\nClasse d'âge\nStade physiologique\nstade_developpement\nClasse d'age\nStade de vie\n? Âge"
  ),
  ...of(
    'vigor',
    "Vigueur\nVitalité\nÉtat sanitaire\nEtat sanitaire\nÉtat physiologique\nSanté de l'arbre\n? État"
  ),
  ...of('growth', 'Croissance\nVitesse de croissance\nTaux de croissance'),
  ...of('removed', 'Feuillage retiré cette saison (%) :: %\nFeuillage déjà enlevé (%) :: %'),
  ...of(
    'clearance',
    'Dégagement requis (m) :: m\nGabarit nécessaire (m) :: m\nHauteur libre requise (m) :: m\nDégagement nécessaire m :: m'
  ),
  ...of('dieback', 'Dépérissement (%) :: %\nDescente de cime (%) :: %\nDépérissement du houppier (%) :: %'),
  ...of('access', 'Accès\nAccès au site\nAccessibilité'),
  ...of('site', 'Emplacement\nRue\nAdresse\nLieu\nSite'),
  ...of('zone', 'Quartier\nSecteur\nZone\nArrondissement\nN° de secteur'),
  ...of(
    'lastPruned',
    'Dernière taille\nDate de la dernière taille\nAnnée dernier élagage\nDernier élagage\nderniere_taille'
  ),
  ...of('matureHeight', 'Hauteur à maturité (m) :: m\nHauteur adulte (m) :: m'),
  ...of('treeNotes', "Remarques arbre\nObservations sur l'arbre\nNotes (arbre)")
]

const ofLimbs: Phrasing[] = [
  ...of(
    'limb',
    'Branche\nN° branche\nNo de branche\nID branche\nbranche_id\nCharpentière\nCharpentiere\nN° de charpentière\nRéf. branche\nNom de la branche'
  ),
  ...of('limb', '? N°', { context: 'limb group' }),
  ...of(
    'diameter',
    `
    Diamètre branche (cm) :: cm
    Diamètre de la branche (cm) :: cm
    Diametre branche cm :: cm
    Diam. branche (mm) :: mm
    Ø branche (cm) :: cm
    Diam. br. (cm) :: cm
    diam_branche_mm :: mm
    Diamètre à la base de la branche (cm) :: cm
    Diamètre charpentière (cm) :: cm
    diamBrancheCm :: cm
    Diamètre brnache (cm) :: cm
    ? Grosseur branche (cm) :: cm`
  ),
  ...of('diameter', 'Diamètre (cm) :: cm\nDiam. (cm) :: cm\nØ cm :: cm', { context: 'limb group' }),
  ...of('diameter', 'Circonférence branche (cm) :: cm\nCirc. de la branche (cm) :: cm', { measure: 'girth' }),
  ...of('diameter2', 'Diamètre branche 2 (cm) :: cm\nDiam. branche, 2e mesure (cm) :: cm'),
  ...of(
    'stem',
    `
    Diamètre du tronc au-dessus de la fourche (cm) :: cm
    Diam. tronc au-dessus (cm) :: cm
    Tronc au-dessus de l'union (cm) :: cm
    Tronc au dessus de la fourche cm :: cm
    Ø tige au-dessus de l'union (cm) :: cm
    Diamètre de la tige au-dessus (cm) :: cm
    Diamètre tige à l'union (cm) :: cm
    Diam. axe au-dessus de l'insertion (cm) :: cm
    tronc_dessus_mm :: mm
    Diamètre de l'axe porteur (cm) :: cm
    Diamètre du tronc¶au-dessus de l'insertion¶(cm) :: cm
    Tige porteuse, diamètre (cm) :: cm
    ? Tronc à la branche (cm) :: cm`
  ),
  ...of('stem', 'Tige (cm) :: cm\nDiam. tige (cm) :: cm\nØ tige cm :: cm', { context: 'limb group' }),
  ...of('stem', "Circonférence du tronc au-dessus de l'union (cm) :: cm\nCirc. tige au-dessus (cm) :: cm", {
    measure: 'girth'
  }),
  ...of(
    'stemBelow',
    "Tronc sous la fourche (cm) :: cm\nDiamètre du tronc en dessous de l'union (cm) :: cm\nDiam. tige au-dessous (cm) :: cm\ntronc_dessous_mm :: mm"
  ),
  ...of('measured', 'Tronc mesuré au-dessus / au-dessous\nMesuré dessus ou dessous'),
  ...of(
    'origin',
    `
    Hauteur d'insertion (m) :: m
    Hauteur d’insertion m :: m
    Insertion (m) :: m
    Hauteur de la fourche (m) :: m
    Hauteur d'attache (m) :: m
    Haut. d'origine (m) :: m
    hauteur_insertion_m :: m
    Origine de la branche (m) :: m
    La branche part à (m) :: m
    Point d'attache (m) :: m`
  ),
  ...of('origin', 'Origine (m) :: m\n? De (m) :: m\nDépart (m) :: m', { context: 'limb group' }),
  ...of(
    'tip',
    `
    Hauteur de l'extrémité (m) :: m
    Hauteur du bout (m) :: m
    Extrémité de la branche (m) :: m
    Extremite m :: m
    Sommet de la branche (m) :: m
    hauteur_extremite_m :: m
    Haut de la branche (m) :: m
    La branche monte à (m) :: m
    Cime de la branche (m) :: m`
  ),
  ...of('tip', 'Extrémité (m) :: m\n? À (m) :: m\nSommet (m) :: m', { context: 'limb group' }),
  ...of('parent', 'Branche mère\nBranche porteuse'),
  ...of('role', 'Rôle\nRôle de la branche\nFonction de la branche'),
  ...of('breakHeight', 'Hauteur de la cassure (m) :: m\nBranche cassée à (m) :: m'),
  ...of('permanent', 'Permanente (o/n)\nBranche permanente\nBranche définitive\nTemporaire ou permanente'),
  ...of(
    'lowestPermanent',
    'Branche permanente la plus basse (m) :: m\nHauteur de la première branche définitive (m) :: m\nBranches permanentes à partir de (m) :: m'
  ),
  ...of(
    'bark',
    'Écorce incluse\nEcorce incluse\nÉcorce incluse (O/N)\nInclusion d’écorce\necorce_incluse\nEcorce inclue\n? Écorce\n? Inclusion'
  ),
  ...of(
    'angle',
    "Angle par rapport à la verticale\nAngle de la branche (°) :: deg\nAngle d'insertion (degrés) :: deg"
  ),
  ...of('bearing', 'Orientation de la branche\nAzimut\nDirection de la branche'),
  ...of('live', 'Vivante ou morte\nVivant / mort\nBranche morte (O/N)'),
  ...of('broken', 'Cassée\nBranche cassée\nRompue'),
  ...of('rubbing', 'Frottement\nBranche qui frotte\nCroisée / frotte'),
  ...of('decay', 'Pourriture\nPourriture ou fissure\nFissure'),
  ...of('length', 'Longueur de la branche (m) :: m\nLong. branche (m) :: m\nlongueur_branche_m :: m'),
  ...of('lowestFoliage', 'Feuillage le plus bas (m) :: m\nBas du feuillage de la branche (m) :: m'),
  ...of('lateral', 'Diamètre du rameau latéral (cm) :: cm\nDiamètre latérale (cm) :: cm'),
  ...of('cut', 'Diamètre de coupe (cm) :: cm\nDiam. de la coupe (cm) :: cm'),
  ...of('lastCutDate', 'Date de la dernière coupe\nDernière coupe de la branche'),
  ...of('foliageShare', 'Part du feuillage (%) :: %\nProportion de feuillage (%) :: %'),
  ...of('notes', 'Remarques branche\nNotes sur la branche\nObservations branche')
]

/** Run together, misspelled, lettered, or asked in a whole sentence; and words that fewer people use. */
const further: Phrasing[] = [...of('tip', 'Arrivée (m) :: m', { context: 'limb group' })]

export const french: readonly Phrasing[] = [...ofTrees, ...ofLimbs, ...further]

import type { Words } from './notion'

export const french: Words = {
  tree: 'arbre plante sujet pied vegetal',
  limb: 'branche branche.maitresse charpentiere rameau.principal br membre brch',
  stem: 'tige axe',
  leader: 'fleche axe.principal axe.central leader tige.principale',
  trunk: 'tronc fut',
  parent: 'porteur porteuse mere support portant',
  crown: 'houppier couronne cime ramure',
  lateral: `
    lateral laterale rameau ramification tire.seve branche.secondaire rameau.lateral branche.laterale`,
  foliage: 'feuillage feuille feuillaison masse.foliaire foliaire',
  union: `
    fourche insertion enfourchement union jonction embranchement bifurcation attache collet.de.branche
    point.d.attache`,
  bark: 'ecorce',
  diameter: 'diametre diam epaisseur diamtre diametr',
  size: 'grosseur taille dimension section grosseurs',
  girth: 'circonference circonf circo circ tour perimetre pourtour',
  dbh: 'dhp diametre.a.hauteur.de.poitrine d130 d1 d13',
  gbh: 'chp c130 circonference.a.hauteur.de.poitrine c13',
  breast: 'hauteur.de.poitrine poitrine hauteur.d.homme hauteur.poitrine',
  caliper: 'calibre',
  height: 'hauteur haut ht haute h',
  elevation: '',
  width: 'largeur envergure etalement',
  length: 'longueur long longr',
  crownBase: `
    hbh hph hbhv premier.rameau 1er.rameau premier.rameau.vivant 1er.rameau.vivant premier.rameau.vert 1er.rameau.vert
    rameau.vivant.le.plus.bas rameau.vert.le.plus.bas premiere.ramification.vivante 1re.ramification.vivante
    1ere.ramification.vivante`,
  above: 'dessus au.dessus au.dessus.de par.dessus sur sup',
  aboveGround: 'au.dessus.du.sol dessus.du.sol',
  below: 'dessous au.dessous en.dessous sous inf',
  lowest: 'basse bas plus.basse plus.bas premiere premier 1re 1ere 1er inferieur inferieure',
  highest: 'haute haut plus.haut plus.haute superieur superieure',
  base: 'basal basale base bas pied debut',
  tip: 'pointe extremite cime sommet bout atteint monte.a monte fin termine arrivee',
  hangs: 'descend pend retombe',
  origin: 'depart naissance origine debut attache insertion part commence nait demarre attachee emerge',
  from: 'a.partir a.partir.de a.partir.du de depuis des du',
  to: 'a jusque jusqua jusqu vers arrivee',
  at: 'a au aux en ou a.la',
  on: 'sur',
  id: 'identification numero num no identifiant code matricule repere ref reference lettre ordre lot',
  tag: 'plaque plaquette etiquette',
  name: 'nom designation libelle denomination',
  naming: 'commun scientifique latin botanique vernaculaire francais usuel',
  species: 'essence espece genre variete cultivar taxon nom.latin',
  kind: 'type sorte genre',
  spot: 'site',
  area: `
    emplacement rue adresse lieu.dit lieu localisation avenue boulevard commune place voie routier
    situation troncon`,
  zone: 'zone secteur quartier arrondissement canton district aire sous.secteur ilot',
  grounds: 'parc cimetiere domaine square jardin',
  notes: 'remarque note commentaire observation annotation rem obs',
  stage: `
    stade classe.dage classe.d.age classe.age stade.de.developpement phase etape stade.de.vie
    developpement maturite stade.evolutif stade.d.evolution evolution age.class`,
  age: 'age',
  form: 'port forme',
  vigor: 'vigueur vitalite etat sante condition etat.sanitaire etat.physiologique',
  rating: 'categorie note cote indice.de cotation classement',
  growth: 'croissance accroissement pousse',
  rate: 'taux classe annuel annuelle vitesse rythme par.an',
  live: 'vivant vivante vif vive vert verte en.vie',
  dead: 'mort morte bois.mort sec seche',
  status: 'statut',
  dieback: 'deperissement descente.de.cime descente mortalite dessechement',
  mature: 'adulte definitive definitif terme maturite finale a.terme attendue',
  clearance: 'gabarit degagement hauteur.libre tirant.d.air garde.au.sol',
  clear: 'libre',
  needed:
    'requis requise necessaire voulu voulue demande exige exigee minimale minimal souhaite degager respecter assurer garantir obtenir',
  side: 'cote cotes',
  bearing: 'orientation azimut cap direction boussole',
  aspect: 'exposition',
  angle: 'angle inclinaison',
  lean: 'penche incline devers',
  vertical: 'vertical verticale aplomb',
  access: 'acces accessibilite accessible',
  included: 'incluse inclus inclusion entre incl inclue',
  includedBark: 'ecorce.incluse inclusion.d.ecorce inclusion.ecorce entre.ecorce',
  parentOn: `
    issue.de issu.de attachee.a attache.a portee.par inseree.sur pousse.sur part.de.la.branche nait.de
    rattachee.a`,
  role: 'role fonction rang',
  temporary: 'temporaire provisoire',
  permanent: 'permanente permanent definitive definitif',
  broken: 'casse cassee cassure rompu rompue rupture brise brisee arrache bris',
  rubbing: 'frottement frotte frottante croise croisee croisement frottant',
  decay: 'pourriture carie fissure cavite pourri fente creux',
  cut: 'coupe section.de.coupe plaie.de.taille',
  pruned: 'taille elagage elague taillee coupe.d.entretien',
  last: 'dernier derniere precedent precedente',
  date: 'date jour',
  year: 'annee an',
  share: 'part pourcentage proportion fraction pourcent quote.part',
  removed: 'enleve retire enlevement retrait supprime prelevement preleve ote suppression',
  already: 'deja',
  season: 'saison cette.annee cette.saison',
  limit: 'limite maximum plafond max maximal maximale autorise autorisee admis',
  local: 'local locale reglement municipal communal arrete',
  visit: 'visite passage intervention',
  existing: 'actuel actuelle existant existante',
  inYear: '',
  second: 'deuxieme second seconde 2e 2eme',
  total: 'total totale complet complete globale',
  observed: 'observe estime visuel',
  measured: 'mesure mesuree mesurage',
  proposed: 'propose prevu prevue envisage',
  caliperHeight: '',
  elsewhere: 'au.sol au.pied au.collet a.la.base.du.tronc au.niveau.du.sol',
  key: '',
  forkHeight: '',
  small: '',
  tall: '',
  thing: `
    engin vehicule machine nacelle trottoir bordure panneau poteau lampadaire batiment maison mur
    cloture ligne grille tuteur souche tuyau paillis paillage racine motte pot bac fosse haie corde
    cable echelle nid plaie cavite.de banc pont toit fenetre porte voiture stationnement chaussee abri
    borne regard egout hauban vis boulon ancrage barriere portail muret lampe luminaire feu cuve fil
    reseau store auvent pelouse terrasse balcon garage voisin voisine`,
  money: 'prix cout montant facture valeur tarif budget euro tva cout.estime devis frais',
  person: `
    client proprietaire inspecteur releve.par telephone email courriel mesure.par saisi.par technicien
    agent equipe contact elagueur gestionnaire responsable par auteur`,
  geo: 'latitude longitude altitude coordonnee coord ngf cote.ngf lambert',
  planting: 'plantation plante.le annee.de.plantation plantee plante.en remplace remplacement',
  nursery: 'pepiniere',
  inspection: 'inspection releve controle prochaine prochain diagnostic saisie mise.a.jour expertise',
  record: `
    photo image parcelle cadastre commande bon.de.commande fichier lien dossier bon plan permis contrat
    piece video legende`,
  quantity: `
    distance espacement profondeur poids volume surface rayon rapport pente eloignement recul
    vitesse.du.vent vitesse.limite heures duree ecart
    climatique rusticite zone.racinaire zone.de.protection
    plus.grosse plus.gros plus.grande plus.grand`,
  work: `
    travaux priorite urgence risque danger cible arrosage maladie ravageur champignon traitement
    protection remarquable classe.de.risque ouvrage chantier degat
    apres.taille apres.coupe apres.elagage`,
  ground: 'sol revetement type.de.sol substrat couvert couverture',
  count: 'nombre nb nbre combien quantite',
  noise: `
    juste directement immediatement dessus.du.sol au.dessus.du.sol par.rapport.au.sol presence phytosanitaire evolution quand ou le la
    les l d un une des du de et avec par rapport pour en au aux a que qui quel quelle dans son sa ses
    leur est se moyen moyenne env environ approx approximatif actuel actuelle present presente point
    vers juste oui non par.rapport sanitaire physiologique general generale dont plus niveau vie
    hauteur.du.sol estimee champ donnee donnees total.e au.niveau principale principal`
}

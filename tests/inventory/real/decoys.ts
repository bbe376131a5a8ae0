import type { Field } from '../../../shared/columns'
import type { Language } from './words/phrasing'

/**
 * Columns that stand in tree inventories and are not the plan's: taking one for a field plans from the wrong numbers, the
 * worst that a reader can do. Ours, from how the trade keeps its lists (common practice, no source).
 */
export interface Decoy {
  language: Language
  header: string
  /** What stands under it, repeated down the rows. */
  values: readonly string[]
  group: 'tree' | 'limb'
  /** The field it looks like: its own column is left out, so that the place is free and the wish to fill it great. */
  tempts: Field | null
  /** It may be meant: taken with a question at its header it passes, taken silently it does not. */
  ambiguous: boolean
}

const values = {
  year: ['1998', '2011', '2004', '2016'],
  date: ['2026-05-04', '2026-05-05', '2026-05-05', '2026-05-07'],
  money: ['120.00', '85.50', '240.00', '60.00'],
  small: ['1', '2', '1', '3'],
  tens: ['12', '8', '20', '15'],
  meters: ['3.5', '6.2', '1.8', '4.4'],
  feet: ['12', '20', '6', '14'],
  inches: ['4', '6', '3', '5'],
  centimeters: ['10', '15', '8', '12'],
  phone: ['555-0101', '555-0102', '555-0103', '555-0104'],
  latitude: ['41.20311', '41.20342', '41.20377', '41.20390'],
  longitude: ['-83.51102', '-83.51140', '-83.51188', '-83.51201'],
  grid: ['451203.5', '451240.1', '451266.8', '451290.0'],
  person: ['A. Person', 'B. Person', 'A. Person', 'B. Person'],
  photo: ['IMG_0101.jpg', 'IMG_0102.jpg', 'IMG_0103.jpg', 'IMG_0104.jpg'],
  work: ['open', 'done', 'open', 'open'],
  place: ['street', 'park', 'street', 'yard'],
  parity: ['odd', 'even', 'odd', 'even'],
  light: ['sunny', 'shaded', 'sunny', 'half shade'],
  soil: ['clay', 'loam', 'sand', 'loam'],
  yesNo: ['yes', 'no', 'no', 'yes'],
  risk: ['low', 'low', 'medium', 'low'],
  code: ['K-17', 'K-18', 'K-22', 'K-31']
} as const

type Values = keyof typeof values

/** Decoys in lines: `Grate diameter (in) > trunk` tempts the trunk, a leading `? ` marks what may be meant. */
function decoy(language: Language, group: Decoy['group'], kind: Values, lines: string): Decoy[] {
  return lines
    .split('\n')
    .filter((line) => line.trim() !== '')
    .map((line) => {
      const [words = '', tempts] = line.trim().split(' > ')
      return {
        language,
        header: words.replace(/^\? /, ''),
        values: values[kind],
        group,
        tempts: (tempts ?? null) as Field | null,
        ambiguous: words.startsWith('? ')
      }
    })
}

const english = [
  ...decoy(
    'en',
    'tree',
    'inches',
    'Kerb height (in) > height\nCurb height (in)\nMulch depth (in)\nRoot flare depth (in) > caliper\nStake diameter (in) > trunk\nPavement lift (in)\nSoil depth (in)\nPipe diameter (in) > trunk\nStump diameter (in) > trunk\nRoot diameter (in) > trunk\nCable diameter (in)\nCavity width (in)'
  ),
  ...decoy(
    'en',
    'tree',
    'tens',
    'Grate diameter (in) > trunk\nTree grate size (in) > trunk\nRoot ball diameter (in) > trunk\nPit width (in)\nPot size (gal)\nRadius of root zone (ft)\nSpeed limit\nHouse number > tree\nWind zone\nHardiness zone'
  ),
  ...decoy(
    'en',
    'tree',
    'feet',
    'Sign height (ft) > height\nLight pole height (ft) > height\nWire height (ft) > height\nBuilding height (ft) > height\nDistance to building (ft) > spread\nDist. to kerb (ft) > crownBase\nSetback (ft)\nPavement width (ft) > spread\nStreet width (ft) > spread\nPlanting strip width (ft) > spread\nSpacing (ft)\nSight line height (ft)\nLadder height (ft) > height\nCavity height (ft) > origin\nHeight of cavity (ft) > crownBase\nDistance to hydrant (ft)\nBench height (ft)\nHedge height (ft) > height\nElevation (ft) > height\nFence height (ft) > height\nHeight of sign above ground (ft)\nAwning height (ft) > clearance\nCable height (ft) > origin\nStake height (ft)'
  ),
  ...decoy(
    'en',
    'tree',
    'year',
    'Year planted > tree\nPlanted\nPlanting year\nYear of survey\nYr installed\nYear built'
  ),
  ...decoy(
    'en',
    'tree',
    'date',
    'Planting date > lastPruned\nInspection date > lastPruned\nSurvey date > lastPruned\nDate measured > lastPruned\nNext inspection > lastPruned\nDate watered\nDate entered\nLast inspected > lastPruned'
  ),
  ...decoy(
    'en',
    'tree',
    'money',
    'Price\nCost ($)\nInvoice\nEst. cost\nAppraised value ($)\nUnit price\nReplacement value\nCost of limb removal ($) > removed\nBudget'
  ),
  ...decoy('en', 'tree', 'phone', "Phone\nOwner's phone\nTel. no. > tree"),
  ...decoy('en', 'tree', 'latitude', 'Lat\nGPS lat\nLatitude\nY_COORD\nGPS y'),
  ...decoy('en', 'tree', 'longitude', 'Lon\nLong.\nLongitude\nX_COORD\nGPS x'),
  ...decoy('en', 'tree', 'person', 'Inspector\nSurveyed by\nOwner\nCrew leader > role\nArborist\nContact'),
  ...decoy('en', 'tree', 'photo', 'Photo\nPhoto of limb > limb\nPicture no. > tree\nImage file'),
  ...decoy(
    'en',
    'tree',
    'work',
    'Status > live\nWork status > live\nWork order status\nPermit status > live'
  ),
  ...decoy('en', 'tree', 'place', 'Type > role\nLand use\nSite type\nPlanting space type > role'),
  ...decoy('en', 'tree', 'parity', 'Side > clearanceSide\nSide of street > clearanceSide'),
  ...decoy('en', 'tree', 'light', 'Aspect > bearing\nExposure > bearing'),
  ...decoy('en', 'tree', 'soil', 'Soil\nSoil type\nGround cover'),
  ...decoy(
    'en',
    'tree',
    'yesNo',
    'Irrigated\nTarget present\nWires overhead\nStaked\nGirdling roots\nHeritage tree > tree\nOwner notified\nSidewalk broken > broken\nKerb cracked > decay\nFence removed > removed\nBird nest'
  ),
  ...decoy(
    'en',
    'tree',
    'yesNo',
    'Permanent irrigation > permanent\nPermanent plot > permanent\nPermanent road closure > permanent\nTemporary fence > permanent\nPermanent address\nPermanent residents > permanent'
  ),
  ...decoy('en', 'limb', 'yesNo', 'Temporary tag > permanent\nPermanent wound > permanent'),
  ...decoy('en', 'tree', 'code', 'Permanent tag > permanent\nPermanent label > permanent'),
  ...decoy(
    'en',
    'tree',
    'feet',
    'Lowest permanent sign (ft) > lowestPermanent\nPermanent easement (ft) > lowestPermanent\nPermanent light height (ft) > lowestPermanent'
  ),
  ...decoy(
    'en',
    'tree',
    'risk',
    'Risk\nPavement condition > vigor\nSoil condition > vigor\nSidewalk health > vigor\nPriority'
  ),
  ...decoy(
    'en',
    'tree',
    'code',
    'Invoice no. > tree\nWork order no. > tree\nParcel ID > tree\nCadastral ref\nPO number > tree\nPole no. > tree\nHydrant ID > tree'
  ),
  ...decoy(
    'en',
    'tree',
    'small',
    'Count\nNo. of visits\nQty\nNumber of limbs > limb\nLimb count > limb\nNo. of nests'
  ),
  ...decoy(
    'en',
    'limb',
    'inches',
    '? Base diameter (in) > diameter\n? Base dia. > diameter\nCavity diameter (in) > diameter\nRope diameter (in) > diameter\nWound diameter (in) > diameter\n? Diameter 1 m out (in) > diameter\nBolt diameter (in) > diameter\nSwelling diameter (in)\nCollar swelling (in)'
  ),
  ...decoy(
    'en',
    'limb',
    'feet',
    'Distance to roof (ft) > length\nDistance to wire (ft) > length\nHeight of nest (ft) > origin\nTie-in height (ft) > origin\nCable attachment height (ft) > origin\nDrop zone (ft)\n? Height 2 (ft) > tip'
  ),
  ...decoy('en', 'limb', 'code', 'Photo ref > limb\nTask no. > limb\nCable no. > limb'),
  // At the ground, planned, wished for or another year's: no size that is there at the union today.
  ...decoy(
    'en',
    'limb',
    'inches',
    'Stem dia at ground (in) > stem\nStem dia at base of tree (in) > stem\nStem dia at soil line (in) > stem\nStem diameter at the root collar (in) > stem\nProposed limb dia (in) > diameter\n? Cut diameter planned (in) > cut\n? Cut diameter proposed (in) > cut\n? Limb dia 2023 (in) > diameter\nDead % > live'
  ),
  ...decoy('en', 'limb', 'feet', 'Tip after cut (ft) > tip'),
  ...decoy(
    'en',
    'tree',
    'feet',
    'Proposed height (ft) > height\nTarget height (ft) > height\nHeight after pruning (ft) > height\nCrown base after pruning (ft) > crownBase'
  ),
  ...decoy(
    'en',
    'tree',
    'inches',
    'Trunk dia at ground (in) > trunk\nLargest limb dia (in) > diameter\nDBH SD > trunk'
  ),
  ...decoy('en', 'tree', 'small', 'Trees on site > site\nUSDA zone > zone\nTime zone > zone'),
  ...decoy(
    'en',
    'tree',
    'feet',
    'Root zone (ft) > zone\nTree protection zone > zone\nDrop zone radius (ft) > zone'
  ),
  ...decoy('en', 'tree', 'meters', 'Area (m2) > zone\nBed area > zone'),
  ...decoy('en', 'tree', 'code', 'Replaces tree > tree')
]

const german = [
  ...decoy(
    'de',
    'tree',
    'centimeters',
    'Bordsteinhöhe (cm) > height\nMulchdicke (cm)\nPfahldurchmesser (cm) > trunk\nRohrdurchmesser (cm) > trunk\nStubbendurchmesser (cm) > trunk\nWurzeldurchmesser (cm) > trunk\nBaumrost-Ø (cm) > trunk\nPflanztiefe (cm)'
  ),
  ...decoy(
    'de',
    'tree',
    'meters',
    'Abstand zum Gebäude (m) > spread\nGebäudehöhe (m) > height\nSchildhöhe (m) > height\nLaternenhöhe (m) > height\nGehwegbreite (m) > spread\nStraßenbreite (m) > spread\nHöhe über NN (m) > height\nHöhe der Höhlung (m) > origin\nBaumscheibe (m²)\nAbstand zur Straße (m) > crownBase\nZaunhöhe (m) > height\nPflanzabstand (m) > spread'
  ),
  ...decoy('de', 'tree', 'year', 'Pflanzjahr > tree\nBaujahr'),
  ...decoy(
    'de',
    'tree',
    'date',
    'Pflanzdatum > lastPruned\nDatum der Kontrolle > lastPruned\nAufnahmedatum > lastPruned\nNächste Kontrolle > lastPruned'
  ),
  ...decoy('de', 'tree', 'money', 'Preis (€)\nKosten\nRechnungsbetrag\nWert (€)'),
  ...decoy('de', 'tree', 'code', 'Rechnungsnr. > tree\nAuftragsnummer > tree\nFlurstück > tree'),
  ...decoy('de', 'tree', 'person', 'Kontrolleur\nEigentümer\nAufgenommen von'),
  ...decoy('de', 'tree', 'work', 'Status > live\nBearbeitungsstand > live'),
  ...decoy('de', 'tree', 'soil', 'Bodenart > species\nBelag'),
  ...decoy('de', 'tree', 'phone', 'Telefon > tree'),
  ...decoy('de', 'tree', 'photo', 'Foto\nBild-Nr. > tree'),
  ...decoy('de', 'tree', 'grid', 'Rechtswert\nHochwert > height'),
  ...decoy('de', 'tree', 'small', 'Anzahl Äste > limb'),
  ...decoy('de', 'limb', 'centimeters', 'Stammdurchmesser am Boden (cm) > stem')
]

const french = [
  ...decoy(
    'fr',
    'tree',
    'centimeters',
    'Hauteur de bordure (cm) > height\nÉpaisseur de paillis (cm)\nDiamètre de la grille (cm) > trunk\nDiamètre du tuteur (cm) > trunk\nDiamètre de la souche (cm) > trunk\nDiamètre du tuyau (cm) > trunk\nProfondeur du sol (cm)'
  ),
  ...decoy(
    'fr',
    'tree',
    'meters',
    'Distance au bâtiment (m) > spread\nHauteur du bâtiment (m) > height\nHauteur du lampadaire (m) > height\nHauteur du panneau (m) > height\nLargeur du trottoir (m) > spread\nLargeur de la rue (m) > spread\nAltitude (m) > height\nHauteur de la cavité (m) > origin\nEspacement (m)\nDistance à la bordure (m) > crownBase\nHauteur de la clôture (m) > height'
  ),
  ...decoy('fr', 'tree', 'year', 'Année de plantation > tree'),
  ...decoy(
    'fr',
    'tree',
    'date',
    "Date de plantation > lastPruned\nDate d'inspection > lastPruned\nDate du relevé > lastPruned\nProchaine visite > lastPruned"
  ),
  ...decoy('fr', 'tree', 'money', 'Prix (€)\nCoût\nMontant facturé'),
  ...decoy('fr', 'tree', 'code', 'N° de facture > tree\nN° de parcelle > tree\nBon de commande'),
  ...decoy('fr', 'tree', 'person', 'Inspecteur\nPropriétaire\nRelevé par'),
  ...decoy('fr', 'tree', 'work', 'Statut > live\nÉtat des travaux > vigor'),
  ...decoy('fr', 'tree', 'soil', 'Sol\nType de sol > role'),
  ...decoy('fr', 'tree', 'phone', 'Téléphone > tree'),
  ...decoy('fr', 'tree', 'small', 'Nombre de branches > limb'),
  ...decoy('fr', 'limb', 'centimeters', 'Diamètre de l’axe au sol (cm) > stem')
]

const spanish = [
  ...decoy(
    'es',
    'tree',
    'centimeters',
    'Altura del bordillo (cm) > height\nEspesor del mantillo (cm)\nDiámetro del alcorque (cm) > trunk\nDiámetro del tutor (cm) > trunk\nDiámetro del tocón (cm) > trunk\nDiámetro de la tubería (cm) > trunk\nProfundidad del suelo (cm)'
  ),
  ...decoy(
    'es',
    'tree',
    'meters',
    'Distancia al edificio (m) > spread\nAltura del edificio (m) > height\nAltura de la farola (m) > height\nAltura de la señal (m) > height\nAncho de acera (m) > spread\nAncho de la calle (m) > spread\nAltitud (m) > height\nAltura de la cavidad (m) > origin\nSeparación (m)\nDistancia al bordillo (m) > crownBase\nAltura de la valla (m) > height'
  ),
  ...decoy('es', 'tree', 'year', 'Año de plantación > tree'),
  ...decoy(
    'es',
    'tree',
    'date',
    'Fecha de plantación > lastPruned\nFecha de inspección > lastPruned\nPróxima revisión > lastPruned'
  ),
  ...decoy('es', 'tree', 'money', 'Precio (€)\nCoste\nImporte de factura'),
  ...decoy('es', 'tree', 'code', 'N.º de factura > tree\nParcela > tree'),
  ...decoy('es', 'tree', 'person', 'Inspector\nPropietario'),
  ...decoy('es', 'tree', 'work', 'Estado de la obra > vigor\nEstatus > live'),
  ...decoy('es', 'tree', 'soil', 'Suelo\nTipo de suelo > role'),
  ...decoy('es', 'tree', 'phone', 'Teléfono > tree'),
  ...decoy('es', 'tree', 'small', 'Número de ramas > limb')
]

export const decoys: readonly Decoy[] = [...english, ...german, ...french, ...spanish]

import { phrasings, type Phrasing } from '../words/phrasing'

const en = phrasings.bind(null, 'en')
const de = phrasings.bind(null, 'de')
const fr = phrasings.bind(null, 'fr')
const es = phrasings.bind(null, 'es')

/** Further headers that people may write, ours, from how the trade speaks (common practice, no source). */
export const moreHeaders: readonly Phrasing[] = [
  ...en(
    'tree',
    'Tree (tag no.)\nInventory no.\nTree code\nTREE_NUM_\nTree’s number\n? Specimen\nUnique tree ID',
    {
      context: 'alone'
    }
  ),
  ...en('species', 'Kind of tree\nSpecies (botanical)\nSPECIES_CD\nTree sp.\n? Name (Latin)'),
  ...en(
    'trunk',
    'DBH@4.5ft (in) :: in\nd.b.h., inches :: in\nDia. at 4.5 ft (in) :: in\nTrunk Ø at breast ht (in) :: in'
  ),
  ...en(
    'height',
    'Tree total ht., ft :: ft\nHow tall (ft) :: ft\nHeight of tree in feet :: ft\nHGT_FT :: ft'
  ),
  ...en(
    'crownBase',
    'Ht to live crown (ft) :: ft\nHeight to first live branch (ft) :: ft\nHLB (ft) :: ft\nCrown starts (ft) :: ft'
  ),
  ...en('limb', 'branchNo\n? Leader/limb\nSubject limb'),
  ...en(
    'diameter',
    'Limb caliper (in) :: in\nDia. of limb @ collar (in) :: in\nbranch diam (in.) :: in\nLimb thickness, inches :: in\nLIMB_DIAM_IN :: in\nBranch Ø in :: in'
  ),
  ...en(
    'stem',
    'Parent stem dia. (in) :: in\nStem dia just past union (in) :: in\nTrunk dia. above attachment (in) :: in\nStem above branch (in) :: in\nParent dia at crotch (in) :: in\nDia of trunk above limb (in) :: in\nSTEM_ABV_IN :: in\nstemDiaAboveUnionIn :: in'
  ),
  ...en('stem', 'Girth of stem above union (in) :: in\nStem circ. above limb (in) :: in', {
    measure: 'girth'
  }),
  ...en(
    'origin',
    'Union height above ground (ft) :: ft\nHt of attachment (ft) :: ft\nComes off trunk at (ft) :: ft\nLimb height at trunk (ft) :: ft\nBranch base ht (ft) :: ft\nCrotch ht. (ft) :: ft\nATTACH_HT_FT :: ft'
  ),
  ...en(
    'tip',
    'Limb top (ft) :: ft\nGoes up to (ft) :: ft\nHt of limb end (ft) :: ft\nLimb reaches to (ft) :: ft\nTop of limb ht (ft) :: ft\nend_ht_ft :: ft'
  ),
  ...en('bark', 'Bark incl. (N/P/F)\nIncl. bark?\nBark in crotch'),
  ...en('stage', 'Age stage\nLife phase'),
  ...en('vigor', 'Vigour class\nVitality rating\nHealth (G/F/P)'),
  ...en('spread', 'Canopy width, ft :: ft\nDripline diameter (ft) :: ft'),
  ...en('lastPruned', 'Date of last pruning\nPruned last (yr)\nLast trimmed'),
  ...de('tree', 'Baum lfd. Nr.\nBaum-Code\nInventarnummer Baum\n? Objekt-Nr.'),
  ...de('height', 'Höhe Baum in m :: m\nWipfelhöhe (m) :: m\nBaumh. [m] :: m'),
  ...de(
    'crownBase',
    'Ansatz der Krone (m) :: m\nHöhe unterster Grünast (m) :: m\nHöhe Kronenansatz [m] :: m\nKronenanfang (m) :: m'
  ),
  ...de(
    'diameter',
    'Dm Ast (cm) :: cm\nAststärke an der Basis (cm) :: cm\nAst-Durchm. cm :: cm\nD_Ast_cm :: cm'
  ),
  ...de(
    'stem',
    'Stamm-Dm über Astgabel (cm) :: cm\nØ Stamm oberhalb Astansatz (cm) :: cm\nStammdm. oberhalb (cm) :: cm\nStamm über Zwiesel Ø (cm) :: cm'
  ),
  ...de('origin', 'Ansatz in m :: m'),
  ...de('tip', 'Astende in m :: m\nOberes Ende (m) :: m'),
  ...de('bark', 'Eingeschl. Rinde\nRinde eingew.'),
  ...fr('height', 'H arbre (m) :: m\nHauteur tot. (m) :: m\nHauteur de l’arbre en m :: m'),
  ...fr('crownBase', 'H 1re branche verte (m) :: m\nBase du feuillage (m) :: m\nDépart du houppier (m) :: m'),
  ...fr('diameter', 'Diam. de branche à la base (cm) :: cm\nGrosseur de la branche (cm) :: cm'),
  ...fr(
    'stem',
    'Ø tronc au-dessus de la branche (cm) :: cm\nDiam. axe au-dessus insertion (cm) :: cm\nDiamètre de l’axe porteur (cm) :: cm\nTige après fourche (cm) :: cm'
  ),
  ...fr('origin', 'Hauteur de départ (m) :: m\nHaut. insertion branche (m) :: m\nPart à (m) :: m'),
  ...fr('tip', 'Monte jusqu’à (m) :: m\nArrivée (m) :: m'),
  ...fr('bark', 'Écorce incl.'),
  ...es('height', 'Alt. árbol (m) :: m\nAltura total en m :: m\nAlto del árbol (m) :: m'),
  ...es('crownBase', ''),
  ...es('diameter', 'Ø de la rama (cm) :: cm\nDiam. rama cm :: cm'),
  ...es(
    'stem',
    'Ø tronco encima de la rama (cm) :: cm\nDiám. eje sobre la unión (cm) :: cm\nTronco arriba de la rama (cm) :: cm\nDiámetro del fuste sobre la horquilla (cm) :: cm'
  ),
  ...es('origin', 'Altura de nacimiento (m) :: m\nSale a (m) :: m\nAltura del nudo (m) :: m'),
  ...es('tip', 'Altura máxima de la rama (m) :: m\nLlega hasta (m) :: m'),
  ...es('bark', 'Corteza incl.\n¿Corteza incluida?')
]

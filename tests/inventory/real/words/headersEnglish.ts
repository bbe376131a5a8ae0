import { phrasings, type Phrasing } from './phrasing'

const of = phrasings.bind(null, 'en')

const ofTrees: Phrasing[] = [
  ...of(
    'tree',
    `
    Tree ID
    Tree #
    Tree No.
    Tree Nr
    TREE_ID
    treeId
    Tree tag no.
    Tag #
    Tag number
    Tree Ref
    Tree ref. no.
    Tree identifier
    Site_ID
    Plant ID
    ID of tree
    Tree label
    tree_num
    Tree¶No.
    Asset ID (tree)
    ? ID
    ? No.
    ? #
    ? Ref
    Tre ID`
  ),
  ...of('tree', 'Tree\n? Tag\n? Number\n? Ref no.', { context: 'alone' }),
  ...of(
    'species',
    `
    Species name
    Sp.
    SPP
    Scientific name
    Botanical Name
    Latin name
    Common name
    common_name
    Tree species (common)
    Taxon
    Genus / species
    Genus species
    Tree kind
    Spp. code
    Species code
    Tree type (species)
    Speceis
    ? Genus
    ? Cultivar
    ? Variety`
  ),
  ...of(
    'trunk',
    `
    DBH_in :: in
    DBH (in.) :: in
    DBH, inches :: in
    dbh cm :: cm
    DBH/mm :: mm
    D.B.H. (") :: in
    d.b.h. (in) :: in
    dbhIn :: in
    dbh_cm :: cm
    Diam. at breast ht (cm) :: cm
    Diameter at 4.5 ft (in) :: in
    Diameter breast height
    Diameter @ 1.3 m (cm) :: cm
    Trunk Diam (in) :: in
    Trunk dia, cm :: cm
    trunk_diameter_mm :: mm
    TrunkDia (in) :: in
    Trunk Ø (cm) :: cm
    Trunk thickness at breast height (in) :: in
    Tree diameter at breast height [cm] :: cm
    Tree DBH - inches :: in
    Dia. of trunk (in) :: in
    Main trunk diameter (DBH)
    Stem diameter at 1.5 m (mm) :: mm
    Trunk daimeter (in) :: in
    ? Tree diameter (in) :: in
    ? Trunk size (in) :: in`
  ),
  ...of('trunk', 'Dia. (in) :: in\nDiameter\nDiam (cm) :: cm\n? Size (in) :: in', { context: 'alone' }),
  ...of(
    'trunk',
    `
    Trunk girth (cm) :: cm
    Girth at breast height (cm) :: cm
    GBH cm :: cm
    CBH (in) :: in
    Trunk circumference (in) :: in
    trunk_circ_cm :: cm
    Circumference of trunk at 1.3 m (cm) :: cm
    Girth @ 1.5m (mm) :: mm
    Trunk circumf., inches :: in`,
    { measure: 'girth' }
  ),
  ...of('trunk', 'Girth (cm) :: cm\nGirth\nCircumference (in) :: in', { context: 'alone', measure: 'girth' }),
  ...of(
    'height',
    `
    Tree height (ft) :: ft
    Tree Ht. (m) :: m
    TREE_HT_FT :: ft
    treeHeightM :: m
    Overall height (ft) :: ft
    Overall ht, m :: m
    Total tree height [m] :: m
    Height of tree (ft) :: ft
    Total Ht
    Ht. of tree, feet :: ft
    Top height of tree (m) :: m
    H_tot (m) :: m
    Tree  height  (ft.) :: ft
    Tree¶height¶(ft) :: ft
    Tree hieght (ft) :: ft
    Est. tree height (ft) :: ft`
  ),
  ...of('height', 'Height (ft) :: ft\nHt. (m) :: m\nHT\nHt (ft) :: ft\nHeight in feet :: ft\nheight_m :: m', {
    context: 'tree group'
  }),
  ...of('height', 'Height\nHgt (ft) :: ft\nHt\n? H (m) :: m', { context: 'alone' }),
  ...of(
    'crownBase',
    `
    Crown base height (ft) :: ft
    LCR base
    Ht. to crown base, ft :: ft
    HCB (m) :: m
    Height to live crown (ft) :: ft
    Ht to base of live crown (ft) :: ft
    Base of live crown (m) :: m
    Live crown base ht (ft) :: ft
    crown_base_ht_ft :: ft
    crownBaseM :: m
    Canopy base height (ft) :: ft
    Lowest live branch (ft) :: ft
    Height of lowest live branch (m) :: m
    Crown starts at (ft) :: ft
    Crown begins (ft) :: ft
    Bottom of crown (ft) :: ft
    Underside of crown, m :: m
    ? Lower crown height (m) :: m
    Lowest foliage of tree (ft) :: ft
    Base of canopy (m) :: m
    Crown bse ht (ft) :: ft
    ? HLC (m) :: m
    ? Crown clearance (m) :: m
    ? First live branch (ft) :: ft
    ? Crown height above ground (m) :: m`
  ),
  ...of(
    'spread',
    `
    Crown spread (ft) :: ft
    Canopy width, m :: m
    Crown dia. (ft) :: ft
    crown_spread_ft :: ft
    Canopy diameter (m) :: m
    Avg crown width (ft) :: ft
    Average spread (m) :: m
    Crown diameter [m] :: m
    Spread of crown, feet :: ft`
  ),
  ...of(
    'stage',
    `
    Life stage
    Life Stage (Y/SM/M)
    Age class
    AGE_CLASS
    ageClass
    Maturity class
    Stage of life
    Tree age class
    Growth stage
    Development stage
    Developmental phase
    ? Age`
  ),
  ...of(
    'vigor',
    `
    Vigour
    Tree vigor
    Vigor class
    Vitality
    Tree health
    Health condition
    Health rating
    COND
    Tree condition
    Condition class
    Physiological condition
    Overall condition
    vigor_rating
    Condition (G/F/P)
    ? Rating
    ? Cond. score`
  ),
  ...of(
    'growth',
    'Growth rate\nGrowth class\nRate of growth\nAnnual diameter growth (in) :: in\ngrowth_rate'
  ),
  ...of(
    'removed',
    `
    Foliage removed this season (%) :: %
    Foliage already removed %  :: %
    % foliage removed this year :: %
    Live crown removed this season
    Already pruned this season (%) :: %
    foliage_removed_pct :: %`
  ),
  ...of('localLimit', 'Local limit (%) :: %\nMax. foliage removal allowed (%) :: %\nOrdinance removal limit'),
  ...of(
    'clearance',
    'Clearance needed (ft) :: ft\nReq. clearance (m) :: m\nClearance height required, ft :: ft\nclearance_req_ft :: ft\nVertical clearance needed (ft) :: ft\n? Clearance (ft) :: ft'
  ),
  ...of('clearanceSide', 'Clearance side\nSide needing clearance\nClearance on which side\nclearance_dir'),
  ...of(
    'dieback',
    'Dieback %  :: %\nCrown dieback\nPct dieback :: %\nCanopy dieback (%) :: %\ndieback_pct :: %'
  ),
  ...of('caliper', 'Caliper (in) :: in\nCal. (in) :: in\nNursery caliper, inches :: in\ncaliper_mm :: mm'),
  ...of(
    'caliperHeight',
    'Caliper measured at (in) :: in\nCaliper ht. (in) :: in\nHeight of caliper (in) :: in'
  ),
  ...of('form', 'Tree form\nGrowth habit\nCrown form\nHabit'),
  ...of('access', 'Site access\nAccess class\nCrew access\nAccess to tree\nEquipment access'),
  ...of(
    'site',
    'Site\nLocation\nStreet address\nStreet name\nTree location\nAddress\nPark / street\n? Block'
  ),
  ...of('zone', 'Zone\nZone no.\nArea\nSector\nDistrict\nManagement zone\nSection\nTree zone\nNeighborhood'),
  ...of(
    'lastPruned',
    'Last pruned\nDate last pruned\nLast prune yr\nYear last pruned\nlast_pruned\nMost recent pruning\nLast pruning date'
  ),
  ...of('matureHeight', 'Mature height (ft) :: ft\nHt at maturity (m) :: m\nExpected mature ht, ft :: ft'),
  ...of('treeNotes', 'Tree notes\nTree comments\nRemarks on tree\nNotes (tree)')
]

const lowestPermanent: Phrasing[] = of(
  'lowestPermanent',
  `
  Lowest permanent limb (ft) :: ft
  Lowest permanent branch (ft) :: ft
  First permanent branch ht. (ft) :: ft
  Height of lowest permanent limb (ft) :: ft
  lowest_perm_branch_ft :: ft
  Permanent limbs from (ft) :: ft
  Permanent crown from (m) :: m`
)

const ofLimbs: Phrasing[] = [
  ...of(
    'limb',
    `
    Limb ID
    Limb #
    Limb No.
    limb_id
    limbNo
    Branch #
    Branch ID
    Branch label
    Scaffold no.
    Scaffold limb
    Name of limb
    Limb/branch
    Limb tag
    Limb ref
    Br. no.
    Limb letter
    ? Scaffold`
  ),
  ...of('limb', '? ID\n? No.\n? Letter', { context: 'limb group' }),
  ...of(
    'diameter',
    `
    Limb diameter (in) :: in
    Limb dia. at union (in) :: in
    Limb Ø (cm) :: cm
    LIMB_DIA_IN :: in
    limbDiaCm :: cm
    Br. dia
    Br. diam (mm) :: mm
    Branch diameter, cm :: cm
    Branch dia at base (in) :: in
    Diameter of limb (in) :: in
    Diameter of branch at attachment (cm) :: cm
    Limb thickness (in) :: in
    Scaffold diameter (in) :: in
    Dia of limb above collar (in) :: in
    Limb base diameter (cm) :: cm
    Limb D (cm) :: cm
    branch_diameter_mm :: mm
    Limb¶dia.¶(in) :: in
    Limb diamter (in) :: in
    Lateral branch diameter at origin (in) :: in
    ? Limb size (in) :: in
    ? Branch caliper (in) :: in`
  ),
  ...of(
    'diameter',
    'Dia\nDia. (in) :: in\nDiam, cm :: cm\nDiameter (in) :: in\nØ (cm) :: cm\n? Size (in) :: in',
    {
      context: 'limb group'
    }
  ),
  ...of(
    'diameter',
    'Limb girth (in) :: in\nBranch girth, cm :: cm\nLimb circumference (cm) :: cm\nGirth of limb at base (cm) :: cm\nlimb_girth_cm :: cm',
    { measure: 'girth' }
  ),
  ...of('diameter', 'Girth (cm) :: cm', { measure: 'girth', context: 'limb group' }),
  ...of(
    'diameter2',
    'Limb dia 2 (in) :: in\nLimb diameter, 2nd reading (in) :: in\nSecond limb diameter (cm) :: cm\nLimb diameter B (in) :: in\nlimb_dia_2_in :: in'
  ),
  ...of(
    'stem',
    `
    Stem diameter above union (in) :: in
    Stem dia. just above union (in) :: in
    Stem dia above fork, cm :: cm
    Stem Ø above union (mm) :: mm
    STEM_DIA_IN :: in
    stemDiaAboveCm :: cm
    Stem above attachment (in) :: in
    Trunk dia. above union (in) :: in
    Trunk diameter above the branch (cm) :: cm
    Trunk above limb (in) :: in
    Trunk dia @ union (in) :: in
    Trunk diameter at attachment (in) :: in
    Diameter of stem above union (in) :: in
    Dia of trunk at union (cm) :: cm
    Parent stem diameter (in) :: in
    Parent stem dia above crotch (in) :: in
    Stem d at union (cm) :: cm
    Leader diameter above union (in) :: in
    stem_above_union_mm :: mm
    Stem diam¶(above union)¶in :: in
    Stem diamter above union (in) :: in
    Supporting stem diameter (in) :: in
    ? Stem size at fork (in) :: in
    ? Parent diameter (in) :: in
    ? Trunk at limb (in) :: in`
  ),
  ...of('stem', 'Stem\nStem (in) :: in\nStem dia\nStm dia\nStem Ø (cm) :: cm\n? Trunk (in) :: in', {
    context: 'limb group'
  }),
  ...of(
    'stem',
    'Stem girth above union (cm) :: cm\nStem circumference at union (in) :: in\nGirth of stem above fork (cm) :: cm\nTrunk girth above limb (cm) :: cm\nstem_girth_above_cm :: cm',
    { measure: 'girth' }
  ),
  ...of(
    'stemBelow',
    `
    Stem below union (in) :: in
    Stem diameter just below union (in) :: in
    Stem dia below fork (cm) :: cm
    Trunk dia. below limb (in) :: in
    Trunk diameter below attachment, cm :: cm
    stem_below_in :: in
    stemDiaBelowMm :: mm
    Diameter of stem under the union (in) :: in
    Parent stem below crotch (in) :: in
    Stem Ø under fork (cm) :: cm`
  ),
  ...of(
    'measured',
    'Stem measured above or below\nStem measured at\nWhere stem was measured\nAbove/below union\n? Measured'
  ),
  ...of(
    'origin',
    `
    Origin height (ft) :: ft
    Attachment height (ft) :: ft
    Height of attachment, m :: m
    Ht. of union (ft) :: ft
    Union ht
    Limb starts at (ft) :: ft
    Limb origin, ft :: ft
    Limb attaches at (m) :: m
    Height at which limb starts (m) :: m
    Fork height (ft) :: ft
    Crotch ht (ft) :: ft
    Insertion height (m) :: m
    Branch height at trunk (m) :: m
    union_height_ft :: ft
    originHtM :: m
    Point of attachment (ft) :: ft
    Height above ground at union (ft) :: ft
    Ht of limb attachment (ft) :: ft
    Origin¶ht (ft) :: ft
    Attachmnt height (ft) :: ft
    ? Limb base height (ft) :: ft
    ? Limb from (ft) :: ft`
  ),
  ...of('origin', 'Starts (ft) :: ft\nFrom (ft) :: ft\nAttaches at (ft) :: ft\n? Base ht (ft) :: ft', {
    context: 'limb group'
  }),
  ...of(
    'tip',
    `
    Tip height (ft) :: ft
    Limb tip (ft) :: ft
    Ht. of tip (m) :: m
    Height of limb tip (ft) :: ft
    Limb reaches (ft) :: ft
    Limb top, ft :: ft
    Top of limb (m) :: m
    Top of branch (ft) :: ft
    tip_ht_ft :: ft
    tipHeightM :: m
    Limb top height (m) :: m
    Highest point of limb (ft) :: ft
    Limb ends at (ft) :: ft
    Reaches up to (ft) :: ft
    Tip ht
    Branch tip height [m] :: m
    Tip hieght (ft) :: ft
    ? Limb to (ft) :: ft
    ? Limb height (ft) :: ft`
  ),
  ...of('tip', 'Reaches (ft) :: ft\nTo (ft) :: ft\nTop (ft) :: ft\nEnds (ft) :: ft', {
    context: 'limb group'
  }),
  ...of(
    'parent',
    'Parent limb\nParent branch\nGrows from limb\nAttached to limb\nparent_limb_id\nOn limb\n? Attached to'
  ),
  ...of(
    'role',
    'Limb role\nRole\nRole of limb\nLeader or limb\nLeader / limb / temporary\nBranch role\n? Function'
  ),
  ...of(
    'bark',
    `
    Included bark
    Incl. bark
    Inc bark
    Bark inclusion
    Bark incl. (Y/N)
    included_bark
    includedBark
    Bark included?
    Inclusion
    Included bark at union
    Bark inclusion present
    Ingrown bark
    IB (y/n)
    Embedded bark
    Includd bark
    ? Bark
    ? Bark ridge / inclusion
    ? Incl.`
  ),
  ...of(
    'angle',
    'Angle from vertical (deg) :: deg\nLimb angle (°) :: deg\nAngle of limb\nlimb_angle_deg :: deg\n? Lean (deg) :: deg'
  ),
  ...of(
    'bearing',
    'Limb bearing (deg) :: deg\nAzimuth of limb\nCompass bearing\nBearing\nlimb_azimuth\nLimb direction (N, NE, ..)\nDirection of growth (compass)'
  ),
  ...of('live', 'Live or dead\nLimb live/dead\nAlive?\nDead (Y/N)\nIs limb dead\nLive / Dead\nlimb_alive'),
  ...of('broken', 'Broken\nBroken limb (x)\nLimb broken?\nis_broken\nBreakage'),
  ...of('rubbing', 'Rubbing\nCrossing / rubbing\nRubs another limb\nis_rubbing\nCrossing limb'),
  ...of('decay', 'Decay\nDecay or crack\nCrack/decay at union\nDecay present\nhas_decay\nCracks'),
  ...of(
    'length',
    'Limb length (ft) :: ft\nLength of limb (m) :: m\nBranch length, ft :: ft\nlimb_length_ft :: ft\nLgth of limb (ft) :: ft'
  ),
  ...of('length', 'Length (ft) :: ft\nLen (ft) :: ft', { context: 'limb group' }),
  ...of(
    'lowestFoliage',
    'Lowest foliage on limb (ft) :: ft\nLowest leaves of limb (ft) :: ft\nLimb foliage starts at (ft) :: ft\nlowest_foliage_ft :: ft\nHeight of lowest foliage of the limb (m) :: m\nLimb hangs down to (ft) :: ft'
  ),
  ...of(
    'lateralHeight',
    'First live lateral height (ft) :: ft\nHeight of first lateral (ft) :: ft\nFirst side branch height (m) :: m\nlateral_height_ft :: ft'
  ),
  ...of(
    'lateral',
    'Lateral diameter (in) :: in\nFirst lateral dia. (in) :: in\nDiameter of lateral at cut (cm) :: cm\nlateral_dia_in :: in'
  ),
  ...of(
    'breakHeight',
    'Break height (ft) :: ft\nBroken at (ft) :: ft\nHeight of break (ft) :: ft\nbreak_ht_ft :: ft'
  ),
  ...of(
    'permanent',
    `
    Permanent
    Permanent?
    Permanent (y/n)
    Perm.
    Permanent limb
    Permanent branch (y/n)
    Permanent / temporary
    Temporary or permanent
    permanent_limb
    Is it a permanent limb?`
  ),
  ...of(
    'cut',
    'Cut diameter (in) :: in\n? Proposed cut dia. (in) :: in\nMeasured cut Ø (cm) :: cm\nDia. at the cut (in) :: in\ncut_dia_in :: in'
  ),
  ...of(
    'lastCutShare',
    'Last cut share (%) :: %\nShare taken at last cut\nFoliage taken at last cut (%) :: %'
  ),
  ...of('lastCutDate', 'Date of last cut\nLimb last cut on\nLast cut (year)\nlast_cut_date'),
  ...of(
    'foliageShare',
    'Foliage share (%) :: %\nObserved foliage share\n% of tree foliage on limb :: %\nfoliage_share_pct :: %'
  ),
  ...of('notes', 'Limb notes\nNotes on limb\nLimb remarks\nLimb comments')
]

/** Run together, misspelled, lettered, or asked in a whole sentence; and words that fewer people use. */
const further: Phrasing[] = [
  ...of('tree', '? tr\na) Tree\n? ParentGlobalID\n? parent_guid\n? Tree at address'),
  ...of('species', 'SPECIES_CD'),
  ...of('height', 'TREEHEIGHTFT :: ft\n3. Tree height (ft) :: ft\nHow tall is the tree? (ft) :: ft'),
  ...of(
    'crownBase',
    `
    CROWNBASEFT :: ft
    HLB (ft) :: ft
    Crown base (ft; lowest live branch counts) :: ft
    How high is the lowest living branch? (feet) :: ft
    ? Lowest limb (ft) :: ft
    ? cb`
  ),
  ...of(
    'stage',
    'LIFESTAGE\nLief stage\nLife stage (newly planted / young / medium / mature)\n? How old is the tree?'
  ),
  ...of('vigor', 'How healthy does it look?'),
  ...of('limb', 'LIMB_CD\n? Lmib'),
  ...of('diameter', 'LIMBDIAIN :: in\nbr d\n? LD'),
  ...of('stem', '? STEMDIAIN :: in\n? Steam diameter (in) :: in\n(h) Stem dia (in) :: in\n? st d\n? SD'),
  ...of(
    'origin',
    `
    LIMBORIGINFT :: ft
    Comes off trunk at (ft) :: ft
    How high does the limb start? (feet) :: ft
    ? from
    ? LO`
  ),
  ...of('tip', 'LIMBTIPFT :: ft\nGoes up to (ft) :: ft\n? Tpi (ft) :: ft\n? to\n? LT'),
  ...of('bark', 'Is there bark squeezed between limb and stem?')
]

export const english: readonly Phrasing[] = [...ofTrees, ...lowestPermanent, ...ofLimbs, ...further]

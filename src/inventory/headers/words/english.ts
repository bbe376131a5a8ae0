import type { Words } from './notion'

export const english: Words = {
  tree: 'tree plant specimen asset street.tree park.tree shade.tree',
  limb: 'limb branch scaffold bough br brnch lmb scaff',
  stem: 'stem stm codominant.stem axis',
  leader: 'leader central.leader main.leader leading.shoot ldr',
  trunk: 'trunk bole main.stem main.trunk trk tree.trunk tree.stem',
  parent: 'parent carrying supporting mother bearing.limb carrier host receiving',
  crown: 'crown canopy crn head dripline drip.line',
  lateral: 'lateral side.branch subordinate.branch side.limb side.shoot sub.lateral',
  foliage: 'foliage leaf leaves leafing leafage lf live.foliage greenery',
  union:
    'union fork crotch junction collar attachment insertion joint attachment.point branch.collar attach attchmt att',
  bark: 'bark',
  diameter: 'diameter dia diam d ø dm thickness thick diamtr dmtr diams',
  size: 'size caliber cross.section',
  girth: 'girth circumference circ circumf circum perimeter perim crcmf',
  dbh: 'dbh d.b.h diameter.at.breast.height diam.at.breast.height dsh dob dbhob',
  gbh: 'gbh cbh g.b.h c.b.h girth.at.breast.height',
  breast: 'breast breast.height breast.ht breast.hgt bh chest.height chest.ht standard.height',
  caliper: 'caliper calliper cal calip nursery.diameter',
  height: 'height ht hgt hght h tall hts how.high how.tall how.high.up how.far.up',
  elevation: 'elevation elev',
  width: 'width spread wide breadth crown.span canopy.span branch.span span.of.crown span.of.canopy',
  length: 'length lgth len long lng',
  crownBase: `
    hcb hlc htlc hblc clb lcb cbh lcr.base hbc hlb first.live.twig lowest.live.twig bottom.live.branch bottom.live.limb
    bottom.of.live.crown`,
  above: 'above over abv atop upper past beyond outside outside.of',
  aboveGround: 'above.ground above.grade agl above.the.ground',
  below: 'below under beneath blw underneath',
  lowest: 'lowest low lower first bottommost 1st lowermost lwst',
  highest: 'highest uppermost topmost max.height furthest farthest',
  base: 'base bottom underside bot lower.edge lower.end foot start.of basal',
  tip: `
    tip top reach end apex upper.end terminal highest.point summit ending goes.up.to goes.to
    grows.up.to reaches reaches.up.to rises.to extends.to`,
  hangs: 'hangs.down hang.down hangs.to hanging.to droops lowest.point hangs.down.to',
  origin: `
    origin start starting begin beginning emerge arise arising attach attached attachment depart
    departure leaves.trunk leaves.parent originate origination leaves.stem joins
    comes.off comes.off.trunk comes.off.stem comes.off.at comes.off.trunk.at start.height`,
  from: 'from',
  to: 'to up.to upto until down.to',
  at: 'at @ where',
  on: 'on',
  id: 'id no nr num number nbr # code label identifier ref reference uid letter key lot cd',
  tag: 'tag',
  name: 'name title',
  naming: 'common botanical scientific latin vernacular botanic binomial trivial lat bot sci trade',
  species: 'species sp spp taxon taxa genus cultivar variety tree.type type.of.tree gen',
  kind: 'kind type sort',
  spot: 'site situ',
  area: `
    location street address place road avenue loc addr property row bed postcode zip`,
  zone: `
    zone district sector section neighborhood neighbourhood precinct ward borough subdivision suburb area
    subarea subzone compartment zon sect management.zone maintenance.zone pruning.zone management.area
    maintenance.area management.unit`,
  grounds: 'park block lot campus yard plot estate cemetery arboretum grounds',
  notes: 'note remark comment memo observation obs notation annotation',
  stage: `
    stage life.stage age.class ageclass maturity maturity.class growth.stage development.stage
    developmental.stage phase life.phase age.group age.category
    lifestage`,
  age: 'age old how.old',
  form: 'form habit tree.shape crown.shape',
  vigor: 'vigor vigour vitality health condition cond healthiness hlth vig healthy how.healthy',
  rating: 'rating score grade rtg category categorization cat level',
  growth: 'growth grow increment growing accretion',
  rate: 'rate class per.year annual yearly speed per.annum pa',
  live: 'live living alive green lv',
  dead: 'dead deadwood died dd',
  status: 'status state',
  dieback: 'dieback die.back dying.back',
  mature: `
    mature eventual ultimate adult at.maturity full.grown expected.final final maturity mat
    maximum.expected`,
  clearance: 'clearance clr headroom clearing',
  clear: 'clear free',
  needed: 'needed required req reqd need needing necessary requirement desired minimum min specified',
  side: 'side',
  bearing: 'bearing compass azimuth azi az direction dir orientation quadrant heading',
  aspect: 'aspect exposure facing',
  angle: 'angle inclination angl',
  lean: 'lean leaning tilt',
  vertical: 'vertical plumb upright',
  access: 'access accessibility accessible reachability',
  included: `
    included inclusion incl inc embedded ingrown inrolled include incld`,
  includedBark: 'ib bark.inclusion included.bark bark.included bark.squeezed bark.trapped bark.pinched',
  parentOn: `
    grows.from growing.from grows.out.of grew.from comes.from arises.from attached.to originates.from
    sits.on grows.on attaches.to springs.from emerges.from joined.to borne.on`,
  role: 'role function purpose',
  temporary: 'temporary temp',
  permanent: 'permanent perm',
  broken: 'broken break breakage torn snapped hanger hanging brkn snap tearout fractured',
  rubbing: 'rubbing rub crossing crosses cross chafing',
  decay: 'decay decayed rot rotten crack cracked cavity hollow split rotting cracking fissure',
  cut: 'cut cutting pruning.cut',
  pruned: 'pruned pruning prune trimmed trim trimming',
  last: 'last previous latest prior most.recent recent lst',
  date: 'date day',
  year: 'year yr',
  share: 'share portion fraction proportion percent percentage pct % perc part prct',
  removed: 'removed removal taken.off took remove reduction taken.out taken rmvd',
  already: 'already',
  season: 'season this.season this.year current.season this.growing.season year.to.date',
  limit: 'limit max maximum cap ceiling allowed allowable allowance permitted',
  local: 'local ordinance city bylaw municipal',
  visit: 'visit',
  existing: 'current existing actual present achieved measured.clearance',
  inYear: '',
  second: 'second 2nd 2 b other.way ii',
  total: 'total overall full whole tot entire',
  observed: 'observed visual',
  measured: 'measured measurement measure msrd meas',
  proposed: 'proposed planned recommended intended',
  caliperHeight: 'caliperheight',
  elsewhere: `
    elsewhere at.ground at.ground.level at.grade at.soil.line at.soil soil.line at.root.collar
    root.collar at.base.of.tree base.of.tree at.tree.base at.base.of.trunk base.of.trunk at.stump
    at.stump.height stump.height ground.line`,
  key: 'globalid guid uuid fk foreign.key global.id',
  forkHeight: '',
  small: '',
  tall: '',
  thing: `
    kerb curb grate sign pavement paving sidewalk footpath footway mulch building house wall fence wire
    wiring powerline power.line pole lamp light lighting utility root rootball root.ball stake tie guard
    window door car parking lane traffic bench bin shelter hydrant manhole sewer drain gutter roof solar
    panel tank well pond pool bridge step pit pot container pipe stump rope bolt wound cable ladder
    hedge nest awning swelling shrub tunnel rail railing post bollard planter trellis grille gate.width
    flare root.flare buttress strap brace bracing rod screw anchor swing treehouse tower crane lift
    equipment vehicle machinery bucket chipper machine truck balcony deck driveway.width median island
    cage edging turf grass lawn turf.grass grate.opening opening conduit box line sight conflict
    visibility wrap neighbor neighbour neighboring adjacent adjoining`,
  money: `
    price cost fee charge amount budget paid value appraised appraisal $ € £ usd eur dollar tax quote
    estimate.total invoice.total money bid rate.card per.hour payment`,
  person: `
    owner inspector surveyor assessor arborist contact client customer crew contractor foreman operator
    by surveyed.by measured.by entered.by inspected.by recorded.by phone tel telephone email mail fax
    climber team resident manager your.name your.email`,
  geo: `
    latitude longitude lat lon gps utm easting northing coord coordinate xcoord ycoord altitude asl grid
    geometry shape lng x y`,
  planting: `
    planted planting plant.date plant.year installed install built installation transplanted stocked
    establishment.date replacement
    replaces replaced replacing`,
  nursery: 'nursery vivarium stock',
  inspection: `
    inspection inspected survey surveyed checked assessed assessment revisit entry entered updated
    edited created next modified collected watered due scheduled`,
  record: `
    photo picture image pic file url link video scan invoice work.order parcel cadastral po hash guid.of
    permit contract account folio document drawing map sheet page barcode qr phone.no attachment.file
    legend legende
    form`,
  quantity: `
    per distance dist setback offset spacing weight volume load depth radius ratio slope out outward
    away along crown.n crown.e crown.s crown.w crown.north crown.east crown.south crown.west canopy.n
    canopy.e canopy.s canopy.w spread.n spread.e spread.s spread.w moisture ph temperature hour minute duration frequency factor index coefficient wind
    hardiness hours kg lb lbs gal m2 m3 ft2 ft3 sqft sqm area.of basal.area density count.of speed lcr
    hardiness.zone climate climatic usda root.zone protection.zone target.zone time.zone work.zone drop.zone
    crown.area canopy.area leaf.area planting.area bed.area pit.area area.sq sq
    tons ton gallon liter litre percent.slope gap separation clearance.distance shift
    largest biggest thickest smallest`,
  work: `
    job work task order priority urgency risk hazard target likelihood consequence occupancy tpo
    protected heritage irrigation irrigated notified pest disease insect fungus treatment spray
    fertilizer stage.of.work wo action complete completed equipment.type pruning.type pruning.cycle
    cycle removal.reason consent raise raising lifting
    after.pruning after.prune post.pruning after.cut after.work after.cutting`,
  ground: `
    soil ground.cover groundcover cover land land.use landuse space planting.space planting.strip strip
    setting surface`,
  count: 'count how.many quantity qty amount.of number.of',
  noise: `
    of the a an for in is it its and or with just directly immediately approx approximate ca about what how point field data pt
    info information reading ground level grade above.ground the.ground above.grade agl est estimated
    avg average mean current existing present actual new any all each presence this that which has have
    was been are if observed.at y/n yn yes yes/no tree’s general life physiological another other unique
    inventory description remaining when where structural visual.only approximately on.which mm.or given
    listed main specific own individual particular selected here per.tree nearest visible expected dev
    development developmental also only site.no
    does do there look looks between you your`
}

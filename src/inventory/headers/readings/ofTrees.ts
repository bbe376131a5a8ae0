import type { TreeField } from './fields'
import type { Readings } from './reading'

/**
 * How the tree's columns are headed; readingOf says how a line is read. The trust of each is a house judgment: 1 where no
 * other column is headed so, less where one may be.
 */
export const ofTrees: Readings<TreeField> = {
  tree: [
    '1 tree id|tag +name place spot',
    '1 tree name +id',
    '.92 tree',
    '~.64 tag +id',
    '~.5 id',
    '.95 spot id +tree',
    '.96 tree at place|spot',
    '.78 parent key +id',
    '?.56 key +id',
    '?.56 name'
  ],
  species: [
    '1 species +tree name naming kind limb',
    '.94 species id +tree name naming kind',
    '1 naming name|species +tree id',
    '.95 tree naming +kind name',
    '.9 tree kind +name',
    '.75 naming',
    '?.62 kind',
    '~.42 tree'
  ],
  trunk: [
    '1 dbh +tree axis dia height breast size observed measured',
    '1 gbh +tree axis dia height breast measured',
    '1 dia breast +tree axis height measured observed',
    '.72 trunk dia +tree measured',
    '~.7 trunk dia +tree measured',
    '.86 tree dia +measured',
    '~.6 stem|leader dia',
    '~.62 dia',
    '~.58 axis',
    '~.62 axis small',
    '.7 trunk width'
  ],
  height: [
    '1 tree height +total highest tip observed',
    '1 height total +highest tip',
    '~.64 height +observed',
    '.9 tree tip|highest +height',
    '.85 tree length +total',
    '.7 tree tall',
    '?.6 tree size +tall'
  ],
  crownBase: [
    '.97 crownBase +height tree',
    '1 crown base|lowest|below|origin +height live tree to lowest limb foliage above from',
    '1 crown from !limb +height live tree to lowest foliage above',
    '1 lowest live limb +height crown foliage tree base above to union',
    '1 lowest|base foliage tree|crown +height live lowest base',
    '.96 lowest limb height|tree|base|live +height live tree base to union above',
    '.78 lowest limb +to union above',
    '.95 live crown +height base lowest to at from',
    '.95 live union +height lowest',
    '.7 crown clear|clearance +height',
    '.9 axis clear +height tall limb live lowest to',
    '.82 clearance lowest limb +height live to above',
    '?.7 clear to +height',
    '.72 trunk height +crown clear to',
    '.7 crown height to',
    '?.62 crown height aboveGround',
    '.6 tree base tall +height',
    '~.66 lowest|base foliage +height live',
    '~.46 union height',
    '~.46 forkHeight +height tree'
  ],
  spread: ['1 crown width|diameter +tree total', '.9 width +tree total', '.95 tree width'],
  form: ['.9 form +tree crown growth', '.95 tree|crown|growth form'],
  stage: [
    '.97 stage +tree rate rating kind growth age',
    '1 age rate|rating|kind +tree stage',
    '.85 mature rate|rating +tree',
    '?.64 age +tree'
  ],
  vigor: [
    '.97 vigor +tree rating rate kind total status share',
    '.74 vigor crown|foliage +tree rating rate kind total',
    '?.6 rating +tree'
  ],
  growth: [
    '.97 growth +rate tree trunk diameter stem kind rating',
    '1 trunk|diameter growth +rate tree trunk diameter stem year'
  ],
  removed: [
    '1 removed season|already +foliage crown live share pruned tree',
    '1 pruned season|already share +foliage crown live tree',
    '.95 foliage removed +share live crown tree',
    '.85 pruned season|already +foliage tree',
    '.72 removed +share'
  ],
  localLimit: [
    '1 local limit +removed share foliage pruned tree',
    '1 removed limit +share local foliage season tree live crown',
    '.9 pruned limit +share local foliage season',
    '?.62 limit share'
  ],
  clearance: [
    '1 clearance needed +height place above vertical clear tree',
    '1 clearance height !existing +needed place above vertical clear tree',
    '.92 clearance needed below|limb +limb below height',
    '.92 clearance !existing +place above vertical total tall clear',
    '.92 clear height !existing +needed place above',
    '.92 clear height needed below|limb +limb below',
    '.7 clearance thing +needed height above vertical from to'
  ],
  clearanceSide: ['1 clearance|clear side|bearing +needed place on', '?.62 side +needed'],
  dieback: [
    '1 dieback +crown share tree',
    '.92 crown dead share|limb +tree limb',
    '.85 crown dead +share tree',
    '~.56 dead share +tree'
  ],
  caliper: [
    '1 caliper +diameter axis nursery tree caliperHeight size',
    '.9 nursery dia +axis',
    '.92 dia caliperHeight +axis tree nursery'
  ],
  caliperHeight: ['1 caliper height +measured tree diameter', '1 caliper measured +height tree'],
  access: ['.96 access +spot place tree person thing rating rate', '.85 access work|kind +spot'],
  site: [
    '.92 area|grounds|spot +tree name on zone',
    '1 area|grounds|spot name +tree',
    '.95 tree area|grounds|spot +name',
    '.7 planting spot',
    '.82 zone +tree name on'
  ],
  zone: ['.95 zone +tree name on area|spot|grounds id', '1 zone name|id +tree', '.7 grounds|spot +tree name'],
  lastPruned: [
    '1 last pruned +date tree year cut on visit',
    '.9 pruned date|year +tree on cut',
    '~.66 last cut +date year tree on',
    '?.75 last visit +date year',
    '?.72 pruned +on tree'
  ],
  matureHeight: [
    '1 mature height +tree total needed observed limit age',
    '.92 mature tall +tree total',
    '.85 mature tip|length|size +tree height',
    '?.72 mature'
  ],
  lowestPermanent: [
    '1 lowest permanent limb +height tree from at on',
    '.97 lowest permanent +limb height tree from at on',
    '.97 permanent crown|limb from|base|above +height tree lowest limb crown',
    '.95 permanent limb height +tree',
    '.95 permanent from|base +height tree origin',
    '?.6 permanent crown +height tree'
  ],
  treeNotes: ['1 tree notes +on', '.7 notes place|spot', '~.63 notes']
}

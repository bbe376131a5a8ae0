import type { LimbField } from './fields'
import type { Readings } from './reading'

/**
 * How the limb's columns are headed; readingOf says how a line is read. The trust of each is a house judgment: 1 where no
 * other column is headed so, less where one may be.
 */
export const ofLimbs: Readings<LimbField> = {
  limb: [
    '1 limb id|tag +name stem lateral',
    '1 limb name +id stem',
    '.92 limb +stem',
    '~.66 limb cut +to name id',
    '~.64 stem|leader id|name',
    '~.6 stem',
    '~.52 id',
    '?.56 name',
    '.72 lateral id +name'
  ],
  diameter: [
    '1 limb dia +union base above origin measured on from',
    '1 limb dia axis at|on|union|origin|from limbFirst +above base measured',
    '.95 limb lateral dia origin|union|base +above',
    '.9 limb caliper +union base above origin measured on from',
    '.8 limb width',
    '.72 limb small',
    '~.62 dia',
    '?.66 base dia',
    '?.6 dia union|origin +at',
    '?.62 lateral dia'
  ],
  diameter2: ['1 limb dia second +measured union', '~.66 dia second +measured'],
  stem: [
    '1 axis dia above|union|origin +parent measured limb axis on',
    '.95 axis dia limb at|on|above axisFirst +parent measured base origin',
    '1 parent axis dia +union above measured limb origin on',
    '.95 parent dia above|union|origin|limb +measured on',
    '.92 parent dia +measured',
    '.95 dia above union|origin|limb +measured',
    '.95 axis caliper above|union|origin +parent measured limb on',
    '.95 axis above +union origin limb parent on small',
    '.92 axis union|origin +parent on small',
    '.9 parent axis small',
    '.95 parent above|union +small limb',
    '.7 axis limb at|on small axisFirst',
    '.9 limb stem|trunk dia limbFirst +parent',
    '.86 limb axis small limbFirst +parent',
    '.72 stem dia +parent measured limb',
    '?.62 limb axis limbFirst',
    '~.68 stem|leader dia +parent measured limb',
    '~.6 trunk dia +measured limb',
    '~.62 axis small',
    '~.6 parent stem',
    '~.58 stem',
    '~.44 trunk',
    '?.62 dia union',
    '?.6 parent small'
  ],
  stemBelow: [
    '1 axis dia below +union parent measured limb origin axis on',
    '.95 dia below union|origin|limb +parent measured',
    '.95 axis below +union parent limb origin axis on small',
    '1 parent below +union dia limb origin axis small'
  ],
  measured: [
    '1 axis measured +above below union diameter on',
    '1 measured above|below +axis union diameter',
    '.92 above below +union axis measured',
    '.85 measured at',
    '?.72 measured'
  ],
  origin: [
    '1 origin height +limb union above lowest on axis base crown',
    '1 union height +limb origin above axis on',
    '.95 limb origin +height union axis base on tall',
    '.92 origin +union on tall',
    '.85 limb base height +on',
    '.82 limb base tall',
    '.92 limb union +height origin tall on axis',
    '.86 limb height at|on axis|origin|union',
    '.86 limb from tall',
    '.72 limb from',
    '.93 union tall +on',
    '.92 union|origin elevation +limb',
    '~.63 from tall',
    '~.52 base tall +height',
    '~.6 base height',
    '?.6 from',
    '?.6 limb height',
    '?.58 lowest +height',
    '?.62 forkHeight +limb'
  ],
  tip: [
    '1 tip height +limb highest to on',
    '1 limb tip +height highest to on',
    '.9 limb highest +height tip to tall',
    '.9 limb height limit',
    '~.68 tip +highest to on tall',
    '.92 limb|tip elevation +tip highest',
    '.78 limb height',
    '.86 limb to tall',
    '.72 limb to',
    '~.63 to tall',
    '~.44 highest tall',
    '~.42 height',
    '?.6 to',
    '?.58 highest +height'
  ],
  parent: [
    '1 parent limb +id name on axis',
    '.95 parentOn +limb parent axis id',
    '.92 parent +id name',
    '.72 parent axis +id name',
    '1 on limb',
    '.72 origin|at|on to limb'
  ],
  role: [
    '.96 role +limb leader axis crown',
    '.9 leader limb +temporary permanent',
    '.85 limb kind',
    '?.72 limb rate|rating',
    '.85 limb temporary',
    '?.62 kind'
  ],
  permanent: ['1 permanent limb +lateral', '.95 permanent temporary +limb', '.92 permanent +status'],
  bark: [
    '1 included bark +union limb',
    '1 includedBark +union limb bark included stem trunk',
    '.92 included +union limb',
    '.82 bark +union limb'
  ],
  angle: [
    '.95 angle +limb union vertical from lean on origin',
    '1 angle vertical +limb union lean from on origin',
    '.85 lean +angle limb vertical from'
  ],
  bearing: [
    '.96 limb bearing +angle growth',
    '~.7 bearing +angle growth',
    '.7 bearing angle|growth',
    '.85 limb side|aspect +bearing',
    '?.62 aspect +angle'
  ],
  live: [
    '1 live dead +limb status',
    '.95 limb live|dead +status',
    '.92 dead',
    '.88 live',
    '.92 limb status',
    '?.62 status'
  ],
  broken: ['.95 broken +limb tip'],
  breakHeight: ['1 broken height +limb', '.95 broken tall +limb height', '.9 broken at|from +limb height'],
  rubbing: ['.95 rubbing +limb second'],
  decay: ['.95 decay +limb union observed'],
  length: ['1 limb length +total', '~.66 length +total'],
  lowestFoliage: [
    '1 lowest foliage limb +height live on base',
    '1 foliage origin|base|from limb +height live lowest on to',
    '~.74 lowest foliage +height live base',
    '~.74 foliage origin|base|from +height live lowest',
    '.95 foliage height limb +live on',
    '~.7 foliage below +height',
    '.9 hangs +limb to foliage'
  ],
  lateralHeight: [
    '1 lateral height +lowest live limb above',
    '.92 lateral lowest +live height limb tall',
    '.9 lateral tall +live limb',
    '.8 lateral live +height limb'
  ],
  lateral: ['1 lateral dia +cut lowest live limb', '.9 lateral cut +small', '.85 lateral +small'],
  cut: [
    '1 cut dia +measured limb',
    '.74 proposed cut +diameter measured limb',
    '.9 measured cut',
    '.85 cut small'
  ],
  lastCutShare: [
    '1 last cut share +foliage limb removed',
    '.95 last removed share +cut foliage limb',
    '.92 last share +cut removed foliage',
    '.9 last cut limb',
    '~.62 last cut'
  ],
  lastCutDate: [
    '.74 last cut date|year +on',
    '~.68 last cut date|year +on',
    '1 last cut limb +date year on',
    '.95 limb pruned date|year|last +cut on',
    '.9 cut date|year +limb',
    '~.62 last cut +on'
  ],
  foliageShare: [
    '1 foliage share +observed limb crown live tree on',
    '.78 foliage +observed limb',
    '.9 observed share +limb'
  ],
  notes: ['1 limb notes +on', '~.66 notes']
}

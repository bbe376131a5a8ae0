import type { Field } from '../../../shared/columns'
import type { Notion } from './notions'

/**
 * How a field may be headed: the notions that have to stand in the header, then after "+" those that may, and how far
 * such a header alone can be trusted, 0 to 1 (house judgement). "a|b" is one or the other.
 */
export interface Reading {
  readonly needs: readonly (readonly Notion[])[]
  readonly may: ReadonlySet<Notion>
  readonly trust: number
}

const written: Record<Field, readonly string[]> = {
  tree: [
    '1 tree id +name',
    '1 tree name +id',
    '.95 tree',
    '.8 id',
    '.86 site id',
    '.6 name'
  ],
  species: ['1 species +tree name +kind', '.9 tree kind +name', '.6 kind', '.9 name species'],
  trunk: [
    '1 dbh +tree trunk stem diameter height',
    '1 trunk diameter +tree dbh',
    '1 tree diameter +dbh trunk',
    '.95 trunk girth +tree dbh height',
    '1 dbh girth +tree trunk stem height',
    '.95 tree girth',
    '.62 diameter',
    '.62 girth',
    '.6 trunk',
    '.7 trunk width'
  ],
  height: [
    '1 tree height +total highest tip',
    '.9 height +total',
    '1 height total +tree',
    '.9 tree tip +height',
    '.85 tree length'
  ],
  crownBase: [
    '.95 crownBase +height at',
    '1 crown base +height live tree at lowest',
    '1 crown lowest +height live base at',
    '1 lowest live limb +height at crown foliage tree',
    '.95 lowest limb +height at live tree base',
    '.95 live crown +height base at lowest',
    '.95 base crown +height at live',
    '.95 limb lowest union +height live',
    '.9 crown origin +height live',
    '.9 crown height lowest|base'
  ],
  spread: [
    '1 crown width +tree diameter',
    '1 crown diameter +tree width',
    '.9 width +tree',
    '.85 tree width',
    '.7 crown length'
  ],
  stage: ['.95 stage +tree rate kind', '.85 mature +tree rate', '.9 stage growth +tree'],
  vigor: ['.92 vigor +tree rate', '.92 vigor kind +tree'],
  growth: ['1 growth rate +tree trunk diameter stem year', '.92 growth +tree trunk diameter stem', '.9 growth year +diameter trunk tree stem rate'],
  removed: [
    '1 removed season +foliage already crown live share',
    '1 removed already +foliage crown live season share',
    '.95 foliage removed +share live crown season already',
    '.75 removed +share',
    '.9 foliage removed last +share'
  ],
  localLimit: ['1 local limit +removed share foliage pruned', '.9 removed limit +share local foliage', '.65 limit share'],
  clearance: ['1 clearance needed +height site', '1 clearance height +needed site above', '.9 clearance +site above total', '.85 needed clearance|height'],
  clearanceSide: ['1 clearance side +needed', '1 clearance bearing +needed side', '.62 side', '.9 side clearance|needed'],
  dieback: ['1 dieback +crown share tree', '.85 crown dead +share tree dieback'],
  caliper: ['1 caliper +tree diameter trunk stem', '.9 caliper girth'],
  caliperHeight: ['1 caliper height +measured at tree diameter'],
  access: ['.95 access +site tree'],
  site: ['.92 site +tree name', '.9 site id|name +tree', '.85 site tree'],
  lastPruned: [
    '1 last pruned +date tree year',
    '.9 pruned date|year +tree last',
    '.7 pruned',
    '.9 last date pruned +tree',
    '.6 last'
  ],
  matureHeight: ['1 mature height +tree', '.9 mature tip|length +tree height', '1 height mature +at tree'],
  treeNotes: ['1 tree notes', '.85 notes site'],
  limb: ['1 limb id +name', '1 limb name +id', '.92 limb', '.62 stem id', '.62 stem +name', '.75 limb stem id|name'],
  diameter: [
    '1 limb diameter +union base at above origin measured',
    '.95 limb girth +union base at above origin',
    '.8 limb width',
    '.62 diameter',
    '.62 girth',
    '.55 base diameter'
  ],
  diameter2: ['1 limb diameter second +measured', '.9 diameter second'],
  stem: [
    '1 stem diameter above +union parent at measured trunk limb origin',
    '1 trunk diameter above +union parent at measured stem limb origin',
    '1 stem diameter union +parent at above measured trunk limb origin',
    '1 trunk diameter union +parent at above measured stem limb origin',
    '1 parent diameter +stem trunk union above at measured limb',
    '.95 diameter above union +at parent limb measured',
    '.9 stem diameter +parent',
    '.95 stem girth above|union +parent at',
    '.95 trunk girth above|union +parent at stem',
    '.85 stem girth +parent',
    '.92 stem union +at above parent',
    '.9 trunk union +at above parent stem',
    '.9 parent stem +above union at',
    '.9 trunk above +union at',
    '.9 stem above +union at',
    '.62 parent diameter|girth',
    '.88 trunk diameter limb at|origin|above +union',
    '.85 stem diameter limb at|origin|above +union',
    '.7 diameter union +at',
    '.75 limb stem +origin'
  ],
  stemBelow: [
    '1 stem diameter below +union parent at measured trunk limb origin',
    '1 trunk diameter below +union parent at measured stem limb origin',
    '.95 diameter below union +at parent limb',
    '.95 stem girth below +union parent at trunk',
    '.95 trunk girth below +union parent at stem',
    '.92 stem below +union at parent',
    '.92 trunk below +union at parent stem',
    '.95 parent diameter below +union at stem trunk'
  ],
  measured: ['1 stem measured +at above below union diameter trunk', '.9 measured +at above below union', '.95 above below +measured union stem'],
  origin: [
    '1 origin height +limb union at above lowest',
    '1 union height +limb at origin',
    '.95 limb origin +height at union trunk base',
    '.92 origin +at union',
    '.85 limb base height +at',
    '.9 limb union +height at origin',
    '.85 height union|origin +limb at',
    '.9 limb height lowest|base +at origin',
    '.6 union at',
    '.8 base height'
  ],
  tip: [
    '1 tip height +limb at highest',
    '1 limb tip +height at highest',
    '.95 tip +highest at',
    '.9 limb height highest +tip at',
    '.78 limb height',
    '.9 limb tip|highest +height at'
  ],
  parent: ['1 parent limb +id name', '.95 parentOn +limb parent', '.92 parent +id name', '.8 limb parent|trunk parentOn', '.85 parent limb stem'],
  role: ['.95 role +limb', '.75 limb kind', '.62 kind'],
  bark: ['1 included bark +union limb', '.9 included +union limb', '.85 bark +union limb', '1 bark included at|union'],
  angle: ['.95 angle +limb union vertical', '1 angle vertical +limb union lean', '.85 lean +angle limb vertical', '.9 angle limb|union'],
  bearing: ['.95 bearing +limb angle at side', '.85 aspect limb|bearing', '.62 aspect', '.9 limb side', '.9 limb bearing'],
  live: ['1 live dead +limb', '.92 dead +limb', '.85 live +limb', '.9 dead limb'],
  broken: ['.95 broken +limb tip', '.95 limb broken'],
  rubbing: ['.95 rubbing +limb', '.95 limb rubbing'],
  decay: ['.95 decay +limb union', '.95 limb decay'],
  length: ['1 limb length +total', '.88 length +total', '.6 limb length tip'],
  lowestFoliage: [
    '1 lowest foliage +height limb at live',
    '1 foliage origin +height limb at live lowest',
    '.6 foliage +limb',
    '.9 foliage height +limb at lowest live origin',
    '.9 foliage base +height limb at lowest live'
  ],
  lateralHeight: ['1 lateral height +lowest live at limb', '.9 lateral lowest +live height at', '.85 lateral live +height lowest at'],
  lateral: ['1 lateral diameter +cut at lowest live limb', '.95 lateral girth +cut at lowest', '.85 lateral +cut at', '.9 lateral cut +diameter at'],
  cut: ['1 cut diameter +measured proposed at limb', '.9 proposed cut +diameter measured at', '.9 measured cut +diameter', '.9 cut girth'],
  lastCutShare: ['1 last cut share +foliage limb removed', '.72 last cut', '.85 last share +cut removed foliage', '.9 share last removed +limb foliage cut'],
  lastCutDate: ['1 last cut date|year +limb', '.7 last cut', '.95 cut date +last limb', '.9 limb pruned date|year|last +cut'],
  foliageShare: ['1 foliage share +observed limb crown live', '.85 foliage +observed limb', '.9 observed share +foliage limb'],
  notes: ['.95 notes +limb', '1 limb notes']
}

function parse(text: string): Reading {
  const [trust, ...rest] = text.split(' ')
  const plus = rest.findIndex((word) => word.startsWith('+'))
  const needs = (plus < 0 ? rest : rest.slice(0, plus)).map((word) => word.split('|') as Notion[])
  const may = (plus < 0 ? [] : rest.slice(plus)).flatMap((word) => word.replace('+', '').split('|') as Notion[])
  return { needs, may: new Set([...may, ...needs.flat(), 'at']), trust: Number(trust) }
}

export const readings: readonly { readonly field: Field; readonly readings: readonly Reading[] }[] = (
  Object.entries(written) as [Field, readonly string[]][]
).map(([field, texts]) => ({ field, readings: texts.map(parse) }))

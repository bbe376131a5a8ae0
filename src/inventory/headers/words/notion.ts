/**
 * One idea that headers are built from: "Stem diameter above union" is stem, diameter, above, union, in whatever order or
 * language it is written. A word may stand for several; which it is, the rest of the header tells.
 */
export type OwnNotion =
  | 'tree'
  | 'limb'
  | 'stem'
  | 'leader'
  | 'trunk'
  | 'parent'
  | 'crown'
  | 'lateral'
  | 'foliage'
  | 'union'
  | 'bark'
  | 'diameter'
  | 'size'
  | 'girth'
  | 'dbh'
  | 'gbh'
  | 'breast'
  | 'caliper'
  | 'height'
  | 'elevation'
  | 'width'
  | 'length'
  | 'crownBase'
  | 'above'
  | 'aboveGround'
  | 'below'
  | 'lowest'
  | 'highest'
  | 'base'
  | 'tip'
  | 'hangs'
  | 'origin'
  | 'from'
  | 'to'
  | 'at'
  | 'on'
  | 'id'
  | 'tag'
  | 'name'
  | 'naming'
  | 'species'
  | 'kind'
  | 'spot'
  | 'area'
  | 'zone'
  | 'grounds'
  | 'notes'
  | 'stage'
  | 'age'
  | 'vigor'
  | 'form'
  | 'rating'
  | 'growth'
  | 'rate'
  | 'live'
  | 'dead'
  | 'status'
  | 'dieback'
  | 'mature'
  | 'clearance'
  | 'clear'
  | 'needed'
  | 'side'
  | 'bearing'
  | 'aspect'
  | 'angle'
  | 'lean'
  | 'vertical'
  | 'access'
  | 'included'
  | 'includedBark'
  | 'parentOn'
  | 'role'
  | 'temporary'
  | 'permanent'
  | 'broken'
  | 'rubbing'
  | 'decay'
  | 'cut'
  | 'pruned'
  | 'last'
  | 'date'
  | 'year'
  | 'share'
  | 'removed'
  | 'already'
  | 'season'
  | 'limit'
  | 'local'
  | 'visit'
  | 'second'
  | 'existing'
  | 'inYear'
  | 'total'
  | 'observed'
  | 'measured'
  | 'proposed'
  | 'caliperHeight'
  | 'elsewhere'
  | 'key'
  | 'forkHeight'
  | 'small'
  | 'tall'

/**
 * What a header may speak of that is no column of the plan: a kerb, a price, a planting. A header with such a word names
 * no field, but for those whose reading expects it ("Clearance over road", "Nursery caliper").
 */
export const foreignNotions = [
  'thing',
  'money',
  'person',
  'geo',
  'planting',
  'nursery',
  'inspection',
  'record',
  'quantity',
  'work',
  'ground',
  'count'
] as const

export type ForeignNotion = (typeof foreignNotions)[number]

export type Notion = OwnNotion | ForeignNotion

/**
 * The words of one language: notion by notion, parted by spaces or lines, folded (lower case, no accents, "ß" as "ss"); a "." joins
 * the parts of a phrase. Regular plurals, cases and genders need no entry. `noise` says nothing about a column. Common
 * trade use, no source.
 */
export type Words = Readonly<Record<Notion | 'noise', string>>

/**
 * What a sentence about a fault or an omission has to speak of. Any wording that names the thing passes; codes are not
 * looked at, as they are the reader's own.
 */
export const kinds = {
  total: /total|\bsum\b|average|mean/i,
  note: /\bnotes?\b|remark|\btext\b/i,
  header: /header/i,
  'no trees': /no inventory of trees/i,
  vacant: /vacant|no tree|empty|not a tree|planting site/i,
  stump: /stump|not a tree/i,
  removed: /removed|gone|not a tree|no tree/i,
  hidden: /hidden|filter/i,
  sheet: /\bsheets?\b/i,
  block: /\btables?\b|\bblocks?\b/i,
  joined: /join|together|combined|merged|same tree/i,
  merge: /merge/i,
  number: /not a number|cannot be read|could not be read|not read/i,
  range: /range|about|estimate|approximate|taken|\bbetween\b|less than|more than|not a number/i,
  date: /\bdates?\b|\bday\b/i,
  missing: /missing|blank|not given|no value|not measured/i,
  unit: /\bunit|meter|metre|feet|\bfoot|inch|centimet/i,
  thicker: /thicker|larger|wider|swapped|exceeds/i,
  'tip above tree': /above the tree|higher than|taller|swapped|above its height/i,
  'origin above tip': /below its origin|above its tip|swapped|above the tip|under its origin/i,
  'crown base above origin':
    /crown base[^]*(union|origin|starts|limb)|(union|origin|starts|limb)[^]*crown base/i,
  'height for trunk': /trunk|diameter/i,
  duplicate: /twice|already|duplicate|same|again/i,
  'two values': /two values|several values|differ|contradict|more than one/i,
  'several trees': /several trees|two trees|separate trees|different trees|kept apart/i,
  'same id': /same|case|space|invisible|zero|compared|written/i,
  'no limbs': /no limbs|without limbs/i,
  girth: /girth|circumference/i,
  stems: /stems/i,
  assumed: /taken as|planned as|assumed|read as/i,
  choice: /not one of|is not|unknown|could not be read/i,
  orphan: /no tree|not listed|unknown tree|without a tree|no such tree/i,
  error: /error/i,
  parent: /parent/i,
  percent: /percent|%/i
} as const

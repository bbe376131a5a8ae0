/**
 * Formulas as a file stores them and as people type them. In a file, a function of an add-in stands as
 * _xldudf_LIMB_ASPECTRATIO( and a newer native function as _xlfn.XLOOKUP(; texts inside quotes are left alone.
 */

/** Native functions that a file marks as newer than its format, as far as the grid calculates them (from memory). */
const newer = new Set(
  (
    'CONCAT IFS IFNA MAXIFS MINIFS SWITCH TEXTJOIN XLOOKUP XMATCH UNIQUE SEQUENCE RANDARRAY SORTBY LET LAMBDA ' +
    'TEXTBEFORE TEXTAFTER TEXTSPLIT VSTACK HSTACK TOROW TOCOL WRAPROWS WRAPCOLS TAKE DROP CHOOSECOLS CHOOSEROWS ' +
    'EXPAND DAYS ISOWEEKNUM XOR NUMBERVALUE MAP REDUCE SCAN BYROW BYCOL MAKEARRAY'
  ).split(' ')
)

/** These two have a second mark besides. */
const sheetNewer = new Set(['FILTER', 'SORT'])

const quoted = /("(?:[^"]|"")*"|'(?:[^']|'')*')/

/** Applies a change to the parts of a formula that are not quoted. */
function outsideQuotes(formula: string, change: (part: string) => string): string {
  return formula
    .split(quoted)
    .map((part, index) => (index % 2 === 1 ? part : change(part)))
    .join('')
}

/** From =LIMB.STANDING(A2) to _xldudf_LIMB_STANDING(A2), without the "=". */
export function toFileFormula(formula: string): string {
  return outsideQuotes(formula.replace(/^=/, ''), (part) =>
    part.replace(/([A-Za-z_][A-Za-z0-9_.]*)\(/g, (whole, name: string) => {
      const upper = name.toUpperCase()
      if (upper.startsWith('LIMB.')) return `_xldudf_LIMB_${upper.slice('LIMB.'.length)}(`
      if (sheetNewer.has(upper)) return `_xlfn._xlws.${upper}(`
      return newer.has(upper) ? `_xlfn.${upper}(` : whole
    })
  )
}

/** From _xldudf_LIMB_STANDING(A2) to =LIMB.STANDING(A2). */
export function fromFileFormula(formula: string): string {
  const typed = outsideQuotes(formula.replace(/^=/, ''), (part) =>
    part.replace(/_xldudf_LIMB_/gi, 'LIMB.').replace(/_xlfn\.(_xlws\.)?|_xlpm\./g, '')
  )
  return `=${typed}`
}

import type { Cell } from '../../shared/cells'

/**
 * The sample inventory: an invented scenario of ours. The trees, the business park and every measurement are made up;
 * a few cells are wrong on purpose, so that the checks have something to show.
 */
export const sampleSheetName = 'Inventory'

const headers =
  'Tree | Species | Location | Trunk dia (in) | Height (ft) | Crown base (ft) | Life stage | Vigor | Growth | Clearance (ft) | Access | Limb | Role | Limb dia (in) | Stem dia (in) | Origin (ft) | Tip (ft) | Included bark | Bearing | Live or dead | Lowest foliage (ft) | Notes'

/** Tree columns stand on a tree's first row; the rows below it inherit them. */
const rows = `
T01 | Red maple | Gate lawn (invented) | 7.5 | 32 | 6 | young | good | fast | 8 | open | A | leader | 5.2 | | 7 | 32 | | | live | |
T01 | | | | | | | | | | | B | | 4.4 | 5.2 | 7 | 30 | full | 95 | live | 9 | codominant, seam of bark
T01 | | | | | | | | | | | C | | 2.6 | 5.6 | 6.2 | 25 | none | 240 | live | 8 |
T01 | | | | | | | | | | | D | | 1.6 | 4.8 | 11 | 22 | none | 10 | live | 12 |
T01 | | | | | | | | | | | E | | 1.1 | 4.1 | 14.5 | 24 | none | 160 | live | 15 |
T01 | | | | | | | | | | | F | temporary | 0.9 | 6.4 | 4.5 | 8 | none | 300 | live | 6 | low, over the walk
T02 | Pin oak | Gate lawn (invented) | 9.2 | 38 | 9 | medium | good | medium | 8 | open | A | leader | 7.6 | | 10 | 38 | | | live | |
T02 | | | | | | | | | | | B | | 5.1 | 6.8 | 12 | 35 | partial | 45 | live | 14 | reaches the top
T02 | | | | | | | | | | | C | | 3.3 | 7.4 | 10 | 30 | none | 180 | live | 10 |
T02 | | | | | | | | | | | D | | 2.4 | 6.1 | 15 | 29 | none | 270 | live | 15 |
T02 | | | | | | | | | | | E | | 1.8 | 5.4 | 18 | 28 | none | 120 | live | 19 |
T02 | | | | | | | | | | | F | | 1.2 | 7.6 | 9.4 | 14 | none | 330 | dead | | dead wood
T03 | American elm | Mill road 1 (invented) | 12.4 | 46 | 8 | medium | good | fast | 14 | open | A | leader | 9.1 | | 9 | 46 | | | live | |
T03 | | | | | | | | | | | B | | 7.4 | 8.2 | 9 | 45 | full | 20 | live | 13 | second stem
T03 | | | | | | | | | | | C | | 5.8 | 7.9 | 11 | 41 | partial | 200 | live | 14 | third stem
T03 | | | | | | | | | | | D | | 3.1 | 7.2 | 14 | 36 | none | 110 | live | 14 |
T03 | | | | | | | | | | | E | | 2.9 | 6.5 | 17 | 37 | none | 290 | live | 17 |
T03 | | | | | | | | | | | F | | 1.7 | 9.4 | 8.2 | 18 | none | 80 | live | 8 | over the road
T04 | Honeylocust | Mill road 2 (invented) | 5.6 | 27 | 7 | young | good | fast | 8 | fenced | A | leader | 4.1 | | 7.5 | 27 | | | live | |
T04 | | | | | | | | | | | B | | 2.9 | 4.3 | 7.2 | 24 | none | 60 | live | 9 |
T04 | | | | | | | | | | | C | | 2.0 | 3.9 | 9 | 22 | none | 210 | live | 10 |
T04 | | | | | | | | | | | D | | 1.3 | 3.4 | 12 | 19 | none | 330 | live | 12.5 |
T05 | Littleleaf linden | Courtyard (invented) | 6.1 | 24 | 5 | young | fair | medium | 7 | no machine | A | leader | 4.6 | | 6 | 24 | | | live | |
T05 | | | | | | | | | | | B | | 3.5 | 4.5 | 6 | 23 | full | 150 | live | 7 |
T05 | | | | | | | | | | | C | | 2.2 | 4.2 | 7.4 | 20 | none | 15 | live | 8 |
T05 | | | | | | | | | | | D | | 1.4 | 3.9 | 9.5 | 17 | none | 250 | live | 10 |
T06 | Northern red oak | Hill side (invented) | 19.5 | 58 | 14 | mature | good | medium | | no machine | A | leader | 15.2 | | 16 | 58 | | | live | |
T06 | | | | | | | | | | | B | | 9.6 | 13.4 | 18 | 54 | none | 85 | live | 20 |
T06 | | | | | | | | | | | C | | 8.1 | 12.6 | 21 | 50 | partial | 265 | live | 22 | long, end-heavy
T06 | | | | | | | | | | | D | | 5.2 | 11.4 | 25 | 45 | none | 180 | live | 25 |
T06 | | | | | | | | | | | E | | 3.4 | 14.8 | 16.5 | 24 | none | 20 | dead | | over the path
T07 | Sweetgum | Hill side (invented) | 8.3 | 41 | 7 | medium | good | medium | 8 | open | A | leader | 7.1 | | 8 | 41 | | | live | |
T07 | | | | | | | | | | | B | | 2.6 | 6.9 | 10 | 27 | none | 40 | live | 10 |
T07 | | | | | | | | | | | C | | 2.3 | 6.4 | 13 | 28 | none | 170 | live | 13 |
T07 | | | | | | | | | | | D | | 2.1 | 5.8 | 16 | 30 | none | 300 | live | 16 |
T08 | Hackberry | Loading bay (invented) | 10.8 | 36 | 10 | medium | poor | slow | 14 | fenced | A | leader | 8.8 | | 11 | 36 | | | live | | thin crown
T08 | | | | | | | | | | | B | | 5.9 | 8.1 | 12 | 33 | none | 90 | live | 13 |
T08 | | | | | | | | | | | C | | 3.8 | 7.5 | 14 | 29 | none | 230 | dead | | dead wood
T09 | White oak | Far corner (invented) | 27 | 64 | 12 | old | good | slow | | no machine | A | leader | 22 | | 15 | 64 | | | live | |
T09 | | | | | | | | | | | B | | 11.5 | 20 | 18 | 52 | none | 130 | live | 20 |
T09 | | | | | | | | | | | C | | 9.8 | 18.5 | 23 | 50 | none | 310 | live | 24 |
T10 | Sycamore | Brook bank (invented) | 14.2 | 52 | 15 | medium | good | fast | | open | A | | 9.9 | 9.2 | 15 | 52 | partial | 70 | live | 18 | two stems, neither marked
T10 | | | | | | | | | | | B | | 9.2 | 9.9 | 15 | 50 | partial | 250 | live | 18 |
T10 | | | | | | | | | | | C | | 4.1 | 8.7 | 20 | 41 | none | 160 | live | 21 |
T10 | | | | | | | | | | | D | | 3.0 | 7.9 | 24 | 42 | none | 340 | live | 24 |
T11 | Ginkgo | Visitor parking (invented) | 4.4 | 22 | 6 | young | good | slow | 8 | open | A | leader | 3.6 | | 6.5 | 22 | | | live | |
T11 | | | | | | | | | | | B | | 1.7 | 3.5 | 7 | 17 | none | 10 | live | 8 |
T11 | | | | | | | | | | | C | | 1.2 | 3.1 | 9 | 15 | none | 130 | live | 9 |
T11 | | | | | | | | | | | D | | 0.8 | 3.6 | 6.3 | 10 | none | 250 | live | 6 |
T12 | Red maple | Visitor parking (invented) | 2.8 | 16 | 4 | planting | good | fast | | open | A | leader | 2.2 | | 4.5 | 16 | | | live | |
T12 | | | | | | | | | | | B | | 1.7 | 2.1 | 4.6 | 15.5 | full | 200 | live | 5 | second leader
T12 | | | | | | | | | | | C | | 0.9 | 2.0 | 6 | 12 | none | 20 | live | 6.5 |
T13 | Green ash | Visitor parking (invented) | 11.6 | 40 | 11 | medium | good | medium | 14 | open | A | leader | 9.5 | | 12 | 40 | | | live | |
T13 | | | | | | | | | | | B | | 6.7 | 9.0 | 12.5 | 37 | none | 100 | live | 14 |
T13 | | | | | | | | | | | C | | 17 cm | 8.6 | 15 | 36 | none | 280 | live | 16 | measured with the other tape
T13 | | | | | | | | | | | D | | about 3 | 8.0 | 18 | 31 | none | 190 | live | 19 | to be measured
T13 | | | | | | | | | | | E | | 0 | 7.6 | 20 | 33 | none | 10 | live | 21 |
T13 | | | | | | | | | | | B | | 2.4 | 7.0 | 22 | 34 | none | 45 | live | 22 | same id twice
T14 | Honeylocust | Visitor parking (invented) | 13.1 | 42 | 12 | medium | good | medium | 14 | open | A | leader | 10.4 | | 13 | 42 | | | live | |
T14 | | | | | | | | | | | B | | 6.1 | 9.8 | 13.5 | 38 | partial | 75 | live | 14 |
T14 | | | | | | | | | | | C | | 4.4 | 9.1 | 16 | 35 | none | 255 | live | 17 |
T14 | | | | | | | | | | | D | | -3 | 8.5 | 19 | 33 | none | 165 | live | 20 | minus typed by mistake
 | | | | | | | | | | | X | | 2.5 | 6 | 9 | 20 | none | 30 | live | 9 | which tree?
T15 | Littleleaf linden | Depot fence (invented) | 16 | 45 | 12 | mature | fair | medium | 8 | fenced | | | | | | | | | | | not surveyed yet
`

const textColumns = new Set(['Tree', 'Species', 'Location', 'Life stage', 'Limb', 'Notes'])

function readCell(text: string, header: string): Cell {
  if (text === '') return null
  return !textColumns.has(header) && /^-?\d+(\.\d+)?$/.test(text) ? Number(text) : text
}

const names = headers.split(' | ')

function readRow(line: string): Cell[] {
  const cells = line.split('|').map((cell) => cell.trim())
  return names.map((name, column) => readCell(cells[column] ?? '', name))
}

/** Headers first, then one row per limb. */
export const sampleInventory: Cell[][] = [names, ...rows.trimEnd().split('\n').slice(1).map(readRow)]

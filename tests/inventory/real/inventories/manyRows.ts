/** Two trees of two limbs, as the small files have them. */
const four = [
  ['T1', 'Red maple', '7.2', '30', '6', 'young', 'good', 'A', '4.1', '5', '7', '28'],
  ['T1', 'Red maple', '7.2', '30', '6', 'young', 'good', 'B', '2.7', '5.4', '6.5', '24'],
  ['T2', 'Pin oak', '8.4', '33', '7', 'young', 'good', 'A', '4.4', '5.6', '8', '31'],
  ['T2', 'Pin oak', '8.4', '33', '7', 'young', 'good', 'B', '3.1', '6', '7.5', '26']
]

const ours = [
  'Tree ID',
  'Species',
  'DBH (in)',
  'Tree height (ft)',
  'Crown base (ft)',
  'Life stage',
  'Vigor',
  'Limb ID',
  'Limb diameter (in)',
  'Stem diameter above union (in)',
  'Origin height (ft)',
  'Tip height (ft)'
]

/** What a register of assets keeps beside; header and value. */
const others = [
  ['Asset class', 'green'],
  ['Budget code', 'K-17'],
  ['Owner', 'B. Person'],
  ['Parcel', '88-12'],
  ['Entered on', '2026-05-04'],
  ['Entered by', 'A. Person'],
  ['Changed on', '2026-05-06'],
  ['Photo', 'IMG_0101.jpg'],
  ['Latitude', '41.20311'],
  ['Longitude', '-83.51102'],
  ['Ground cover', 'turf'],
  ['Soil type', 'loam'],
  ['Irrigated', 'no'],
  ['Year planted', '2014'],
  ['Nursery', 'Example Nursery'],
  ['Invoice no.', '20140311'],
  ['Purchase price', '180.00'],
  ['Replacement value', '950.00'],
  ['Kerb height (in)', '6'],
  ['Pavement width (ft)', '5'],
  ['Distance to building (ft)', '18'],
  ['Distance to hydrant (ft)', '40'],
  ['Light pole', 'P-7'],
  ['Wire height (ft)', '24'],
  ['Sign', 'none'],
  ['Grate size (in)', '48'],
  ['Mulch depth (in)', '3'],
  ['Work order', 'W-101'],
  ['Work status', 'open'],
  ['Permit no.', '0'],
  ['Contractor', 'Example Tree Care'],
  ['Next inspection', '2027-05-01'],
  ['Inspector', 'A. Person'],
  ['Traffic', 'low'],
  ['Land use', 'park'],
  ['Ward', '4'],
  ['Zoning', 'R1'],
  ['Bench nearby', 'no'],
  ['Litter bin', 'yes'],
  ['Plaque', 'no'],
  ['Event area', 'no'],
  ['Bird nest', 'no'],
  ['Wildlife note date', '2026-04-20'],
  ['Score', '7'],
  ['Rank', '2'],
  ['Version', '3'],
  ['Device', 'tablet 2'],
  ['Accuracy (m)', '0.6']
] as const

/** Our twelve columns at every fifth place, from the third. */
function scattered(row: readonly string[], of: 0 | 1): string {
  const free = others.map((pair) => pair[of])
  return Array.from({ length: 60 }, (_none, at) =>
    at % 5 === 2 ? row[(at - 2) / 5] : free[at - Math.floor((at + 2) / 5)]
  ).join(',')
}

export const wideExportText = [scattered(ours, 0), ...four.map((row) => scattered(row, 1))].join('\n')

const trees = Array.from({ length: 500 }, (_none, at) => `T${String(at + 1)}`)

/** Five hundred trees of two limbs, the stem, perhaps, under a header that does not say so. */
export const thousandLimbsText = [
  'Tree,Height (ft),Crown base (ft),Life stage,Vigor,Limb,Limb dia (in),Reading 3,Origin (ft),Tip (ft)',
  ...trees.flatMap((id) => [`${id},30,6,young,good,A,4.1,5,7,28`, `${id},30,6,young,good,B,2.7,5.4,6.5,24`])
].join('\n')

/** Unknown words for access, vigor and bark in every row, and no diameter for limb A of every other tree. */
export const thousandFaultsText = [
  'Tree,Height (ft),Crown base (ft),Access,Vigor,Limb,Limb dia (in),Stem dia (in),Origin (ft),Tip (ft),Included bark',
  ...trees.flatMap((id, at) => [
    `${id},30,6,zz,qq,A,${at % 2 === 0 ? '4.1' : ''},5,7,28,ww`,
    `${id},30,6,zz,qq,B,2.7,5.4,6.5,24,ww`
  ])
].join('\n')

/** The sixty columns and two hundred and forty numbered readings. */
const readings = (of: (reading: number) => string) =>
  Array.from({ length: 240 }, (_none, at) => of(at + 1)).join(',')

export const threeHundredText = [
  `${scattered(ours, 0)},${readings((reading) => `Reading ${String(reading)}`)}`,
  ...four.map((row) => `${scattered(row, 1)},${readings((reading) => String((reading * 37) % 100))}`)
].join('\n')

/** Inventories whose printed documents are looked at. All but the sample are made here; every one is invented. */
import type { Cell } from '../../shared/cells'
import { numbers } from '../../bench/madeInventory'
import { noDetails, type JobDetails } from '../../src/details/detailsBook'
import type { DocumentKind } from '../../src/sheets/documentBook'
import { sampleInventory, sampleSheetName } from '../../src/file/sampleInventory'
import { youngTrees } from '../../tests/sheets/youngTrees'

export interface PrintedInventory {
  readonly name: string
  readonly sheet: string
  readonly rows: Cell[][]
  readonly details: JobDetails
  /** The most pages that a document may take. */
  readonly pages: Readonly<Partial<Record<DocumentKind, number>>>
}

/** Invented, and long enough to try every line. */
const filledIn: JobDetails = {
  ...noDetails,
  company: 'Windrow & Daughters Tree Care (invented)',
  address: '1200 Imaginary Avenue, Suite 14, Nowhere Springs, ZZ 00000',
  phone: '+1 555 0100',
  mail: 'office@example.com',
  preparedBy: 'Marguerite Featherstonehaugh-Okonkwo',
  credential: 'Certified by an invented body',
  credentialNumber: 'XX-00000-A',
  insurance: 'Invented Mutual, general liability, policy 000-000-000',
  client: 'Board of Trustees of the Invented Arboretum and Botanical Campus',
  site: 'North and South Campus between Imaginary Avenue and the Old Canal',
  contact: 'Facilities desk, +1 555 0101',
  reference: '2026-0417-INV',
  revision: '2',
  date: '2026-03-02',
  validUntil: '2026-06-30',
  terms:
    'Payment within 30 days of the invoice. The client keeps the drives clear from 7 in the morning on each day of work. Wood chips stay on site where the client wants them.'
}

/** A campus: six limbs a tree, zones and streets, tag numbers, every stage of life. */
function campus(trees: number): Cell[][] {
  const next = numbers(20)
  const between = (from: number, to: number) => Math.round((from + next() * (to - from)) * 10) / 10
  const oneOf = <T>(from: readonly T[]): T => from[Math.floor(next() * from.length)] as T
  const rows: Cell[][] = [
    'Tag | Zone | Location | Species | Trunk dia (in) | Height (ft) | Crown base (ft) | Life stage | Vigor | Growth | Clearance (ft) | Access | Limb | Role | Limb dia (in) | Stem dia (in) | Origin (ft) | Tip (ft) | Included bark | Bearing | Lowest foliage (ft) | Notes'.split(
      ' | '
    )
  ]
  for (let at = 1; at <= trees; at++) {
    const trunk = between(3, 19)
    const height = Math.round(14 + trunk * 2.3 + 6 * next())
    const base = Math.round(height * (0.15 + 0.12 * next()))
    const stage = trunk < 7 ? 'young' : trunk < 15 ? 'medium' : 'mature'
    const zone = `Zone ${oneOf(['A', 'B', 'C', 'D', 'E', 'F'])}`
    const tree: Cell[] = [1000 + at, zone, `${zone}, bed ${String(1 + Math.floor(next() * 9))} (invented)`, oneOf(['Red maple', 'Pin oak', 'Honeylocust', 'American elm', 'Swamp white oak', 'Littleleaf linden']), trunk, height, base, stage, oneOf(['good', 'good', 'good', 'fair']), oneOf(['slow', 'medium', 'fast']), next() < 0.2 ? 8 : null, 'open'] // prettier-ignore
    rows.push([...tree, 'A', 'leader', between(trunk * 0.6, trunk * 0.75), null, base, height, null, null, null, null]) // prettier-ignore
    for (const limb of ['B', 'C', 'D', 'E', 'F']) {
      const origin = between(base - 1, base + (height - base) * 0.55)
      const stem = Math.max(1.2, Math.round(trunk * (1 - (0.9 * origin) / height) * 10) / 10)
      rows.push([...tree, limb, null, Math.max(0.5, Math.round(stem * (0.25 + 0.7 * next() * next()) * 10) / 10), stem, origin, between(origin + (height - origin) * 0.4, height), oneOf(['none', 'none', 'none', 'partial', 'full']), Math.floor(next() * 360), next() < 0.5 ? between(origin - 1, origin + 2) : null, next() < 0.08 ? 'seam of bark, look again from the lift' : null]) // prettier-ignore
    }
  }
  return rows
}

/** Metric, with headers in German and names in Greek, Cyrillic, Han and accented Latin letters. */
const metric: Cell[][] = [
  'Baum | Art | Standort | Stammdurchmesser (cm) | Höhe (m) | Kronenansatz (m) | Lebensphase | Vitalität | Lichtraum (m) | Ast | Rolle | Astdurchmesser (cm) | Stamm darüber (cm) | Ansatz (m) | Spitze (m) | Eingewachsene Rinde | Richtung | Unterstes Laub (m)'.split(
    ' | '
  ),
  ['Ulme-Ä1', 'Ulmus minor', 'Straße am Kanal 4 (erfunden)', 31, 13.5, 2.6, 'mittel', 'gut', 4.5, 'Α', 'Leittrieb', 23, null, 3, 13.5, null, null, null],
  ['Ulme-Ä1', null, null, null, null, null, null, null, null, 'Β', null, 20, 22, 3.1, 13, 'voll', 20, 3.4],
  ['Ulme-Ä1', null, null, null, null, null, null, null, null, 'Γ', null, 13, 20, 3.6, 11.8, 'teilweise', 200, 4],
  ['Дуб №2', 'Quercus robur', 'Парковая улица (вымышлено)', 22, 11, 2.2, 'mittel', 'gut', null, 'Лидер', 'Leittrieb', 17, null, 2.8, 11, null, null, null],
  ['Дуб №2', null, null, null, null, null, null, null, null, 'Северная', null, 12.5, 16, 3, 10.2, 'nein', 0, 3.3],
  ['Дуб №2', null, null, null, null, null, null, null, null, 'Южная', null, 7, 15, 3.6, 9, 'nein', 180, 4],
  ['银杏三号', 'Ginkgo biloba', '北门花坛（虚构）', 12, 7, 1.5, 'jung', 'gut', null, '主干', 'Leittrieb', 9, null, 1.8, 7, null, null, null],
  ['银杏三号', null, null, null, null, null, null, null, null, '东枝', null, 7, 8.5, 2, 6.6, 'nein', 90, 2.2],
  ['银杏三号', null, null, null, null, null, null, null, null, '西枝', null, 4, 8, 2.5, 6, 'nein', 270, 2.8],
  ['Πλάτανος 4', 'Platanus orientalis', 'Πλατεία (φανταστική)', 44, 17, 4, 'alt', 'mäßig', 5, 'Κορυφή', 'Leittrieb', 34, null, 5, 17, null, null, null],
  ['Πλάτανος 4', null, null, null, null, null, null, null, null, 'Ανατολή', null, 18, 32, 5.2, 15, 'nein', 90, 4.1],
  ['Łęg-5 (Ømål)', 'Acer pseudoplatanus', 'Œuvre & Cie, côté préau (inventé)', 9.5, 6, 1.4, 'jung', 'gut', null, 'A', 'Leittrieb', 7.2, null, 1.6, 6, null, null, null],
  ['Łęg-5 (Ømål)', null, null, null, null, null, null, null, null, 'B', null, 5.6, 7, 1.7, 5.6, 'voll', 135, 1.9]
] // prettier-ignore

/** Ids and places as a large owner writes them: too long for any column. */
function longIds(): Cell[][] {
  const rows: Cell[][] = [
    'Asset ID | Species | Location | DBH (in) | Height (ft) | Crown base (ft) | Life stage | Vigor | Branch ID | Role | Branch dia (in) | Stem dia (in) | Origin (ft) | Tip (ft) | Bark | Azimuth'.split(
      ' | '
    )
  ]
  for (let at = 1; at <= 6; at++) {
    const id = `PARK-NORTH-${String(201 + at)}-0000${String(at)}-REPLACEMENT-PLANTING`
    const tree: Cell[] = [id, 'Swamp white oak, selected for a narrow crown', `Promenade between the old pump house and the lower bridge, row ${String(at)} (invented)`, 9 + at, 34 + at, 7, 'medium', 'good'] // prettier-ignore
    rows.push([...tree, `${id}-LEADER`, 'leader', 7 + at * 0.8, null, 8, 34 + at, null, null])
    for (let limb = 1; limb <= 8; limb++)
      rows.push([...tree, `${id}-LIMB-${String(limb)}`, null, Math.round((7.4 + at * 0.8 - limb * 0.8) * 10) / 10, 8 + at * 0.7, 8 + limb, 35 + at - limb * 1.5, limb === 1 ? 'included' : 'none', 40 * limb]) // prettier-ignore
  }
  return rows
}

export const printedInventories: readonly PrintedInventory[] = [
  {
    name: 'Sample',
    sheet: sampleSheetName,
    rows: sampleInventory,
    details: noDetails,
    pages: { 'client-report': 12 }
  },
  {
    name: 'Campus of 120',
    sheet: 'Campus',
    rows: campus(120),
    details: filledIn,
    pages: { 'client-report': 25, 'work-order': 45 }
  },
  { name: 'Metric', sheet: 'Bäume', rows: metric, details: { ...filledIn, paper: 'a4' }, pages: {} },
  { name: 'Long ids', sheet: 'Assets', rows: longIds(), details: filledIn, pages: {} }
]

/** A round of young trees: of this document only, and of no other. */
export const longRound: PrintedInventory = {
  name: 'Round of 500',
  sheet: 'Trees',
  rows: youngTrees(500),
  details: noDetails,
  pages: { 'round-sheet': 12 }
}

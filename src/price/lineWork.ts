import { counted } from '../../shared/words/counts'
import { rounded } from '../../shared/words/rounding'
import { atLeast, atMost } from '../formulas/boundary'
import { densityOf } from '../formulas/speciesDensities'
import { kilogramsPerPound } from '../../shared/units'
import type { Cut, TreePlan, Visit } from '../plan/plan'
import { brushKilograms, brushVolumes } from '../formulas/brush'
import { cutMinutes, hoursOnSite, printedHours } from '../formulas/time'
import type { EstimateLine } from './estimate'
import { noneLeft, type Rates, type RatesFor } from './rates'

/** Minutes of pruning and of stacking per inch of trunk, and brush per minute of pruning. */
const published = {
  source: 'Churack, Miller, Ottman & Koval 1994, J. Arboric. 20(4):231-236 (slopes; 4 to 16 in trunks)',
  pruningPerInch: 6,
  stackingPerInch: 1.5,
  /** Trunks that the slopes were found on, inches. */
  smallest: 4,
  largest: 16,
  poundsPerMinute: 3
}

/** A line before money: what the visit takes. */
export type LineWork = Omit<EstimateLine, 'money' | 'price'>

/** Kilograms in the unit of weight of the rates. */
function kilogramsPer({ system }: Pick<Rates, 'system'>): number {
  return system === 'in-ft' ? kilogramsPerPound : 1
}

/** What a visit with cuts takes: minutes by cut, brush by weight. */
export function workOfVisit(
  tree: TreePlan,
  visit: Visit,
  rates: RatesFor<'minutes'> & Pick<Rates, 'system'>
): LineWork {
  const { setUpMinutes, accessFactor, cutClasses, heightBands, brushPerMinute, system, ...more } = rates
  noneLeft(more)
  const access = tree.tree.access ?? 'open'
  let cutting = 0
  let kilograms = 0
  let relief = 0
  for (const cut of visit.cuts) {
    const { count, diameter, height } = cut.work
    cutting += count * cutMinutes(diameter, height ?? cut.limb.origin ?? 0, { cutClasses, heightBands })
    kilograms += brushOf(cut, tree.tree.species)
    relief += Math.max(0, cut.priority - cut.nextPriority)
  }
  const weight = Math.round(kilograms / kilogramsPer({ system }))
  const brush = weight / brushPerMinute
  const minutes = { setUp: setUpMinutes[access], cutting, brush }
  const basis = `${counted(visit.cuts.length, 'cut')} by size and height, access ${access}`
  return lineOf(
    tree,
    { visit: visit.visit, year: visit.year, cuts: visit.cuts.length, minutes, relief, basis },
    { weight, byWeight: true },
    { accessFactor, system }
  )
}

/** A tree without limbs is budgeted by the published time an inch of trunk; null where it may not be pruned. */
export function workByTrunk(tree: TreePlan, year: number, rates: Rates): LineWork | null {
  const { trunk } = tree.tree
  if (trunk === null || atMost(tree.allowedRemoval, 0)) return null
  const inches = trunk / 25.4
  const cutting = published.pruningPerInch * inches
  const kilograms = cutting * published.poundsPerMinute * kilogramsPerPound
  const minutes = {
    setUp: rates.setUpMinutes[tree.tree.access ?? 'open'],
    cutting,
    brush: published.stackingPerInch * inches
  }
  const within = atLeast(inches, published.smallest) && atMost(inches, published.largest)
  const beyond = within ? '' : '; this trunk is outside that range'
  const basis = `no limbs listed: budget by trunk size, ${published.source}${beyond}`
  return lineOf(
    tree,
    { visit: 1, year, cuts: 0, minutes, relief: null, basis },
    { weight: Math.round(kilograms / kilogramsPer(rates)), byWeight: false },
    rates
  )
}

function lineOf(
  { tree }: TreePlan,
  line: Pick<LineWork, 'visit' | 'year' | 'cuts' | 'minutes' | 'relief' | 'basis'>,
  { weight, byWeight }: { weight: number; byWeight: boolean },
  rates: Pick<Rates, 'accessFactor' | 'system'>
): LineWork {
  const accessFactor = rates.accessFactor[tree.access ?? 'open']
  const { setUp, cutting, brush } = line.minutes
  const { loose, chips } = brushVolumes(weight, rates.system)
  return {
    ...line,
    tree: tree.id,
    accessFactor,
    crewHours: printedHours(hoursOnSite(setUp + cutting + brush, accessFactor)),
    brushKilograms: weight * kilogramsPer(rates),
    brush: { weight, looseVolume: rounded(loose, 2), chipVolume: rounded(chips, 2), byWeight }
  }
}

/** Species without a density of their own weigh as the hardwood in the middle of the list. */
function brushOf(cut: Cut, species: string): number {
  const listed = densityOf(species) === null ? 'hardwood' : species
  const kilograms = brushKilograms(cut.work.section, removedLength(cut), listed)
  return typeof kilograms === 'number' && !Number.isNaN(kilograms) ? kilograms : 0
}

/** Length of what comes off in m: that part of the measured length, or of the rise and the angle. */
function removedLength({ limb, work }: Cut): number {
  return limbLength(limb) * work.part
}

function limbLength(limb: Cut['limb']): number {
  if (limb.length !== null) return limb.length
  const rise = Math.abs((limb.tip ?? 0) - (limb.origin ?? 0))
  const angle = Math.min(limb.angle ?? 0, 75)
  return rise / Math.cos((angle * Math.PI) / 180)
}

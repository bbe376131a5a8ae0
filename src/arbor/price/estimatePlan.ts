import { Money, roundMoney } from '../../../shared/money'
import { densityOf } from '../../../shared/speciesDensities'
import { kilogramsPerPound } from '../../../shared/units'
import type { Cut, Plan, TreePlan, Visit } from '../plan/plan'
import { brushKilograms } from './brushWeight'
import { cutMinutes, printedHours } from './crewHours'
import type { Estimate, EstimateLine } from './estimate'
import { priceWithMargin } from './priceWithMargin'
import { inventedRates, type Rates } from './rates'

/** Minutes of pruning and of stacking a inch of trunk, and brush a minute of pruning. */
const published = {
  source: 'Churack, Miller, Ottman & Koval 1994, J. Arboric. 20(4):231-236 (slopes; 4 to 16 in trunks)',
  pruningPerInch: 6,
  stackingPerInch: 1.5,
  poundsPerMinute: 3
}

/** What each visit to each tree takes and costs; every printed line rounded, totals are sums of printed lines. */
export function estimatePlan(plan: Plan, rates: Rates = inventedRates): Estimate {
  const lines: EstimateLine[] = []
  const year = Number(plan.date.slice(0, 4))
  for (const tree of plan.trees) {
    if (tree.tree.limbs.length === 0) {
      const line = byTrunkSize(tree, year, rates)
      if (line !== null) lines.push(line)
      continue
    }
    for (const visit of tree.visits) if (visit.cuts.length > 0) lines.push(visitLine(tree, visit, rates))
  }
  const subtotal = lines.reduce((sum, line) => sum.plus(line.price), new Money(0))
  const tax = roundMoney(subtotal.times(rates.taxRate), rates.minorDigits)
  return {
    currency: rates.currency,
    minorDigits: rates.minorDigits,
    taxRate: Number(rates.taxRate),
    lines,
    subtotal,
    tax,
    total: subtotal.plus(tax),
    inventedRates: rates.invented
  }
}

function visitLine(tree: TreePlan, visit: Visit, rates: Rates): EstimateLine {
  const access = tree.tree.access ?? 'open'
  let cutting = 0
  let brush = 0
  for (const cut of visit.cuts) {
    cutting += cutMinutes(cut.cutDiameter, workingHeight(cut), rates)
    brush += brushOf(cut, tree.tree.species)
  }
  const minutes = {
    setUp: rates.setUpMinutes[access],
    cutting,
    brush: brush / rates.brushKilogramsPerMinute
  }
  const basis = `${visit.cuts.length} ${visit.cuts.length === 1 ? 'cut' : 'cuts'} by size and height, access ${access}`
  return priced(tree, visit.visit, visit.year, visit.cuts.length, minutes, brush, basis, rates)
}

/** Where the crew works: at the cut, or at the limb's origin. */
function workingHeight(cut: Cut): number {
  return cut.cutHeight ?? cut.limb.origin ?? 0
}

/** Species without a density of their own weigh as the hardwood in the middle of the list. */
function brushOf(cut: Cut, species: string): number {
  const listed = densityOf(species) === null ? 'hardwood' : species
  const kilograms = brushKilograms(cut.cutDiameter, removedLength(cut), listed)
  return typeof kilograms === 'number' && !Number.isNaN(kilograms) ? kilograms : 0
}

/** Length of what comes off in m: the measured length, or the rise and the angle; the share √f of it beyond the cut. */
function removedLength({ limb, share }: Cut): number {
  return limbLength(limb) * Math.sqrt(share)
}

function limbLength(limb: Cut['limb']): number {
  if (limb.length !== null) return limb.length
  const rise = Math.abs((limb.tip ?? 0) - (limb.origin ?? 0))
  const angle = Math.min(limb.angle ?? 0, 75)
  return rise / Math.cos((angle * Math.PI) / 180)
}

/** A tree without limbs is budgeted by the published time an inch of trunk. */
function byTrunkSize(tree: TreePlan, year: number, rates: Rates): EstimateLine | null {
  const { trunk } = tree.tree
  if (trunk === null || tree.allowedRemoval <= 0) return null
  const inches = trunk / 25.4
  const cutting = published.pruningPerInch * inches
  const brush = cutting * published.poundsPerMinute * kilogramsPerPound
  const minutes = {
    setUp: rates.setUpMinutes[tree.tree.access ?? 'open'],
    cutting,
    brush: published.stackingPerInch * inches
  }
  return priced(
    tree,
    1,
    year,
    0,
    minutes,
    brush,
    `no limbs listed: budget by trunk size, ${published.source}`,
    rates
  )
}

function priced(
  tree: TreePlan,
  visit: number,
  year: number,
  cuts: number,
  minutes: EstimateLine['minutes'],
  brush: number,
  basis: string,
  rates: Rates
): EstimateLine {
  const accessFactor = rates.accessFactor[tree.tree.access ?? 'open']
  const hours = printedHours((minutes.setUp + minutes.cutting + minutes.brush) * accessFactor)
  const kilograms = Math.round(brush)
  const direct = new Money(rates.crewHour)
    .plus(rates.equipmentHour)
    .times(hours)
    .plus(new Money(rates.disposalPerKilogram).times(kilograms))
  const price = priceWithMargin(
    direct,
    new Money(rates.overheadRate),
    new Money(rates.marginRate),
    new Money(rates.minimumPerTree)
  )
  return {
    tree: tree.tree.id,
    visit,
    year,
    cuts,
    minutes,
    accessFactor,
    crewHours: hours,
    brushKilograms: kilograms,
    price: roundMoney(price, rates.minorDigits),
    basis
  }
}

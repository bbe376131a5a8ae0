import { counted } from '../../shared/words/counts'
import { rounded } from '../../shared/words/rounding'
import { atMost } from '../formulas/boundary'
import { densityOf } from '../formulas/speciesDensities'
import { kilogramsPerPound } from '../../shared/units'
import type { Cut, TreePlan, Visit } from '../plan/plan'
import { brushVolumes, cutKilograms } from '../formulas/brush'
import { cutMinutes, hoursOnSite, printedHours } from '../formulas/time'
import type { EstimateLine } from './estimate'
import { noneLeft, type Rates, type RatesFor } from './rates'

/** A line before money: what the visit takes. */
export type LineWork = Omit<EstimateLine, 'money' | 'price'>

/** The rates that hours and weights follow from. */
export type WorkRates = RatesFor<'minutes'> & Pick<Rates, 'system' | 'crewPersons'>

/** What a visit takes before it is told whose and when it is. */
export type Effort = Pick<
  LineWork,
  'persons' | 'byPole' | 'minutes' | 'accessFactor' | 'crewHours' | 'brushKilograms' | 'brush'
>

/** Kilograms in the unit of weight of the rates. */
export function kilogramsPer({ system }: Pick<Rates, 'system'>): number {
  return system === 'in-ft' ? kilogramsPerPound : 1
}

/** Where the crew works on a cut, in m. */
const heightOf = ({ limb, work }: Cut): number => work.height ?? limb.origin ?? 0

/** Every cut can be made from the ground with a pole. */
function isPoleWork(
  cuts: readonly Cut[],
  { poleHeight, poleCut }: Pick<WorkRates, 'poleHeight' | 'poleCut'>
): boolean {
  return cuts.every(
    (cut) => poleHeight > 0 && atMost(heightOf(cut), poleHeight) && atMost(cut.work.diameter, poleCut)
  )
}

/**
 * What a visit with cuts takes: minutes by cut, brush by weight. There is one way for small and large trees: whether one
 * person with a pole does or the crew is needed follows from the cuts.
 */
export function workOfVisit(tree: TreePlan, visit: Visit, rates: WorkRates): LineWork {
  const { setUpMinutes, accessFactor, cutClasses, heightBands, brushPerMinute, setUpPole, ...more } = rates
  const { poleHeight, poleCut, betweenTrees, system, crewPersons, ...others } = more
  noneLeft(others)
  const access = tree.tree.access ?? 'open'
  const byPole = isPoleWork(visit.cuts, { poleHeight, poleCut })
  let cutting = 0
  let kilograms = 0
  let relief = 0
  for (const cut of visit.cuts) {
    cutting += cut.work.count * cutMinutes(cut.work.diameter, heightOf(cut), { cutClasses, heightBands })
    kilograms += brushOf(cut, tree.tree.species)
    relief += Math.max(0, cut.priority - cut.nextPriority)
  }
  const weight = Math.round(kilograms / kilogramsPer({ system }))
  const setUp = betweenTrees + (byPole ? setUpPole : setUpMinutes[access])
  const minutes = { setUp, cutting, brush: weight / brushPerMinute }
  const cuts = counted(visit.cuts.length, 'cut')
  const who = byPole ? 'one person with a pole' : 'the crew'
  return {
    tree: tree.tree.id,
    visit: visit.visit,
    year: visit.year,
    cuts: visit.cuts.length,
    relief,
    basis: `${cuts} by size and height, ${who}, access ${access}`,
    ...effortOf({ minutes, weight, byPole }, accessFactor[access], { system, crewPersons })
  }
}

/** Hours of the crew, and the brush in every unit that is printed, from minutes and weight. */
export function effortOf(
  { minutes, weight, byPole }: Pick<LineWork, 'minutes' | 'byPole'> & { weight: number },
  accessFactor: number,
  { system, crewPersons }: Pick<Rates, 'system' | 'crewPersons'>
): Effort {
  const { setUp, cutting, brush } = minutes
  const { loose, chips } = brushVolumes(weight, system)
  const persons = byPole ? 1 : crewPersons
  const crewMinutes = ((setUp + cutting) * persons) / crewPersons + brush
  return {
    persons,
    byPole,
    minutes,
    accessFactor,
    crewHours: printedHours(hoursOnSite(crewMinutes, accessFactor)),
    brushKilograms: weight * kilogramsPer({ system }),
    brush: { weight, looseVolume: rounded(loose, 2), chipVolume: rounded(chips, 2) }
  }
}

/** Species without a density of their own weigh as the hardwood in the middle of the list. */
function brushOf(cut: Cut, species: string): number {
  const listed = densityOf(species) === null ? 'hardwood' : species
  const kilograms = cutKilograms(cut.work.section, removedLength(cut), listed, cut.live)
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

import { hundredths } from '../../price/hundredths'
import type { UnitSystem } from '../../../shared/units'
import { counted } from '../../../shared/words/counts'
import { quantity } from '../../../shared/words/figures'
import { showDiameter, showHeight } from '../../../shared/words/lengths'
import { heightOfCut } from '../../plan/cutWords'
import type { CardUnits } from './cardFacts'
import type { Stop } from './workOrderDays'

/** Cuts from this diameter in mm on are made with a power saw (house judgment). */
const powerSawFrom = 100

/** What goes onto the truck for these trees, in words (house judgment: the arborist adds to it). */
export function kitFor(stops: readonly Stop[], system: UnitSystem, poleHeight: number): string[] {
  const byPole = stops.filter(({ line }) => line.byPole)
  const aloft = stops.filter(({ line }) => !line.byPole)
  const cuts = stops.flatMap(({ visit }) => visit.cuts)
  const highest = aloft
    .flatMap(({ visit }) => visit.cuts)
    .reduce((most, cut) => Math.max(most, heightOfCut(cut) ?? cut.work.height ?? 0), 0)
  const large = cuts.filter(({ work }) => work.diameter >= powerSawFrom - 1e-6)
  const thickest = large.reduce((most, { work }) => Math.max(most, work.diameter), 0)
  const noMachine = stops.filter(({ tree }) => tree.tree.access === 'no machine').length
  return [
    'hand saws',
    ...(byPole.length === 0
      ? []
      : [`pole saw to ${showHeight(poleHeight, system)} (${counted(byPole.length, 'tree')})`]),
    ...(aloft.length === 0
      ? []
      : [
          `ladder, lift or rope and harness to ${showHeight(highest, system)} (${counted(aloft.length, 'tree')})`
        ]),
    ...(large.length === 0
      ? []
      : [`power saw, ${counted(large.length, 'cut')} up to ${showDiameter(thickest, system)}`]),
    ...(noMachine === 0 ? [] : [`${counted(noMachine, 'tree')} without access for a machine: drag by hand`]),
    'signs and cones, first-aid kit, tape measure, compass'
  ]
}

/** "365 lb of brush" */
export function brushWeight(stops: readonly Stop[], { weight: unit }: Pick<CardUnits, 'weight'>): string {
  const weight = stops.reduce((sum, { line }) => sum + line.brush.weight, 0)
  return `${quantity(weight)} ${unit} of brush`
}

/** Brush of these trees: "365 lb of brush, 1.2 yd³ as chips". */
export function brushOf(stops: readonly Stop[], units: Pick<CardUnits, 'weight'>): string {
  const chips = stops.reduce((sum, { line }) => sum + hundredths(line.brush.chipVolume), 0) / 100
  return `${brushWeight(stops, units)}, ${quantity(chips)} ${units.weight === 'lb' ? 'yd³' : 'm³'} as chips`
}

import { brushVolumeEvidence, cubicMetersPerCubicYard, poundsPerCubicYard } from './brushVolumes'
import { kilogramsPerPound, type UnitSystem } from '../../shared/units'

/** The agency whose figures are used; what others print stands with the evidence. */
export const brushVolumeSource = brushVolumeEvidence.source.split(' (')[0] ?? ''

/** Weight of brush as it lies, and of green chips: lb in a yd³, or kg in a m³. */
export function brushDensity(system: UnitSystem): { loose: number; chips: number } {
  const perUnit = system === 'in-ft' ? 1 : kilogramsPerPound / cubicMetersPerCubicYard
  return {
    loose: poundsPerCubicYard['loose brush'] * perUnit,
    chips: poundsPerCubicYard['green chips'] * perUnit
  }
}

/** What a weight of brush fills as it lies and as green chips: lb to yd³, or kg to m³. */
export function brushVolumes(weight: number, system: UnitSystem): { loose: number; chips: number } {
  const density = brushDensity(system)
  return { loose: weight / density.loose, chips: weight / density.chips }
}

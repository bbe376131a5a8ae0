import type { Evidence } from '../../../shared/evidence'

export const windEvidence: Evidence = {
  finding:
    'Wind load on a tree goes with its frontal area and the square of the wind speed; area and drag shrink as the wind rises.',
  source: 'Cullen 2005, J. Arboric. 31(3):101-113; bending of a round section is standard mechanics',
  certainty: 'read',
  range:
    'the form of the law; predicting the moment from crown area was unreliable (Pavlis, Kane, Harris & Seiler 2008, AUF 34(4))',
  caution:
    'For comparing the same limb before and after a cut, as a share. Never a force to design with, and never a verdict on safety.'
}

/** Air at 15 °C at sea level, kg/m³. */
const airDensity = 1.225

/** Exact by definition (NIST SP 811, from memory). */
export const metersPerSecondPerMileAnHour = 0.44704
export const newtonsPerPoundForce = 4.4482216152605

/** Drag in N on a frontal area in m² at a wind speed in m/s: ½·ρ·Cd·A·V². Use it in ratios only. */
export function windDrag(dragCoefficient: number, area: number, speed: number): number {
  return 0.5 * airDensity * dragCoefficient * area * speed * speed
}

/** Bending stress in Pa at a round section, moment in N·m and diameter in m: 32·M / (π·d³). Use it in ratios only. */
export function bendingStress(moment: number, diameter: number): number {
  return (32 * moment) / (Math.PI * diameter ** 3)
}

/** Share of the bending moment left at a limb’s base where a share of the area and of the arm is left. */
export function momentLeft(areaLeft: number, armLeft: number): number {
  return areaLeft * armLeft
}

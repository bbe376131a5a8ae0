import { wireDistance } from '../src/formulas/wires'
import { number } from './argument'
import { eachCell } from './runner'

const wires = eachCell(
  [number('kilovolts_to_ground', { over: 0, most: 1500, advice: 'give kilovolts, 7200 volts as 7.2' })],
  wireDistance
)

/**
 * Least distance in feet that an unqualified worker keeps from an energized line; near any wire, stop and call.
 * @customfunction WIREDISTANCE
 * @param kilovolts_to_ground Voltage of the line to ground in kilovolts, more than 0 and up to 1500. If only the voltage between lines is known, use that: it errs on the safe side.
 * @returns Feet: 10 up to 50 kV, and 4 inches more for every 10 kV above. Treat every wire as energized.
 * @example =LIMB.WIREDISTANCE(7.2) gives 10
 * @source 29 CFR 1910.269, line-clearance tree trimming; 29 CFR 1910.333(c)(3), from memory.
 */
export function WIREDISTANCE(kilovolts_to_ground: unknown[][]): unknown[][] {
  return wires({ kilovolts_to_ground })
}

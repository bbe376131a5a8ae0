import { BRUSHWEIGHT } from '../../functions/work'
import { specify } from './specification'

const coneOfOneFoot = Math.PI / 12
const liveOak = 0.8 * 62.4 * 1.522

specify({
  id: 'BRUSHWEIGHT',
  call: BRUSHWEIGHT as never,
  good: [4, 12, 'red maple', 'cm-m'],
  gives: [
    [[12, 12, 'live oak'], coneOfOneFoot * 12 * liveOak, 9],
    [[12, 12, 'Quercus virginiana'], coneOfOneFoot * 12 * liveOak, 9],
    [[12, 12, 'Oak, live', 'IN-FT'], coneOfOneFoot * 12 * liveOak, 9],
    [[30.48, 3.6576, 'live oak', 'cm-m'], coneOfOneFoot * 12 * liveOak * 0.45359237, 9]
  ],
  defaults: { units: 'in-ft' },
  refuses: [
    [[4, 12, 'plastic'], /No green density is listed for “plastic”/, '#N/A'],
    [[4, 12, 'constructor'], /No green density is listed/, '#N/A'],
    [[4, 12, 'red maple', 'mm'], /units reads “mm”: give in-ft or cm-m/],
    [[4, -12, 'red maple'], /length is -12/]
  ]
})

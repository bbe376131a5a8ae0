import { TREEHEIGHT } from '../../functions/survey'
import { specify } from './specification'

specify({
  id: 'TREEHEIGHT',
  call: TREEHEIGHT as never,
  good: [60, 40, -4],
  gives: [
    [[50, 45, -45], 100],
    [[100, 45, 0], 100],
    [[20, -5, -40], 20 * (Math.tan((40 * Math.PI) / 180) - Math.tan((5 * Math.PI) / 180))]
  ],
  refuses: [
    [[50, -10, 20], /top angle is not above the base angle/],
    [[50, 90, 0], /top_angle is 90; it must be more than -90 and at most 89.9: give degrees from level/],
    [[50, 20, -90], /base_angle is -90/],
    [[-50, 20, 0], /distance is -50/]
  ]
})

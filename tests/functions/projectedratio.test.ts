import { PROJECTEDRATIO } from '../../functions/measure'
import { specify } from './specification'

specify({
  id: 'PROJECTEDRATIO',
  call: PROJECTEDRATIO as never,
  good: [4, 6, 3, 0.35, 0.35],
  gives: [
    [[4, 6, 10, 0.05, 0.4], 0.45],
    [[4, 6, 0, 0.35, 0.35], 4 / 6],
    [[4, 6, 5, 0, 0], 4 / 6]
  ],
  refuses: [
    [[4, 6, -1, 0.3, 0.3], /years is -1/],
    [[4, 6, 101, 0.3, 0.3], /years is 101; it must be 0 or more and at most 100/],
    [[4, 6, 3, -0.1, 0.3], /limb_growth is -0.1/]
  ]
})

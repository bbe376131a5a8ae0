import { CROWNBASEMAX } from '../../functions/measure'
import { specify } from './specification'

specify({
  id: 'CROWNBASEMAX',
  call: CROWNBASEMAX as never,
  good: [36, 0.5],
  gives: [
    [[40], 16],
    [[40, 0], 16],
    [[36, 2 / 3], 12],
    [[40, '60%'], 16]
  ],
  defaults: { crown_ratio: 0.6 },
  refuses: [
    [[-40], /tree_height is -40/],
    [[40, 60], /crown_ratio is 60; it must be more than 0 and at most 1: give 25 % as 0.25 or 25%/]
  ]
})

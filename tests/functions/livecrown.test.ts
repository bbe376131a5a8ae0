import { LIVECROWN } from '../../functions/measure'
import { specify } from './specification'

specify({
  id: 'LIVECROWN',
  call: LIVECROWN as never,
  good: [40, 10],
  gives: [
    [[40, 10], 0.75],
    [[40, 14], 0.65],
    [[40, 0], 1],
    [[40, 40], 0]
  ],
  refuses: [
    [[10, 40], /crown base is above the top/],
    [[40, -1], /crown_base_height is -1; it must be 0 or more/],
    [[0, 10], /tree_height is 0/]
  ]
})

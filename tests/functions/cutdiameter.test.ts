import { CUTDIAMETER } from '../../functions/cuts'
import { specify } from './specification'

specify({
  id: 'CUTDIAMETER',
  call: CUTDIAMETER as never,
  good: [6, 0.5],
  gives: [
    [[6, 0.25], 3],
    [[6, '25%'], 3],
    [[6, 1], 6]
  ],
  refuses: [
    [[6, 0], /share_of_limb is 0; it must be more than 0/],
    [[6, 25], /share_of_limb is 25/],
    [[-6, 0.5], /limb_diameter is -6/]
  ]
})

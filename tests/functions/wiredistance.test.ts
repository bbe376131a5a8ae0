import { WIREDISTANCE } from '../../functions/site'
import { specify } from './specification'

specify({
  id: 'WIREDISTANCE',
  call: WIREDISTANCE as never,
  good: [79.67],
  gives: [
    [[7.2], 10],
    [[50], 10],
    [[80], 11]
  ],
  refuses: [
    [[-7.2], /kilovolts_to_ground is -7.2/],
    [[7200], /kilovolts_to_ground is 7200; it must be more than 0 and at most 1500: give kilovolts/],
    [['unknown'], /not a number/]
  ]
})

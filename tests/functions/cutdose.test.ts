import { CUTDOSE } from '../../functions/cuts'
import { specify } from './specification'

specify({
  id: 'CUTDOSE',
  call: CUTDOSE as never,
  good: [3, 6, 0.2],
  gives: [
    [[3, 6, 0.2], 0.05],
    [[6, 6, 0.2], 0.2],
    [[3, 6, 0], 0]
  ],
  refuses: [
    [[7, 6, 0.2], /cut_diameter is 7, more than the limb's 6/],
    [[3, 6, 1.2], /limb_share is 1.2/]
  ]
})

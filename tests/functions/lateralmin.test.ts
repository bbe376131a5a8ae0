import { LATERALMIN } from '../../functions/cuts'
import { specify } from './specification'

specify({
  id: 'LATERALMIN',
  call: LATERALMIN as never,
  good: [3, 0.5],
  gives: [
    [[3], 1],
    [[3, 0.5], 1.5],
    [[3, 0], 1]
  ],
  defaults: { fraction: 1 / 3 },
  refuses: [
    [[3, 1.1], /fraction is 1.1/],
    [[-3], /cut_diameter is -3/]
  ]
})

import { PRIORITY } from '../../functions/assess'
import { specify } from './specification'

specify({
  id: 'PRIORITY',
  call: PRIORITY as never,
  good: [0.75, 8, 31, 40, 10, 'partial'],
  gives: [
    [[0.75, 0, 40, 40, 10, 'full'], 77.5],
    [[0.4, 20, 30, 40, 10], 0],
    [[0.5, 25, 40, 40, 10], 10],
    [[1.5, 25, 30, 40, 10], 90],
    [[0.6, 10, 4, 40, 3], 9]
  ],
  defaults: { included_bark: 'none' },
  refuses: [
    [[0.6, 8, 31, 40, 41], /crown base is not below the top/],
    [[0.6, 8, 42, 40, 10], /tip is above the top/],
    [[0.6, 40, 30, 40, 10], /starts at or above the top/],
    [[0.6, -8, 31, 40, 10], /origin_height is -8/]
  ]
})

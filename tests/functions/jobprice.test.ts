import { JOBPRICE } from '../../functions/work'
import { specify } from './specification'

specify({
  id: 'JOBPRICE',
  call: JOBPRICE as never,
  good: [600, 0.1, 0.25, 100],
  gives: [
    [[600, 0, 0.25], 800],
    [[600, 0.1, 0.25], 880],
    [[600, '10%', '25%'], 880],
    [[30, 0, 0.25, 60], 60],
    [[0, 0.1, 0.25, 60], 60],
    [[1.005, 0, 0], 1.01],
    [[100, 0, 1 / 3], 150]
  ],
  defaults: { minimum: 0 },
  refuses: [
    [[-600, 0, 0.25], /direct_cost is -600/],
    [[600, 0, 1], /margin_rate is 1; it must be 0 or more and at most 0.99: give 25 % as 0.25 or 25%/],
    [[600, 18, 0.25], /overhead_rate is 18/],
    [[600, 0, 0.25, -5], /minimum is -5/]
  ]
})

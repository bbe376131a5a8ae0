import { VISITSNEEDED } from '../../functions/visits'
import { specify } from './specification'

specify({
  id: 'VISITSNEEDED',
  call: VISITSNEEDED as never,
  good: [0.42, 0.2],
  gives: [
    [[0.42, 0.2], 3],
    [[0.2, 0.2], 1],
    [[0.9, 0.3], 3],
    [[0.7, 0.1], 7],
    [[0, 0.2], 0]
  ],
  refuses: [
    [[0.42, 0], /Nothing may be removed this season/],
    [[42, 0.2], /needed_removal is 42/]
  ]
})

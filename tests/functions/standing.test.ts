import { STANDING } from '../../functions/assess'
import { specify } from './specification'

specify({
  id: 'STANDING',
  call: STANDING as never,
  good: [0.72, 'partial'],
  gives: [
    [[0.65], 'competing'],
    [[0.5], 'subordinate'],
    [[0.51], 'gaining'],
    [[0.6], 'gaining'],
    [[0.7], 'competing'],
    [[0.7, 'partial'], 'codominant'],
    [[0.7, 'yes'], 'codominant'],
    [[0.8], 'codominant'],
    [[1.3], 'codominant'],
    [[0.72, 0], 'competing']
  ],
  defaults: { included_bark: 'none' },
  refuses: [
    [[-0.5], /aspect_ratio is -0.5/],
    [[0.72, 'a bit'], /included_bark reads “a bit”: give none, partial or full/]
  ]
})

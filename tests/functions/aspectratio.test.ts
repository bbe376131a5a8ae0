import { ASPECTRATIO } from '../../functions/measure'
import { specify } from './specification'

specify({
  id: 'ASPECTRATIO',
  call: ASPECTRATIO as never,
  good: [6, 10, 'below'],
  gives: [
    [[6, 10], 0.6],
    [[6, 10, 'below'], 0.75],
    [['6', ' 10 ', 'Below union'], 0.75],
    [[11, 10], 1.1]
  ],
  defaults: { measured: 'above' },
  refuses: [
    [[0, 10], /limb_diameter is 0; it must be more than 0/],
    [[-6, 10], /limb_diameter is -6; it must be more than 0/],
    [[6, 0], /stem_diameter is 0/],
    [['6 in', 10], /limb_diameter reads “6 in”, which is not a number/],
    [['50%', 10], /limb_diameter reads “50%”, which is not a number/],
    [[true, 10], /limb_diameter reads “true”/],
    [[6, 10, 'beside'], /measured reads “beside”: give above or below/],
    [[10, 10, 'below'], /as thick as the stem below the union/],
    [[1e300, 1e-300], /no finite number/],
    [[Infinity, 10], /not a number/]
  ]
})

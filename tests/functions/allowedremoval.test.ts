import { ALLOWEDREMOVAL } from '../../functions/visits'
import { specify } from './specification'

specify({
  id: 'ALLOWEDREMOVAL',
  call: ALLOWEDREMOVAL as never,
  good: ['young', 'good', 0.1, 0.2],
  gives: [
    [['medium', 'good'], 0.2],
    [['medium', 'fair'], 0.1],
    [['Semi-mature', 'Healthy', 0.05], 0.15],
    [['old', 'poor'], 0],
    [['young', 'good', '10%', 0.2], 0.1],
    [['young', 'good', 0.4], 0],
    [['young', 'good', 0, 0], 0]
  ],
  defaults: { removed_already: 0, local_limit: 1 },
  refuses: [
    [['giant', 'good'], /life_stage reads “giant”: give planting, young, medium, mature or old/],
    [['young', 'so-so'], /vigor reads “so-so”/],
    [['young', 'good', 10], /removed_already is 10; it must be 0 or more and at most 1/],
    [['young', 'good', 0, -0.1], /local_limit is -0.1/]
  ]
})

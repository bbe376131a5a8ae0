import { NEXTVISIT } from '../../functions/visits'
import { specify } from './specification'

/** Serials are those of the 1900 date system: 45382 is 2024-03-31, 45351 is 2024-02-29. */
specify({
  id: 'NEXTVISIT',
  call: NEXTVISIT as never,
  good: [45382, 'young'],
  gives: [
    [[45382, 'young'], 46112],
    [['2024-03-31', 'young'], 46112],
    [['2024-3-31', 'planting'], 46112],
    [[45382.75, 'young'], 46112],
    [['45382', 'young'], 46112],
    [[45351, 'medium'], 46446],
    [[45351, 'mature'], 47177],
    [[61, 'old'], 61 + 5 * 365 + 1]
  ],
  refuses: [
    [['31/3/2024', 'young'], /last_visit reads “31\/3\/2024”, which is not a date/],
    [['2023-02-29', 'young'], /not a date/],
    [[-5, 'young'], /not a date/],
    [[60, 'young'], /not a date/],
    [[2958465, 'young'], /after the last date/],
    [[45382, 'tiny'], /life_stage reads “tiny”/]
  ]
})

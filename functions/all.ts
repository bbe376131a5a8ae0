import * as about from './about'
import * as assess from './assess'
import * as cuts from './cuts'
import * as foliage from './foliage'
import * as measure from './measure'
import * as plan from './plan'
import * as site from './site'
import * as survey from './survey'
import * as visits from './visits'
import * as work from './work'

/** Every cell function by its id. */
export const cellFunctions: Record<string, (...given: unknown[][][]) => unknown[][]> = {
  ...measure,
  ...survey,
  ...assess,
  ...foliage,
  ...cuts,
  ...visits,
  ...site,
  ...work,
  ...plan,
  ...about
}

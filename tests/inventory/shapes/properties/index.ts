import { anyShape } from './anyShape'
import { anyUnits } from './anyUnits'
import { fiftyLimbs } from './fiftyLimbs'
import { garbage } from './garbage'
import { ownShape } from './ownShape'
import type { AnyProperty } from './property'

/** What the drawn shapes of an inventory are held to. */
export const properties: readonly AnyProperty[] = [ownShape, anyShape, anyUnits, garbage, fiftyLimbs]

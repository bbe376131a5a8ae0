/** What may be measured, as the properties draw it. Diameters in mm, heights in m, shares 0 to 1. */
import fc from 'fast-check'
import { choices, type IncludedBark, type LifeStage, type Vigor } from '../../../shared/choices'
import type { LengthUnit } from '../../../shared/units'
import { between } from './monotone'

export const diameter = between(5, 1500)
export const share = between(0, 1)
export const someShare = between(0.001, 1)
export const ratio = between(0.01, 1.6)
export const bark = fc.constantFrom<IncludedBark>('none', 'partial', 'full')
export const stages = Object.keys(choices.lifeStage) as LifeStage[]
export const vigors = Object.keys(choices.vigor) as Vigor[]
export const stage = fc.constantFrom(...stages)
export const vigor = fc.constantFrom(...vigors)
export const unit = fc.constantFrom<LengthUnit>('mm', 'cm', 'm', 'in', 'ft')

/** Heights of a limb and its tree that go together, in meters. */
export const heights = fc
  .tuple(between(2, 40), between(0, 0.95), between(0, 0.95), share)
  .map(([height, base, start, reach]): [origin: number, tip: number, height: number, base: number] => [
    height * start,
    height * reach,
    height,
    height * base
  ])

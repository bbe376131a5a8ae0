import { ruleUnits, type Rule } from '../../../shared/rules'

/** Counted in whole numbers. */
export function isCounted({ unit }: Rule): boolean {
  return ruleUnits[unit] === 'count'
}

/** A length, which may be typed with a unit of its own, such as "2 in". */
export function isLength({ unit }: Pick<Rule, 'unit'>): boolean {
  return ruleUnits[unit] === 'length'
}

/** A part of a whole, which may be typed in percent, such as "25 %". */
export function isProportion({ unit }: Rule): boolean {
  return ruleUnits[unit] === 'proportion'
}

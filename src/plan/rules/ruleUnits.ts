import { isBlank, type Cell } from '../../../shared/cells'
import type { Rule } from '../../../shared/rules'
import { millimetersPer, unitFromWord, type LengthUnit, type UnitSystem } from '../../../shared/units'
import { thousandth } from '../../../shared/words/figures'
import { rounded, type Limit } from '../../../shared/words/rounding'
import { showRule, type RuleChange } from './ruleChanges'
import { isLength } from './ruleRange'

/** What stands behind the unit of a growth. */
const aYear = / a year$/

/** The unit in which a Rules sheet gives lengths to a person: inches, or millimeters. */
export function lengthUnitOf(system: UnitSystem): LengthUnit {
  return system === 'in-ft' ? 'in' : 'mm'
}

/** A rule's unit as a sheet has it: "in a year" for a growth in inches. */
export function unitText(rule: Pick<Rule, 'unit'>, unit: LengthUnit): string {
  return isLength(rule) ? rule.unit.replace('mm', unit) : rule.unit
}

/** A length of a rule in another unit, to a thousandth; a bound is never passed by what it is rounded to. */
export function inUnit(rule: Pick<Rule, 'unit'>, value: number, unit: LengthUnit, limit?: Limit): number {
  return isLength(rule) && unit !== 'mm' ? rounded(value / millimetersPer[unit], 3, limit) : value
}

/** A rule's value in a unit, as print has it. */
export function showRuleIn(rule: Pick<Rule, 'unit'>, value: number, unit: LengthUnit, limit?: Limit): string {
  return isLength(rule) && unit !== 'mm' ? thousandth(inUnit(rule, value, unit, limit)) : showRule(value)
}

/** The unit named in the cell beside a rule's value; mm where it is blank, null where it is no unit of length. */
export function unitInCell(rule: Rule, cell: Cell | undefined): LengthUnit | null {
  if (!isLength(rule) || isBlank(cell)) return 'mm'
  return typeof cell === 'string' ? unitFromWord(cell.trim().toLowerCase().replace(aYear, '')) : null
}

/** A length read in a unit, in mm; one that was only rounded to be shown is the default that it stands for. */
export function fromUnit(rule: Rule, value: number, unit: LengthUnit): number {
  if (value === inUnit(rule, rule.value, unit)) return rule.value
  return value * millimetersPer[unit]
}

/** A change of a rule as a document in the units of a system prints it. */
export function shownChange(
  { unit, from, to }: Pick<RuleChange, 'unit' | 'from' | 'to'>,
  system: UnitSystem
): { readonly unit: string; readonly from: string; readonly to: string } {
  const length = lengthUnitOf(system)
  const rule = { unit }
  return {
    unit: unitText(rule, length),
    from: showRuleIn(rule, from, length),
    to: showRuleIn(rule, to, length)
  }
}

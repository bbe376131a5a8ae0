/** Conditional formats by a formula. The grid itself keeps them, so that they move with the cells they stand on. */
import { BooleanNumber, generateRandomId, type IStyleBase } from '@univerjs/core'
import {
  AddConditionalRuleMutation,
  CFRuleType,
  CFSubRuleType,
  ConditionalFormattingRuleModel,
  DeleteConditionalRuleMutation,
  SetConditionalRuleMutation,
  type IConditionFormattingRule,
  type IFormulaHighlightCell
} from '@univerjs/preset-sheets-conditional-formatting'
import { BookFault, type AddedLook, type Book, type ConditionalFormat } from '../book'
import type { GridContext } from './context'
import { toArea, toRange } from './ranges'
import { styleOf } from './gridLooks'

type ConditionalPart = Pick<
  Book,
  'conditionalFormats' | 'addConditionalFormat' | 'changeConditionalFormat' | 'deleteConditionalFormat'
>

function gridRule({ id, areas, formula, look }: ConditionalFormat): IConditionFormattingRule {
  return {
    cfId: id,
    ranges: areas.map(toRange),
    stopIfTrue: false,
    rule: {
      type: CFRuleType.highlightCell,
      subType: CFSubRuleType.formula,
      value: formula,
      style: styleOf(look) as IStyleBase
    }
  }
}

function lookOf({ bl, it, cl, bg }: IStyleBase): AddedLook {
  return {
    ...(bl === undefined ? {} : { bold: bl === BooleanNumber.TRUE }),
    ...(it === undefined ? {} : { italic: it === BooleanNumber.TRUE }),
    ...(cl?.rgb ? { color: cl.rgb } : {}),
    ...(bg?.rgb ? { fill: bg.rgb } : {})
  }
}

function isFormula(rule: IConditionFormattingRule['rule']): rule is IFormulaHighlightCell {
  return (
    rule.type === CFRuleType.highlightCell &&
    (rule as IFormulaHighlightCell).subType === CFSubRuleType.formula
  )
}

function rulesOf(context: GridContext, sheetId: string): IConditionFormattingRule[] {
  const model = context.injector.get(ConditionalFormattingRuleModel)
  return model.getSubunitRules(context.workbook().getUnitId(), sheetId) ?? []
}

/** Puts it before those that the grid has. */
export function showConditionalFormat(
  context: GridContext,
  sheetId: string,
  format: ConditionalFormat
): void {
  context.mutate(AddConditionalRuleMutation.id, sheetId, { rule: gridRule(format) })
}

/** The grid would keep calculating those of a deleted sheet. */
export function forgetConditionalFormats(context: GridContext, sheetId: string): void {
  for (const { cfId } of [...rulesOf(context, sheetId)])
    context.mutate(DeleteConditionalRuleMutation.id, sheetId, { cfId })
}

export function conditionalFormatsOf(context: GridContext): ConditionalPart {
  const list = (sheetId: string): ConditionalFormat[] =>
    rulesOf(context, sheetId).flatMap(({ cfId, ranges, rule }) =>
      isFormula(rule)
        ? [{ id: cfId, areas: ranges.map(toArea), formula: rule.value, look: lookOf(rule.style) }]
        : []
    )
  return {
    conditionalFormats: list,
    addConditionalFormat(sheetId, area) {
      context.sheet(sheetId)
      const format = { id: generateRandomId(), areas: [area], formula: '', look: {} }
      showConditionalFormat(context, sheetId, format)
      return format
    },
    deleteConditionalFormat(sheetId, id) {
      context.mutate(DeleteConditionalRuleMutation.id, sheetId, { cfId: id })
    },
    changeConditionalFormat(sheetId, id, change) {
      const known = list(sheetId).find((format) => format.id === id)
      if (known === undefined) throw new BookFault('ItemNotFound', `There is no conditional format ${id}.`)
      const rule = gridRule({ ...known, ...change })
      context.mutate(SetConditionalRuleMutation.id, sheetId, { cfId: id, rule })
    }
  }
}

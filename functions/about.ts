import { version } from '../shared/version'

/**
 * Version of Limbwright that calculates this workbook.
 * @customfunction VERSION
 * @returns A text.
 * @example =LIMB.VERSION() gives 0.1.0
 */
export function VERSION(): unknown[][] {
  return [[version]]
}

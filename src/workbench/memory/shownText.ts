/** The text that a cell shows, for the number formats that the documents use; other formats show the plain number. */
import type { Cell } from '../../../shared/cells'

const fixed = /^(#,##)?0(\.0+)?(%?)$/
const dates = /^(m\/d\/yyyy|yyyy-mm-dd)$/

export function shownText(value: Cell, numberFormat: string): string {
  if (value === null) return ''
  if (typeof value === 'boolean') return value ? 'TRUE' : 'FALSE'
  if (typeof value === 'string') return value
  const format = fixed.exec(numberFormat)
  if (format) return fixedText(value, format)
  return dates.test(numberFormat) ? dateText(value, numberFormat) : plainText(value)
}

function fixedText(value: number, [, grouped, decimals = '.', percent]: RegExpExecArray): string {
  const digits = decimals.length - 1
  const text = (percent ? value * 100 : value).toLocaleString('en-US', {
    minimumFractionDigits: digits,
    maximumFractionDigits: digits,
    useGrouping: grouped !== undefined
  })
  return text + (percent ?? '')
}

/** Excel shows at most 11 characters of a number in the General format (from memory). */
function plainText(value: number): string {
  return String(Number(value.toPrecision(10)))
}

function dateText(serial: number, numberFormat: string): string {
  const date = new Date((serial - 25_569) * 86_400_000)
  const [year, month, day] = [date.getUTCFullYear(), date.getUTCMonth() + 1, date.getUTCDate()]
  const two = (part: number) => String(part).padStart(2, '0')
  return numberFormat === 'm/d/yyyy' ? `${month}/${day}/${year}` : `${year}-${two(month)}-${two(day)}`
}

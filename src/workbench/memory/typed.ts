/**
 * What a text becomes when it is written into a cell as if typed, in Excel's English (United States) ways: the cases
 * that hurt an add-in, not all of them. Common practice, no source; not compared with Excel.
 */
import { isErrorText, type Cell } from '../../../shared/cells'

export type Typed = { formula: string } | { value: Cell; numberFormat?: string }

const number = /^[+-]?(\d+|\d{1,3}(,\d{3})+)?(\.\d*)?(e[+-]?\d+)?$/i
const millisecondsPerDay = 86_400_000

/** The number format of the cell decides too: "@" keeps everything as text. */
export function readTyped(given: Cell, numberFormat: string): Typed {
  if (typeof given !== 'string') return { value: given }
  if (given === '') return { value: null }
  if (given.startsWith("'")) return { value: given.slice(1) }
  if (numberFormat === '@') return { value: given }
  if (given.startsWith('=') && given.length > 1) return { formula: given }
  const text = given.trim()
  return plainValue(text) ?? formulaBySign(given) ?? { value: given }
}

function plainValue(text: string): Typed | null {
  if (/^(true|false)$/i.test(text)) return { value: text.toLowerCase() === 'true' }
  if (isErrorText(text)) return { value: text }
  const amount = numberOf(text)
  if (amount !== null) return { value: amount }
  if (text.endsWith('%')) {
    const share = numberOf(text.slice(0, -1))
    return share === null ? null : { value: share / 100, numberFormat: '0%' }
  }
  return dateOf(text)
}

function numberOf(text: string): number | null {
  if (!number.test(text) || !/\d/.test(text)) return null
  return Number(text.replaceAll(',', ''))
}

/** 2026-03-14, 3/14/2026, and 3/14 or 3-14 of this year: the way in which ids like 3-14 are lost. */
function dateOf(text: string): Typed | null {
  const iso = /^(\d{4})-(\d{1,2})-(\d{1,2})$/.exec(text)
  const local = /^(\d{1,2})[/-](\d{1,2})(?:[/-](\d{4}))?$/.exec(text)
  const [year, month, day] = iso
    ? [iso[1], iso[2], iso[3]]
    : [local?.[3] ?? String(new Date().getFullYear()), local?.[1], local?.[2]]
  if (month === undefined || day === undefined) return null
  const date = new Date(Date.UTC(Number(year), Number(month) - 1, Number(day)))
  if (date.getUTCMonth() !== Number(month) - 1 || date.getUTCDate() !== Number(day)) return null
  return { value: date.getTime() / millisecondsPerDay + 25_569, numberFormat: 'm/d/yyyy' }
}

/** Texts that begin with + - or @ are read as formulas. */
function formulaBySign(text: string): Typed | null {
  return /^[+\-@]./.test(text) ? { formula: `=${text}` } : null
}

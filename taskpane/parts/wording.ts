import { printMoney, type Money } from '../../shared/money'

/** A count with its noun: (1, "row") gives "1 row", (3400, "row") gives "3,400 rows". */
export function count(number: number, one: string, many = `${one}s`): string {
  return `${grouped(number)} ${number === 1 ? one : many}`
}

/** A whole number with its thousands set apart: 3400 gives "3,400". */
export function grouped(number: number): string {
  return String(Math.round(number)).replace(/\B(?=(\d{3})+(?!\d))/g, ',')
}

/** A share as a whole percentage: 0.183 gives "18 %"; a share too small to round to 1 gives "under 1 %". */
export function percent(share: number): string {
  const whole = Math.round(share * 100)
  return whole === 0 && share > 0 ? 'under 1\u00a0%' : `${whole}\u00a0%`
}

/** A ratio with two digits: 0.6 gives "0.60". */
export function ratio(value: number): string {
  return value.toFixed(2)
}

/** A priority as a whole number. */
export function points(value: number): string {
  return String(Math.round(value))
}

/** An amount with its minor digits and its thousands set apart: "1,240.50". */
export function money(amount: Money, minorDigits: number): string {
  const [whole = '0', minor] = printMoney(amount, minorDigits).split('.')
  const set = whole.replace(/\B(?=(\d{3})+(?!\d))/g, ',')
  return minor === undefined ? set : `${set}.${minor}`
}

/** A word with a capital at the front. */
export function capital(word: string): string {
  return word.charAt(0).toUpperCase() + word.slice(1)
}

/** Words as a sentence of their own: a capital at the front and a full stop at the end. */
export function sentence(words: string): string {
  const text = capital(words.trim())
  return text === '' || /[.?…]$/.test(text) ? text : `${text}.`
}

/** Words as a sentence lists them: "Cut plan and Estimate". */
export function listed(words: readonly string[]): string {
  if (words.length < 2) return words.join('')
  return `${words.slice(0, -1).join(', ')} and ${words.at(-1) ?? ''}`
}

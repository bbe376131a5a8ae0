/** Colors as the Excel API takes and gives them: #RRGGBB, and a few of the names of the web. */
import { textValue } from './memberArguments'
import { invalidArgument } from './faults'

/** Source: CSS Color Module Level 4 (W3C), section 6.1, named colors; from memory. */
const named: Record<string, string> = {
  black: '#000000',
  gray: '#808080',
  white: '#FFFFFF',
  red: '#FF0000',
  orange: '#FFA500',
  yellow: '#FFFF00',
  green: '#008000',
  blue: '#0000FF'
}

export function colorValue(value: unknown): string {
  const text = textValue(value, 'The color')
  const color = named[text.toLowerCase()] ?? text.toUpperCase()
  if (!/^#[0-9A-F]{6}$/.test(color)) throw invalidArgument(`"${text}" is not a color like #1A2B3C.`)
  return color
}

export function upperColor(color: string | null): string | null {
  return color === null ? null : color.toUpperCase()
}

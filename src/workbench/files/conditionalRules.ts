/**
 * Conditional formats, from a file's words to the book's and back. The book has those that go by a formula and
 * change nothing but bold, italic, color and fill; any other stays with the file as it came.
 */
import type { AddedLook, ConditionalFormat } from '../book'
import { areaAddress, parseAddress } from '../../../shared/a1Notation'
import { addedStyle } from '../../file/file-library/addedStyle'
import type { FileFormulaLook, KeptParts } from '../../file/file-library/fileBook'
import type { FileStyle } from '../../file/file-library/fileStyle'
import type { FoundRule } from '../../file/file-library/unpackedBook'
import { fileColor } from './cellStyle'
import { fromFileFormula, toFileFormula } from './formulaNames'

const shownParts = new Set(['font', 'fill'])
const shownFont = new Set(['bold', 'italic', 'color'])

/** The look, or null where it holds a part that the book has no word for. */
function lookOf({ font = {}, fill, ...others }: FileStyle): AddedLook | null {
  const parts = Object.keys(font).filter((part) => font[part as keyof typeof font] !== undefined)
  if (Object.keys(others).some((part) => !shownParts.has(part))) return null
  if (parts.some((part) => !shownFont.has(part)) || font.bold === false || font.italic === false) return null
  const look: AddedLook = {}
  if (font.bold) look.bold = true
  if (font.italic) look.italic = true
  if (font.color) {
    if (font.color.rgb === undefined) return null
    look.color = `#${font.color.rgb.slice(-6)}`
  }
  if (fill) {
    const color = fill.type === 'pattern' ? (fill.bgColor ?? fill.fgColor)?.rgb : undefined
    // A fill without a kind is a solid one here.
    if (fill.type !== 'pattern' || color === undefined || !/^(solid|none)$/.test(fill.pattern)) return null
    look.fill = `#${color.slice(-6)}`
  }
  return look
}

function readConditionalFormat(rule: FoundRule, index: number): ConditionalFormat | null {
  const { formula, style, range } = rule
  if (formula === null || style === null) return null
  const look = lookOf(style)
  const areas = range.split(/[ ,]+/).map((part) => parseAddress(part)?.area)
  const known = areas.filter((area) => area !== undefined)
  if (look === null || known.length < areas.length) return null
  return { id: `file-${index + 1}`, areas: known, formula: fromFileFormula(formula), look }
}

/** Those that the book has, the first priority first. */
export function readConditionalFormats(rules: FoundRule[]): ConditionalFormat[] {
  return [...rules]
    .sort((a, b) => a.priority - b.priority)
    .map(readConditionalFormat)
    .filter((format) => format !== null)
}

/** Those that stay with the file. */
export function withoutShown(rules: FoundRule[]): NonNullable<KeptParts['conditionalRules']> {
  return rules
    .filter((rule, index) => readConditionalFormat(rule, index) === null)
    .map(({ asItCame }) => asItCame)
}

/** The book's, in their order. */
export function writeConditionalFormats(formats: ConditionalFormat[]): FileFormulaLook[] {
  return formats
    .filter(({ formula, areas }) => formula !== '' && areas.length > 0)
    .map(({ areas, formula, look }, index) => ({
      priority: index + 1,
      formula: toFileFormula(formula),
      range: areas.map(areaAddress).join(' '),
      style: addedStyle(look, fileColor(look.color), fileColor(look.fill))
    }))
}

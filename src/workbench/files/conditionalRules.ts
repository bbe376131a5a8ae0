/**
 * Conditional formats, from the file library's words to the book's and back. The book has those that go by a formula and
 * change nothing but bold, italic, colour and fill; any other stays with the file as it came.
 */
import type { CellStyle, ConditionalRule } from 'hucre'
import type { AddedLook, ConditionalFormat } from '../book'
import { areaAddress, parseAddress } from '../host/a1Notation'
import { addedStyle } from '../../file/sheetConditionalLooks'
import { fileColor } from './cellStyle'
import { fromFileFormula, toFileFormula } from './formulaNames'

const shownParts = new Set(['font', 'fill'])
const shownFont = new Set(['bold', 'italic', 'color'])

/** The look, or null where it holds a part that the book has no word for. */
function lookOf({ font = {}, fill, ...others }: CellStyle): AddedLook | null {
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

function readConditionalFormat(rule: ConditionalRule, index: number): ConditionalFormat | null {
  const { type, formula, stopIfTrue, style, range } = rule
  if (type !== 'expression' || typeof formula !== 'string' || stopIfTrue || style === undefined) return null
  const look = lookOf(style)
  const areas = range.split(/[ ,]+/).map((part) => parseAddress(part)?.area)
  const known = areas.filter((area) => area !== undefined)
  if (look === null || known.length < areas.length) return null
  return { id: `file-${index + 1}`, areas: known, formula: fromFileFormula(formula), look }
}

/** Those that the book has, the first priority first. */
export function readConditionalFormats(rules: ConditionalRule[] = []): ConditionalFormat[] {
  return [...rules]
    .sort((a, b) => a.priority - b.priority)
    .map(readConditionalFormat)
    .filter((format) => format !== null)
}

/** The file library reads these without their rank or their side of the average: written again, they would say another thing. */
export function isLost({ type }: ConditionalRule): boolean {
  return type === 'top10' || type === 'aboveAverage'
}

/** Those that stay with the file. */
export function withoutShown(rules: ConditionalRule[] | undefined): ConditionalRule[] | undefined {
  const others = rules?.filter((rule, index) => readConditionalFormat(rule, index) === null && !isLost(rule))
  return others?.length === 0 ? undefined : others
}

/** The book's come first, in their order; those kept from the file follow in theirs. */
export function writeConditionalFormats(
  formats: ConditionalFormat[],
  kept: ConditionalRule[] = []
): ConditionalRule[] {
  const own = formats
    .filter(({ formula, areas }) => formula !== '' && areas.length > 0)
    .map(({ areas, formula, look }): ConditionalRule => ({
      type: 'expression',
      priority: 0,
      formula: toFileFormula(formula),
      range: areas.map(areaAddress).join(' '),
      style: addedStyle(look, fileColor(look.color), fileColor(look.fill))
    }))
  const others = [...kept].sort((a, b) => a.priority - b.priority)
  return [...own, ...others].map((rule, index) => ({ ...rule, priority: index + 1 }))
}

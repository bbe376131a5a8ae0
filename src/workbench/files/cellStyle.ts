/** The look of a cell, from a file's words to the grid's and back. */
import type { IBorderData, IBorderStyleData, IStyleData, Nullable } from '@univerjs/core'
import type {
  FileColor,
  FileEdge,
  FileEdges,
  FileFont,
  FileLine,
  FileStyle
} from '../../file/file-library/fileStyle'

/** The grid's numbers for its kinds of line. */
const lines: [FileLine, number][] = [
  ['thin', 1],
  ['hair', 2],
  ['dotted', 3],
  ['dashed', 4],
  ['dashDot', 5],
  ['dashDotDot', 6],
  ['double', 7],
  ['medium', 8],
  ['mediumDashed', 9],
  ['mediumDashDot', 10],
  ['mediumDashDotDot', 11],
  ['slantDashDot', 12],
  ['thick', 13]
]
const horizontals = { left: 1, center: 2, right: 3 } as const
const verticals = { top: 1, center: 2, bottom: 3 } as const
const wrapped = 3
const sides = { t: 'top', r: 'right', b: 'bottom', l: 'left' } as const

const toRgb = (color: FileColor | undefined) =>
  color?.rgb === undefined ? undefined : { rgb: `#${color.rgb.slice(-6)}` }

/** Colors of the grid are #rrggbb or rgb(r,g,b). */
export function fileColor(color: Nullable<string>): FileColor | undefined {
  if (!color) return undefined
  const parts = /^rgba?\((\d+)\s*,\s*(\d+)\s*,\s*(\d+)/.exec(color)
  if (parts)
    return {
      rgb: parts
        .slice(1, 4)
        .map((part) => Number(part).toString(16).padStart(2, '0'))
        .join('')
        .toUpperCase()
    }
  return { rgb: color.replace('#', '').slice(0, 6).toUpperCase() }
}

function toGridSide(side: FileEdge | undefined): IBorderStyleData | undefined {
  const line = lines.find(([name]) => name === side?.style)
  return line && ({ s: line[1], cl: toRgb(side?.color) ?? { rgb: '#000000' } } as IBorderStyleData)
}

function toFileSide(side: Nullable<IBorderStyleData>): FileEdge | undefined {
  const line = lines.find(([, number]) => number === side?.s)
  return line && { style: line[0], color: fileColor(side?.cl.rgb) }
}

function indexIn<T extends object>(table: T, key: string | undefined): T[keyof T] | undefined {
  return key !== undefined && key in table ? table[key as keyof T] : undefined
}

function keyIn<T extends object>(table: T, value: unknown): keyof T | undefined {
  return (Object.keys(table) as (keyof T)[]).find((key) => table[key] === value)
}

function gridBorders(border: FileEdges): IBorderData {
  const found: IBorderData = {}
  for (const [short, name] of Object.entries(sides)) {
    const side = toGridSide(border[name])
    if (side) found[short as keyof typeof sides] = side
  }
  return found
}

export function toGridStyle(style: FileStyle): IStyleData {
  const { font, fill, alignment, border, numFmt } = style
  const look: IStyleData = {}
  if (font?.name) look.ff = font.name
  if (font?.size) look.fs = font.size
  if (font?.bold) look.bl = 1
  if (font?.italic) look.it = 1
  if (font?.underline) look.ul = { s: 1 }
  if (font?.strikethrough) look.st = { s: 1 }
  const color = toRgb(font?.color)
  if (color) look.cl = color
  const background = fill?.type === 'pattern' && fill.pattern === 'solid' ? toRgb(fill.fgColor) : undefined
  if (background) look.bg = background
  const horizontal = indexIn(horizontals, alignment?.horizontal)
  if (horizontal) look.ht = horizontal
  const vertical = indexIn(verticals, alignment?.vertical)
  if (vertical) look.vt = vertical
  if (alignment?.wrapText) look.tb = wrapped
  if (border) look.bd = gridBorders(border)
  if (numFmt && numFmt !== 'General') look.n = { pattern: numFmt }
  return look
}

function fileBorder(edges: IBorderData): FileEdges {
  const found: FileEdges = {}
  for (const [short, name] of Object.entries(sides)) {
    const side = toFileSide(edges[short as keyof typeof sides])
    if (side) found[name] = side
  }
  return found
}

export function toFileStyle(look: IStyleData): FileStyle {
  const style: FileStyle = {}
  const font: FileFont = {}
  if (look.ff) font.name = look.ff
  if (look.fs) font.size = look.fs
  if (look.bl) font.bold = true
  if (look.it) font.italic = true
  if (look.ul?.s) font.underline = true
  if (look.st?.s) font.strikethrough = true
  if (look.cl?.rgb) font.color = fileColor(look.cl.rgb)
  if (Object.keys(font).length > 0) style.font = { name: 'Calibri', size: 11, ...font }
  if (look.bg?.rgb) style.fill = { type: 'pattern', pattern: 'solid', fgColor: fileColor(look.bg.rgb) }
  const horizontal = keyIn(horizontals, look.ht)
  const vertical = keyIn(verticals, look.vt)
  const wrapText = look.tb === wrapped
  if (horizontal || vertical || wrapText)
    style.alignment = {
      ...(horizontal ? { horizontal } : {}),
      ...(vertical ? { vertical } : {}),
      ...(wrapText ? { wrapText } : {})
    }
  if (look.bd) {
    const border = fileBorder(look.bd)
    if (Object.keys(border).length > 0) style.border = border
  }
  if (look.n?.pattern) style.numFmt = look.n.pattern
  return style
}

/** How a cell looks, in the words of an .xlsx (ECMA-376 part 1, 18.8). */

export interface FileColor {
  /** RRGGBB, or AARRGGBB in a file that was opened; absent where the color is one of the file's theme. */
  rgb?: string
}

export interface FileFont {
  name?: string
  /** Points. */
  size?: number
  bold?: boolean
  italic?: boolean
  underline?: boolean | 'single' | 'double' | 'singleAccounting' | 'doubleAccounting'
  strikethrough?: boolean
  color?: FileColor
}

type Pattern =
  | 'none'
  | 'solid'
  | 'mediumGray'
  | 'gray0625'
  | 'gray125'
  | `${'dark' | 'light'}${'Down' | 'Gray' | 'Grid' | 'Horizontal' | 'Trellis' | 'Up' | 'Vertical'}`

export type FileFill =
  | { type: 'pattern'; pattern: Pattern; fgColor?: FileColor; bgColor?: FileColor }
  | { type: 'gradient'; stops: { position: number; color: FileColor }[] }

export type FileLine =
  | 'thin'
  | 'medium'
  | 'thick'
  | 'dotted'
  | 'dashed'
  | 'double'
  | 'hair'
  | 'mediumDashed'
  | 'dashDot'
  | 'mediumDashDot'
  | 'dashDotDot'
  | 'mediumDashDotDot'
  | 'slantDashDot'

export interface FileEdge {
  style: FileLine
  color?: FileColor
}

export type FileEdges = Partial<Record<'top' | 'right' | 'bottom' | 'left', FileEdge>>

export interface FileAlignment {
  horizontal?:
    'left' | 'center' | 'right' | 'fill' | 'justify' | 'centerContinuous' | 'distributed' | 'general'
  vertical?: 'top' | 'center' | 'bottom' | 'justify' | 'distributed'
  wrapText?: boolean
}

/** Cells that look alike share one: the file library finds equal looks fastest by identity. */
export interface FileStyle {
  font?: FileFont
  fill?: FileFill
  border?: FileEdges
  alignment?: FileAlignment
  numFmt?: string
}

/** A color #rrggbb as a file has it. */
export const fileRgb = (color: string): { rgb: string } => ({ rgb: color.replace('#', '').toUpperCase() })

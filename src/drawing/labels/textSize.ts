import { foldText } from '../../../shared/folding'

/** Mean width of a character as a share of the type size; wide enough for the common sans-serif faces. */
const characterWidth = 0.53

/** Width of a text in pixels. An estimate: faces differ. */
export function textWidth(text: string, size: number, bold = false): number {
  return text.length * size * characterWidth * (bold ? 1.08 : 1)
}

/** Stands for the space between a number and its unit while a text is folded; never part of a text. */
const joint = '\ue000'

/** A text in lines that fit a width; a number and its unit stay together. */
export function linesOf(text: string, size: number, width: number): string[] {
  const joined = text.replace(/(\d) (ft|in|cm|m|%)(?!\w)/g, `$1${joint}$2`)
  const lines = foldText(joined, Math.max(8, Math.floor(width / (size * characterWidth))))
  return lines.map((line) => line.replaceAll(joint, '\u00a0'))
}

/** A text cut to fit a width, with a mark where something was left off. */
export function shortened(text: string, size: number, width: number): string {
  const most = Math.max(2, Math.floor(width / (size * characterWidth)))
  return text.length <= most ? text : `${text.slice(0, most - 1)}…`
}

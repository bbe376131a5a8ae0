/** Texts as they have to be handed to the file library so that the same texts are read from the file. */
import type { FileCell } from './fileBook'
import type { FileStyle } from './fileStyle'
import { possibleText } from './xmlText'

/**
 * A file reads _x0041_ as an A: the underscore of a text that looks so is written by its own number (ECMA-376 part 1,
 * ST_Xstring). The library decodes such texts when it reads and does not encode them when it writes.
 */
export function storedText(text: string): string {
  const possible = possibleText(text)
  return possible.includes('_x') ? possible.replace(/_(?=x[0-9A-Fa-f]{4}_)/g, '_x005F_') : possible
}

/**
 * A text cell that stays a text. The library turns a text that reads like an error, for instance #N/A, into the error; a
 * text in runs it leaves alone.
 */
export function textAsItIs(text: string, style: FileStyle | undefined): Partial<FileCell> {
  return { value: text, style, richText: [{ text }] }
}

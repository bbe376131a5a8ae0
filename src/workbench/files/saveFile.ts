/** The contents of the grid as the bytes of an .xlsx. */
import { writeXlsx } from 'hucre/xlsx'
import type { BookContents } from './contents'
import { toFile } from './toFile'

export function saveFile(contents: BookContents): Promise<Uint8Array> {
  return writeXlsx(toFile(contents))
}

/** The contents of the grid as the bytes of an .xlsx. */
import { packBook } from '../../file/file-library/packBook'
import type { BookContents } from './contents'
import { toFile } from './toFile'

export function saveFile(contents: BookContents): Promise<Uint8Array> {
  return packBook(toFile(contents))
}

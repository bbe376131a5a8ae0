/** The contents of the grid as the bytes of an .xlsx. */
import { writeWithCharts } from '../../file/fileCharts'
import type { BookContents } from './contents'
import { toFile } from './toFile'

export function saveFile(contents: BookContents): Promise<Uint8Array> {
  return writeWithCharts(toFile(contents))
}

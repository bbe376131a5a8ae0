/** Which program saved an .xlsx last, by its extended properties (ECMA-376 part 1, 22.2.2.1). */
import { shortText, zipParts } from './zipParts'

/** What the library that packs our workbooks names itself. */
const ownPacker = 'hucre'

/** Most bytes of the properties; ours come to some two hundred. */
const mostProperties = 64 * 1024

/** True where a workbook is as it was packed here: no other program has saved it since. */
export async function isAsPacked(bytes: Uint8Array): Promise<boolean> {
  const part = (await zipParts(bytes)).find(({ name }) => name === 'docProps/app.xml')
  const xml = part === undefined ? null : await shortText(part, mostProperties)
  return /<Application>([^<]*)<\/Application>/.exec(xml ?? '')?.[1] === ownPacker
}

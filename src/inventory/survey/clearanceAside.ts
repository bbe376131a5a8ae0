import { readHeaderText } from '../headers/headerText'
import type { HeaderRows, TableColumn } from './headerRows'

/** Words of a list about power lines, in which a clearance is mostly the distance to keep from them (common practice, no source). */
const ofLines =
  /(?<!\p{L})(?:conductors?|voltage|kv|circuit|power ?lines?|line (?:height|ht|voltage|type|dist\w*)|poles?|feeder|utility|leitung(?:en|s\w*)?|freileitung|mast(?:en)?|spannung|ligne|poteau|tension|l[ií]nea|postes?|tensi[oó]n)(?!\p{L})/iu

/** Words by which a clearance is one above the ground. */
const upward =
  /(?<!\p{L})(?:over|above|vertical|height|ht|under|road|street|sidewalk|path|walk|drive|truck|bus|vehicle|pedestrian|h[oö]he|lichtraum\w*|stra(?:ß|ss)e|weg|gehweg|hauteur|route|rue|trottoir|gabarit|altura|calle|acera|paso)(?!\p{L})/iu

const spoken = (header: string): string => header.replaceAll('_', ' ')

/** The column about lines beside a clearance that does not say it is one of height; null where there is none. */
export function linesBeside({ columns }: HeaderRows, clearance: TableColumn): TableColumn | null {
  const own = spoken(clearance.name)
  if (upward.test(own)) return null
  if (ofLines.test(own)) return clearance
  return (
    columns.find(
      ({ name, column }) =>
        column !== clearance.column && ofLines.test(spoken(name)) && !readHeaderText(name).notions.has('tree')
    ) ?? null
  )
}

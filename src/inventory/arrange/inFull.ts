import { readHeaderText } from '../headers/headerText'
import type { Notion } from '../headers/words/notion'

/** Of what a row tells. */
export type Whose = 'tree' | 'limb'

const saysSo: Readonly<Record<Whose, readonly Notion[]>> = {
  tree: ['tree', 'trunk', 'crown', 'crownBase', 'dbh', 'gbh'],
  limb: ['limb', 'stem', 'parent']
}

/** "Dia" in the row of a limb is the limb's; null for a name that says so itself. */
export function inFull(name: string, whose: Whose): string | null {
  const { notions } = readHeaderText(name)
  return saysSo[whose].some((notion) => notions.has(notion)) ? null : `${whose} ${name}`
}

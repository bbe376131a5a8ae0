import { counted } from '../../shared/words/counts'
import { listed } from '../../shared/words/lists'
import { firstOf } from '../../shared/words/some'

/** Ids in a sentence at most. */
const mostNamed = 8

const folded = (id: string): string => id.trim().toLowerCase()

/**
 * The trees that a person named, by their ids with commas, semicolons or line ends between them, or a sentence that says which
 * cannot be chosen and which can. An id that has a comma itself is found where it stands as a whole.
 */
export function readTrees(text: string, due: readonly string[]): ReadonlySet<string> | string {
  const known = new Map(due.map((id) => [folded(id), id]))
  const could =
    due.length === 0 ? 'No tree is due now.' : `Due now: ${firstOf([...known.values()], mostNamed)}.`
  if (text.trim() === '') return `No tree is named: type ids with commas between them. ${could}`
  const whole = known.get(folded(text))
  if (whole !== undefined) return new Set([whole])
  const named = text.split(/[,;\n]/).filter((id) => id.trim() !== '')
  const unknown = named.filter((id) => !known.has(folded(id)))
  if (unknown.length > 0) {
    const which = unknown.slice(0, mostNamed).map((id) => `“${id.trim()}”`)
    const more = unknown.length > mostNamed ? ` and ${counted(unknown.length - mostNamed, 'other')}` : ''
    return `${listed(which)}${more}: no tree with work due now is called that. ${could}`
  }
  return new Set(named.flatMap((id) => known.get(folded(id)) ?? []))
}

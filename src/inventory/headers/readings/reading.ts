import type { Field } from '../../../../shared/columns'
import type { Notion } from '../words/notion'

/**
 * How far the words of a reading go: `itself` says what the column is; `placed` has to stand where such a column belongs
 * ("Diameter" is the tree's or the limb's by its neighbors); `asked` may mean too much else and is never taken silently.
 */
export type Standing = 'itself' | 'placed' | 'asked'

/** One way to head a field: the notions that have to stand in the header, and those that may. */
export interface Reading {
  readonly needs: readonly (readonly Notion[])[]
  readonly may: ReadonlySet<Notion>
  /** What must not stand beside them, though it hardly counts elsewhere: a clearance that is there is not the one needed. */
  readonly not: readonly Notion[]
  /** Whether limb and stem are both named, and which of them first: "Limb diameter at trunk", "Trunk diameter at limb". */
  readonly first: 'limb' | 'axis' | null
  /** How far such words alone can be trusted, 0 to 1. House judgment. */
  readonly trust: number
  readonly standing: Standing
}

export type Readings<F extends Field> = Readonly<Record<F, readonly string[]>>

const groups: Readonly<Record<string, readonly Notion[]>> = {
  dia: ['diameter', 'girth'],
  axis: ['trunk', 'stem', 'leader'],
  place: ['area', 'zone', 'grounds']
}

const standings: Readonly<Record<string, Standing>> = { '~': 'placed', '?': 'asked' }

function notions(word: string): Notion[] {
  return word.split('|').flatMap((each) => groups[each] ?? (each as Notion))
}

/**
 * Reads a line such as "~.62 dia at|on +measured": placed, trust 0.62, a diameter or girth and "at" or "on", and "measured"
 * may stand too. "!existing" must not stand there.
 */
export function readingOf(line: string): Reading {
  const [figure = '', ...rest] = line.split(' ')
  const plus = rest.findIndex((word) => word.startsWith('+'))
  const needed = plus < 0 ? rest : rest.slice(0, plus)
  const first = needed.includes('limbFirst') ? 'limb' : needed.includes('axisFirst') ? 'axis' : null
  const needs = needed.filter((word) => !word.endsWith('First') && !word.startsWith('!')).map(notions)
  const may = plus < 0 ? [] : rest.slice(plus).flatMap((word) => notions(word.replace('+', '')))
  return {
    needs,
    may: new Set([...may, ...needs.flat(), 'at', 'small', 'tall']),
    not: needed.filter((word) => word.startsWith('!')).flatMap((word) => notions(word.slice(1))),
    first,
    trust: Number(figure.replace(/^[~?]/, '')),
    standing: standings[figure.charAt(0)] ?? 'itself'
  }
}

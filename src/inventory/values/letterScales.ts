import type { Cell } from '../../../shared/cells'
import type { ChoiceName } from '../../../shared/choices'

/**
 * Letters that stand for words of a choice only beside each other: "M" is "malo" beside "B" and "R", and "mittel" beside "G" and
 * "S" (common practice, no source). A column has to hold one of the letters in `shownBy` and no other than these.
 */
interface Letters {
  readonly shownBy: string
  readonly of: ReadonlyMap<string, string>
}

function letters(shownBy: string, words: Readonly<Record<string, string>>): Letters {
  return { shownBy, of: new Map(Object.entries(words)) }
}

function vigor(shownBy: string, good: string, fair: string, poor: string): Letters {
  return letters(shownBy, { [good]: 'good', [fair]: 'fair', [poor]: 'poor' })
}

const scales: Partial<Record<ChoiceName, readonly Letters[]>> = {
  // bueno, regular, malo; gut, mittel, schlecht; bon, moyen, faible.
  vigor: [vigor('r', 'b', 'r', 'm'), vigor('s', 'g', 'm', 's'), vigor('f', 'b', 'm', 'f')],
  // none, partial, full.
  includedBark: [letters('f', { n: 'none', p: 'partial', f: 'full' })]
}

/** What the letters of a column of single letters stand for; null where they are no scale that only their company tells. */
export function letterScale(
  choice: ChoiceName,
  cells: Iterable<Cell | undefined>
): ReadonlyMap<string, string> | null {
  const known = scales[choice]
  if (known === undefined) return null
  const found = new Set<string>()
  for (const cell of cells) {
    const text = typeof cell === 'string' ? cell.trim().toLowerCase().replace(/\.$/, '') : ''
    if (text === '') continue
    if (text.length > 1) return null
    found.add(text)
  }
  const fits = ({ shownBy, of }: Letters): boolean =>
    found.size > 1 && found.has(shownBy) && [...found].every((letter) => of.has(letter))
  return known.find(fits)?.of ?? null
}

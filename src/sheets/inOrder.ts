/** The entries in order: themselves where they are already, as the few cuts of a visit mostly are, otherwise a sorted copy. */
export function inOrder<T>(entries: readonly T[], compare: (a: T, b: T) => number): readonly T[] {
  for (let at = 1; at < entries.length; at++)
    if (compare(entries[at - 1] as T, entries[at] as T) > 0) return [...entries].sort(compare)
  return entries
}

/** Keys in the order in which they came, each once. */
export interface FewKeys {
  readonly list: string[]
  /** The places of many keys; null for few, which are searched one by one. */
  places: Map<string, number> | null
}

/** Up to so many keys are searched one by one: most trees have no more limbs, and a map for each tree would cost more. */
const few = 16

export function noKeys(): FewKeys {
  return { list: [], places: null }
}

/** The place of a key that came before; -1 for a new one, which is added. */
export function placeOrAdd(keys: FewKeys, key: string): number {
  const { list } = keys
  const place = keys.places === null ? list.indexOf(key) : (keys.places.get(key) ?? -1)
  if (place >= 0) return place
  list.push(key)
  if (keys.places !== null) keys.places.set(key, list.length - 1)
  else if (list.length > few) keys.places = new Map(list.map((each, at) => [each, at]))
  return -1
}

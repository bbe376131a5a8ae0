/** Marks that nobody sees: zero-width spaces and joiners, soft hyphens, the mark of a text's encoding. */
const invisible = /[\u00ad\u200b-\u200f\u2060\ufeff]/g

/** An id as it is shown: without invisible marks and stray spaces. */
export function shownId(typed: string): string {
  return typed.replace(invisible, '').replace(/\s+/g, ' ').trim()
}

/** Keys that were made; the ids of limbs come again in every tree. */
const keys = new Map<string, string>()
const mostKeys = 10_000

/** What ids are compared by: case, spaces and zeros before a number make no other tree. */
export function treeKey(shown: string): string {
  let key = keys.get(shown)
  if (key === undefined) {
    key = shown.toLowerCase()
    if (/^0+\d+$/.test(key)) key = key.replace(/^0+(?=\d)/, '')
    if (keys.size >= mostKeys) keys.clear()
    keys.set(shown, key)
  }
  return key
}

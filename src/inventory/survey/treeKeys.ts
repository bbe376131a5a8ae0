import { numberWord, treeWord } from './treeWords'

/** Marks that nobody sees: zero-width spaces and joiners, soft hyphens, the mark of a text's encoding. */
const invisible = /[\u00ad\u200b-\u200f\u2060\ufeff]/g

/** An id as it is shown: without invisible marks and stray spaces. */
export function shownId(typed: string): string {
  return typed.replace(invisible, '').replace(/\s+/g, ' ').trim()
}

const beforeNumber = new RegExp(`^(?:${treeWord}|${numberWord}|num\\.?)\\s*${numberWord}?\\s*(?=\\d)`)

/** Keys that were made; the ids of limbs come again in every tree. */
const keys = new Map<string, string>()
const mostKeys = 10_000

/**
 * What ids are compared by: case, zeros before a number, a mark or a word for "number", "continued" and what parts letters
 * from digits make no other tree.
 */
export function treeKey(shown: string): string {
  let key = keys.get(shown)
  if (key === undefined) {
    key = shown
      .toLowerCase()
      .replace(/[\s,]*\(?(?:cont(?:inued|['’]?d)?|forts(?:etzung)?|suite)\.?\)?$/, '')
      .replace(beforeNumber, '')
      .replace(/(?<=[a-z])[\s-]+(?=\d)/g, '')
      .replace(/^(\d+)\.0*$/, '$1')
      .replace(/^0+(?=\d+$)/, '')
    if (key === '') key = shown.toLowerCase()
    if (keys.size >= mostKeys) keys.clear()
    keys.set(shown, key)
  }
  return key
}

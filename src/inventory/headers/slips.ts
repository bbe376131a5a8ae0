/** Whether one word is the other with one letter changed, left out, put in, or two neighbors exchanged. */
export function isSlipOf(a: string, b: string): boolean {
  if (Math.abs(a.length - b.length) > 1 || a === b) return false
  let at = 0
  while (at < a.length && a[at] === b[at]) at++
  if (a.length === b.length) {
    if (a.slice(at + 1) === b.slice(at + 1)) return true
    return a[at] === b[at + 1] && a[at + 1] === b[at] && a.slice(at + 2) === b.slice(at + 2)
  }
  return a.length > b.length ? a.slice(at + 1) === b.slice(at) : a.slice(at) === b.slice(at + 1)
}

/** The word with each of its letters left out in turn. */
function shortened(word: string): string[] {
  return Array.from(word, (_letter, at) => word.slice(0, at) + word.slice(at + 1))
}

const vowel = /[aeiouy]/

/** Whether a short word only lost a vowel: "tre" for "tree", "bse" for "base". */
function lostVowel(token: string, word: string): boolean {
  if (token.length !== word.length - 1) return false
  let at = 0
  while (at < token.length && token[at] === word[at]) at++
  return token.slice(at) === word.slice(at + 1) && vowel.test(word[at] ?? '')
}

/** Whether two letters of a short word changed places ("tpi"), or a vowel got into it or was lost ("steam", "tre"). */
function isShortSlip(token: string, word: string): boolean {
  if (lostVowel(token, word)) return true
  if (word.length === short && lostVowel(word, token)) return true
  return token.length === word.length && isSlipOf(token, word) && sorted(token) === sorted(word)
}

const sorted = (word: string): string => [...word].sort().join('')

/** Words up to this length are too like one another for a slip; only a vowel or two letters exchanged are seen through. */
const short = 4

/**
 * Finds the known words that a word is one slip away from. Both sides are shortened by a letter and looked up, so that the
 * work grows with the length of the word, not with the number of words known.
 */
export class Slips {
  private readonly byShort = new Map<string, string[]>()

  constructor(words: Iterable<string>) {
    for (const word of words) {
      if (word.length < 3) continue
      for (const key of [word, ...shortened(word)]) {
        const list = this.byShort.get(key)
        if (list === undefined) this.byShort.set(key, [word])
        else if (!list.includes(word)) list.push(word)
      }
    }
  }

  /** Every known word that is one slip from this one. */
  near(token: string): string[] {
    if (token.length < 3) return []
    const found = new Set<string>()
    for (const key of [token, ...shortened(token)])
      for (const word of this.byShort.get(key) ?? [])
        if (word.length > short && token.length > short ? isSlipOf(token, word) : isShortSlip(token, word))
          found.add(word)
    return [...found]
  }
}

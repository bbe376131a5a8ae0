/** Compounds longer than this are not taken apart: no word of the trade is, and the work stays bounded. */
const longestCompound = 44

/** The shortest part of a compound ("Ast", "Art"); shorter ones stand at its end only ("Baumnr", "treeid"). */
const shortestPart = 3

/** Letters that German puts between the parts ("Vitalität-s-stufe", "Krone-n-basis"). */
const joints = ['', 's', 'n', 'en', 'es', 'e']

interface Step {
  readonly from: number
  readonly part: string
  readonly parts: number
}

/**
 * The fewest known words that a compound is made of, in order, or null. Each place in the word is reached once, so that the
 * work is at most the square of its length, whatever it holds. `ending` knows what may stand last only,
 * `joins` what takes a letter between.
 */
export function partsOf(
  word: string,
  known: (part: string) => boolean,
  ending: (part: string) => boolean,
  joins: (part: string) => boolean
): string[] | null {
  if (word.length < 5 || word.length > longestCompound) return null
  const steps: (Step | null)[] = Array<Step | null>(word.length + 1).fill(null)
  for (let from = 0; from < word.length; from++) {
    const before = from === 0 ? 0 : steps[from]?.parts
    if (before === undefined) continue
    for (let to = word.length; to > from + 1; to--) {
      const part = word.slice(from, to)
      const last = to === word.length
      if (last ? from === 0 || !ending(part) : part.length < shortestPart || !known(part)) continue
      for (const joint of last || !joins(part) ? [''] : joints) {
        const next = to + joint.length
        if (next > word.length || (next === word.length && !last) || !word.startsWith(joint, to)) continue
        const there = steps[next]
        if (there === null || there === undefined || there.parts > before + 1)
          steps[next] = { from, part, parts: before + 1 }
      }
    }
  }
  const parts: string[] = []
  for (let at = word.length; at > 0;) {
    const step = steps[at]
    if (step === null || step === undefined) return null
    parts.unshift(step.part)
    at = step.from
  }
  return parts
}

/** A compound of two parts of which one is spelled with a slip ("Astdurchmeser", "Kronenansaz"), or null. */
export function slippedParts(
  word: string,
  known: (part: string) => boolean,
  near: (part: string) => readonly string[]
): { readonly part: string; readonly slip: readonly string[]; readonly first: boolean } | null {
  if (word.length < 8 || word.length > longestCompound) return null
  for (let at = shortestPart; at <= word.length - shortestPart; at++) {
    const [head, tail] = [word.slice(0, at), word.slice(at)]
    if (known(head)) {
      const slip = [tail, ...(/^[sn]/.test(tail) ? [tail.slice(1)] : [])].flatMap((each) =>
        each.length < 5 ? [] : near(each)
      )
      if (slip.length > 0) return { part: head, slip, first: true }
    }
    if (head.length >= 5 && known(tail)) {
      const slip = near(head)
      if (slip.length > 0) return { part: tail, slip, first: false }
    }
  }
  return null
}

/** Words as a sentence lists them: "A, B and C". */
export function listed(words: readonly string[]): string {
  if (words.length < 2) return words.join('')
  return `${words.slice(0, -1).join(', ')} and ${words.at(-1) ?? ''}`
}

/** A count with its noun: (1, "tree") gives "1 tree", (3, "tree") gives "3 trees". */
export function counted(number: number, one: string, many = `${one}s`): string {
  return `${String(number)} ${number === 1 ? one : many}`
}

/** Ids with their noun: "limb B", "limbs B and C". */
export function namedLimbs(limbs: readonly { id: string }[]): string {
  return `${limbs.length === 1 ? 'limb' : 'limbs'} ${listed(limbs.map(({ id }) => id))}`
}

/** A capital at the front. */
export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1)
}

/** A full stop at the end, where there is none yet. */
export function sentence(text: string): string {
  const trimmed = text.trim()
  return trimmed === '' || /[.!?…]$/.test(trimmed) ? trimmed : `${trimmed}.`
}

/** A ceiling in percent, never rounded above itself: 0.125 gives "12.5 %", 0.2 gives "20 %". */
export function ceilingPercent(share: number): string {
  return `${String(Math.floor(share * 1000 + 1e-6) / 10)} %`
}

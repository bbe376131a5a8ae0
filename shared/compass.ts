/** The sixteen points, clockwise from north, 22.5° apart. */
const points = 'n nne ne ene e ese se sse s ssw sw wsw w wnw nw nnw'.split(' ')

/** The words of four languages; "oeste" is looked for before "este", and "nor" stands before either. */
const words: readonly (readonly [RegExp, string])[] = [
  [/ouest|oeste|west/g, 'w'],
  [/north|norte|nord|nor(?=este|w)/g, 'n'],
  [/south|süd|sued|sud|sur/g, 's'],
  [/east|este|est|ost/g, 'e']
]

/**
 * Degrees clockwise from north of a compass point: "NE", "north-east", "Nordost" and "noreste" give 45. Null for anything
 * else, also for the letter O, which is east in one language and west in others.
 */
export function compassDegrees(text: string): number | null {
  let word = text
    .trim()
    .toLowerCase()
    .replace(/ (side|seite)$/, '')
    .replace(/[\s.-]/g, '')
  for (const [names, letter] of words) word = word.replace(names, letter)
  const at = points.indexOf(word)
  return at < 0 ? null : at * 22.5
}

const withO = /^[NSEW]{0,2}O[NSEW]?$/

/** Whether a text is a compass point in capitals with the letter O in it. */
export function hasLetterO(text: string): boolean {
  return withO.test(text.trim())
}

const eight = ['N', 'NE', 'E', 'SE', 'S', 'SW', 'W', 'NW'] as const

/** The nearest of eight compass points: 100 degrees from north give "E". */
export function compassPoint(degrees: number): string {
  return eight[((Math.round(degrees / 45) % 8) + 8) % 8] ?? 'N'
}

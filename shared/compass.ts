/** The sixteen points, clockwise from north, 22.5° apart. */
const points = 'n nne ne ene e ese se sse s ssw sw wsw w wnw nw nnw'.split(' ')

/** Degrees clockwise from north of a compass point: "NE" and "north-east" give 45. Null for anything else. */
export function compassDegrees(text: string): number | null {
  const word = text
    .trim()
    .toLowerCase()
    .replace(/ side$/, '')
    .replace(/[\s.-]/g, '')
    .replace(/north|south|east|west/g, (name) => name.charAt(0))
  const at = points.indexOf(word)
  return at < 0 ? null : at * 22.5
}

/** What 50 limbs may take from cells to plan. */
export const mostMilliseconds = 1000

function once(work: () => unknown): number {
  const before = process.cpuUsage()
  work()
  const { user, system } = process.cpuUsage(before)
  return (user + system) / 1000
}

/**
 * Milliseconds that a piece of work computes, as other programs beside it slow it by the clock; what takes too long is
 * tried again, as the engine may have compiled or tidied up meanwhile.
 */
export function computedWithin(work: () => unknown): number {
  const took = once(work)
  return took > mostMilliseconds ? Math.min(took, once(work), once(work)) : took
}

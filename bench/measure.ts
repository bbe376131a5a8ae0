/** One line of the report: what was measured, against what, and the most it may be. */
export interface Measurement {
  what: string
  value: number
  unit: 'times' | 's' | 'KB' | 'GiB' | 'rows'
  limit: number | null
  /** The two sides of a ratio, or how an absolute figure came about. */
  note: string
}

const collect = (globalThis as { gc?: () => void }).gc

function once(work: () => unknown, fresh: boolean): number {
  if (fresh) collect?.()
  const start = performance.now()
  work()
  return performance.now() - start
}

/**
 * The least time in ms of several jobs, taken in turns so that a busy machine disturbs them alike. The first turns warm
 * the machine up and are not counted. Each job begins with its memory tidied up, unless the jobs follow each other as they
 * do in use.
 */
export function leastTimes(
  jobs: readonly (() => unknown)[],
  turns = 20,
  warm = 6,
  asInUse = false
): number[] {
  const least = jobs.map(() => Infinity)
  for (let turn = 0; turn < turns + warm; turn++)
    jobs.forEach((job, at) => {
      const time = once(job, !asInUse)
      if (turn >= warm) least[at] = Math.min(least[at] ?? Infinity, time)
    })
  return least
}

/** The same for jobs that take their time. */
export async function leastTimesInTurn(
  jobs: readonly (() => Promise<unknown>)[],
  turns: number,
  warm: number
): Promise<number[]> {
  const least = jobs.map(() => Infinity)
  for (let turn = 0; turn < turns + warm; turn++)
    for (const [at, job] of jobs.entries()) {
      collect?.()
      const start = performance.now()
      await job()
      const time = performance.now() - start
      if (turn >= warm) least[at] = Math.min(least[at] ?? Infinity, time)
    }
  return least
}

/** A ratio of two jobs with both sides in its note. */
export function ratio(
  what: string,
  limit: number | null,
  ours: number,
  theirs: number,
  against: string
): Measurement {
  const note = `${ours.toFixed(1)} ms against ${theirs.toFixed(1)} ms for ${against}`
  return { what, value: ours / theirs, unit: 'times', limit, note }
}

function line({ what, value, unit, limit, note }: Measurement): string {
  const bound = limit === null ? '' : ` (at most ${limit})`
  const mark = limit === null ? '      ' : value <= limit ? 'within' : 'OVER  '
  return `${mark}  ${what}: ${value.toFixed(2)} ${unit}${bound}; ${note}`
}

/** Prints the measurements; true where every limit is kept. */
export function report(measurements: readonly Measurement[]): boolean {
  for (const measurement of measurements) console.log(line(measurement))
  return measurements.every(({ value, limit }) => limit === null || value <= limit)
}

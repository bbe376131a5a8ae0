/** How many cases of a property: some every time, and many in the long run, which tries another seed. */
const full = process.env.FUZZ === 'full'
if (full) jest.setTimeout(1_800_000)

export function runs(usual: number, long: number): { readonly seed: number; readonly numRuns: number } {
  return { seed: Number(process.env.PROPERTY_SEED ?? 20270401), numRuns: full ? long : usual }
}

/** Five times the second that 50 limbs may take; only the long run is timed, and other runs may stand beside it. */
export const mostMilliseconds = full ? 5000 : Infinity

/** Hours and volumes are printed to a hundredth, and added in whole ones, so that sums and shares are those of what is printed. */
export function hundredths(printed: number): number {
  return Math.round(printed * 100)
}

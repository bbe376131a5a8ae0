/** Days from the first day of 1900 to that of 1904, as Excel counts both. */
const daysTo1904 = 1462

const known = new WeakMap<Excel.RequestContext, number>()

/**
 * How many days the dates of this workbook are less than those of most: 1462 where it counts them from 1904, otherwise 0. No
 * property of the API up to 1.14 tells it; the year of day 1 does.
 */
export async function dateShiftOf(context: Excel.RequestContext): Promise<number> {
  const before = known.get(context)
  if (before !== undefined) return before
  const year = context.workbook.functions.year(1)
  year.load('value')
  await context.sync()
  const shift = year.value === 1904 ? daysTo1904 : 0
  known.set(context, shift)
  return shift
}

/**
 * Girth in mm of five orange trees on seven days, days counted from a common start.
 *
 * Source: Draper & Smith 1998, Applied Regression Analysis, as the R data set `Orange`.
 */
export const orangeDays = [118, 484, 664, 1004, 1231, 1372, 1582] as const

export const orangeGirths: Readonly<Record<string, readonly number[]>> = {
  'tree 1': [30, 58, 87, 115, 120, 142, 145],
  'tree 2': [33, 69, 111, 156, 172, 203, 203],
  'tree 3': [30, 51, 75, 108, 115, 139, 140],
  'tree 4': [32, 62, 112, 167, 179, 209, 214],
  'tree 5': [30, 49, 81, 125, 142, 174, 177]
}

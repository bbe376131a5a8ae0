/**
 * A day as spreadsheets count them: 1 is 1900-01-01, and 60 is the 29 February 1900 that never was (ECMA-376 part 1,
 * 18.17.4.1, the 1900 date base). For days from 1900-03-01 on.
 */
export function dateSerial(isoDate: string): number {
  const days = Date.parse(`${isoDate}T00:00:00Z`) / 86400000
  return Math.round(days + 25569)
}

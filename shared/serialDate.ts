/**
 * Spreadsheet date serials: days counted so that 61 is 1 March 1900. Earlier serials are ambiguous (the spreadsheet
 * counts a 29 February 1900 that never was), so they are not dates here. The last is 31 December 9999.
 */
export const firstSerial = 61
export const lastSerial = 2958465

const dayMilliseconds = 86_400_000
const epoch = Date.UTC(1899, 11, 30)

/** The serial of a calendar day, months counted from 1; NaN outside the range or where there is no such day. */
export function serialOf(year: number, month: number, day: number): number {
  const moment = new Date(Date.UTC(year, month - 1, day))
  if (moment.getUTCFullYear() !== year || moment.getUTCMonth() !== month - 1 || moment.getUTCDate() !== day)
    return NaN
  const serial = (moment.getTime() - epoch) / dayMilliseconds
  return serial >= firstSerial && serial <= lastSerial ? serial : NaN
}

/** The calendar day of a serial; a time of day is dropped. */
export function dayOf(serial: number): { year: number; month: number; day: number } {
  const moment = new Date(epoch + Math.floor(serial) * dayMilliseconds)
  return { year: moment.getUTCFullYear(), month: moment.getUTCMonth() + 1, day: moment.getUTCDate() }
}

/** The serial in a cell: a serial number, or a text such as 2024-03-31. Null for anything else. */
export function readSerial(cell: string | number | boolean): number | null {
  if (typeof cell === 'number') return cell >= firstSerial && cell < lastSerial + 1 ? cell : null
  if (typeof cell === 'boolean') return null
  const text = cell.trim()
  if (/^\d{5,7}(\.\d+)?$/.test(text)) return readSerial(Number(text))
  const parts = /^(\d{4})-(\d{1,2})-(\d{1,2})$/.exec(text)
  if (parts === null) return null
  const serial = serialOf(Number(parts[1]), Number(parts[2]), Number(parts[3]))
  return Number.isNaN(serial) ? null : serial
}

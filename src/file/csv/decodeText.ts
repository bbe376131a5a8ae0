/** Bytes looked at to tell an encoding without a mark: some hundred lines. */
const looked = 8192

/** The mark that tells the encoding of a text is no part of it. */
function withoutMark(text: string): string {
  return text.charCodeAt(0) === 0xfeff ? text.slice(1) : text
}

type Wide = 'utf-16le' | 'utf-16be'

function wideByMark(bytes: Uint8Array): Wide | null {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return 'utf-16le'
  return bytes[0] === 0xfe && bytes[1] === 0xff ? 'utf-16be' : null
}

/**
 * UTF-16 without a mark: of two bytes the upper one is 0 in every Latin letter, digit and separator, and the lower one in
 * none. A third of the one and a hundredth of the other leave room for other letters (house judgment).
 */
function wideByZeros(bytes: Uint8Array): Wide | null {
  const pairs = Math.floor(Math.min(bytes.length, looked) / 2)
  let first = 0
  let second = 0
  for (let pair = 0; pair < pairs; pair++) {
    if (bytes[2 * pair] === 0) first++
    if (bytes[2 * pair + 1] === 0) second++
  }
  if (3 * second > pairs && 100 * first <= pairs) return 'utf-16le'
  return 3 * first > pairs && 100 * second <= pairs ? 'utf-16be' : null
}

const unreadable = 0xfffd

/** Whether a text that is no proper UTF-8 is UTF-8 with a few bytes damaged or cut off (house judgment). */
function isMostlyRead(text: string): boolean {
  let read = 0
  let damaged = 0
  for (let at = 0; at < text.length; at++) {
    const code = text.charCodeAt(at)
    if (code === unreadable) damaged++
    else if (code > 0x7f) read++
  }
  return read > 2 * damaged
}

/** What Windows-1252 has from 0x80 to 0x9f; a decoder that takes it for ISO-8859-1, as that of Node 20 does, leaves control characters. */
const windows = '€\u0081‚ƒ„…†‡ˆ‰Š‹Œ\u008dŽ\u008f\u0090‘’“”•–—˜™š›œ\u009džŸ'

function fromWindows(bytes: Uint8Array): string {
  return new TextDecoder('windows-1252')
    .decode(bytes)
    .replace(/[\u0080-\u009f]/g, (sign) => windows.charAt(sign.charCodeAt(0) - 0x80))
}

/**
 * The text of a file: UTF-16 by its mark or its zeros, else UTF-8, else Windows-1252 as older spreadsheets save it. What is
 * damaged in a UTF-8 text shows as “�”.
 */
export function decodeText(bytes: Uint8Array): string {
  const wide = wideByMark(bytes) ?? wideByZeros(bytes)
  if (wide !== null) return withoutMark(new TextDecoder(wide).decode(bytes))
  try {
    return withoutMark(new TextDecoder('utf-8', { fatal: true }).decode(bytes))
  } catch {
    const text = new TextDecoder('utf-8').decode(bytes)
    return isMostlyRead(text) ? withoutMark(text) : fromWindows(bytes)
  }
}

/** Characters that no text has: everything below a space but tabs, line and page breaks. */
function isControl(code: number): boolean {
  return code < 32 && code !== 9 && code !== 10 && code !== 12 && code !== 13
}

/** A character 0 tells as much of a file that is no text as this many other control characters (house judgment). */
const zeroCounts = 10

/** Whether a decoded text is none: a twentieth of it is control characters (house judgment; of random bytes, a tenth is). */
export function isBinary(text: string): boolean {
  const length = Math.min(text.length, looked)
  let controls = 0
  for (let at = 0; at < length; at++) {
    const code = text.charCodeAt(at)
    if (isControl(code)) controls += code === 0 ? zeroCounts : 1
  }
  return 20 * controls > length
}

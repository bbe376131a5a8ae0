/** Texts of a file as a terminal may show them: what would steer the terminal is shown as a sign instead. */

/** Control characters but line breaks and tabs, and those that turn the direction of writing around. */
const steering = /(?![\n\t])[\p{Cc}\u202a-\u202e\u2066-\u2069]/gu

/** Unicode has a picture for each of the first 32 control characters, and for the one that deletes. */
function pictured(sign: string): string {
  const code = sign.charCodeAt(0)
  if (code < 0x20) return String.fromCharCode(0x2400 + code)
  return code === 0x7f ? '\u2421' : '\ufffd'
}

/** A text for people. */
export function forTerminal(text: string): string {
  return text.replace(steering, pictured)
}

/** JSON that says the same, with these characters written as escapes. */
export function jsonForTerminal(json: string): string {
  return json.replace(steering, (sign) => `\\u${sign.charCodeAt(0).toString(16).padStart(4, '0')}`)
}

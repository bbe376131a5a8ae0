/** Bytes in base64. */
export function base64(bytes: Uint8Array): string {
  const step = 0x8000
  let letters = ''
  for (let at = 0; at < bytes.length; at += step)
    letters += String.fromCharCode(...bytes.subarray(at, at + step))
  return btoa(letters)
}

/** The bytes of a text in base64; throws where it is none. */
export function fromBase64(text: string): Uint8Array {
  return Uint8Array.from(atob(text), (letter) => letter.charCodeAt(0))
}

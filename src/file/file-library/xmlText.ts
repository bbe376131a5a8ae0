/** What is read of a part's XML before the file library reads it: single tags, found by their names; and what may be put in. */

/** Every opening tag of this name, whatever prefix its namespace has. */
export function tagsOf(xml: string, name: string): string[] {
  return xml.match(new RegExp(`<(?:\\w+:)?${name}(?=[\\s/>])[^<>]*>`, 'g')) ?? []
}

const entities: Readonly<Record<string, string>> = { amp: '&', lt: '<', gt: '>', quot: '"', apos: "'" }

/** A text or a value as it was meant, its entities put in. */
export function plainText(value: string): string {
  return value.replace(
    /&(?:#x([\da-f]+)|#(\d+)|(\w+));/gi,
    (whole, hex?: string, digits?: string, name = '') => {
      const code = hex === undefined ? Number(digits) : parseInt(hex, 16)
      if (code >= 0 && code <= 0x10ffff) return String.fromCodePoint(code)
      return entities[String(name)] ?? whole
    }
  )
}

/** An attribute of a tag, by its name without a prefix, or null. */
export function attributeOf(tag: string, name: string): string | null {
  const found = new RegExp(`\\s(?:\\w+:)?${name}\\s*=\\s*(?:"([^"]*)"|'([^']*)')`).exec(tag)
  return found === null ? null : plainText(found[1] ?? found[2] ?? '')
}

/** The two characters of every plane's end that no XML may hold (XML 1.0, 2.2); the others of their kind it may. */
const forbidden = /[\ufffe\uffff]/g

/** A text with the sign for what cannot be shown where it has a character that no XML may hold. */
export function possibleText(text: string): string {
  return text.replace(forbidden, '\ufffd')
}

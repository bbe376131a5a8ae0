/** Folded for comparison: lower case, no accents or invisible characters, "ß" as "ss". */
export function fold(text: string): string {
  return text
    .normalize('NFKD')
    .replace(/\p{M}+/gu, '')
    .replace(/ß/g, 'ss')
    .replace(/[\u200b-\u200d\u2060\ufeff\u00ad]/g, '')
    .toLowerCase()
}

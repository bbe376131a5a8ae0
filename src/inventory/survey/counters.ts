import { fold } from '../headers/fold'

/** A header that counts: what it says without the count, and which of several it speaks of. */
export interface Counted {
  readonly rest: string
  readonly count: string
}

/** How a header may count: "Limb 2 dia", "2nd limb dia", "limbs[0].dia"; "Second limb dia"; "Limb dia B". */
export type Counting = (header: string) => Counted | null

const ordinals: Readonly<Record<string, string>> = Object.fromEntries(
  [
    'first erste erster erstes premier premiere primer primera primero',
    'second zweite zweiter zweites deuxieme seconde segunda segundo',
    'third dritte dritter drittes troisieme tercer tercera tercero',
    'fourth vierte vierter viertes quatrieme cuarta cuarto',
    'fifth funfte fuenfte funfter fuenfter cinquieme quinta quinto',
    'sixth sechste sechster sixieme sexta sexto'
  ].flatMap((words, at) => words.split(' ').map((word) => [word, String(at + 1)]))
)

function without(header: string, from: number, length: number): string {
  return `${header.slice(0, from)} ${header.slice(from + length)}`.replace(/\s+/g, ' ').trim()
}

const number = /(?<![\p{L}\d.,])(\d{1,2})(?:st|nd|rd|th|[eè]re|er|re|[eè]me|e|[ºª°])?(?![\p{L}\d]|[.,]\d)/iu

/** "Limb 2 dia", "Dia2", "2nd limb dia", "limb_2_dia", "limbs[0].dia"; not the height in "at 4.5 ft". */
export const byNumber: Counting = (header) => {
  const text = header.replace(/(\p{L})(?=\d{1,2}(?!\d))/gu, '$1 ').replace(/[_[\]]+|(?<=\D)\.|\.(?=\D)/g, ' ')
  const found = number.exec(text)
  if (found?.[1] === undefined) return null
  return { rest: without(text, found.index, found[0].length), count: String(Number(found[1])) }
}

/** "First limb dia", "Deuxième branche Ø". */
export const byOrdinal: Counting = (header) => {
  for (const found of header.matchAll(/\p{L}+/gu)) {
    const count = ordinals[fold(found[0])]
    if (count !== undefined) return { rest: without(header, found.index, found[0].length), count }
  }
  return null
}

/** "Limb dia A (in)", "Limb B tip", "dia_a", "StemB": the letters that a tree's first eight limbs have. */
export const byLetter: Counting = (header) => {
  const text = header.replace(/(\p{Ll})(?=[A-H](?!\p{L}))/gu, '$1 ').replace(/_+/g, ' ')
  const found = /(?<![\p{L}\d'’])(?:[A-H]|[a-h](?=$|\s*[([]))(?![\p{L}\d'’])/u.exec(text)
  if (found === null) return null
  return { rest: without(text, found.index, found[0].length), count: found[0].toUpperCase() }
}

/** The ways in which headers count, the plainest first. */
export const countings: readonly Counting[] = [byNumber, byOrdinal, byLetter]

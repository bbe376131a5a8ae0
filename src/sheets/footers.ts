/** The foot of a page as both writers print it: 8 points, so that two lines stand clear of the last row. */
const size = '&8'

/** Each document counts from 1. How many there are is left out: printed as one, a workbook counts the pages of all. */
const pageNumber = `${size}Page &P`

/** The codes of the two parts (ECMA-376 part 1, 18.3.1.46), which count among the characters that a footer may have. */
export const footerCodes = `&L${size}&R${pageNumber}`

export interface FooterParts {
  readonly left: string
  readonly right: string
}

/** The left and the right part of a footer. A text that begins with a figure would be read as its size. */
export function footerParts(footer: string): FooterParts {
  const apart = /^\d/.test(footer) ? ' ' : ''
  return { left: `${size}${apart}${footer.replaceAll('&', '&&')}`, right: pageNumber }
}

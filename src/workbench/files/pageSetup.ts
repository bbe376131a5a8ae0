/** Page set-up and footers, from a file's words to the Excel API's and back. */
import type { FileMargins, FilePage } from '../../file/file-library/fileBook'
import type { PageLayout, PageMargins } from '../book'
import { plainPage } from '../plainPage'

const papers: Record<string, NonNullable<FilePage['paperSize']>> = {
  Letter: 'letter',
  Legal: 'legal',
  A3: 'a3',
  A4: 'a4',
  A5: 'a5',
  Tabloid: 'tabloid',
  Executive: 'executive'
}

/** The three parts of a footer, as &L, &C and &R mark them. */
function footerParts(text: string): Pick<PageLayout, 'footerLeft' | 'footerCenter' | 'footerRight'> {
  const part = (mark: string) => new RegExp(`&${mark}((?:&&|(?!&[LCR]).)*)`, 's').exec(text)?.[1] ?? ''
  return { footerLeft: part('L'), footerCenter: part('C'), footerRight: part('R') }
}

/** A file counts margins in inches, the Excel API in points. */
function inPoints(margins: FileMargins): PageMargins {
  const { left = 0.7, right = 0.7, top = 0.75, bottom = 0.75, header = 0.3, footer = 0.3 } = margins
  return scaled({ left, right, top, bottom, header, footer }, 72)
}

function scaled(margins: PageMargins, factor: number): PageMargins {
  return Object.fromEntries(
    Object.entries(margins).map(([side, size]: [string, number]) => [
      side,
      Math.round(size * factor * 1e4) / 1e4
    ])
  ) as unknown as PageMargins
}

export function readPage(page: FilePage, footer: string): PageLayout {
  const plain = plainPage()
  const paper = Object.keys(papers).find((key) => papers[key] === page.paperSize)
  return {
    orientation: page.orientation === 'landscape' ? 'Landscape' : 'Portrait',
    paperSize: paper ?? plain.paperSize,
    ...(page.scale === undefined ? {} : { scale: page.scale }),
    fitToWidth: page.fit?.width ?? null,
    fitToHeight: page.fit?.height ?? null,
    titleRows: page.titleRows ?? null,
    ...(page.centered ? { centerHorizontally: true } : {}),
    ...(page.printArea === undefined ? {} : { printArea: page.printArea }),
    ...(page.margins ? { margins: inPoints(page.margins) } : {}),
    ...footerParts(footer)
  }
}

export function writePage(page: PageLayout): FilePage {
  const fit = page.fitToWidth !== null || page.fitToHeight !== null
  return {
    orientation: page.orientation === 'Landscape' ? 'landscape' : 'portrait',
    paperSize: papers[page.paperSize] ?? 'letter',
    ...(page.centerHorizontally === undefined ? {} : { centered: page.centerHorizontally }),
    ...(!fit && typeof page.scale === 'number' ? { scale: page.scale } : {}),
    ...(typeof page.firstPageNumber === 'number' ? { firstPageNumber: page.firstPageNumber } : {}),
    ...(page.margins ? { margins: scaled(page.margins, 1 / 72) } : {}),
    ...(page.printArea ? { printArea: page.printArea } : {}),
    ...(page.titleRows ? { titleRows: page.titleRows } : {}),
    ...(fit ? { fit: { width: page.fitToWidth ?? 0, height: page.fitToHeight ?? 0 } } : {})
  }
}

export function writeFooter(page: PageLayout): string {
  const part = (mark: string, text: string) => (text === '' ? '' : `&${mark}${text}`)
  return part('L', page.footerLeft) + part('C', page.footerCenter) + part('R', page.footerRight)
}

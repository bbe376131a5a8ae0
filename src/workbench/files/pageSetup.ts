/** Page set-up and footers, from the file library's words to the Excel API's and back. */
import type { HeaderFooter, PageMargins as FileMargins, PageSetup, PaperSize } from 'hucre'
import type { PageLayout, PageMargins } from '../book'
import { plainPage } from '../plainPage'

const papers: Record<string, PaperSize> = {
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

export function readPage(setup: PageSetup | undefined, headerFooter: HeaderFooter | undefined): PageLayout {
  const plain = plainPage()
  const paper = Object.keys(papers).find((key) => papers[key] === setup?.paperSize)
  return {
    orientation: setup?.orientation === 'landscape' ? 'Landscape' : 'Portrait',
    paperSize: paper ?? plain.paperSize,
    ...(setup?.scale !== undefined && !setup.fitToPage ? { scale: setup.scale } : {}),
    fitToWidth: setup?.fitToPage ? (setup.fitToWidth ?? 1) : null,
    fitToHeight: setup?.fitToPage ? (setup.fitToHeight ?? 1) : null,
    titleRows: setup?.printTitlesRow ?? null,
    ...(setup?.horizontalCentered ? { centerHorizontally: true } : {}),
    ...(setup?.printArea ? { printArea: setup.printArea } : {}),
    ...(setup?.margins ? { margins: inPoints(setup.margins) } : {}),
    ...footerParts(headerFooter?.oddFooter ?? '')
  }
}

/** Without title rows and print area, which are written as names so that the sheet's name is quoted where it has to be. */
export function writePage(page: PageLayout, kept: PageSetup | undefined): PageSetup {
  const fit = page.fitToWidth !== null || page.fitToHeight !== null
  const others = { ...kept }
  delete others.printTitlesRow
  delete others.printArea
  delete others.scale
  delete others.fitToPage
  delete others.fitToWidth
  delete others.fitToHeight
  return {
    ...others,
    orientation: page.orientation === 'Landscape' ? 'landscape' : 'portrait',
    paperSize: papers[page.paperSize] ?? 'letter',
    ...(page.centerHorizontally === undefined ? {} : { horizontalCentered: page.centerHorizontally }),
    ...(!fit && typeof page.scale === 'number' ? { scale: page.scale } : {}),
    ...(page.margins ? { margins: scaled(page.margins, 1 / 72) } : {}),
    ...(fit ? { fitToPage: true, fitToWidth: page.fitToWidth ?? 0, fitToHeight: page.fitToHeight ?? 0 } : {})
  }
}

export function writeFooter(page: PageLayout, kept: HeaderFooter | undefined): HeaderFooter | undefined {
  const part = (mark: string, text: string) => (text === '' ? '' : `&${mark}${text}`)
  const oddFooter = part('L', page.footerLeft) + part('C', page.footerCenter) + part('R', page.footerRight)
  if (oddFooter === '' && kept === undefined) return undefined
  return { ...kept, oddFooter }
}

/** PageLayout of the Excel API with the footers that the documents use. */
import type { PageLayout, PageMargins } from '../book'
import { areaAddress, sheetColumns } from '../../../shared/a1Notation'
import { booleanValue, numberValue, oneOf, textValue } from './memberArguments'
import { invalidArgument } from './faults'
import { hostType } from './hostObject'
import { rangeObject } from './range'
import { rangeArgument, rangeByText } from './rangeTarget'
import { writable, type SheetTarget } from './session'

const orientations = ['Portrait', 'Landscape'] as const
const papers = ['Letter', 'Legal', 'Tabloid', 'A3', 'A4', 'A5'] as const

/** Excel's normal margins in points (0.7, 0.75 and 0.3 inches, from memory). */
const normalMargins: PageMargins = {
  left: 50.4,
  right: 50.4,
  top: 54,
  bottom: 54,
  header: 21.6,
  footer: 21.6
}
const pointsPer = { Points: 1, Inches: 72, Centimeters: 72 / 2.54 }

function page({ session, sheetId }: SheetTarget): PageLayout {
  return session.book.page(sheetId)
}

function change({ session, sheetId }: SheetTarget, to: Partial<PageLayout>): void {
  writable(session, sheetId).setPage(sheetId, to)
}

function pages(value: unknown): number | null {
  return value === undefined || value === null ? null : numberValue(value, 'The number of pages')
}

function setZoom(target: SheetTarget, to: unknown): void {
  if (typeof to !== 'object' || to === null) throw invalidArgument('The zoom is not an object.')
  const zoom = to as { horizontalFitToPages?: unknown; verticalFitToPages?: unknown; scale?: unknown }
  const scale = zoom.scale === undefined || zoom.scale === null ? null : numberValue(zoom.scale, 'The scale')
  if (scale !== null && (scale < 10 || scale > 400)) throw invalidArgument('The scale is not from 10 to 400.')
  change(target, {
    scale,
    fitToWidth: pages(zoom.horizontalFitToPages),
    fitToHeight: pages(zoom.verticalFitToPages)
  })
}

function setTitleRows(target: SheetTarget, [rows]: unknown[]): void {
  const { area } = rangeArgument(target.session, target.sheetId, rows)
  // “The range must span the entire row to be valid” (reference, PageLayout.setPrintTitleRows).
  if (area.columns !== sheetColumns) throw invalidArgument('The title rows do not span the whole row.')
  change(target, { titleRows: areaAddress(area).replace(/\d+/g, '$$$&') })
}

function setPrintArea(target: SheetTarget, [area]: unknown[]): void {
  change(target, { printArea: areaAddress(rangeArgument(target.session, target.sheetId, area).area) })
}

function setMargins(target: SheetTarget, [unit, given]: unknown[]): void {
  const points = pointsPer[oneOf(unit, ['Points', 'Inches', 'Centimeters'], 'The unit of the margins')]
  const margins = { ...normalMargins, ...page(target).margins }
  for (const [side, value] of Object.entries(given ?? {})) {
    const known = oneOf(side, Object.keys(normalMargins) as (keyof PageMargins)[], 'The margin')
    margins[known] = numberValue(value, 'The margin') * points
  }
  change(target, { margins })
}

function margin(side: keyof PageMargins) {
  return {
    read: (target: SheetTarget) => (page(target).margins ?? normalMargins)[side],
    write: (target: SheetTarget, to: unknown) => {
      const margins = { ...normalMargins, ...page(target).margins, [side]: numberValue(to, 'The margin') }
      change(target, { margins })
    }
  }
}
const margins = {
  leftMargin: margin('left'),
  rightMargin: margin('right'),
  topMargin: margin('top'),
  bottomMargin: margin('bottom'),
  headerMargin: margin('header'),
  footerMargin: margin('footer')
}
const entries = Object.entries(margins)

const footersObject = hostType<SheetTarget>({
  name: 'HeaderFooter',
  reads: {
    leftFooter: (target) => page(target).footerLeft,
    centerFooter: (target) => page(target).footerCenter,
    rightFooter: (target) => page(target).footerRight
  },
  writes: {
    leftFooter: (target, to) => {
      change(target, { footerLeft: textValue(to, 'The footer') })
    },
    centerFooter: (target, to) => {
      change(target, { footerCenter: textValue(to, 'The footer') })
    },
    rightFooter: (target, to) => {
      change(target, { footerRight: textValue(to, 'The footer') })
    }
  }
})

const headersFootersObject = hostType<SheetTarget>({
  name: 'HeaderFooterGroup',
  parts: { defaultForAllPages: (target) => footersObject(target) }
})

export const pageLayoutObject = hostType<SheetTarget>({
  name: 'PageLayout',
  reads: {
    orientation: (target) => page(target).orientation,
    paperSize: (target) => page(target).paperSize,
    zoom: (target) => ({
      scale: page(target).scale ?? null,
      horizontalFitToPages: page(target).fitToWidth,
      verticalFitToPages: page(target).fitToHeight
    }),
    centerHorizontally: (target) => page(target).centerHorizontally ?? false,
    firstPageNumber: (target) => page(target).firstPageNumber ?? '',
    ...Object.fromEntries(entries.map(([name, { read }]) => [name, read]))
  },
  writes: {
    orientation: (target, to) => {
      change(target, { orientation: oneOf(to, orientations, 'The orientation') })
    },
    paperSize: (target, to) => {
      change(target, { paperSize: oneOf(to, papers, 'The paper size') })
    },
    zoom: setZoom,
    firstPageNumber: (target, to) => {
      change(target, { firstPageNumber: to === '' ? to : numberValue(to, 'The number of the first page') })
    },
    centerHorizontally: (target, to) => {
      change(target, { centerHorizontally: booleanValue(to, 'Centring') })
    },
    ...Object.fromEntries(entries.map(([name, { write }]) => [name, write]))
  },
  parts: { headersFooters: (target) => headersFootersObject(target) },
  opens: {
    getPrintTitleRowsOrNullObject: (target) => {
      const rows = page(target).titleRows
      return rows ? rangeObject(rangeByText(target.session, target.sheetId, rows)) : null
    }
  },
  calls: { setPrintTitleRows: setTitleRows, setPrintArea, setPrintMargins: setMargins }
})

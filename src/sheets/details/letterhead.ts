import type { JobDetails, Paper } from '../../details/detailsBook'
import type { Plan } from '../../plan/plan'
import { palette } from '../../../shared/palette'
import { fitted as fitPicture, type StoredPicture } from '../../../shared/pictures/storedPicture'
import { drawPicture } from '../../drawing/drawPicture'
import type { SheetDraft } from '../draft'
import { footerCodes } from '../footers'
import { columnPoints, pointsBetween } from '../pageBreaks'
import { printedFold } from '../printedLines'
import type { Format } from '../sheet'
import { pointsForLines } from '../wrapping'

/** What is not known is a line to fill by hand. */
const toFill = '____________'

/** Points of the letterhead, unless a document is set larger. */
const usualSize = 9

const labeled = (label: string, text: string): string => `${label}: ${text === '' ? toFill : text}`

/** Who made the document, in lines. */
function businessLines(details: JobDetails): string[] {
  const { company, credential, credentialNumber } = details
  const number = credentialNumber === '' ? `No. ${toFill}` : credentialNumber
  const credentialed =
    credential === '' && credentialNumber === ''
      ? labeled('Credential', '')
      : `${labeled('Credential', credential)}, ${number}`
  const contact = [
    labeled('Address', details.address),
    labeled('Phone', details.phone),
    labeled('Mail', details.mail)
  ]
  return [
    company === '' ? labeled('Company', '') : company,
    contact.join(' · '),
    [labeled('Prepared by', details.preparedBy), credentialed, labeled('Insurance', details.insurance)].join(
      ' · '
    )
  ]
}

/** For whom and as which job, in lines; a blank revision is the first issue. */
function jobLines(details: JobDetails, isoDate: string): string[] {
  const { client, site, contact, reference, revision, date } = details
  const job = [
    labeled('Reference', reference),
    ...(revision === '' ? [] : [labeled('Revision', revision)]),
    labeled('Date', date === '' ? isoDate : date)
  ]
  return [
    [labeled('Client', client), labeled('Site', site), labeled('Contact', contact)].join(' · '),
    job.join(' · ')
  ]
}

/** Points of the logo at most; it takes no more of a narrow page than a third. */
const logoRoom = { width: 150, height: 48 } as const

/** Points between the logo and the lines beside it. */
const besideLogo = 12

/** Pixels of the logo in a point, so that it is sharp on paper, and points of one of its own, so that none is blown up. */
const [pixelsPerPoint, pointsPerPixel] = [2, 1]

function logoSize(logo: StoredPicture, across: number): { readonly width: number; readonly height: number } {
  const room = { ...logoRoom, width: Math.min(logoRoom.width, across / 3) }
  const { width, height } = fitPicture(logo, room)
  const most = Math.min(1, (logo.width * pointsPerPixel) / width)
  return { width: width * most, height: height * most }
}

/** The logo at the right of the lines from a row on, which are made as high as it is. */
function addLogo(draft: SheetDraft, { company, logo }: JobDetails, row: number, columns: number): void {
  if (logo === null) return
  const across = columnPoints(...draft.widths.slice(0, columns))
  const { width, height } = logoSize(logo, across)
  const lacking = height + 4 - pointsBetween(draft.heights, row, draft.next)
  if (lacking > 0) {
    draft.blank()
    draft.height(draft.next - 1, 1, Math.ceil(lacking))
  }
  let [column, left] = [0, across - width]
  for (; column < columns - 1 && left >= columnPoints(draft.widths[column] ?? 0); column++)
    left -= columnPoints(draft.widths[column] ?? 0)
  const alt = company === '' ? 'Logo' : `Logo of ${company}`
  draft.pictures.push({
    area: { row, column, rows: draft.next - row, columns: columns - column },
    inset: left,
    ...{ width, height, alt },
    draw: () => drawPicture(logo, { width: width * pixelsPerPoint, height: height * pixelsPerPoint }, alt)
  })
}

interface Lines {
  readonly size?: number
  readonly close?: boolean
  readonly columns?: number
}

/** Lines at the head of a document, folded to its columns and beside the logo, as text that runs over is not printed. */
function addLines(
  draft: SheetDraft,
  lines: readonly string[],
  details: JobDetails,
  { size = usualSize, close = false, columns = draft.widths.length }: Lines
): void {
  const across = columnPoints(...draft.widths.slice(0, columns))
  const taken = details.logo === null ? 0 : logoSize(details.logo, across).width + besideLogo
  const ofLines: Format = { size, color: palette.ink }
  const ofCompany: Format = { ...ofLines, size: size + 2, bold: true }
  const first = draft.next
  lines.forEach((text, at) => {
    const look = at === 0 ? ofCompany : ofLines
    const points = close ? Math.ceil((look.size ?? size) * 1.4) : pointsForLines(1, look.size ?? size)
    for (const part of printedFold(text, across - taken, look.size ?? size, look.bold === true))
      draft.height(draft.line([part], look), 1, points)
  })
  addLogo(draft, details, first, columns)
  draft.format(draft.next - 1, 0, 1, draft.widths.length, { ...ofLines, underline: palette.rule })
}

/** The letterhead at the head of a document, over the columns that are printed: who made it, for whom and as which job. */
export function addLetterhead(
  draft: SheetDraft,
  details: JobDetails,
  isoDate: string,
  size = usualSize,
  columns = draft.widths.length
): void {
  addLines(draft, [...businessLines(details), ...jobLines(details, isoDate)], details, { size, columns })
}

/** The letterhead of a document that says for whom it is in a place of its own, in close lines. */
export function addBusiness(draft: SheetDraft, details: JobDetails): void {
  addLines(draft, businessLines(details), details, { close: true })
}

/** The paper of a job: as its details say, else the one that goes with the units. */
export function paperOf({ paper }: Pick<JobDetails, 'paper'>, { system }: Pick<Plan, 'system'>): Paper {
  return paper ?? (system === 'in-ft' ? 'letter' : 'a4')
}

/** A footer has at most 255 characters with its codes (from memory, as Excel takes it); an ampersand counts twice. */
const mostInFooter = 255 - footerCodes.length
const mostOf = { reference: 24, client: 36, site: 28 } as const

/** Signs that a line of a portrait page holds at the size of footers, in the fallback font too (measured in LibreOffice). */
const mostOnLine = 118

const lengthInFooter = (text: string): number => text.replaceAll('&', '&&').length

/** A text cut to so many characters of a footer, whole signs only. */
function fitted(text: string, most: number): string {
  if (lengthInFooter(text) <= most) return text
  const signs = Array.from(text)
  while (signs.length > 0 && lengthInFooter(signs.join('')) > most - 1) signs.pop()
  return `${signs.join('').trimEnd()}…`
}

/** The foot of each page: whose job it is on its first line, where it is and what the document is about on its second. */
export function footerOf(details: JobDetails, about: string): string {
  const { reference, revision, client, site } = details
  const number = revision === '' ? reference : `${reference === '' ? toFill : reference} rev. ${revision}`
  const job = [
    labeled('Ref.', fitted(number, mostOf.reference)),
    labeled('Client', fitted(client, mostOf.client))
  ].join('  ')
  const place = labeled('Site', fitted(site, mostOf.site))
  // The number of the page stands beside the first line, so that the second one may be long.
  const room = Math.min(mostOnLine, mostInFooter - lengthInFooter(job) - 1) - lengthInFooter(place) - 2
  return `${job}\n${place}  ${fitted(about, room)}`
}

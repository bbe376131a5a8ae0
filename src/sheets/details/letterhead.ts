import type { JobDetails, Paper } from '../../details/detailsBook'
import type { Plan } from '../../plan/plan'
import { foldText } from '../../../shared/folding'
import { palette } from '../../../shared/palette'
import type { SheetDraft } from '../draft'
import { footerCodes } from '../footers'
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
    contact.join('   '),
    [labeled('Prepared by', details.preparedBy), credentialed, labeled('Insurance', details.insurance)].join(
      '   '
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
    [labeled('Client', client), labeled('Site', site), labeled('Contact', contact)].join('   '),
    job.join('   ')
  ]
}

/** Characters at the usual size on a character of column width: smaller than the standard font, which the columns count. */
const charactersPerWidth = 1.12

/** Lines at the head of a document, folded to its columns, as text that runs over the last one is not printed. */
function addLines(
  draft: SheetDraft,
  lines: readonly string[],
  size: number,
  { close = false, columns = draft.widths.length }: { close?: boolean; columns?: number } = {}
): void {
  const width = draft.widths.slice(0, columns).reduce((sum, each) => sum + each + 0.7, 0)
  const room = Math.max(20, Math.floor((width * charactersPerWidth * usualSize) / size))
  const ofLines: Format = { size, color: palette.ink }
  const ofCompany: Format = { ...ofLines, size: size + 2, bold: true }
  lines.forEach((text, at) => {
    const look = at === 0 ? ofCompany : ofLines
    const points = close ? Math.ceil((look.size ?? size) * 1.4) : pointsForLines(1, look.size ?? size)
    for (const part of foldText(text, at === 0 ? Math.floor(room * 0.75) : room))
      draft.height(draft.line([part], look), 1, points)
  })
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
  addLines(draft, [...businessLines(details), ...jobLines(details, isoDate)], size, { columns })
}

/** The letterhead of a document that says for whom it is in a place of its own, in close lines. */
export function addBusiness(draft: SheetDraft, details: JobDetails): void {
  addLines(draft, businessLines(details), usualSize, { close: true })
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

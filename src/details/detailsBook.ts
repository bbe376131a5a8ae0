import type { StoredPicture } from '../../shared/pictures/storedPicture'

/** What the value of a detail may be. A long text may take a paragraph; a text fits on a line or two. */
export type DetailKind = 'text' | 'long' | 'mail' | 'day' | 'year' | 'paper' | 'picture'

interface DetailEntry {
  group: 'Your business' | 'The job'
  /** How it is called on the Job details sheet, where it is found by this name. */
  name: string
  kind: DetailKind
  /** What to type, beside the value. */
  remark: string
}

function detail(
  group: DetailEntry['group'],
  name: string,
  remark: string,
  kind: DetailKind = 'text'
): DetailEntry {
  return { group, name, kind, remark }
}

const business = 'Your business'
const job = 'The job'

/** Every detail of a job, in the order of its sheet. The keys are those of a --details file. */
export const detailsBook = {
  company: detail(business, 'Company', 'As it stands on your letterhead.'),
  address: detail(business, 'Address', 'Street, place and code, with commas between them.'),
  phone: detail(business, 'Phone', 'For the client and the crew.'),
  mail: detail(business, 'Mail', 'One address, such as office@example.com.', 'mail'),
  preparedBy: detail(business, 'Prepared by', 'Who planned the work and answers for it.'),
  credential: detail(business, 'Credential', 'Of whoever planned the work, in the words of who gave it.'),
  credentialNumber: detail(business, 'Credential number', 'As it stands on the certificate.'),
  insurance: detail(business, 'Insurance', 'One line: the insurer, the kind of cover, the number.'),
  logo: detail(
    business,
    'Logo',
    'Put a picture (PNG or JPEG) on this sheet, anywhere; or, for the command line, type the name of a file beside this one.',
    'picture'
  ),
  client: detail(job, 'Client', 'Whoever orders the work.'),
  site: detail(job, 'Site', 'Where the trees stand; it is printed at the foot of each page.'),
  contact: detail(job, 'Contact', 'On site or at the client, with a phone number.'),
  emergency: detail(
    job,
    'Emergency line',
    'Who the crew calls and where it meets help: a number and the nearest hospital.'
  ),
  reference: detail(
    job,
    'Reference number',
    'Your number of the job; it is printed at the foot of each page.'
  ),
  revision: detail(job, 'Revision', 'Blank for the first issue.'),
  date: detail(job, 'Date', 'Of the documents, such as 2026-03-31. Blank: the day of the plan.', 'day'),
  firstYear: detail(
    job,
    'First work year',
    'The year of the first visit; all later years count from it. Blank: the year of the plan.',
    'year'
  ),
  season: detail(
    job,
    'First work season',
    'When in that year, such as February or late winter. The name of a month is also held against closed seasons.'
  ),
  validUntil: detail(
    job,
    'Prices hold until',
    'A day, such as 2026-06-30. Blank: counted by the days on the Rates sheet.',
    'day'
  ),
  terms: detail(job, 'Terms', 'Payment, access, cleaning up: printed where the client signs.', 'long'),
  treePages: detail(
    job,
    'Tree pages',
    'Trees that the client report explains one by one: urgent, all, none, or their ids with commas between. Blank: the urgent and costly ones.'
  ),
  paper: detail(job, 'Paper', 'letter or A4. Blank: letter where measures are in inches, else A4.', 'paper')
} as const satisfies Record<string, DetailEntry>

export type DetailName = keyof typeof detailsBook

export const detailNames = Object.keys(detailsBook) as DetailName[]

/** An entry with its kind as any. */
export function detailEntry(name: DetailName): DetailEntry {
  return detailsBook[name]
}

/** Says on the sheet which inventory the details are for; it is no detail that a document prints. */
export const inventoryRow = 'Inventory sheet'

/** The headers under which the details stand, wherever their columns are. */
export const detailHeaders = { name: 'What', value: 'Value', remark: 'Remark' } as const

/** Paper that documents are printed on. */
export type Paper = 'letter' | 'a4'

type TextDetail = Exclude<DetailName, 'firstYear' | 'paper' | 'logo'>

/**
 * Whose job it is and for whom, as every document prints it. A value: a text is empty where nothing is known, and a day is
 * an ISO date or empty.
 */
export type JobDetails = Readonly<Record<TextDetail, string>> & {
  /** The year of the first visit, or null for that of the plan. */
  readonly firstYear: number | null
  /** Null for the paper that goes with the units. */
  readonly paper: Paper | null
  /** Null where there is none, or none that can be used. */
  readonly logo: StoredPicture | null
}

/** Nothing known: every document leaves lines to fill by hand. */
export const noDetails: JobDetails = {
  ...(Object.fromEntries(detailNames.map((name) => [name, ''])) as Record<TextDetail, string>),
  firstYear: null,
  paper: null,
  logo: null
}

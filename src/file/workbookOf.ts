import type { CellBlock } from '../../shared/cells'
import type { UnitSystem } from '../../shared/units'
import type { JobDetails } from '../details/detailsBook'
import type { ReadingChoices } from '../inventory/inventory'
import { answersKey, keptText } from '../inventory/keptAnswers'
import { inventedRatesIn, rateValues, type Rates } from '../price/rates'
import { readRates } from '../price/readRates'
import { describeUsersSheet } from '../sheets/describeDocuments'
import { describeRates } from '../sheets/rates/ratesSheet'
import type { SheetDescription } from '../sheets/sheet'
import { carriedInventory, carriedNames, carriedSheet } from './carriedSheets'
import type { FileBook, FilePicture } from './file-library/fileBook'
import { unpackPicture } from './logo'
import type { PlannedFile } from './readPlannedFile'
import { writeWorkbook } from './writeWorkbook'

/** What was planned, and how it was read. */
interface PlannedFrom {
  readonly file: PlannedFile
  readonly known: ReadingChoices
  readonly system: UnitSystem
  /** The rates that it was priced by, those changed on an earlier Estimate among them. */
  readonly rates: Rates
  /** The details of the job, and the same as a sheet. */
  readonly job: { readonly details: JobDetails; readonly block: CellBlock }
  /** Pictures on the sheet of the details. */
  readonly pictures: readonly FilePicture[]
}

const line = (text: string): string =>
  text
    .replace(/[\p{Cc}\p{Cs}\ufffe\uffff]+/gu, ' ')
    .replace(/ {2,}/g, ' ')
    .trim()

/** What programs show of a file that is not open; nothing where nothing is known. */
function propertiesOf({ company, preparedBy, client, site, reference }: JobDetails): FileBook['properties'] {
  const about = [site, client, reference].filter((each) => each !== '').join(', ')
  const creator = [preparedBy, company].find((each) => each !== '') ?? ''
  return {
    title: line(about === '' ? 'Structural pruning plan' : `Structural pruning plan: ${about}`),
    creator: line(creator),
    company: line(company)
  }
}

/** The pictures on a sheet of the inventory that a file can hold again. */
async function picturesOf(name: string, { pictures }: PlannedFile): Promise<FilePicture[]> {
  const kept: FilePicture[] = []
  for (const found of pictures) {
    const unpacked = found.sheet === name ? await unpackPicture(found) : ''
    if (typeof unpacked !== 'string') kept.push(unpacked.kept)
  }
  return kept
}

/** What was answered about columns, for the sheets under the names that they are written with. */
function answersFor(known: ReadingChoices, names: ReadonlyMap<string, string>): string | null {
  const answers = (known.answers ?? []).map((answer) =>
    answer.sheet === undefined ? answer : { ...answer, sheet: names.get(answer.sheet) ?? answer.sheet }
  )
  return keptText({ ...known, answers })
}

/** The Rates sheet as it was read, or with the rates that an earlier Estimate changed, which the new one has as its own. */
function ratesSheet({ rates: read }: PlannedFile, rates: Rates, fresh: SheetDescription): SheetDescription {
  const { system } = rates
  const before = read === null ? inventedRatesIn[system] : readRates(read, system).rates
  if (JSON.stringify(rateValues(before)) !== JSON.stringify(rateValues(rates))) return describeRates(rates)
  return read === null ? fresh : carriedSheet(read, fresh)
}

/**
 * A workbook of the documents that can be planned again by itself: with the inventory as it was read, what was answered about
 * its columns, and the sheets of rules, rates and details.
 */
export async function workbookOf(
  documents: readonly SheetDescription[],
  { file, known, system, rates, job, pictures }: PlannedFrom
): Promise<Uint8Array> {
  const read = file.sheets.filter(({ name }) => known.sheet === undefined || name === known.sheet)
  const names = carriedNames(read)
  const fresh = {
    rules: describeUsersSheet('rules', system),
    rates: describeUsersSheet('rates', system),
    details: describeUsersSheet('job-details', system)
  }
  const own = [
    file.rules === null ? fresh.rules : carriedSheet(file.rules, fresh.rules),
    ratesSheet(file, rates, fresh.rates),
    carriedSheet(job.block, fresh.details)
  ]
  const answers = answersFor(known, names)
  return writeWorkbook([...documents, ...own], {
    properties: propertiesOf(job.details),
    pictures: new Map([['job-details', pictures]]),
    inventory: await Promise.all(
      read.map(async (sheet) =>
        carriedInventory(sheet, names.get(sheet.name) ?? sheet.name, await picturesOf(sheet.name, file))
      )
    ),
    ...(answers === null ? {} : { settings: new Map([[answersKey, answers]]) })
  })
}

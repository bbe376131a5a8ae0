import type { CellBlock } from '../../shared/cells'
import { problem, type Problem } from '../../shared/problems'
import { noDetails, type DetailName, type JobDetails } from './detailsBook'
import { readDetails } from './readDetails'

/** Where the values of details were read, by which a sentence names them; a name of an argument serves as well. */
type Places = ReadonlyMap<DetailName, string>

const noPlaces: Places = new Map()

/**
 * The details as a plan of a day can use them, and what in them does not go with that day: a first year that is over, and
 * prices that end before the documents are dated or before the first visit.
 */
export function settleDetails(
  details: JobDetails,
  date: string,
  places: Places = noPlaces
): { readonly details: JobDetails; readonly problems: readonly Problem[] } {
  const year = Number(date.slice(0, 4))
  const problems: Problem[] = []
  const past = details.firstYear !== null && details.firstYear < year
  if (past)
    problems.push(
      problem('detail-year-past', places.get('firstYear') ?? '', {
        text: String(details.firstYear),
        year: String(year)
      })
    )
  const settled: JobDetails = past ? { ...details, firstYear: null } : details
  const { validUntil } = settled
  const first = settled.firstYear ?? year
  const dated = settled.date === '' ? date : settled.date
  const cell = places.get('validUntil') ?? ''
  if (validUntil !== '' && validUntil < dated)
    problems.push(problem('detail-prices-over', cell, { text: validUntil, date: dated }))
  else if (validUntil !== '' && validUntil < `${String(first)}-01-01`)
    problems.push(problem('detail-prices-early', cell, { text: validUntil, year: String(first) }))
  return { details: settled, problems }
}

/** The details of a Job details sheet as a plan of a day can use them; blank where there is no such sheet. */
export function detailsOfDay(
  block: CellBlock | null,
  date: string
): { readonly details: JobDetails; readonly problems: readonly Problem[] } {
  if (block === null) return { details: noDetails, problems: [] }
  const { details, cells, problems } = readDetails(block)
  const settled = settleDetails(details, date, cells)
  return { details: settled.details, problems: [...problems, ...settled.problems] }
}

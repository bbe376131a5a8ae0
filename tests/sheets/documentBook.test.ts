/** Each document as its entry says it: found again by its title, chosen by its words, made from what it needs. */
import { wholeProgram } from '../../src/price/offers'
import { estimatePlan } from '../../src/price/estimatePlan'
import { describeDocuments, describeUsersSheet } from '../../src/sheets/describeDocuments'
import { documentBook, documentKinds, planDocuments, type UsersDocument } from '../../src/sheets/documentBook'
import { ownName, readOwnName } from '../../src/sheets/ownSheets'
import { samplePlan } from './samplePlan'

const plan = samplePlan()
const sheets = [
  ...describeDocuments(planDocuments, plan, wholeProgram(estimatePlan(plan))),
  ...documentKinds
    .filter((kind): kind is UsersDocument => documentBook[kind].usersOwn)
    .map((kind) => describeUsersSheet(kind, plan.system))
]

test('every document of the book is described, in its order', () => {
  expect(sheets.map(({ kind }) => kind)).toEqual(documentKinds)
})

test.each(sheets.map((sheet) => [sheet.kind, sheet] as const))(
  '%s bears its title',
  (kind, { name, rows }) => {
    const { title } = documentBook[kind]
    expect([name, rows[0]?.[0]]).toEqual([title, title])
  }
)

test('titles, and the names by which documents are found again, are each their own', () => {
  const own = documentKinds.map((kind) => [documentBook[kind].title, ownName(kind)])
  for (const words of [0, 1].map((place) => own.map((pair) => pair[place])))
    expect(new Set(words).size).toBe(documentKinds.length)
  for (const kind of documentKinds) expect(readOwnName(ownName(kind), `='Any'!$A$1`)?.kind).toBe(kind)
})

test.each(documentKinds)('%s says what it is, as the chooser or the offer of a sheet needs it', (kind) => {
  const { about, usersOwn } = documentBook[kind]
  // After a title a phrase follows; the sheet that is offered by itself has a sentence.
  expect(about).toMatch(usersOwn ? /^[A-Z].*\.$/ : /^[a-z].*[^.]$/)
})

test('the names in workbooks that exist already still lead to their documents', () => {
  expect(documentKinds.map((kind) => ownName(kind))).toEqual(
    expect.arrayContaining([
      'Limbwright_cut_plan',
      'Limbwright_estimate',
      'Limbwright_client_report',
      'Limbwright_work_order',
      'Limbwright_specification',
      'Limbwright_rules',
      'Limbwright_rates'
    ])
  )
})

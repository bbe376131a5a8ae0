/** Who made a document and for whom, at the head of each and at the foot of its pages. */
import { footerParts } from '../../src/sheets/footers'
import { noDetails, type JobDetails } from '../../src/details/detailsBook'
import { planInventory } from '../../src/plan/planInventory'
import { firstVisit } from '../../src/price/offers'
import { estimatePlan } from '../../src/price/estimatePlan'
import { describeDocuments, planDocuments } from '../../src/sheets/describeDocuments'
import type { SheetDescription } from '../../src/sheets/sheet'
import { samplePlan } from './samplePlan'

const plan = samplePlan()
const offer = firstVisit(estimatePlan(plan))
const details: JobDetails = {
  ...noDetails,
  company: 'Crown & Stem (invented)',
  phone: '555 0100',
  credentialNumber: '0042',
  client: 'Quarry trust (invented)',
  site: 'Mill road (invented)',
  reference: 'Q-17',
  revision: '2',
  terms: 'Net 30 days (invented)',
  paper: 'a4'
}

const texts = ({ rows }: SheetDescription) => rows.flat().filter((cell) => typeof cell === 'string')
const printed = (of: JobDetails) => describeDocuments(planDocuments, plan, offer, of)
const shown = (sheets: SheetDescription[]) => sheets.filter(({ hidden }) => hidden !== true)

test.each(shown(printed(details)).map((sheet) => [sheet.kind, sheet] as const))(
  '%s has its letterhead on page one and its job at the foot of each page',
  (_kind, sheet) => {
    const head = texts({ ...sheet, rows: sheet.rows.slice(0, 20) }).join('\n')
    for (const text of [
      'Crown & Stem (invented)',
      'Phone: 555 0100',
      '0042',
      details.client,
      details.site,
      'Q-17'
    ])
      expect(head).toContain(text)
    expect(sheet.page.footer).toMatch(/^Ref\.: Q-17 rev\. 2 {2}Client: Quarry trust .*\nSite: Mill road/)
    expect(sheet.page.paper).toBe('a4')
  }
)

test.each(shown(printed(noDetails)).map((sheet) => [sheet.kind, sheet] as const))(
  '%s leaves lines to fill by hand where nothing is known',
  (_kind, sheet) => {
    const head = texts({ ...sheet, rows: sheet.rows.slice(0, 20) }).join('\n')
    expect(head).toMatch(/Company: _+/)
    expect(sheet.page.footer).toMatch(/^Ref\.: _+ {2}Client: _+\nSite: _+/)
    expect(JSON.stringify(sheet.rows) + sheet.page.footer).not.toMatch(/undefined|null:/)
    expect(sheet.page.paper).toBe('letter')
  }
)

test('no footer is longer than a spreadsheet takes, whatever the names', () => {
  const long = '& Söhne 北京 '.repeat(20)
  for (const { page } of printed({ ...details, client: long, site: long, reference: long })) {
    const { left, right } = footerParts(page.footer)
    const written = `&L${left}&R${right}`
    expect(written.length).toBeLessThanOrEqual(255)
    expect(page.footer).toContain('\n')
  }
})

test('a footer that begins with a figure does not read as a size of type', () => {
  expect(footerParts('2026, A & B')).toEqual({ left: '&8 2026, A && B', right: '&8Page &P' })
  expect(footerParts('Ref.').left).toBe('&8Ref.')
})

test('the terms stand where the client signs', () => {
  const report = printed(details).find(({ kind }) => kind === 'client-report')!
  const first = report.rows.findIndex(([cell]) => cell === 'What you decide')
  expect(texts({ ...report, rows: report.rows.slice(first) })).toContain('Terms: Net 30 days (invented)')
})

test('the first work year moves visits, prices and the order of work', () => {
  const { inventory } = plan
  const work = { firstYear: 2027, season: 'late winter' }
  const later = planInventory(inventory, { date: '2026-12-31', work })
  const same = planInventory(inventory, { date: '2027-12-31' })
  expect(later.trees.map(({ visits }) => visits.map(({ year }) => year))).toEqual(
    same.trees.map(({ visits }) => visits.map(({ year }) => year))
  )
  const sheets = describeDocuments(['work-order'], later, firstVisit(estimatePlan(later)), {
    ...details,
    ...work
  })
  const text = sheets.flatMap(texts).join('\n')
  expect(text).toContain('The visits of 2027')
  expect(text).toContain('late winter, 2027')
  expect(text).not.toContain('visits of 2026')
})

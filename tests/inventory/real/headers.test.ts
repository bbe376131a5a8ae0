import { askedAt, columnAt, planned, removeFolder } from './commandOutput'
import { decoys } from './decoys'
import { headers, type Phrasing } from './headers'
import { surveyWith, surveyWithDecoy } from './surveyAround'

afterAll(removeFolder)

/** Every header of the tables is read in `tests/inventory/headers/table.test.ts`; by default the command line reads each tenth. */
const every = process.env['FUZZ'] === 'full' ? 1 : 10
const drawn = <T>(list: readonly T[]): T[] => list.filter((_each, at) => at % every === 0)

const said = ({ language, header, context }: Phrasing) =>
  `${language} “${header.replaceAll('\n', '¶')}”${context === null ? '' : ` (${context})`}`

describe.each(['en', 'de', 'fr', 'es'])('a header in %s', (language) => {
  const phrasings = drawn(headers.filter((phrasing) => phrasing.language === language))

  test.each(phrasings.map((phrasing) => [said(phrasing), phrasing.field, phrasing] as const))(
    '%s is %s',
    async (_said, field, phrasing) => {
      const { file, column } = surveyWith(phrasing)
      const { plan } = await planned(file)
      const read = columnAt(plan, '', column)
      expect({ field: read.field, girth: read.measure === 'girth' }).toEqual({
        field,
        girth: phrasing.measure === 'girth'
      })
      if (phrasing.unit !== null && phrasing.unit !== '%' && phrasing.unit !== 'deg')
        expect(read.unit).toBe(phrasing.unit)
      if (phrasing.confidence === 'sure') expect(askedAt(plan, '', `${column}1`)).toBe(false)
    }
  )
})

describe.each(['en', 'de', 'fr', 'es'])('what is no field in %s', (language) => {
  const list = drawn(decoys.filter((decoy) => decoy.language === language))

  test.each(list.map((decoy) => [decoy.header, decoy.tempts ?? 'nothing', decoy] as const))(
    '“%s”, which tempts %s, is not taken',
    async (_header, _tempts, decoy) => {
      const { file, column } = surveyWithDecoy(decoy)
      const { plan } = await planned(file)
      // The rest was read, so that nothing passes for a file that was not understood.
      expect(plan.columns?.filter((each) => (each.field ?? null) !== null).length).toBeGreaterThanOrEqual(10)
      const { field } = columnAt(plan, '', column)
      if (decoy.ambiguous && field !== null) expect(askedAt(plan, '', `${column}1`)).toBe(true)
      else expect(field).toBeNull()
    }
  )
})

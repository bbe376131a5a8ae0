import { decoys } from '../real/decoys'
import { headers, type Phrasing } from '../real/headers'
import { meaningOf, meaningOfDecoy } from './oneColumn'

/** What the table of phrasings says that the reader does not: none today. A phrasing listed here needs its reason beside it. */
const disagreements: readonly string[] = []

function faultOf(phrasing: Phrasing): string | null {
  const meaning = meaningOf(phrasing)
  const { field, measure, unit, confidence } = phrasing
  if (meaning?.field !== field)
    return `is taken for ${meaning?.field ?? 'nothing'} (${meaning?.confidence ?? 'unsure'})`
  if (meaning.girth !== (measure === 'girth')) return measure === 'girth' ? 'is a girth' : 'is no girth'
  if (unit !== null && unit !== '%' && unit !== 'deg' && meaning.unit !== unit)
    return `has the unit ${String(meaning.unit)}`
  return confidence === 'sure' && meaning.confidence !== 'sure' ? 'is asked' : null
}

describe('the table of phrasings', () => {
  it.each(['en', 'de', 'fr', 'es'])('is read as it says in %s', (language) => {
    const phrasings = headers.filter((phrasing) => phrasing.language === language)
    const faults = phrasings.flatMap((phrasing) => {
      const fault = faultOf(phrasing)
      return fault === null ? [] : [`${phrasing.header} ${fault}`]
    })
    expect(phrasings.length).toBeGreaterThan(200)
    expect(faults).toEqual(disagreements)
  })

  it.each(['en', 'de', 'fr', 'es'])('takes no column of something else for a field in %s', (language) => {
    const list = decoys.filter((decoy) => decoy.language === language)
    const taken = list.flatMap((decoy) => {
      const meaning = meaningOfDecoy(decoy)
      if (meaning === null || meaning.field === null || (decoy.ambiguous && meaning.confidence === 'likely'))
        return []
      return [`${decoy.header} is taken for ${meaning.field}`]
    })
    expect(list.length).toBeGreaterThan(30)
    expect(taken).toEqual([])
  })
})

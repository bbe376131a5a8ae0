import { meaningOf, meaningOfDecoy } from '../../headers/oneColumn'
import { removeFolder } from '../commandOutput'
import { inventories2 } from '.'
import { checkInventory } from './checkInventory'
import { moreDecoys } from './moreDecoys'
import { moreHeaders } from './moreHeaders'

afterAll(removeFolder)

describe.each(Object.entries(inventories2))('%s', (_name, inventory) => {
  checkInventory(inventory)
})

test.each(moreHeaders.map((phrasing) => [phrasing.language, phrasing.header, phrasing] as const))(
  'a header in %s: “%s”',
  (_language, _header, phrasing) => {
    const meaning = meaningOf(phrasing)
    expect({ field: meaning?.field, girth: meaning?.girth }).toEqual({
      field: phrasing.field,
      girth: phrasing.measure === 'girth'
    })
    if (phrasing.unit !== null) expect(meaning?.unit).toBe(phrasing.unit)
  }
)

test.each(moreDecoys.map((decoy) => [decoy.language, decoy.header, decoy] as const))(
  'no field in %s: “%s”',
  (_language, _header, decoy) => {
    const meaning = meaningOfDecoy(decoy)
    if (decoy.ambiguous && meaning?.field !== null) expect(meaning?.confidence).toBe('likely')
    else expect(meaning?.field ?? null).toBeNull()
  }
)

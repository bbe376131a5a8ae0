/** What a survey says does not depend on the shape of its tables. */
import fc from 'fast-check'
import { properties } from './properties'

const seed = Number(process.env.PROPERTY_SEED ?? 20270401)

test.each(properties.filter(({ usual }) => usual > 0))('$name', ({ drawn, faultsOf, usual }) => {
  fc.assert(
    fc.property(drawn, (each) => {
      expect(faultsOf(each)).toEqual([])
    }),
    { seed, numRuns: usual }
  )
})

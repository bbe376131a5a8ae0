import { densityOf, middleHardwood, speciesDensities } from '../../src/formulas/speciesDensities'

test('every density has a unit, a source and a certainty', () => {
  for (const { name, value, unit, source, certainty } of [...speciesDensities, middleHardwood]) {
    expect(name).toMatch(/^[a-z -]+$/)
    expect(value).toBeGreaterThan(30)
    expect(value).toBeLessThan(80)
    expect(unit).toBe('lb/ft³')
    expect(source.length).toBeGreaterThan(20)
    expect(['read', 'house']).toContain(certainty)
  }
})

test('no species is listed twice', () => {
  const names = speciesDensities.flatMap(({ name, botanical }) => [name, botanical])
  expect(new Set(names).size).toBe(names.length)
})

test.each([
  ['Red Maple', 'red maple'],
  ['  red   maple ', 'red maple'],
  ['Acer rubrum', 'red maple'],
  ["Acer rubrum 'October Glory'", 'red maple'],
  ['Maple, red', 'red maple'],
  ['red oak', 'northern red oak'],
  ['Tulip poplar', 'yellow-poplar'],
  ['hardwood', 'hardwood']
])('%s is found as %s', (written, name) => expect(densityOf(written)?.name).toBe(name))

test.each(['', 'plastic', 'constructor', 'toString', 'maple'])('%p is not listed', (written) =>
  expect(densityOf(written)).toBeNull()
)

test('the middle of the hardwoods has as many listed above as below', () => {
  const hardwoods = speciesDensities.filter(({ name }) => name !== 'eastern white pine')
  const above = hardwoods.filter(({ value }) => value > middleHardwood.value).length
  const below = hardwoods.filter(({ value }) => value < middleHardwood.value).length
  expect(above).toBe(below)
})

/** A column of lengths whose header names no unit: whose unit it follows, and what is asked. */
import type { Cell } from '../../shared/cells'
import { readSheets } from '../../src/inventory/readSheets'
import type { ReadingChoices } from '../../src/inventory/inventory'

type Rows = readonly (readonly Cell[])[]

function read(rows: Rows, choices: ReadingChoices = {}, more: Rows = []) {
  const sheets = [{ name: 'Round', rows, top: 0, left: 0 }]
  const others = more.length === 0 ? [] : [{ name: 'Limbs', rows: more, top: 0, left: 0 }]
  const { matches, problems } = readSheets([...sheets, ...others], choices)
  const about = problems.filter(({ code }) => /unit/.test(code))
  return {
    units: Object.fromEntries(matches.map(({ field, unit }) => [field, unit])),
    said: about.map(({ code, cell }) => `${code} ${cell}`),
    messages: about.map(({ message }) => message)
  }
}

it('heights follow another height before the diameters, with a doubt', () => {
  const { units, said, messages } = read([
    ['Tree', 'Girth (in)', 'Tree height', 'Lowest limb (m)'],
    ['P1', 40, 14, 3.2],
    ['P2', 44, 15, 2.9]
  ])
  expect(units).toMatchObject({ trunk: 'in', height: 'm', crownBase: 'm' })
  expect(said).toEqual(['unit-contested Round!C1'])
  expect(messages[0]).toContain(
    'read as meters, as “Lowest limb (m)” has them, though “Girth (in)” is in inches'
  )
})

it('diameters follow another diameter before the heights', () => {
  const { units, said } = read([
    ['Tree', 'DBH', 'Height (ft)', 'Limb', 'Limb dia (cm)', 'Stem above', 'Origin (ft)', 'Tip (ft)'],
    ['P1', 31, 40, 'a', 6, 14, 9, 25],
    ['P2', 28, 38, 'a', 5, 13, 8, 24]
  ])
  expect(units).toMatchObject({ trunk: 'cm', diameter: 'cm', stem: 'cm', height: 'ft' })
  expect(said).toEqual(['unit-contested Round!B1', 'unit-contested Round!F1'])
})

it('says nothing more than that no unit is named where all agree', () => {
  const { units, said } = read([
    ['Tree', 'DBH (cm)', 'Height', 'Crown base (m)'],
    ['P1', 31, 12, 3],
    ['P2', 28, 11, 3]
  ])
  expect(units).toMatchObject({ height: 'm' })
  expect(said).toEqual(['no-unit Round!C1'])
})

it('takes the system where its own kind disagrees, and names what speaks against it', () => {
  const { units, said } = read([
    [
      'Tree',
      'DBH (in)',
      'Height',
      'Crown base (m)',
      'Limb',
      'Limb dia (in)',
      'Stem (in)',
      'Origin (ft)',
      'Tip (ft)'
    ],
    ['P1', 11, 40, 3, 'a', 3, 7, 12, 30],
    ['P2', 12, 41, 3, 'a', 3, 7, 12, 30]
  ])
  expect(units).toMatchObject({ height: 'ft' })
  expect(said).toContain('unit-contested Round!C1')
  expect(said).toContain('mixed-height-units Round!D1')
})

it('a person’s choice of units goes first, and what contradicts it is a doubt', () => {
  const rows: Rows = [
    ['Tree', 'DBH (in)', 'Height', 'Crown base (m)'],
    ['P1', 11, 40, 3]
  ]
  expect(read(rows, { system: 'in-ft' })).toMatchObject({
    units: { height: 'ft' },
    said: ['unit-contested Round!C1', 'mixed-height-units Round!D1']
  })
  expect(read(rows, { system: 'cm-m' }).units).toMatchObject({ height: 'm', trunk: 'in' })
})

it('follows another table where its own has no height with a unit', () => {
  const { units } = read(
    [
      ['Tree', 'Species', 'DBH (in)', 'Height'],
      ['P1', 'Elm', 11, 13],
      ['P2', 'Elm', 12, 14]
    ],
    {},
    [
      ['Tree', 'Limb', 'Limb dia (in)', 'Stem above (in)', 'Origin (m)', 'Tip (m)'],
      ['P1', 'a', 3, 7, 3, 9],
      ['P2', 'a', 3, 7, 4, 9]
    ]
  )
  expect(units).toMatchObject({ height: 'm', origin: 'm' })
})

it('bare numbers have the unit that most cells of their column name', () => {
  const { units, said } = read([
    ['Tree', 'DBH', 'Height', 'Crown base'],
    ['P1', '12 in', '40 ft', '6 ft'],
    ['P2', '11"', "38'", '2 m'],
    ['P3', 13, 44, '7 ft'],
    ['P4', '13 in', '12\' 6"', 8]
  ])
  expect(units).toMatchObject({ trunk: 'in', height: 'ft', crownBase: 'ft' })
  expect(said).toContain('no-unit Round!B1')
  const metric = read([
    ['Tree', 'Trunk girth', 'Height'],
    ['P1', '120 cm', '12 m'],
    ['P2', '130 cm', 14]
  ])
  expect(metric.units).toMatchObject({ trunk: 'cm', height: 'm' })
})

it('takes small units over from small things only', () => {
  const { units } = read([
    ['Tree', 'Caliper (in)', 'Caliper height (in)', 'Height', 'DBH'],
    ['P1', 3, 12, 18, 2],
    ['P2', 3, 12, 19, 2]
  ])
  expect(units).toMatchObject({ height: 'ft', trunk: 'in' })
})

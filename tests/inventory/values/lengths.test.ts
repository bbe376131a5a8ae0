/** Lengths in the writings that people use in a cell; what is no plain measured number is never taken in silence. */
import type { Cell } from '../../../shared/cells'
import { codesIn, columnOf } from './columnOf'

const trunk = (header: string, cell: Cell) => {
  const read = columnOf(header, cell)
  return {
    value: read.trees[0]!.trunk,
    codes: codesIn(read),
    messages: read.problems.map((each) => each.message)
  }
}
const inch = 25.4

test.each<[string, number]>([
  ['3½"', 3.5 * inch],
  ['3 1/2 in', 3.5 * inch],
  ['½', 0.5 * inch],
  ['¾', 0.75 * inch],
  ["12''", 12 * inch],
  ['12’’', 12 * inch],
  ['12 in.', 12 * inch],
  ['12" dia', 12 * inch],
  ['12 in dia', 12 * inch],
  ['Ø 12', 12 * inch],
  ['⌀12', 12 * inch],
  ['12 Ø', 12 * inch],
  ['dia. 12', 12 * inch],
  ['DBH: 12', 12 * inch]
])('%s is read as it stands', (text, value) => {
  const found = trunk('DBH (in)', text)
  expect(found).toEqual({ value: expect.closeTo(value, 9) as number, codes: [], messages: [] })
})

test.each([
  ['4\'-6"', 4.5],
  ['4\' 6"', 4.5],
  ['4 ft 6 in', 4.5],
  ['8’-3”', 8.25],
  ['7\' 0"', 7]
])('%s is feet and inches', (text, feet) => {
  const read = columnOf('Crown spread (ft)', text)
  expect(read.trees[0]!.spread).toBeCloseTo(feet * 0.3048, 9)
  expect(read.problems).toEqual([])
})

test.each([
  ['~12', 12, 'an estimate'],
  ['≈ 12', 12, 'an estimate'],
  ['ca. 12', 12, 'an estimate'],
  ['c. 12', 12, 'an estimate'],
  ['approx 12', 12, 'an estimate'],
  ['about 12"', 12, 'an estimate'],
  ['etwa 12', 12, 'an estimate'],
  ['environ 12', 12, 'an estimate'],
  ['12 est.', 12, 'an estimate'],
  ['12 (est.)', 12, 'an estimate'],
  ['12*', 12, 'an estimate'],
  ['12 ± 1', 12, 'an estimate'],
  ['12-14', 13, 'a range'],
  ['12 – 14 in', 13, 'a range'],
  ['12 to 14', 13, 'a range'],
  ['between 12 and 14', 13, 'a range'],
  ['12?', 12, 'an estimate'],
  ['12 e', 12, 'an estimate'],
  ['<12', 12, 'less than a number'],
  ['up to 12', 12, 'less than a number'],
  ['>12', 12, 'more than a number'],
  ['12+', 12, 'more than a number'],
  ['over 12', 12, 'more than a number']
])('a trunk of %s is taken as %d in with a doubt that names the value', (text, value, manner) => {
  const found = trunk('DBH (in)', text)
  expect(found.value).toBeCloseTo(value * inch, 9)
  expect(found.codes).toEqual([['inexact-value', 'A2']])
  expect(found.messages[0]).toBe(
    `Trunk diameter at A2 reads “${text}”, ${manner}; it was taken as ${String(value)} inches.`
  )
})

test('an estimate in another unit names the value in the unit of the column', () => {
  const found = trunk('DBH (in)', '~30 cm')
  expect(found.value).toBeCloseTo(300, 9)
  expect(found.messages[0]).toContain('taken as 11.811 inches')
})

test('a fraction may stand apart from its inches', () => {
  expect(trunk('DBH (in)', '3 ⅝″').value).toBeCloseTo(3.625 * inch, 9)
})

test.each(['3-4', '<4', '4+'])('a limb is judged by one diameter: %s is refused', (text) => {
  const read = columnOf('Lateral diameter (cm)', text)
  expect(read.limbs[0]!.lateral).toBeNull()
  expect(codesIn(read)).toEqual([['inexact-diameter', 'A2']])
})

test.each(['~4', '4 est.', 'ca. 4', 'env. 4', 'aprox. 4', '4?', '4*'])(
  'a limb’s own diameter may be an estimate: %s is taken, and said',
  (text) => {
    const read = columnOf('Lateral diameter (cm)', text)
    expect(read.limbs[0]!.lateral).toBeCloseTo(40, 9)
    expect(codesIn(read)).toEqual([['inexact-value', 'A2']])
  }
)

test.each(['14-12', '? 12', '12 apples', '5,5,5.', '--12', '12-', 'ca.', '~', '12 ± x', '2026-03-01'])(
  'a trunk of %s is refused',
  (text) => {
    const found = trunk('DBH (in)', text)
    expect(found.value).toBeNull()
    expect(found.codes).toHaveLength(1)
  }
)

describe('several stems', () => {
  test.each([
    ['10/9', Math.hypot(10, 9)],
    ['3/4', 5],
    ['5, 6, 8', Math.hypot(5, 6, 8)],
    ['5,6,8', Math.hypot(5, 6, 8)],
    ['5/6/8', Math.hypot(5, 6, 8)],
    ['5 + 6 + 8', Math.hypot(5, 6, 8)],
    ['5; 6', Math.hypot(5, 6)],
    ['5 & 6 in', Math.hypot(5, 6)],
    ['4½ / 6', Math.hypot(4.5, 6)]
  ])('a trunk of %s is one of √Σd², and says so', (text, value) => {
    const found = trunk('DBH (in)', text)
    expect(found.value).toBeCloseTo(value * inch, 9)
    expect(found.codes).toEqual([['stems-combined', 'A2']])
  })

  test('two readings across are their mean', () => {
    expect(trunk('DBH (in)', '10.2 x 9.8')).toMatchObject({
      value: expect.closeTo(10 * inch, 9) as number,
      codes: []
    })
  })

  test('a fraction of an inch is no pair of stems', () => {
    expect(trunk('DBH (in)', '3/4"')).toMatchObject({
      value: expect.closeTo(0.75 * inch, 9) as number,
      codes: []
    })
    expect(trunk('DBH (in)', '2 3/4')).toMatchObject({
      value: expect.closeTo(2.75 * inch, 9) as number,
      codes: []
    })
  })
})

describe('a slash in the diameter of a limb', () => {
  test('is two readings, and the mean is named', () => {
    const read = columnOf('Lateral diameter (in)', '10/9')
    expect(read.limbs[0]!.lateral).toBeCloseTo(9.5 * inch, 9)
    expect(read.problems[0]!.message).toBe(
      'Lateral diameter at A2 reads “10/9”, which was taken as two readings with a mean of 9.5 inches.'
    )
  })

  test('is a fraction of an inch, and can be either in centimeters', () => {
    expect(columnOf('Lateral diameter (in)', '7/8').limbs[0]!.lateral).toBeCloseTo(0.875 * inch, 9)
    const metric = columnOf('Lateral diameter (cm)', '7/8')
    expect(metric.limbs[0]!.lateral).toBeNull()
    expect(codesIn(metric)).toEqual([['fraction-or-two', 'A2']])
  })
})

describe('a girth', () => {
  test.each(['C 94 cm', 'girth 94', '94 cm girth', 'circ. 94', 'U 94', 'Umfang: 94', 'circonférence 94'])(
    '%s is divided by π in a column of diameters',
    (text) => {
      const found = trunk('DBH (cm)', text)
      expect(found.value).toBeCloseTo(940 / Math.PI, 6)
      expect(found.codes).toEqual([['girth-in-cell', 'A2']])
      expect(found.messages[0]).toContain('a diameter of 29.921 cm')
    }
  )

  test('of a whole column is divided once, and told once at the header', () => {
    const read = columnOf('Trunk girth (cm)', 94, 'girth 94', 'Ø 30')
    expect(read.trees.map((each) => each.trunk)).toEqual(
      [940 / Math.PI, 940 / Math.PI, 300].map((each) => expect.closeTo(each, 6) as number)
    )
    expect(codesIn(read)).toEqual([
      ['diameter-in-girths', 'A4'],
      ['girth-column', 'A1']
    ])
  })
})

test('a serial number too large for a diameter is a date', () => {
  expect(trunk('DBH (in)', 46_056).codes).toEqual([['date-not-number', 'A2']])
  expect(trunk('DBH (in)', 3000).codes).toEqual([['too-large', 'A2']])
})

import { compassDegrees, typedLength, typedNumber, yearOf } from '../../shared/numbers'

describe('numbers as people type them', () => {
  it.each([
    ['12.5', 12.5],
    ['12,5', 12.5],
    ['1,250', 1250],
    [' 7 ', 7],
    ['-3', -3]
  ])('reads %p', (text, value) => {
    expect(typedNumber(text)).toBe(value)
  })

  it.each(['', '0x10', '1e3', '1_000', 'about 3', '3 in', 'Infinity', '--2'])(
    'refuses %p as a plain number',
    (text) => {
      expect(typedNumber(text)).toBeNaN()
    }
  )

  it.each([
    ['17 cm', 17, 'cm'],
    ['4 1/2 in', 4.5, 'in'],
    ['3/4"', 0.75, 'in'],
    ['12\' 6"', 12.5, 'ft'],
    ['12 ft 6 in', 12.5, 'ft'],
    ['10.2 x 9.8', 10, null],
    ['10.2/9.8', 10, null],
    ['10 cm x 12 cm', 11, 'cm']
  ])('reads the length %p', (text, value, unit) => {
    const length = typedLength(text)!
    expect(length.value).toBeCloseTo(value, 12)
    expect(length.unit).toBe(unit)
  })

  it.each(['about 3', '3 apples', 'x', '3 x', '1 2 3', '4 x -2'])('refuses the length %p', (text) => {
    expect(typedLength(text)).toBeNull()
  })

  it('reads compass points and years', () => {
    expect(compassDegrees('NE')).toBe(45)
    expect(compassDegrees('south-west')).toBe(225)
    expect(compassDegrees('up')).toBeNaN()
    expect(yearOf(2028)).toBe(2028)
    expect(yearOf(46000)).toBe(2025)
    expect(yearOf('2027-04-01')).toBe(2027)
    expect(yearOf('4/1/2027')).toBe(2027)
    expect(yearOf('spring')).toBeNaN()
  })
})

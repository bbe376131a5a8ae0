import { readChoice } from '../../shared/choices'

describe('the word of a choice', () => {
  it.each([
    ['2 - fair', 'fair'],
    ['2 – fair', 'fair'],
    ['1 = good', 'good'],
    ['1: good', 'good'],
    ['3. Poor', 'poor'],
    ['(2) fair', 'fair'],
    ['fair (2)', 'fair'],
    ['G - good', 'good'],
    ['G', 'good'],
    ['very poor', 'poor'],
    ['good/fair', null],
    ['fair - poor', null],
    ['good (fair)', null],
    ['G - poor', null],
    ['2', null]
  ] as const)('“%s” is read as %s', (text, value) => {
    expect(readChoice('vigor', text)).toBe(value)
  })

  it.each(['x', 'X', '✓', 'yes', 'Ja', 'j', 'oui', 'O', 'sí', 'si', 'S', 'true', '1'])(
    '“%s” is a yes, and included bark',
    (text) => {
      expect(readChoice('flag', text)).toBe('yes')
      expect(readChoice('includedBark', text)).toBe('full')
    }
  )

  it.each(['no', 'N', 'nein', 'non', '0', '-', 'keine'])('“%s” is a no, and no included bark', (text) => {
    expect(readChoice('flag', text)).toBe('no')
    expect(readChoice('includedBark', text)).toBe('none')
  })

  it.each([
    ['jung', 'young'],
    ['jeune', 'young'],
    ['Joven', 'young'],
    ['semi mature', 'medium'],
    ['SM', 'medium'],
    ['2 - semi mature', 'medium'],
    ['ausgewachsen', 'mature'],
    ['maduro', 'mature'],
    ['âgé', 'old'],
    ['age', 'old']
  ] as const)('“%s” is the life stage %s, with or without accents', (text, value) => {
    expect(readChoice('lifeStage', text)).toBe(value)
  })

  it.each([
    ['M', 'dead'],
    ['V', 'live'],
    ['tot', 'dead'],
    ['viva', 'live']
  ] as const)('“%s” is %s wood', (text, value) => {
    expect(readChoice('live', text)).toBe(value)
  })
})

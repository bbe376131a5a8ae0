import { partsOf, slippedParts } from '../../../src/inventory/headers/compounds'
import { longestHeader, readHeaderText } from '../../../src/inventory/headers/headerText'
import { isSlipOf, Slips } from '../../../src/inventory/headers/slips'

const trade = new Set(['ast', 'baum', 'stamm', 'krone', 'durchmesser', 'nummer', 'nr', 'spitze'])

describe('a compound', () => {
  const take = (word: string) =>
    partsOf(
      word,
      (part) => trade.has(part),
      (part) => trade.has(part),
      () => true
    )

  it('is parted into the fewest words', () => {
    expect(take('stammdurchmesser')).toEqual(['stamm', 'durchmesser'])
    expect(take('kronendurchmesser')).toEqual(['krone', 'durchmesser'])
    expect(take('astspitzennummer')).toEqual(['ast', 'spitze', 'nummer'])
    expect(take('baumnr')).toEqual(['baum', 'nr'])
  })

  it('is not parted where a letter is left over', () => {
    expect(take('mastdurchmesser')).toBeNull()
    expect(take('baumrost')).toBeNull()
    expect(take('nrbaum')).toBeNull()
  })

  it('is parted with a slip in one of its words', () => {
    const slips = new Slips(trade)
    const found = slippedParts(
      'astdurchmeser',
      (part) => trade.has(part),
      (part) => slips.near(part)
    )
    expect(found).toEqual({ part: 'ast', slip: ['durchmesser'], first: true })
  })

  it.each(['ast'.repeat(14), 'astn'.repeat(10) + 'x', 'stammast'.repeat(5) + 'q', 'a'.repeat(44)])(
    'of %s takes steps that grow with the square of its length at most',
    (word) => {
      let steps = 0
      const counted = (part: string) => {
        steps++
        return trade.has(part)
      }
      partsOf(word, counted, counted, () => true)
      expect(steps).toBeLessThanOrEqual((word.length * (word.length - 1)) / 2)
    }
  )

  it('longer than any word of the trade is not looked into', () => {
    const never = (part: string): boolean => {
      throw new Error(`Looked at ${part}`)
    }
    expect(partsOf('ast'.repeat(15), never, never, never)).toBeNull()
  })
})

describe('a header', () => {
  it('is looked at up to 120 letters', () => {
    expect(longestHeader).toBe(120)
    const words = readHeaderText(`${'Tree height '.repeat(20)}kerb`)
    expect(words.decoy).toBeNull()
    expect(words.words.length).toBeLessThanOrEqual(longestHeader / 2)
  })
})

describe('a slip', () => {
  it.each([
    ['diameter', 'daimeter'],
    ['diameter', 'diamter'],
    ['diameter', 'diammeter'],
    ['diameter', 'diametar']
  ])('turns %s into %s', (word, typed) => {
    expect(isSlipOf(typed, word)).toBe(true)
    expect(new Slips([word]).near(typed)).toEqual([word])
  })

  it.each([
    ['height', 'weight', true],
    ['diameter', 'daimetre', false],
    ['limb', 'lamb', true],
    ['bark', 'bark', false]
  ])('between %s and %s: %s', (a, b, slip) => {
    expect(isSlipOf(a, b)).toBe(slip)
  })

  it('is not seen in short words, but for a lost vowel', () => {
    const slips = new Slips(['tree', 'limb', 'bark'])
    expect(slips.near('tre')).toEqual(['tree'])
    expect(slips.near('brk')).toEqual(['bark'])
    expect(slips.near('lamb')).toEqual([])
    expect(slips.near('bar')).toEqual([])
  })
})

import { cellAddress, columnLetters, isErrorText } from '../../shared/cells'
import { choices, readChoice, type ChoiceName } from '../../shared/choices'
import { columns, fieldFromWords, readHeader } from '../../shared/columns'
import { problem, problemCodes, type FactsOf, type ProblemCode } from '../../shared/problems'
import { ruleBook } from '../../shared/rules'
import { convertLength, unitFromWord } from '../../shared/units'
import { version } from '../../shared/version'
import packageJson from '../../package.json'

describe('the vocabulary both halves speak', () => {
  it('names cells as a spreadsheet does', () => {
    expect([0, 25, 26, 701, 702].map(columnLetters)).toEqual(['A', 'Z', 'AA', 'ZZ', 'AAA'])
    expect(cellAddress(4, 2, 'My trees')).toBe("'My trees'!C5")
    expect(cellAddress(4, 2, "Jo's")).toBe("'Jo''s'!C5")
    expect(cellAddress(0, 0, 'A1')).toBe("'A1'!A1")
    expect(cellAddress(0, 0)).toBe('A1')
  })

  it('knows a spreadsheet error from a text that begins with #', () => {
    expect(isErrorText('#N/A')).toBe(true)
    expect(isErrorText('#3 oak')).toBe(false)
  })

  it('gives every header word to one field only', () => {
    const words = columns.flatMap((column) => column.words)
    expect(words.filter((word, at) => (words as string[]).indexOf(word) < at)).toEqual([])
    for (const column of columns)
      for (const word of column.words) expect(fieldFromWords(readHeader(word).words)).toBe(column.field)
  })

  it('gives every spelling of a choice to one value only', () => {
    for (const name of Object.keys(choices) as ChoiceName[]) {
      const spellings = Object.values(choices[name]).flat()
      expect([name, new Set(spellings).size]).toEqual([name, spellings.length])
      for (const [value, words] of Object.entries(choices[name]))
        for (const word of words as string[]) expect(readChoice(name, ` ${word.toUpperCase()} `)).toBe(value)
    }
  })

  it('has a source and a certainty for every rule, and a default within its range', () => {
    for (const rule of Object.values(ruleBook)) {
      expect(rule.source.length).toBeGreaterThan(5)
      expect(rule.certainty).toBeTruthy()
      expect(rule.unit).toBeTruthy()
      expect(rule.value).toBeGreaterThanOrEqual(rule.low)
      expect(rule.value).toBeLessThanOrEqual(rule.high)
      if (rule.certainty === 'practice') expect(rule.source).toBe('common practice, no source')
      if (rule.certainty === 'house') expect(rule.source).toMatch(/^house/)
    }
  })

  it('has a message and a remedy for every problem', () => {
    for (const code of problemCodes) {
      const facts = { text: 'it said so.', remedy: 'Do this' } as unknown as FactsOf<ProblemCode>
      const found = problem(code, 'Trees!A2', facts)
      expect(found.message).toMatch(/[.?]$/)
      expect(found.remedy).toMatch(/[.]$/)
    }
  })

  it('converts lengths exactly as defined', () => {
    // NIST SP 811: 1 in = 2.54 cm and 1 ft = 0.3048 m, exact by definition.
    expect(convertLength(1, 'in', 'mm')).toBe(25.4)
    expect(convertLength(1, 'ft', 'm')).toBeCloseTo(0.3048, 15)
    expect(convertLength(3, 'ft', 'ft')).toBe(3)
    expect(unitFromWord('constructor')).toBeNull()
  })

  it('carries one version', () => {
    expect(version).toBe(packageJson.version)
  })
})

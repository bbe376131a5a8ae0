import { readInventory } from '../../src/inventory/readInventory'
import { keptText, readKept, withKept, type KeptChoices } from '../../src/inventory/keptAnswers'

const kept: KeptChoices = {
  system: 'cm-m',
  answers: [
    { header: 'Dia 2', field: 'stem', unit: 'cm' },
    { header: 'Dia', column: 'F', sheet: 'Limbs', field: null }
  ],
  noTrees: ['Total']
}

test('answers come back as they were kept', () => {
  expect(readKept(keptText(kept))).toEqual({ choices: kept, problems: [] })
})

test('where there is nothing to keep there is no text, and nothing kept is no problem', () => {
  expect(keptText({})).toBeNull()
  expect(readKept(null)).toEqual({ choices: {}, problems: [] })
  expect(readKept(undefined)).toEqual({ choices: {}, problems: [] })
})

describe('damage is told in a sentence and ignored', () => {
  test.each([
    ['{"version":1,', 'they are damaged'],
    ['[]', 'they are damaged'],
    [7, 'they are damaged'],
    ['{"answers":[]}', 'they are damaged'],
    ['{"version":2,"answers":[]}', 'another version of Limbwright wrote them']
  ])('%s', (text, why) => {
    const { choices, problems } = readKept(text)
    expect(choices).toEqual({})
    expect(problems.map(({ message }) => message)).toEqual([
      `The answers about columns that this workbook keeps cannot be read (${why}) and count for nothing.`
    ])
  })

  test('what can be read of a damaged text is used', () => {
    const text = JSON.stringify({
      version: 1,
      system: 'cubits',
      answers: [
        { header: 'A', field: 'tip' },
        { header: 'B', field: 'crane' },
        { field: 'tip' },
        { header: 'C' },
        { header: 'D', unit: 'furlong' },
        { header: 4, field: 'tip' },
        'E'
      ],
      noTrees: ['Total', 9]
    })
    const { choices, problems } = readKept(text)
    expect(choices).toEqual({ answers: [{ header: 'A', field: 'tip' }], noTrees: ['Total'] })
    expect(problems.map(({ message }) => message)).toEqual([
      '8 answers about columns that this workbook keeps cannot be read (damaged or unknown) and count for nothing.'
    ])
  })

  test('a list that is none is one lost answer', () => {
    const { choices, problems } = readKept('{"version":1,"answers":{},"noTrees":["x"]}')
    expect(choices).toEqual({ noTrees: ['x'] })
    expect(problems).toHaveLength(1)
  })
})

describe('which answer counts', () => {
  const rows = [
    ['Tree', 'Limb', 'A', 'B', 'Origin (ft)', 'Tip (ft)'],
    ['T1', '1', 3, 6, 8, 20],
    ['T1', '2', 2, 6, 9, 22]
  ]
  const fields = (choices: Parameters<typeof readInventory>[1]) =>
    Object.fromEntries(
      readInventory({ rows, sheet: 'Limbs', top: 0, left: 0 }, choices).matches.map((match) => [
        match.header,
        match.field === null ? null : `${match.field} ${match.unit ?? ''}`.trim()
      ])
    )

  test('kept by header, it finds its column wherever that stands', () => {
    const moved = rows.map(([tree, limb, a, b, ...rest]) => [tree, limb, b, a, ...rest])
    const answers = [
      { header: 'a', field: 'diameter' as const, unit: 'cm' as const },
      { header: 'B', field: 'stem' as const, unit: 'cm' as const }
    ]
    const again = readInventory({ rows: moved as never, sheet: 'Elsewhere', top: 4, left: 2 }, { answers })
    expect(again.matches.map(({ field }) => field)).toEqual([
      'tree',
      'limb',
      'stem',
      'diameter',
      'origin',
      'tip'
    ])
    expect(fields({ answers })).toMatchObject({ A: 'diameter cm', B: 'stem cm' })
  })

  test('an answer given now goes before what is kept, field and unit each', () => {
    const before: KeptChoices = { answers: [{ header: 'A', field: 'diameter', unit: 'cm' }] }
    expect(fields(withKept({ answers: [{ header: 'A', field: 'stem' }] }, before))).toMatchObject({
      A: 'stem in'
    })
    expect(fields(withKept({ answers: [{ column: 'C', unit: 'mm' }] }, before))).toMatchObject({
      A: 'diameter mm'
    })
    expect(fields(withKept({}, before))).toMatchObject({ A: 'diameter cm' })
  })

  test('letters with a header count as long as that header stands there', () => {
    const answers = [{ header: 'A', column: 'D', field: 'stem' as const }]
    expect(fields({ answers })['A']).not.toBe('stem in')
    expect(fields({ answers: [{ header: 'B', column: 'D', field: 'stem' as const }] })).toMatchObject({
      B: 'stem in'
    })
  })

  test('an answer for another sheet does not count', () => {
    expect(fields({ answers: [{ header: 'A', sheet: 'Trees', field: 'diameter' }] })['A']).toBeNull()
  })
})

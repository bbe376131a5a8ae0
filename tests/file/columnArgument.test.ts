import { isRefusal } from '../../shared/refusal'
import { readColumnArgument } from '../../src/file/columnArgument'
import { readArguments } from '../../src/file/planArguments'
import { readingChoices } from '../../src/file/readingChoices'

const sentence = (text: string) => {
  const answer = readColumnArgument(text)
  return isRefusal(answer) ? answer.sentence : 'not refused'
}

describe('--column', () => {
  test.each([
    ['J=stem above', { column: 'J', field: 'stem' }],
    ['j=stemBelow', { column: 'J', field: 'stemBelow' }],
    ['AB = Stem diameter at the union', { column: 'AB', field: 'stem' }],
    ['J=Astdurchmesser (cm)', { column: 'J', field: 'diameter', unit: 'cm' }],
    ['J=limb dia [inches]', { column: 'J', field: 'diameter', unit: 'in' }],
    ['J=(mm)', { column: 'J', unit: 'mm' }],
    ['J=-', { column: 'J', field: null }],
    ['J=Not used', { column: 'J', field: null }],
    ['Limbs!J=tip', { sheet: 'Limbs', column: 'J', field: 'tip' }],
    ["'Zone 1, owner''s'!J=tip", { sheet: "Zone 1, owner's", column: 'J', field: 'tip' }],
    ['"Dia 2"=limb diameter', { header: 'Dia 2', field: 'diameter' }],
    ['"DBH"=trunk', { header: 'DBH', field: 'trunk' }],
    ['Zone 1!"a = b!"=trunk', { sheet: 'Zone 1', header: 'a = b!', field: 'trunk' }],
    ['Stem A (in)=stem', { header: 'Stem A (in)', field: 'stem' }]
  ])('%s', (text, answer) => {
    expect(readColumnArgument(text)).toEqual(answer)
  })

  test.each([
    ['J', /does not say what a column gives: write for instance/],
    ['J=', /does not say what a column gives/],
    ['=stem', /does not say what a column gives/],
    [
      'J=crane',
      /“crane” is no column of an inventory: write Tree, Species,.* or Notes, or - where it is not used\.$/
    ],
    [
      'J=stem diameter',
      /“stem diameter” may be Trunk diameter or Stem diameter at the union: write one of them\.$/
    ],
    ['J=trunk girth', /“trunk girth” is a girth, which only a header can tell/],
    ['J=tip (furlong)', /“furlong” is no unit: write mm, cm, m, in, ft or yd\.$/],
    ['J=species (in)', /Species has no unit: leave out \(in\)\.$/],
    ['J=- (in)', /A column that is not used has no unit/]
  ])('%s is refused', (text, expected) => {
    expect(sentence(text)).toMatch(expected)
    expect(sentence(text)).not.toContain('\n')
  })
})

describe('the arguments about reading, held against the file', () => {
  const sheets = [
    {
      name: 'Limbs',
      rows: [['Survey of invented trees'], ['Tree', 'Limb', 'Dia', 'Stem A', 'Dia'], ['T1', 'B', 3, 4, 5]],
      top: 0,
      left: 0
    },
    { name: 'Bäume 2026', rows: [['Tree', 'Height', 'DBH']], top: 0, left: 0 }
  ]
  const choices = (...args: string[]) => {
    const wanted = readArguments(args)
    if (typeof wanted === 'string') throw new Error('a question, not a plan')
    if (isRefusal(wanted)) return wanted.sentence
    const read = readingChoices(wanted, sheets)
    return isRefusal(read) ? read.sentence : read
  }

  test('are the choices that the reading takes', () => {
    expect(choices()).toEqual({})
    expect(
      choices('--units', 'cm-m', '--sheet', 'limbs', '--column', 'D=stem', '--column', '"stem  a"=(cm)')
    ).toEqual({
      system: 'cm-m',
      sheet: 'Limbs',
      answers: [
        { column: 'D', field: 'stem' },
        { header: 'stem  a', unit: 'cm' }
      ]
    })
    expect(choices('--column', 'baume 2026!C=trunk')).toEqual({
      answers: [{ sheet: 'Bäume 2026', column: 'C', field: 'trunk' }]
    })
  })

  test.each([
    [['--units', 'feet'], '--units feet is not known: write in-ft or cm-m.'],
    [
      ['--sheet', 'Trees'],
      '--sheet Trees: there is no sheet “Trees”; the file has “Limbs” and “Bäume 2026”.'
    ],
    [
      ['--column', 'Trees!A=tree'],
      '--column for A: there is no sheet “Trees”; the file has “Limbs” and “Bäume 2026”.'
    ],
    [
      ['--column', 'K=tip'],
      '--column for K: no sheet has a column K; “Limbs” ends with E and “Bäume 2026” ends with C.'
    ],
    [['--column', 'DBH=trunk'], '--column for DBH: no sheet has a column DBH; for the header “DBH” write C.'],
    [
      ['--column', '"Dia"=limb diameter'],
      '--column for “Dia”: “Dia” stands over columns C and E: name one by its letters.'
    ],
    [
      ['--sheet', 'Limbs', '--column', '"Tip"=tip'],
      '--column for “Tip”: no column is headed “Tip”; there are “Tree”, “Limb”, “Dia” and “Stem A”.'
    ]
  ])('%j is refused with what there is', (args, expected) => {
    expect(choices(...args)).toBe(expected)
  })
})

/**
 * However a number is written, and wherever: the value that is used is the value that was meant, or a sentence names
 * the cell. Each surface is a black box here; what was used is seen in the results.
 */
import { scratch } from './plannedFile'
import {
  callProbe,
  limbCellProbe,
  limbProbe,
  ownSheetsProbe,
  probedRate,
  probedRule,
  probedShare,
  probedTax,
  ranges,
  ruleChangedTo,
  valueCell,
  wholeNumbers,
  workbook,
  type Outcome
} from './surfaces'
import { asks, may, reads, refused, surfaces, writings, type Meaning, type Surface } from './writings'

const at = scratch()

const limbAlone = limbProbe(at, wholeNumbers)
const ownSheetsAlone = ownSheetsProbe(at, null)
const callAlone = callProbe([])

const same = (a: number, b: number) => Math.abs(a - b) <= 1e-9 * Math.max(1, Math.abs(b))

/** The values that a surface can use; where a surface has no room for one, it is refused as out of range. */
const inRange = (surface: Surface, { values }: Meaning): number[] => {
  const [low, high] = ranges[surface]
  return values.filter((value) => value >= low && value <= high)
}

/** What is wrong with an outcome, or null. */
function complaint(surface: Surface, meaning: Meaning, { value, said }: Outcome): string | null {
  const values = inRange(surface, meaning)
  if (value !== null) {
    if (Object.is(value, -0)) return `${surface}: used as -0`
    if (!values.some((each) => same(value, each)))
      return `${surface}: used as ${Number.isNaN(value) ? 'another number' : String(value)}, not as ${values.join(' or ') || 'nothing'}`
    return meaning.kind === 'asks' && said.length === 0 ? `${surface}: used without a word` : null
  }
  if (meaning.kind === 'blank') return null
  if (meaning.kind === 'reads' && values.length > 0) return `${surface}: not read (${said.join(' ')})`
  return said.length === 0 ? `${surface}: not used, and nothing names the cell` : null
}

const shown = (text: string): string => JSON.stringify(text.length > 40 ? `${text.slice(0, 40)}…` : text)

async function outcomes(text: string, meaning: Readonly<Record<Surface, Meaning>>) {
  const { rate, rule } = await ownSheetsAlone(text, meaning.rate.values)
  const found: Record<Surface, Outcome> = {
    limb: await limbAlone(text, []),
    rate,
    rule,
    call: await callAlone(text, [])
  }
  return surfaces.map((surface) => [surface, found[surface]] as const)
}

test('the table holds each writing once', () => {
  const texts = writings.map(({ text }) => text)
  expect(texts.filter((text, index) => texts.indexOf(text) !== index)).toEqual([])
  expect(texts.length).toBeGreaterThan(150)
})

test('the probes see a number that was used: each value apart from the next', async () => {
  // Written so that nothing is to be asked: of "1.016" it may be, as the writings have it.
  for (const [text, first, second] of [
    ['0.03', 0.03, 30],
    ['1.0160', 1.016, 1016],
    ['1016', 1016, 1.016],
    ['0.125', 0.125, 0.126]
  ] as const) {
    const { rate, rule } = await ownSheetsAlone(text, [second, first])
    expect(rate).toEqual({ value: first, said: [] })
    const [, most] = ranges.rule
    if (first <= most) expect(rule).toEqual({ value: first, said: [] })
    expect((await limbAlone(text, [])).value).toBeCloseTo(first, 9)
    expect(await callAlone(text, [])).toEqual({ value: first, said: [] })
  }
})

describe('alone among whole numbers', () => {
  test.each(writings.map((writing) => [shown(writing.text), writing] as const))(
    '%s',
    async (_shown, writing) => {
      const { text, meaning, plain } = writing
      const found = await outcomes(text, meaning)
      const complaints = found.flatMap(
        ([surface, outcome]) => complaint(surface, meaning[surface], outcome) ?? []
      )
      // One parser: what is read in one place is read in all that have room for it.
      const able = found.filter(
        ([surface]) => inRange(surface, meaning[surface]).length === meaning[surface].values.length
      )
      const answers = able.map(
        ([surface, { value }]) => [surface, value === null ? 'refused' : 'read'] as const
      )
      if (plain && meaning.limb.kind !== 'asks' && new Set(answers.map(([, answer]) => answer)).size > 1)
        complaints.push(answers.map(([surface, answer]) => `${surface} ${answer}`).join(', '))
      expect(complaints).toEqual([])
    }
  )
})

describe('the decimal sign of a column is told from its other cells', () => {
  const cases: [text: string, beside: string, meaning: Meaning][] = [
    ['1,016', '12,5', reads(1.016)],
    ['1,016', '0,75', reads(1.016)],
    ['1,016', '1.016,5', may(1.016)],
    ['1,016', '12.5', may(1016)],
    ['1,016', '0.75', may(1016)],
    ['1,016', '1,016.5', may(1016)],
    ['1.016', '12,5', may(1016)],
    ['1.016', '0,75', may(1016)],
    ['1.016', '12.5', reads(1.016)],
    ['12,345', '6,5', reads(12.345)],
    ['0,030', '6,5', reads(0.03)],
    ['0,030', '6.5', may(0.03)],
    ['12,5', '6.5', may(12.5)],
    ['12.5', '6,5', may(12.5)],
    ['40', '6,5', reads(40)],
    ['40', '6.5', reads(40)],
    // Another cell that is no number, or leaves it open, tells nothing.
    ['1,016', '2,032', asks(1.016, 1016)],
    ['1,016', 'about 12,5 or so', asks(1.016, 1016)],
    ['1,016', '2026-03-01', asks(1.016, 1016)]
  ]

  test.each(cases)('%j beside %j in a limb column', async (text, beside, meaning) => {
    expect(complaint('limb', meaning, await limbProbe(at, [beside])(text, meaning.values))).toBeNull()
    const reversed = await limbProbe(at, ['40', beside, '30'])(text, meaning.values)
    expect(complaint('limb', meaning, reversed)).toBeNull()
  })

  // A rate or rule that is no number is a problem of its own and stays out of these.
  const numbers = cases.filter(([, beside]) => /^[\d.,]+$/.test(beside) && !beside.startsWith('1'))
  test.each(numbers)('%j beside %j on a Rates sheet and a Rules sheet', async (text, beside, meaning) => {
    const { rate, rule } = await ownSheetsProbe(at, beside)(text, meaning.values)
    expect([complaint('rate', meaning, rate), complaint('rule', meaning, rule)]).toEqual([null, null])
  })

  // In a range of a cell function it may be refused in its place. A point is the decimal sign where the cell with a
  // comma beside it is refused itself, and so tells nothing.
  test.each(cases)('%j beside %j in a range of a cell function', async (text, beside, { kind, values }) => {
    const tells = (await callAlone(beside, [])).value !== null || !text.includes('.')
    const meaning: Meaning = {
      kind: kind === 'asks' ? 'asks' : 'may',
      values: tells ? values : [Number(text)]
    }
    expect(complaint('call', meaning, await callProbe([beside])(text, values))).toBeNull()
  })

  test('two signs in one column that contradict each other are asked about', async () => {
    const outcome = await limbProbe(at, ['12,5', '12.5'])('1,016', [1.016, 1016])
    expect(complaint('limb', asks(1.016, 1016), outcome)).toBeNull()
  })
})

describe('a file with semicolons between its cells', () => {
  const cases: [string, Meaning][] = [
    ['12,5', reads(12.5)],
    ['0,030', reads(0.03)],
    ['1,016', may(1.016)],
    ['1.016,5', may(1016.5)],
    ['12.5', may(12.5)],
    ['about 3', asks(3)]
  ]
  test.each(cases)('%j', async (text, meaning) => {
    expect(
      complaint('limb', meaning, await limbProbe(at, wholeNumbers, ';')(text, meaning.values))
    ).toBeNull()
  })
})

describe('a text cell of a workbook among cells that are numbers', () => {
  const cases: [string, Meaning][] = [
    ['12.5', reads(12.5)],
    ['12,5', may(12.5)],
    ['0,030', may(0.03)],
    ['1,016', asks(1.016, 1016)],
    ['1.016', may(1.016)],
    ['12 est.', asks(12)]
  ]
  test.each(cases)('%j', async (text, meaning) => {
    const outcome = await limbCellProbe(at, [40, 6.25])(text, meaning.values)
    expect(complaint('limb', meaning, outcome)).toBeNull()
  })

  test('and beside a text with a decimal comma it is read by it', async () => {
    const outcome = await limbCellProbe(at, [40, '12,5'])('1,016', [1.016, 1016])
    expect(complaint('limb', reads(1.016), outcome)).toBeNull()
  })
})

describe('shares', () => {
  const shares: [string, Meaning][] = [
    ['0.25', reads(0.25)],
    ['0,25', may(0.25)],
    ['0,125', may(0.125)],
    ['25 %', reads(0.25)],
    ['25%', reads(0.25)],
    ['25.5 %', reads(0.255)],
    ['25,5 %', may(0.255)],
    ['25\u00a0%', may(0.25)],
    ['0,250 %', may(0.0025)],
    ['1,016 %', asks(0.01016)],
    ['¾', may(0.75)],
    ['-5 %', refused],
    ['NaN %', refused],
    ['1e1 %', may(0.1)],
    ['about 25 %', refused],
    ['25 % or so', refused],
    ['%', refused]
  ]

  test.each(shares)('%j as tax on a Rates sheet and as a share on a Rules sheet', async (text, meaning) => {
    const { kind, values } = meaning
    const path = await workbook(at, { Rates: { [probedTax]: text }, Rules: { [probedShare]: text } })
    const { estimate, problems } = await at.printed(path)
    const said = (cell: string) =>
      problems.filter((problem) => problem.cell === cell).map(({ message }) => message)
    const [tax, subtotal] = [Number(estimate.tax), Number(estimate.subtotal)]
    expect(subtotal).toBeGreaterThan(100)
    const taxed = values.find((value) => Math.abs(tax - subtotal * value) <= 0.005 + 1e-9)
    const rate = { value: tax === 0 ? null : (taxed ?? NaN), said: said(valueCell('Rates', probedTax)) }
    const printed = ruleChangedTo((await at.run(path)).out, probedShare)
    const changed = values.find((value) => printed !== null && Math.abs(printed - value) <= 5e-5)
    const rule = {
      value: printed === null ? null : (changed ?? printed),
      said: said(valueCell('Rules', probedShare))
    }
    const complaints = [complaint('call', meaning, rate), complaint('call', meaning, rule)].map(
      (found, place) => found?.replace('call', place === 0 ? 'tax' : 'rule')
    )
    if (kind !== 'asks' && (rate.value === null) !== (rule.value === null))
      complaints.push('read in one place only')
    expect(complaints.filter((found) => found !== undefined)).toEqual([])
  })
})

describe('a sentence about a number that can be read two ways', () => {
  const places: [string, () => Promise<Outcome>][] = [
    ['a limb column', () => limbAlone('1,016', [])],
    [probedRate, async () => (await ownSheetsAlone('1,016', [1.016, 1016])).rate],
    [probedRule, async () => (await ownSheetsAlone('1,016', [1.016, 1016])).rule],
    ['a cell function', () => callAlone('1,016', [])]
  ]
  test.each(places)('quotes what was typed: %s', async (_place, say) => {
    const { said } = await say()
    expect(said.length).toBeGreaterThan(0)
    expect(said.join(' ')).toContain('1,016')
  })
})

describe('a date, an error or a truth value that a workbook holds as such', () => {
  const cells: [string, unknown][] = [
    ['a date', new Date('2026-03-01T00:00:00Z')],
    ['an error', '#DIV/0!'],
    ['a truth value', true]
  ]
  test.each(cells)('%s in a rate cell is not a rate, and is reported', async (_what, value) => {
    const plain = await at.printed(await workbook(at, {}))
    const path = await workbook(at, { Rates: { [probedRate]: value as never } })
    const { estimate, problems } = await at.printed(path)
    expect(estimate).toEqual(plain.estimate)
    expect(problems.map(({ cell }) => cell)).toContain(valueCell('Rates', probedRate))
  })

  test.each(cells)('%s in a rule cell is not a rule, and is reported', async (_what, value) => {
    const path = await workbook(at, { Rules: { [probedRule]: value as never } })
    expect((await at.run(path)).out).not.toContain('Rule changed')
    expect((await at.printed(path)).problems.map(({ cell }) => cell)).toContain(
      valueCell('Rules', probedRule)
    )
  })

  test.each(cells)('%s in a limb column is not a diameter, and is reported', async (_what, value) => {
    const outcome = await limbCellProbe(at, [40])(value as never, [])
    expect(complaint('limb', refused, outcome)).toBeNull()
  })
})

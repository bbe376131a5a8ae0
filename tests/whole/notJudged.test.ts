/**
 * A tree whose limbs could not be judged says so on every surface, and is nowhere said to need no cut; a tree without limbs
 * says that. The trees are invented: N1 has limbs without stems, S1 lacks the stems of two of five, B1 has no limbs, G1 is in order.
 */
import { wholeProgram } from '../../src/price/offers'
import { estimatePlan } from '../../src/price/estimatePlan'
import { describeDocuments } from '../../src/sheets/describeDocuments'
import { planDocuments } from '../../src/sheets/documentBook'
import { planOf } from '../sheets/samplePlan'
import { runningText } from '../sheets/sheetTexts'
import { csv, scratch, type Printed } from './plannedFile'
import type { WrittenSheet } from './writtenFile'

const at = scratch()

const headers = [
  'Tree,Trunk dia (in),Height (ft),Crown base (ft),Life stage,Vigor',
  'Limb,Role,Limb dia (in),Stem dia (in),Origin (ft),Tip (ft)'
]
const rows: (string | number)[][] = [
  headers.join(',').split(','),
  ['N1', 7, 30, 6, 'young', 'good', 'A', '', 4.1, '', 7, 28],
  ['N1', 7, 30, 6, 'young', 'good', 'B', '', 2.7, '', 6.5, 24],
  ['N1', 7, 30, 6, 'young', 'good', 'L', 'leader', '', '', '', ''],
  ['S1', 8, 31, 6, 'young', 'good', 'A', '', 4.2, 5, 7, 29],
  ['S1', 8, 31, 6, 'young', 'good', 'B', '', 2.7, '', 6.5, 24],
  ['S1', 8, 31, 6, 'young', 'good', 'C', '', 1.1, 5.5, 8, 14],
  ['S1', 8, 31, 6, 'young', 'good', 'D', '', 1, 5.2, 9, 15],
  ['S1', 8, 31, 6, 'young', 'good', 'E', '', 2.2, '', 9, 20],
  ['B1', 9, 33, 7, 'young', 'good', '', '', '', '', '', ''],
  ['G1', 7, 30, 6, 'young', 'good', 'A', '', 4.1, 5, 7, 28]
]

interface Summary {
  readonly trees: number
  readonly limbs: number
  readonly cuts: number
  readonly treesWithoutLimbs: number
  readonly treesNotPlanned: number
}

type Table = readonly (readonly (string | number)[])[]

async function madeText(name: string, table: Table, ...args: string[]) {
  const path = at.put(`${name}.csv`, csv(table))
  const { code, out } = await at.run(path, '--json', ...args)
  const text = (await at.run(path)).out
  return { code, text, printed: JSON.parse(out) as Printed & { readonly summary: Summary } }
}

async function made(name: string, table: Table) {
  const told = await madeText(name, table, '--out', `${name}.xlsx`)
  return { ...told, file: (await at.written(`${name}.xlsx`))! }
}

const all = made('mixed', rows)
const unjudged = madeText('unjudged', rows.slice(0, 4))

const textOf = ({ cells }: WrittenSheet) => cells.map(({ shown }) => shown).join('\n')

/** What a sheet shows in the row of a tree's own id. */
function rowsOf(sheet: WrittenSheet, tree: string): string {
  const own = sheet.cells
    .filter(({ shown, column }) => column === 'A' && shown === tree)
    .map(({ row }) => row)
  return sheet.cells
    .filter(({ row }) => own.includes(row))
    .map(({ shown }) => shown)
    .join(' ')
}

/** The lines of the text output about one tree. */
function aboutTree(text: string, tree: string): string {
  return text.split('\n\n').find((part) => part.startsWith(tree)) ?? ''
}

describe('a tree of which no limb could be judged', () => {
  test('stands in what is not planned, is counted, and has no price', async () => {
    const { code, printed } = await all
    expect(code).toBe(0)
    expect(printed.unplanned.map(({ tree, row }) => [tree, row])).toEqual([
      ['N1', 2],
      ['N1', 3],
      ['S1', 6],
      ['S1', 9]
    ])
    expect(printed.summary).toMatchObject({ trees: 4, limbs: 9, treesWithoutLimbs: 1, treesNotPlanned: 1 })
    const cuts = printed.trees.flatMap(({ visits }) => visits.flatMap((visit) => visit.cuts))
    expect(printed.summary.cuts).toBe(cuts.length)
    expect(printed.estimate.lines.map(({ tree }) => tree)).not.toContain('N1')
  })

  test('is called so in the text output', async () => {
    const { text } = await all
    expect(aboutTree(text, 'N1')).toContain('Limbs not judged: survey them again')
    expect(aboutTree(text, 'N1')).not.toMatch(/No cut/)
  })

  test('is called so in the cut plan', async () => {
    const sheet = (await all).file.sheet('Cut plan')
    expect(rowsOf(sheet, 'N1')).toContain('Limbs not judged: limbs A and B.')
    expect(rowsOf(sheet, 'N1')).not.toMatch(/comes first|No limb|Nothing/)
  })

  test('is called so in the work order', async () => {
    expect(textOf((await all).file.sheet('Work order'))).toContain(
      'Tree N1: limbs not judged; survey them again'
    )
  })

  test('is called so in the client report, which says nothing of what it needs', async () => {
    const sheet = (await all).file.sheet('Client report')
    const words = rowsOf(sheet, 'N1')
    expect(words).toContain('Not judged yet')
    expect(words).toContain('survey its limbs again')
    expect(words).not.toMatch(/No cut|needs a cut|None of/)
    expect(textOf(sheet)).toContain('The limbs of 1 tree could not be judged and are to be surveyed again.')
  })

  test('has nothing specified', async () => {
    const words = textOf((await all).file.sheet('Specification'))
    expect(words).toContain('limbs not judged. Survey them again, then specify.')
    expect(words).not.toContain('None at present')
  })
})

describe('a tree of which some limbs could be judged', () => {
  test('says how many on every surface', async () => {
    const { text, file } = await all
    expect(aboutTree(text, 'S1')).toContain('2 of 5 limbs not judged (limbs B and E)')
    expect(rowsOf(file.sheet('Cut plan'), 'S1')).toContain('2 of 5 limbs not judged: limbs B and E.')
    expect(textOf(file.sheet('Work order'))).toContain(
      '2 of 5 limbs not judged: leave limbs B and E and survey again.'
    )
    expect(rowsOf(file.sheet('Client report'), 'S1')).toContain('2 of 5 limbs not judged')
    expect(textOf(file.sheet('Specification'))).toContain(
      '2 of 5 limbs not judged (limbs B and E): left as they are'
    )
  })

  test('is planned and priced for the others', async () => {
    const { printed } = await all
    const cuts = printed.trees.find(({ tree }) => tree === 'S1')!.visits[0]!.cuts
    expect(cuts.map(({ limb }) => limb)).toEqual(['A'])
    expect(printed.estimate.lines.map(({ tree }) => tree)).toContain('S1')
  })

  test('whose other limbs need no cut does not pass for a tree that needs none', async () => {
    const { text, file } = await made('quiet', [rows[0]!, ...rows.slice(5, 9)])
    expect(aboutTree(text, 'S1')).toContain('No cut of the limbs that were judged.')
    expect(rowsOf(file.sheet('Cut plan'), 'S1')).toContain('2 of 4 limbs not judged.')
    expect(textOf(file.sheet('Work order'))).toContain('no cut is planned in 2027; 2 of 4 limbs not judged.')
    const words = rowsOf(file.sheet('Client report'), 'S1')
    expect(words).toContain('No cut now; 2 of 4 limbs not judged')
  })
})

test('a tree without limbs says that no limbs are listed, and is not among what could not be planned', async () => {
  const { text, printed, file } = await all
  expect(aboutTree(text, 'B1')).toContain('No limbs listed')
  expect(aboutTree(text, 'B1')).not.toContain('No cut.')
  expect(rowsOf(file.sheet('Cut plan'), 'B1')).toContain('No limbs are listed')
  expect(textOf(file.sheet('Work order'))).toContain('Tree B1: no limbs listed')
  expect(printed.unplanned.map(({ tree }) => tree)).not.toContain('B1')
})

test('where nothing could be judged, no surface says that no cut is needed', async () => {
  const { text, printed } = await unjudged
  expect(printed.summary).toMatchObject({ trees: 1, treesNotPlanned: 1, cuts: 0 })
  expect(text).not.toMatch(/\bNo cut\b/)
  expect(text).toContain('Limbs not judged')
  const plan = planOf(rows.slice(0, 4).map((row) => row.map((cell) => (cell === '' ? null : cell))))
  const sheets = describeDocuments(planDocuments, plan, wholeProgram(estimatePlan(plan)))
  expect(sheets.length).toBeGreaterThan(3)
  for (const sheet of sheets.filter(({ kind }) => kind !== 'estimate')) {
    const words = runningText(sheet)
    expect([sheet.kind, /not (be )?judged/i.test(words)]).toEqual([sheet.kind, true])
    // The rules of work on the order speak of cuts that are not made: "no cut between side branches".
    const needless = /No cut (now|is planned|is needed)|needs a cut|is to be pruned/
    expect([sheet.kind, needless.test(words)]).toEqual([sheet.kind, false])
  }
})

describe('a life stage, form or role that is a word nobody knows', () => {
  const words: Table = [
    [...rows[0]!, 'Form'],
    ['A1', 7, 30, 6, 'adolescent', 'good', 'A', '', 4.1, 5, 7, 28, ''],
    ['A1', '', '', '', '', '', 'B', '', 2.7, 5, 6.5, 24, ''],
    ['A2', 7, 30, 6, 'adolescent', 'good', 'A', '', 4.1, 5, 7, 28, ''],
    ['F1', 7, 30, 6, 'young', 'good', 'A', '', 4.1, 5, 7, 28, 'like a lollipop'],
    ['R1', 8, 31, 6, 'young', 'good', 'A', '', 4.2, 5, 7, 29, 'decurrent'],
    ['R1', '', '', '', '', '', 'B', 'boss', 2.7, 5, 6.5, 24, ''],
    ['R1', '', '', '', '', '', 'C', 'boss', 2.2, 5, 6.5, 24, ''],
    ['G1', 7, 30, 6, '', 'good', 'A', '', 4.1, 5, 7, 28, '']
  ]
  const asked = made('asked', words)

  test('holds up its tree, or its limb, and nothing else', async () => {
    const { printed } = await asked
    expect(printed.unplanned.map(({ tree, row }) => [tree, row])).toEqual([
      ['A1', 2],
      ['A1', 3],
      ['A2', 4],
      ['F1', 5],
      ['R1', 7],
      ['R1', 8]
    ])
    expect(printed.summary).toMatchObject({ trees: 5, treesNotPlanned: 3 })
    const cut = printed.trees.flatMap(({ tree, visits }) =>
      (visits[0]?.cuts ?? []).map(({ limb }) => [tree, limb])
    )
    expect(cut).toEqual([
      ['R1', 'A'],
      ['G1', 'A']
    ])
    expect(printed.estimate.lines.map(({ tree }) => tree)).toEqual(expect.arrayContaining(['G1', 'R1']))
  })

  test('is asked once a column, with what waits for the answer', async () => {
    const { text, printed } = await asked
    const told = printed.problems.filter(({ code }) => code === 'not-a-choice')
    expect(told.map(({ count, message }) => [count, message.split(',')[0]])).toEqual([
      [2, '2 cells of “Life stage” could not be read: asked!E2 and E4. They read “adolescent”'],
      [1, 'Form at asked!M5 reads “like a lollipop”'],
      [2, '2 cells of “Role” could not be read: asked!H7 and H8. They read “boss”']
    ])
    expect(text.replace(/\s+/g, ' ')).toContain('3 limbs wait for them: rows 2 to 4.')
  })

  test('leaves a blank cell missing, with what is taken said once', async () => {
    const { printed } = await asked
    const taken = printed.problems.filter(({ code }) => code === 'assumed-value')
    expect(taken.map(({ message }) => message)).toEqual([
      'Tree G1 has no life stage (asked!E9); it was planned as mature.',
      'Tree G1 has no form (asked!M9); it was planned as decurrent.'
    ])
  })

  test('shows as not judged on every sheet', async () => {
    const { text, file } = await asked
    for (const tree of ['A1', 'F1']) {
      expect(aboutTree(text, tree)).toContain('Limbs not judged')
      expect(rowsOf(file.sheet('Cut plan'), tree)).toContain('Limbs not judged')
      expect(rowsOf(file.sheet('Client report'), tree)).toContain('Not judged yet')
    }
    expect(textOf(file.sheet('Work order'))).toContain('Trees A1, A2 and F1: limbs not judged')
    expect(rowsOf(file.sheet('Cut plan'), 'R1')).toContain('2 of 3 limbs not judged: limbs B and C.')
    expect(textOf(file.sheet('Work order'))).toContain('2 of 3 limbs not judged: leave limbs B and C')
  })

  test('leaves a tree without limbs what its trunk gives, and no allowance', async () => {
    const { code, printed } = await madeText('bare', [rows[0]!, ['B1', 9, 33, 7, 'adolescent', 'good']])
    expect(code).toBe(0)
    expect(printed.unplanned).toEqual([])
    expect(printed.estimate.budgetFigures).toHaveLength(1)
    expect(printed.problems.find(({ code: each }) => each === 'no-limbs')?.message).toContain(
      'crown ratio and a time budget are given'
    )
  })
})

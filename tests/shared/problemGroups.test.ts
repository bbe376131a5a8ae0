/** Several problems of one cause are one problem, and what it says is true of all of them. */
import { cellsNamed, placesNamed } from '../../shared/cellPlaces'
import { cellsOf, countOf, groupProblems, mostProblems } from '../../shared/groupProblems'
import { severalOf } from '../../shared/problemGroups'
import {
  asDoubt,
  problem,
  problemCodes,
  type Place,
  type Problem,
  type ProblemCode
} from '../../shared/problems'
import { rowsNamed, someOf, valuesOf } from '../../shared/words/some'

/** A problem of any code, each of its facts made up; `which` tells its facts from those of another. */
function madeUp(code: ProblemCode, at: string | Place, which: string): Problem {
  const make = problem as (code: ProblemCode, at: string | Place, facts: object) => Problem
  const { message, remedy } = make(code, at, {})
  const holes = [...`${message} ${remedy}`.matchAll(/\{(\w+)\}/g)].map(([, name = '']) => name)
  const facts = holes.map((name) => [name, name === 'row' ? 5 : `${name} ${which}`])
  return make(code, at, Object.fromEntries(facts))
}

const place = (row: number): Place => ({
  said: `row ${String(row)}, no column “Role”`,
  typeIn: `row ${String(row)} of a new column headed “Role”`,
  row,
  header: 'Role'
})

const cellIn = /(?<![A-Za-z])\$?[A-Z]{1,2}\$?\d+/

function expectWellFormed({ message, remedy }: Problem): void {
  for (const sentence of [message, remedy]) {
    expect(sentence).not.toMatch(
      /[{}]|undefined|NaN|\b1 (cells|limbs|trees|rows|headers|columns|rules|rates)\b/
    )
    expect(sentence).toMatch(/^[A-Z“0-9].*[.]$/)
    expect(sentence).not.toMatch(/ {2}|\(\)|“”|\.\.|;\.|,\./)
  }
  expect(remedy.replace(/“[^”]*”/g, '')).not.toMatch(cellIn)
}

const grouped = problemCodes.filter((code) => severalOf[code] !== null)
const alone = problemCodes.filter((code) => severalOf[code] === null)

describe.each(grouped)('several of %s', (code) => {
  const cells = (count: number) =>
    Array.from({ length: count }, (_none, at) => `Trees!C${String(5 + 2 * at)}`)

  test.each([2, 3, 15])('%i with the same facts are one', (count) => {
    const [group, ...more] = groupProblems(cells(count).map((cell) => madeUp(code, cell, 'x')))
    expect(more).toEqual([])
    expectWellFormed(group!)
    expect(countOf(group!)).toBe(count)
    expect(cellsOf(group!)).toEqual(cells(count))
    expect(group!.cell).toBe('Trees!C5')
    expect(group!.message).toContain('C5')
  })

  test('with facts of their own are one, but where the facts make another cause', () => {
    const several = cells(12).map((cell, at) => madeUp(code, cell, 'abcdefghijkl'.charAt(at)))
    const groups = groupProblems(several)
    expect(groups).toHaveLength(severalOf[code]?.by === undefined ? 1 : 12)
    if (severalOf[code]?.by === undefined) expectWellFormed(groups[0]!)
  })

  test('in rows that lack the column, and taken as a doubt', () => {
    const [lacking] = groupProblems([madeUp(code, place(4), 'x'), madeUp(code, place(6), 'x')])
    expectWellFormed(lacking!)
    const doubts = cells(3).map((cell) => asDoubt(madeUp(code, cell, 'x'), 'it was left out'))
    const [doubt, ...more] = groupProblems(doubts)
    expect(more).toEqual([])
    expectWellFormed(doubt!)
    expect(doubt).toMatchObject({ level: 'doubt' })
    expect(doubt!.message).toMatch(/; in each case it was left out\.$/)
  })
})

test.each(alone)('%s is asked or said by itself, and once', (code) => {
  const [one, other] = [madeUp(code, 'Trees!C5', 'a'), madeUp(code, 'Trees!D5', 'b')]
  const groups = groupProblems([one, one, other])
  const different = one.message === other.message ? [one] : [one, other]
  expect(groups).toEqual(different)
})

const missing = (cell: string) =>
  problem('missing-value', cell, { column: 'tip height', limb: 'A', tree: 'T1' })

test('one alone stays as it is', () => {
  const only = missing('Trees!E2')
  expect(groupProblems([only])[0]).toBe(only)
})

test('a cause is of one column, of one level, and stands where its first stood', () => {
  const groups = groupProblems([
    missing('Trees!E2'),
    missing('Trees!F2'),
    asDoubt(missing('Trees!E9'), 'it was left out'),
    missing('Trees!E4'),
    missing('Zone!E3')
  ])
  expect(groups.map((each) => [each.cell, countOf(each)])).toEqual([
    ['Trees!E2', 2],
    ['Trees!F2', 1],
    ['Trees!E9', 1],
    ['Zone!E3', 1]
  ])
})

test('grouped again, with more beside, gives the same as at once', () => {
  const cells = ['Trees!E2', 'Trees!F3', 'Trees!E4', 'Trees!F9', 'Trees!E1']
  const at = cells.map(missing)
  expect(groupProblems([...groupProblems(at.slice(0, 3)), ...at.slice(3)])).toEqual(groupProblems(at))
})

test('more causes than a screen holds are drawn together over the columns', () => {
  const columns = Array.from({ length: 26 }, (_none, at) => String.fromCharCode(65 + at))
  const many = columns.flatMap((column) => [missing(`${column}2`), missing(`${column}3`)])
  expect(groupProblems(many.slice(0, 2 * mostProblems))).toHaveLength(mostProblems)
  const [group, ...more] = groupProblems(many)
  expect(more).toEqual([])
  expect(countOf(group!)).toBe(52)
  expect(group!.message).toContain('A2, B2, C2 and 49 more in A2:Z3')
})

test('and where that is not enough, whatever was taken instead', () => {
  const columns = Array.from({ length: 26 }, (_none, at) => String.fromCharCode(65 + at))
  const doubts = columns.flatMap((column) => [
    asDoubt(missing(`${column}2`), `it counts as ${column}`),
    missing(`${column}3`)
  ])
  const groups = groupProblems(doubts)
  expect(groups.map((each) => [each.level, countOf(each)])).toEqual([
    ['doubt', 26],
    ['row', 26]
  ])
  expect(groups[0]!.message).toMatch(
    /; instead, it counts as A, it counts as B, it counts as C and others\.$/
  )
  for (const group of groups) expectWellFormed(group)
})

test('the sentence counts, quotes up to three and names where', () => {
  const reads = (cell: string, text: string) =>
    problem('not-a-number', cell, { column: 'Stem diameter', text })
  const texts = ['~2', 'abc', '~2', 'x', 'y']
  const [group] = groupProblems(texts.map((text, at) => reads(`Trees!E${String(2 * at + 2)}`, text)))
  expect(group!.message).toBe(
    '5 cells of “Stem diameter” hold what is not a number: Trees!E2, E4, E6 and 2 more in E2:E10. They read “~2”, “abc”, “x” and others.'
  )
})

describe('in words', () => {
  test('cells', () => {
    expect(cellsNamed(['C9', 'C5', 'C5'])).toBe('C5 and C9')
    expect(cellsNamed(['C5', 'C6', 'C7'])).toBe('C5:C7')
    expect(cellsNamed(["'Zone 1'!C5", "'Zone 1'!C7", "'Zone 1'!C9", "'Zone 1'!C11"])).toBe(
      "'Zone 1'!C5, C7, C9 and C11"
    )
    expect(cellsNamed(['A1', 'C1', 'E1', 'G1', 'J1'])).toBe('A1, C1, E1 and 2 more in A1:J1')
    expect(cellsNamed(['North!A1', 'South!A1'])).toBe('North!A1 and South!A1')
  })

  test('rows', () => {
    expect(rowsNamed([7])).toBe('row 7')
    expect(rowsNamed([16, 15, 14, 12, 20])).toBe('rows 12, 14 to 16 and 20')
    expect(rowsNamed([2, 3])).toBe('rows 2 and 3')
    expect(rowsNamed([2, 4, 6, 8, 10, 11])).toBe('rows 2, 4, 6 and 3 more up to row 11')
    expect(placesNamed([place(2), place(3), place(4)])).toBe('rows 2 to 4, no column “Role”')
  })

  test('several', () => {
    expect(someOf(['A', 'B', 'C', 'D'])).toBe('A, B, C and D')
    expect(someOf(['A', 'B', 'C', 'D', 'E'])).toBe('A, B, C and 2 more')
    expect(valuesOf(['A', 'B', 'C', 'D'])).toBe('A, B, C and others')
  })
})

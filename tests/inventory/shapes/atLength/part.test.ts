/** A long run goes on behind what fails, and tells each kind of fault once, with its smallest case. */
import fc from 'fast-check'
import { property } from '../properties/property'
import type { Failure } from './failures'
import { runPart } from './part'

const numbers = property({
  name: 'numbers are under 700 and no multiple of 50',
  drawn: fc.nat(1000),
  faultsOf: (number) => {
    if (number === 3) throw new Error('no such number')
    return [
      ...(number >= 700 ? [`too large: ${String(number)}`] : []),
      ...(number % 50 === 0 ? [`multiple: ${String(number)}`] : [])
    ]
  },
  sheetsOf: (number) => [{ name: 'Numbers', rows: [{ kind: 'data', cells: [number] }] }],
  casesOf: () => 2,
  usual: 1,
  long: 1
})

const failures: Failure[] = []
const { cases } = runPart({ property: numbers, seed: 5, size: 2000 }, failures)

test('all of a part is run', () => {
  expect(cases).toBe(4000)
})

test('a kind of fault is told once where it comes down to one case, with how often it was met', () => {
  const large = failures.find(({ kind }) => kind === 'too large')
  expect(large).toMatchObject({ fault: 'too large: 700', shown: '  Numbers\n    700' })
  expect(large?.count).toBeGreaterThan(100)
  expect(failures.filter(({ kind }) => kind === 'too large')).toHaveLength(1)
  expect(failures.find(({ kind }) => kind === 'multiple')?.fault).toBe('multiple: 0')
})

test('what is thrown is a fault like others', () => {
  expect(failures.map(({ kind }) => kind)).toContain('threw no such number')
})

test('the seed and the path draw the same again', () => {
  for (const { seed, path, kind, fault } of failures) {
    const { counterexample } = fc.check(
      fc.property(numbers.drawn, (drawn) => {
        const faults = kind.startsWith('threw') ? [] : numbers.faultsOf(drawn)
        return !faults.includes(fault) && !(kind.startsWith('threw') && drawn === 3)
      }),
      { seed, path, endOnFailure: true }
    )
    expect(counterexample).not.toBeNull()
  }
})

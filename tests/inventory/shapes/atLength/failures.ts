/** Faults of a kind, drawn together: the first one brought to its smallest shape, the others counted. */
import fc from 'fast-check'
import { kindOf, type AnyProperty } from '../properties/property'
import { shown } from './shown'

export interface Failure {
  readonly property: string
  readonly kind: string
  /** How many of the drawn have it. */
  count: number
  /** Where the smallest shape is drawn again: the seed of the part, and the path within it. */
  readonly seed: number
  readonly path: string
  readonly fault: string
  readonly shown: string
  /** What was drawn, as it is written in the program. */
  readonly drawn: string
}

/** Longer than this no shape is made smaller, in milliseconds. */
const patience = 20_000

/** Letters of what was drawn that are told, its end first: the changes stand behind the survey. */
const longest = 900

/** What does not hold of a drawn value; an exception is a fault of its own. */
export function faultsOf(property: AnyProperty, drawn: unknown): readonly string[] {
  try {
    return property.faultsOf(drawn)
  } catch (error) {
    const { message, stack = '' } = error as Error
    return [`threw ${message.slice(0, 60)}: ${stack.split('\n').slice(1, 4).join(' ')}`]
  }
}

/** A fault of a drawn value, and where in its part it was drawn. */
export interface Found {
  readonly seed: number
  readonly at: number
  readonly drawn: unknown
  readonly fault: string
}

/** The first of a kind, brought to its smallest shape. */
export function smallest(property: AnyProperty, { seed, at, drawn, fault }: Found): Failure {
  const kind = kindOf(fault)
  const has = (value: unknown) => faultsOf(property, value).find((each) => kindOf(each) === kind)
  const { counterexample, counterexamplePath } = fc.check(
    fc.property(property.drawn, (value) => has(value) === undefined),
    { seed, path: String(at), interruptAfterTimeLimit: patience }
  )
  const found: unknown = counterexample?.[0]
  return {
    property: property.name,
    kind,
    count: 1,
    seed,
    path: counterexamplePath ?? String(at),
    fault: (found === undefined ? undefined : has(found)) ?? fault,
    shown: shown(property.sheetsOf(found ?? drawn)),
    drawn: JSON.stringify(found ?? drawn).slice(-longest)
  }
}

export function told({ property, kind, count, seed, path, fault, shown: sheets, drawn }: Failure): string {
  const again = `drawn again with seed ${String(seed)} and path "${path}"`
  return `${property}\n  ${kind}, ${String(count)} times; ${again}\n  ${fault}\n${sheets}\n  … ${drawn}`
}

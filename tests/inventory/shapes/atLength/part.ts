/** A part of a long run: so many drawn from a seed of its own. */
import fc from 'fast-check'
import { kindOf, type AnyProperty } from '../properties/property'
import { computedWithin, mostMilliseconds } from './computed'
import { faultsOf, smallest, type Failure, type Found } from './failures'

export interface Part {
  readonly property: AnyProperty
  readonly seed: number
  readonly size: number
}

/** What a part came to. */
export interface PartDone {
  readonly cases: number
  readonly seconds: number
  /** Milliseconds that the slowest of the drawn computed, all its shapes together. */
  readonly slowest: number
}

/** Smallest shapes made of one kind of fault; the others of the kind are counted. */
const mostOfAKind = 2

/** Runs a part to its end, whatever fails, and adds what fails to the failures. */
export function runPart({ property, seed, size }: Part, failures: Failure[]): PartDone {
  const begun = performance.now()
  let cases = 0
  let slowest = 0
  const values: Iterable<unknown> = fc.sample(property.drawn, { seed, numRuns: size })
  let at = 0
  for (const drawn of values) {
    cases += property.casesOf(drawn)
    let faults: readonly string[] = []
    const took = computedWithin(() => (faults = faultsOf(property, drawn)))
    slowest = Math.max(slowest, took)
    if (took > mostMilliseconds) faults = [...faults, `over a second: ${took.toFixed(0)} ms`]
    for (const fault of firstOfEachKind(faults)) note(property, { seed, at, drawn, fault }, failures)
    at++
  }
  return { cases, seconds: (performance.now() - begun) / 1000, slowest }
}

function firstOfEachKind(faults: readonly string[]): string[] {
  return [...new Map([...faults].reverse().map((fault) => [kindOf(fault), fault])).values()]
}

function note(property: AnyProperty, found: Found, failures: Failure[]): void {
  const kind = kindOf(found.fault)
  const known = failures.filter((each) => each.property === property.name && each.kind === kind)
  const [first] = known
  if (first !== undefined && known.length >= mostOfAKind) {
    first.count++
    return
  }
  const least = smallest(property, found)
  const same = known.find((each) => each.shown === least.shown)
  if (same === undefined) failures.push(least)
  else same.count++
}

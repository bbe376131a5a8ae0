/** Where a plan differs from the reference's, in words that name the place; empty where it does not. */
import type { PrintedTree } from './enginePlan'
import type { ReferencePlan } from './planReference'

const words = new Set(['reason', 'ties', 'choices'])

function differs(one: unknown, other: unknown): boolean {
  if (typeof one === 'number' && typeof other === 'number')
    return !(Math.abs(one - other) <= 1e-6 * Math.max(1, Math.abs(one), Math.abs(other)))
  return one !== other
}

/** The fields of two records that both have. */
function fieldsOff(where: string, engine: object, reference: object): string[] {
  return Object.entries(reference).flatMap(([name, expected]) => {
    if (words.has(name) || Array.isArray(expected)) return []
    const found = (engine as Record<string, unknown>)[name]
    if (typeof expected === 'object' && expected !== null && typeof found === 'object' && found !== null)
      return fieldsOff(`${where} ${name}`, found, expected)
    return differs(found, expected)
      ? [`${where} ${name}: engine ${JSON.stringify(found)}, reference ${JSON.stringify(expected)}`]
      : []
  })
}

interface Named {
  readonly limb: string
  readonly kind?: string
}

function listsOff(where: string, engine: readonly Named[], reference: readonly Named[]): string[] {
  const key = ({ limb, kind = '' }: Named) => `${limb} ${kind}`
  const missing = reference
    .filter((each) => !engine.some((other) => key(other) === key(each)))
    .map((each) => `${where}: only the reference has ${JSON.stringify(each)}`)
  return [
    ...missing,
    ...engine.flatMap((each) => {
      const expected = reference.find((other) => key(other) === key(each))
      return expected === undefined
        ? [`${where}: only the engine has ${JSON.stringify(each)}`]
        : fieldsOff(`${where} ${key(each)}`, each, expected)
    })
  ]
}

export function differences(engine: PrintedTree, reference: ReferencePlan): string[] {
  const off = fieldsOff('tree', engine, reference)
  if (engine.visits.length !== reference.visits.length)
    off.push(
      `visits: engine ${engine.visits.map(({ year }) => year).join()}, reference ${reference.visits.map(({ year }) => year).join()}`
    )
  engine.visits.forEach((visit, at) => {
    const expected = reference.visits[at]
    if (expected === undefined) return
    const where = `visit ${visit.visit}`
    off.push(...fieldsOff(where, visit, expected), ...listsOff(`${where} cut`, visit.cuts, expected.cuts))
  })
  return [...off, ...listsOff('outcome', engine.outcomes, reference.outcomes)]
}

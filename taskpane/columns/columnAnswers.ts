import type { Field } from '../../shared/columns'
import type { LengthUnit, UnitSystem } from '../../shared/units'
import type { ColumnAnswer, ColumnMatch, ReadingChoices } from '../../src/inventory/inventory'
import { namedColumn, type Named } from '../../src/inventory/namedColumn'
import { sameName } from '../../src/inventory/survey/answers'

function sameColumn(one: Named, other: Named): boolean {
  const same = (key: keyof Named): boolean =>
    one[key] === other[key] ||
    (one[key] !== undefined && other[key] !== undefined && sameName(one[key], other[key]))
  return same('header') && same('sheet') && same('column')
}

type Gives = Pick<ColumnAnswer, 'field' | 'unit'>

/** What a person answers about columns until the plan is made again. */
export class ColumnAnswers {
  system: UnitSystem | undefined
  private readonly given = new Map<ColumnMatch, Gives>()

  constructor(
    private readonly matches: readonly ColumnMatch[],
    private readonly before: ReadingChoices
  ) {
    this.system = before.system
  }

  /** What the column gives as things stand. */
  fieldOf(match: ColumnMatch): Field | null {
    const given = this.given.get(match)
    return given?.field === undefined ? match.field : given.field
  }

  /** The unit of its numbers as things stand; null where it is still to be assumed. */
  unitOf(match: ColumnMatch): LengthUnit | null {
    const given = this.given.get(match)
    if (given?.unit !== undefined) return given.unit
    return this.fieldOf(match) === match.field || match.unitNamed ? match.unit : null
  }

  give(match: ColumnMatch, gives: Gives): void {
    this.given.set(match, { ...this.given.get(match), ...gives })
  }

  /** Takes back what was answered about a column. */
  leave(match: ColumnMatch): void {
    this.given.delete(match)
  }

  /** All choices with the new answers first, each in the place of an earlier one about the same column. */
  choices(): ReadingChoices {
    const fresh = [...this.given].map(([match, gives]): ColumnAnswer => {
      const named = namedColumn(match, this.matches)
      const old = this.before.answers?.find((answer) => sameColumn(answer, named))
      const kept = gives.field === undefined || gives.field === old?.field ? old : {}
      return { ...kept, ...named, ...gives }
    })
    const others = (this.before.answers ?? []).filter(
      (answer) => !fresh.some((each) => sameColumn(each, answer))
    )
    const answers = [...fresh, ...others]
    return {
      ...this.before,
      ...(this.system === undefined ? {} : { system: this.system }),
      ...(answers.length === 0 ? {} : { answers })
    }
  }
}

import { quoted } from '../../../shared/cells'
import { grouped } from '../../../shared/words/figures'
import { listed } from '../../../shared/words/lists'

/** Different codes that a sentence names. */
const mostNamed = 4

/** Cells of a column that were all taken in one way, to be told in one sentence. */
export class Tally {
  private readonly rows = new Set<number>()
  private readonly texts = new Set<string>()

  add(row: number, text: string): void {
    this.rows.add(row)
    if (this.texts.size <= mostNamed) this.texts.add(text)
  }

  /** The row of the first of them, or null where there are none. */
  get first(): number | null {
    return this.rows.size === 0 ? null : Math.min(...this.rows)
  }

  get count(): number {
    return this.rows.size
  }

  /** The count as a sentence has it. */
  get counted(): string {
    return grouped(this.rows.size)
  }

  /** The texts as a sentence lists them: “n/a”, “-” and “-9999”. */
  get named(): string {
    const texts = [...this.texts].slice(0, mostNamed).map((text) => `“${quoted(text)}”`)
    return listed(this.texts.size > mostNamed ? [...texts, 'others'] : texts)
  }
}

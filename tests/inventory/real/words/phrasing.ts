import type { Field } from '../../../../shared/columns'
import type { LengthUnit } from '../../../../shared/units'

export type Language = 'en' | 'de' | 'fr' | 'es'

/** Where a header stands that does not say by itself what it is of: among the limb's columns, the tree's, or in a list of trees alone. */
export type Context = 'limb group' | 'tree group' | 'alone'

/** A header as somebody wrote it, and what it means. */
export interface Phrasing {
  language: Language
  header: string
  field: Field
  /** The unit that the header names; null where it names none. */
  unit: LengthUnit | '%' | 'deg' | null
  /** A girth that stands for the diameter. */
  measure: 'girth' | null
  /** Sure: used without a question. Likely: used, and may be asked once. */
  confidence: 'sure' | 'likely'
  context: Context | null
}

interface Alike {
  context?: Context
  measure?: 'girth'
}

/**
 * Phrasings of one field, one a line: `Stem dia.¶above union (in) :: in`. The unit stands after the colons, `¶` is a line
 * break within the header, and a line that starts with `? ` may be asked about.
 */
export function phrasings(language: Language, field: Field, lines: string, alike: Alike = {}): Phrasing[] {
  const { context = null, measure = null } = alike
  return lines
    .split('\n')
    .filter((line) => line.trim() !== '')
    .map((line) => {
      const [words = '', unit] = line.trim().split(' :: ')
      return {
        language,
        header: words.replace(/^\? /, '').trim().replaceAll('¶', '\n'),
        field,
        unit: (unit ?? null) as Phrasing['unit'],
        measure,
        confidence: words.startsWith('? ') ? 'likely' : 'sure',
        context
      }
    })
}

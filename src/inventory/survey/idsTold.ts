import { isBlank, quoted } from '../../../shared/cells'
import { problem, type Problem } from '../../../shared/problems'
import { cellIn } from './sheetCells'
import type { SurveyTable } from './surveyTable'

/** Rows looked at, and share of the ids that have to be dates. House judgment. */
const looked = 200
const mostly = 0.5

const whose = { tree: 'trees', limb: 'limbs' } as const
const day = /^\d{4}-\d\d-\d\d(?:[T ].*)?$/

/** What is odd about ids as a whole: days that a spreadsheet made of them, and words that tell no limb from another. */
export function tellOfIds(tables: readonly SurveyTable[]): Problem[] {
  return tables.flatMap(({ sheet, header, rows }) =>
    header.columns.flatMap(({ column, name, meaning, areWordsOfLimbs }): Problem[] => {
      if (areWordsOfLimbs === true)
        return [problem('limb-ids-alike', cellIn(sheet, header.names, column), { text: quoted(name) })]
      if (meaning.field !== 'tree' && meaning.field !== 'limb') return []
      const filled = rows.slice(0, looked).filter((row) => !isBlank(sheet.rows[row]?.[column]))
      const days = filled.filter((row) => day.test(String(sheet.rows[row]?.[column])))
      const [first] = days
      if (first === undefined || days.length < filled.length * mostly) return []
      const facts = { what: whose[meaning.field], text: quoted(sheet.rows[first]?.[column]) }
      return [problem('ids-are-dates', cellIn(sheet, first, column), facts)]
    })
  )
}

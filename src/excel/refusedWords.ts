import { problem, type Problem } from '../../shared/problems'
import { listed } from '../../shared/words/lists'
import type { OrnamentKind, Refused } from './ornaments'

const things: Readonly<Record<OrnamentKind, (count: number) => string>> = {
  view: () => 'the frozen rows and columns',
  page: () => 'the page set-up',
  breaks: () => 'the page breaks',
  headers: () => 'the headers on each page',
  table: (count) => counted(count, 'table'),
  rule: (count) => counted(count, 'rule of what cells take', 'rules of what cells take'),
  look: (count) => counted(count, 'look that follows the cells', 'looks that follow the cells'),
  chart: (count) => counted(count, 'chart'),
  picture: (count) => counted(count, 'picture')
}

function counted(count: number, one: string, more = `${one}s`): string {
  return count === 1 ? `a ${one}` : `${String(count)} ${more}`
}

/** “2 charts on Client report and the page set-up on Estimate”. */
export function refusedWords(refused: readonly Refused[]): string {
  const sheets = [...new Set(refused.map(({ sheetName }) => sheetName))]
  return listed(
    sheets.map((sheet) => {
      const kinds = refused.filter(({ sheetName }) => sheetName === sheet).map(({ kind }) => kind)
      const each = [...new Set(kinds)].map((kind) =>
        things[kind](kinds.filter((other) => other === kind).length)
      )
      return `${listed(each)} on ${sheet}`
    })
  )
}

/** One sentence for everything that the spreadsheet did not take; null where it took all. */
export function missingFrom(refused: readonly Refused[]): Problem | null {
  return refused.length === 0 ? null : problem('written-without', '', { text: refusedWords(refused) })
}

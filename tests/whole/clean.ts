/** What no output may ever hold: a number that is none, printed as a word or stored as a cell. */
import type { WrittenFile } from './writtenFile'

/** Words of the machine; a user's own text in quotation marks is theirs and may hold anything. */
const machineWords =
  /\b(?:NaN|Infinity|undefined|null|object Object)\b|(?<![\w\p{P}])[-−]0(?:[.,]0+)?(?![\w.,]|%)/u

const withoutQuotes = (text: string): string => text.replace(/“[^”]*”/g, '“”')

/** Lines of a text that hold such a word. */
export function machineWordsIn(text: string): string[] {
  return text.split('\n').filter((line) => machineWords.test(withoutQuotes(line)))
}

/** Places in printed JSON that hold such a word, or no number where the interface promises one. */
export function machineWordsInJson(value: unknown, path = ''): string[] {
  if (typeof value === 'string') return machineWordsIn(value).map((line) => `${path}: ${line}`)
  if (typeof value === 'object' && value !== null)
    return Object.entries(value).flatMap(([key, each]) => machineWordsInJson(each, `${path}/${key}`))
  const always = /\/(?:allowedRemoval|visit|year|dose|share|objective|crewHours|row|trees|limbs|cuts)$/
  // How a limb ends has a visit and a year only where a visit or a year makes it so.
  if (value === null && always.test(path) && !path.includes('/outcomes/'))
    return [`${path}: null where a number is promised`]
  return typeof value === 'number' && !Number.isFinite(value) ? [`${path}: ${String(value)}`] : []
}

/** The sheets that the product words; any other holds the inventory as a person typed it, whatever it says. */
const worded =
  /^(Cut plan|Estimate|Client report|Work order|Round sheet|Specification|Rules|Rates|Job details)\b/

/** Cells of the worded sheets that hold such a word. */
function wordedCells({ sheets }: WrittenFile): string[] {
  return sheets
    .filter(({ name }) => worded.test(name))
    .flatMap(({ name, cells }) =>
      cells
        .filter(({ text }) => text !== null && machineWordsIn(text).length > 0)
        .map(({ address, text }) => `${name}!${address}: ${String(text)}`)
    )
}

/** Places in a written file that hold such a word: cells, headers, alternative texts, charts, everything. */
export function machineWordsInFile(file: WrittenFile): string[] {
  const typed = new Set(
    file.sheets.filter(({ name }) => !worded.test(name)).flatMap(({ cells }) => cells.map(({ text }) => text))
  )
  const texts = file.everything
    .filter(({ value }) => !typed.has(value) && machineWordsIn(value).length > 0)
    .map(({ part, value }) => `${part}: ${value}`)
  const numbers = file.chartNumbers
    .filter((value) => value === '' || !Number.isFinite(Number(value)) || Object.is(Number(value), -0))
    .map((value) => `a chart holds “${value}”`)
  return [...file.faults, ...texts, ...wordedCells(file), ...numbers]
}

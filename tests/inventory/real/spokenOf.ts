import { splitAddress, unquoted, type Printed } from './commandOutput'
import { kinds } from './kinds'
import type { Kind } from './expected'
import { columnIndex } from './workbookFile'

type Told = Printed['problems'][number]

interface Area {
  left: number
  right: number
  top: number
  bottom: number
}

/** The cells and ranges that a text names. */
export function areas(text: string): Area[] {
  const found = text.matchAll(/(?<![A-Za-z])\$?([A-Z]{1,2})\$?(\d+)(?::\$?([A-Z]{1,2})\$?(\d+))?/g)
  return [...found].map(([, left = '', top = '', right = left, bottom = top]) => ({
    left: columnIndex(left),
    right: columnIndex(right),
    top: Number(top),
    bottom: Number(bottom)
  }))
}

/** The rows that a text names as rows: "rows 12, 14 to 16 and 20". */
function rowsNamed(text: string): [number, number][] {
  const lists = text.matchAll(/\brows? ((?:\d+(?:,? (?:and|to)|[–:-]|,)? ?)+)/gi)
  return [...lists].flatMap(([, list = '']) =>
    [...list.matchAll(/(\d+)(?: to |[–:-])?(\d+)?/g)].map(([whole, from = '', to]): [number, number] => [
      Number(from),
      /to |[–:-]/.test(whole) && to !== undefined ? Number(to) : Number(from)
    ])
  )
}

const textOf = ({ message, remedy }: Told) => unquoted(`${message} ${remedy}`)

function onSheet(told: Told, sheet: string): boolean {
  return sheet === '' || `${told.cell} ${told.message}`.includes(sheet) || !told.cell.includes('!')
}

/** A problem of this kind that names this cell. */
export function isTold({ problems }: Printed, address: string, kind: Kind): boolean {
  const { sheet, cell } = splitAddress(address)
  const [wanted] = areas(cell)
  return problems.some((told) => {
    if (!kinds[kind].test(textOf(told))) return false
    if (wanted === undefined) return true
    const here = areas(`${told.cell} ${unquoted(told.message)}`)
    const covers = ({ left, right, top, bottom }: Area) =>
      left <= wanted.left && right >= wanted.left && top <= wanted.top && bottom >= wanted.top
    return onSheet(told, sheet) && here.some(covers)
  })
}

/** A problem of this kind that names this row: `12`, or `Zone 1!12`; or a whole sheet: `Prices!`. */
export function isLeftOutAloud({ problems }: Printed, place: string, kind: Kind): boolean {
  const [, sheet = '', row = ''] = /^(?:(.*)!)?(\d*)$/.exec(place) ?? []
  return problems.some((told) => {
    if (!kinds[kind].test(textOf(told)) || !onSheet(told, sheet)) return false
    if (row === '') return `${told.cell} ${told.message}`.includes(sheet)
    const spans = areas(told.cell).map(({ top, bottom }) => [top, bottom] as const)
    return [...spans, ...rowsNamed(told.message)].some(
      ([from, to]) => from <= Number(row) && to >= Number(row)
    )
  })
}

/** Cells that a remedy sends a person to though they stand in no column that the problem speaks of. */
export function strayRemedies({ problems }: Printed): string[] {
  return problems
    .filter((told) => {
      const own = areas(`${told.cell} ${unquoted(told.message)}`)
      return areas(unquoted(told.remedy)).some(
        (sent) => own.length > 0 && !own.some(({ left, right }) => left <= sent.left && right >= sent.left)
      )
    })
    .map(({ message, remedy }) => `${message} ${remedy}`)
}

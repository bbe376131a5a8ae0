/** Lines that say nothing of a tree: blank ones between the rows, titles above and notes below. */
import fc from 'fast-check'
import type { ShapeRow, ShapeSheet } from './shape'

const titles = [
  ['Tree survey, Elm Street (invented)'],
  ['Young tree pruning 2026'],
  ['Surveyed by:', 'A. Person'],
  ['Date:', '2026-05-04'],
  ['All heights by pole'],
  ['Client: Example Homeowners (invented)'],
  ['', '', 'Inventory of shade trees'],
  ['Sheet 1 of 1']
] as const

const notes = [
  ['Notes: all heights by pole.'],
  ['* measured from the sidewalk side'],
  ['Surveyed by A. Person'],
  ['Total trees: 12'],
  ['Signed: ____________'],
  ['Leaves were on when this was surveyed, and two trees stood in shade.']
] as const

export interface Lines {
  readonly blanks?: readonly number[]
  readonly titles?: readonly number[]
  readonly notes?: readonly number[]
}

export const blankPlaces = fc.array(fc.nat(40), { minLength: 1, maxLength: 4 })
export const titleTurns = fc.array(fc.nat(titles.length - 1), { minLength: 1, maxLength: 3 })
export const noteTurns = fc.array(fc.nat(notes.length - 1), { minLength: 1, maxLength: 2 })

const blank: ShapeRow = { kind: 'blank', cells: [] }

export function withLines(sheet: ShapeSheet, lines: Lines): ShapeSheet {
  const rows = [...sheet.rows]
  for (const place of lines.blanks ?? []) {
    const data = rows.flatMap(({ kind }, at) => (kind === 'data' ? [at] : []))
    rows.splice(data[place % data.length] ?? rows.length, 0, blank)
  }
  const above = (lines.titles ?? []).map((turn): ShapeRow => ({ kind: 'title', cells: titles[turn] ?? [] }))
  const below = (lines.notes ?? []).map((turn): ShapeRow => ({ kind: 'note', cells: notes[turn] ?? [] }))
  return {
    ...sheet,
    rows: [
      ...above,
      ...(above.length > 0 ? [blank] : []),
      ...rows,
      ...(below.length > 0 ? [blank] : []),
      ...below
    ]
  }
}

import { cellPrinter, cutHeader } from '../plan/cutCells'
import { cutColumns, type CutColumnName, type CutRow } from '../plan/cutColumns'
import type { Plan, TreePlan } from '../plan/plan'
import type { UnitSystem } from '../../shared/units'
import { cutFormats } from './cellFormats'
import { cellsOf, type Column } from './columns'
import type { Content } from './sheet'

/** Columns of a table of cuts that a sheet chooses by name, each with its width in characters, and whether it stands out. */
type CutLayout = readonly (readonly [column: CutColumnName, width: number, strong?: 'bold'])[]

/** Columns of cuts as a sheet sets them. */
function columnsOfCuts(layout: CutLayout, system: UnitSystem): Column<CutRow>[] {
  return layout.map(([name, width, strong]) => {
    const format = cutFormats[cutColumns[name].kind]
    return {
      header: cutHeader(name, system),
      width,
      format: strong === undefined ? format : { ...format, bold: true },
      of: cellPrinter(name, system)
    }
  })
}

/**
 * The table of the cut plan, from the left: what is done, which is printed, then how it came about, for the screen. Each
 * column is as wide as the longest word of its header.
 */
const layout = [
  ['tree', 11],
  ['about', 13],
  ['visit', 6.5],
  ['year', 6],
  ['limb', 8],
  ['number', 5],
  ['instruction', 22.5],
  ['must', 8],
  ['height', 8],
  ['diameter', 9.5],
  ['lateral', 9],
  ['tip', 8],
  ['dose', 9.5],
  ['visitDose', 9.5],
  ['allowed', 9.5],
  ['ratio', 10],
  ['nextRatio', 11],
  ['priority', 9],
  ['urgency', 9.5],
  ['nextPriority', 10],
  ['large', 16],
  ['why', 90]
] as const satisfies CutLayout

type PlacedColumn = (typeof layout)[number][0]

/** Width of each column in characters. */
export const cutWidths: number[] = layout.map(([, width]) => width)

/** Columns that are printed, in type that can be read. */
export const printedCutColumns = layout.findIndex(([name]) => name === 'visitDose')

/** Where a column stands in the table of the cut plan, from 0. */
export function cutColumnAt(name: PlacedColumn): number {
  return layout.findIndex(([each]) => each === name)
}

const columns: Record<UnitSystem, Column<CutRow>[]> = {
  'in-ft': columnsOfCuts(layout, 'in-ft'),
  'cm-m': columnsOfCuts(layout, 'cm-m')
}

/** The columns of the cut plan, lengths in the units of a system. */
export function planColumns(system: UnitSystem): Column<CutRow>[] {
  return columns[system]
}

/** Adds the cuts of a tree by visit, obligations first, then the most urgent limb. Gives how many there are. */
export function addCutRows(
  rows: Content[][],
  { tree, visits }: TreePlan,
  { system, rules }: Pick<Plan, 'system' | 'rules'>,
  sources: { add(source: string): void }
): number {
  const before = rows.length
  for (const visit of visits)
    for (const cut of visit.cuts) {
      rows.push(cellsOf(columns[system], { tree, visit, cut, rules }))
      sources.add(cut.source)
    }
  return rows.length - before
}

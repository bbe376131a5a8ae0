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

/** The table of the cut plan, from the left. */
const layout = [
  ['tree', 16],
  ['about', 22],
  ['visit', 6],
  ['year', 6],
  ['limb', 8],
  ['instruction', 34],
  ['must', 8],
  ['diameter', 10],
  ['lateral', 10],
  ['height', 10],
  ['tip', 9],
  ['dose', 9],
  ['visitDose', 9],
  ['allowed', 9],
  ['ratio', 10],
  ['nextRatio', 11],
  ['priority', 8],
  ['urgency', 9],
  ['nextPriority', 10],
  ['large', 16],
  ['why', 48]
] as const satisfies CutLayout

type PlacedColumn = (typeof layout)[number][0]

/** Width of each column in characters. */
export const cutWidths: number[] = layout.map(([, width]) => width)

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

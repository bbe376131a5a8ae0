import { readInventory } from '../src/inventory/readInventory'
import { cutHeader, exactCell } from '../src/plan/cutCells'
import type { CutColumnName } from '../src/plan/cutColumns'
import { byUrgency, type Plan } from '../src/plan/plan'
import { planInventory } from '../src/plan/planInventory'
import type { Cell } from '../shared/cells'
import { isRefusal, refuse, type Refusal } from '../shared/refusal'
import { defaultRules } from '../shared/rules'
import { showDate } from '../shared/words/dates'
import { number, type Argument } from './argument'
import { isBlankFor, readCell } from './cell'
import { cellError, isNotice, noticeMark } from './cellError'
import { toGrid, type Cells } from './grid'
import { plainCell } from './plainCell'

/** 0 stands for every visit. */
const visitArgument: Argument<number> = {
  ...number('visit', { over: 0, most: defaultRules.horizonVisits, fallback: 0, advice: 'give its number' }),
  fallback: 0
}

/** The plan of an inventory as rows of cells, or the error that says why there is none. */
export function cutPlan(given: unknown, visit: unknown): Cells {
  const cells = toGrid(given).map((row) => row.map(plainCell))
  if (cells.every((row) => row.every((cell) => cell === 0 || isBlankFor(visitArgument, cell)))) return [['']]
  const only = visitOf(visit)
  if (isRefusal(only)) throw cellError(only)
  if (typeof only === 'string') return [[only]]
  const plan = planOf(cells)
  if (isRefusal(plan)) throw cellError(plan)
  return [...tableOf(plan, only), ...unplannedRows(plan)]
}

function visitOf(given: unknown): number | string | Refusal {
  const grid = toGrid(given)
  if (grid.length > 1 || (grid[0]?.length ?? 0) > 1) return refuse('visit is a range: give one number.')
  const cell = plainCell(grid[0]?.[0])
  if (isNotice(cell)) return cell
  const value = readCell(visitArgument, cell)
  return isRefusal(value) || Number.isInteger(value)
    ? value
    : refuse(`visit is ${value}: give a whole number.`)
}

/** The engine has no clock; what was cut before is counted back from the year in which the sheet calculates. */
function planOf(cells: Cell[][]): Plan | Refusal {
  const inventory = readInventory({ rows: cells, sheet: '', top: 0, left: 0 })
  const stop = inventory.problems.find(({ level }) => level === 'stop')
  if (stop) return refuse(`${stop.message} ${stop.remedy}`)
  return planInventory(inventory, { date: showDate(new Date()) })
}

/** The columns of the spilled table. They are public once released: none is moved, renamed or taken away then. */
const columns = [
  'tree',
  'visit',
  'limb',
  'cut',
  'diameter',
  'lateral',
  'dose',
  'visitDose',
  'allowed',
  'priority',
  'nextPriority',
  'why'
] as const satisfies CutColumnName[]

function tableOf({ system, trees }: Plan, only: number): Cells {
  const rows: Cells = [columns.map((name) => cutHeader(name, system, 'formula'))]
  for (const { tree, visits } of byUrgency({ trees }))
    for (const visit of visits)
      if (only === 0 || visit.visit === only)
        for (const cut of visit.cuts)
          rows.push(columns.map((name) => exactCell(name, { tree, visit, cut }, system) ?? ''))
  return rows
}

function unplannedRows(plan: Plan): Cells {
  const blanks = new Array<string>(columns.length - 2).fill('')
  return plan.unplanned.map(({ tree, reason }) => [tree, ...blanks, noticeMark + reason])
}

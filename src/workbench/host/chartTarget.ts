/** One chart of a sheet, as the host's objects reach it. */
import type { Chart } from '../book'
import { itemNotFound } from './faults'
import { writable, type SheetTarget } from './session'

export interface ChartTarget extends SheetTarget {
  id: string
}

export function chartOf({ session, sheetId, id }: ChartTarget): Chart {
  const known = session.book.charts(sheetId).find((other) => other.id === id)
  if (!known) throw itemNotFound('chart of that id')
  return known
}

export function changeChart(target: ChartTarget, change: Partial<Chart>): void {
  chartOf(target)
  writable(target.session, target.sheetId).changeChart(target.id, change)
}

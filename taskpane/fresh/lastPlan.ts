import type { SheetsRead } from '../surface'

/** Under this key the workbook keeps what was planned and written last. */
export const lastPlanKey = 'limbwright.plan'

/** What was planned and written last: where it was read, and for which day. */
export interface LastPlan {
  /** The only range that was read, or null for all of the inventory. */
  readonly range: string | null
  /** Where the inventory stands, as the pane names it. */
  readonly address: string
  readonly date: string
}

/** As the workbook keeps it. */
export function lastPlanText({ range }: SheetsRead, address: string, date: string): string {
  return JSON.stringify({ range, address, date } satisfies LastPlan)
}

/** What the workbook keeps of it; null where that is nothing, or nothing that can be understood. */
export function readLastPlan(kept: unknown): LastPlan | null {
  if (typeof kept !== 'string') return null
  try {
    const { range, address, date } = JSON.parse(kept) as Partial<Record<keyof LastPlan, unknown>>
    if (typeof address !== 'string' || typeof date !== 'string') return null
    return range === null || typeof range === 'string' ? { range, address, date } : null
  } catch {
    return null
  }
}

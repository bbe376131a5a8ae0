import { problem, type Problem } from '../../shared/problems'

/** True for a failure given back as a value. */
export function isProblem(value: unknown): value is Problem {
  return typeof value === 'object' && value !== null && 'remedy' in value && 'code' in value
}

/** A sentence for what Excel refused. Error codes: Office Add-ins documentation, Excel JavaScript API error codes. */
export function problemFrom(error: unknown): Problem {
  const code = (error as { code?: unknown }).code
  if (code === 'InvalidOperationInCellEditMode') return problem('cell-editing', '')
  if (code === 'InvalidSelection') return problem('not-cells', '')
  if (code === 'InactiveWorkbook' || code === 'InvalidOperationInInactiveWorkbook')
    return problem('other-workbook', '')
  if (code === 'UnsupportedSheet') return problem('chart-sheet', '')
  if (code === 'AccessDenied') return problem('sheet-protected', '', { cell: 'in question' })
  const message = error instanceof Error ? error.message : String(error)
  return problem('spreadsheet-failed', '', { text: message.replace(/\s+/g, ' ').slice(0, 200) })
}

/** A person pressed cancel: this is passed on as it is, everything else becomes a problem. */
export function isAbort(error: unknown): boolean {
  return (error as { name?: unknown } | null)?.name === 'AbortError'
}

/**
 * Runs a batch of Excel. Excel's refusals come back as problems; a canceled run rejects with the signal's AbortError.
 * `wait` holds a read back until the person has finished typing in a cell.
 */
export async function inExcel<T>(
  work: (context: Excel.RequestContext) => Promise<T>,
  { wait }: { wait: boolean }
): Promise<T | Problem> {
  try {
    return await (wait ? Excel.run({ delayForCellEdit: true }, work) : Excel.run(work))
  } catch (error) {
    if (isAbort(error) || !isFromExcel(error)) throw error
    return problemFrom(error)
  }
}

/** Excel's own errors carry a code; anything else is a bug of ours and is not reworded. */
export function isFromExcel(error: unknown): boolean {
  return error instanceof OfficeExtension.Error
}

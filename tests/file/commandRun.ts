import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { writeXlsx } from 'hucre/xlsx'
import type { Cell } from '../../shared/cells'
import type { SheetDescription } from '../../src/sheets/sheet'
import { runCommandLine } from '../../src/file/commandLine'
import { sampleInventory } from '../../src/file/sampleInventory'

/** Runs the command line as on this day in this folder, and keeps what it said. */
export async function commandRun(folder: string, today: string, args: string[]) {
  const out: string[] = []
  const failures: string[] = []
  const code = await runCommandLine(args, {
    out: (text) => out.push(text),
    fail: (sentence) => failures.push(sentence),
    today,
    folder
  })
  return { code, out: out.join('\n'), failures }
}

/**
 * A workbook of the invented sample and a sheet of the user's own, under another name than ours, found by its hidden
 * name; the second column of the rows named holds what was typed.
 */
export async function workbookWith(
  folder: string,
  own: { sheet: string; hiddenName: string; rows: SheetDescription['rows'] },
  typed: Record<string, Cell>
): Promise<string> {
  const rows = own.rows.map((row) => {
    const cells = row.map((content): Cell => (typeof content === 'object' ? null : content))
    const name = String(cells[0])
    if (name in typed) cells[1] = typed[name] ?? null
    return cells
  })
  const path = join(folder, 'trees.xlsx')
  const sheets = [
    { name: 'Inventory', rows: sampleInventory },
    { name: own.sheet, rows }
  ]
  const namedRanges = [{ name: own.hiddenName, range: `'${own.sheet}'!$A$1` }]
  writeFileSync(path, await writeXlsx({ sheets, namedRanges }))
  return path
}

/**
 * An id that a spreadsheet has already is to be avoided (Microsoft, "Naming and localization for custom functions"). The
 * names are those that the grid of the workbench lists for its own engine of formulas, English ones as in Excel.
 */
import { execFileSync } from 'node:child_process'
import { join } from 'node:path'
import golden from './golden.json'

/** The engine is a module of its own kind: it is asked in a process of its own. */
const asking = `
  const engine = await import('@univerjs/engine-formula')
  const lists = Object.entries(engine).filter(([name]) => name.startsWith('FUNCTION_NAMES_'))
  console.log(JSON.stringify(lists.flatMap(([, names]) => Object.values(names))))`

const builtIn = new Set(
  JSON.parse(
    execFileSync(process.execPath, ['--input-type=module', '--eval', asking], {
      cwd: join(__dirname, '..', '..'),
      encoding: 'utf8'
    })
  ) as string[]
)

test('the list knows the functions of a spreadsheet', () => {
  expect(builtIn.size).toBeGreaterThan(400)
  for (const name of ['SUM', 'PRICE', 'YIELD', 'XLOOKUP']) expect(builtIn).toContain(name)
})

test('no cell function has the name of a built-in one', () => {
  expect(Object.keys(golden).filter((id) => builtIn.has(id))).toEqual([])
})

test('no id reads as the address of a cell', () => {
  for (const id of Object.keys(golden)) {
    expect(id).not.toMatch(/^[A-Z]{1,3}\d+$/)
    expect(id).not.toMatch(/^R\d*C\d*$/)
  }
})

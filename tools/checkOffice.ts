/**
 * Checks the documents in a spreadsheet program that is not ours: LibreOffice opens what the command line would write,
 * recalculates every formula, and prints every document of several inventories with and without the metric font. With
 * names of documents behind it (`npm run check:office -- work-order`) only these are printed and nothing else is checked.
 */
import { mkdirSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import { planDocuments } from '../src/sheets/describeDocuments'
import { checkFormulas } from './office/formulas'
import { MissingProgram, OfficeSuite, type Fonts } from './office/officeSuite'
import { checkStandard } from './office/openXml'
import { checkPrints } from './office/prints'

const folder = join(__dirname, '..', 'build', 'office')

const given = process.argv.slice(2)
const wanted = given.length === 0 ? planDocuments : planDocuments.filter((kind) => given.includes(kind))

function freshFolder(name: string): string {
  const path = join(folder, name)
  rmSync(path, { recursive: true, force: true })
  mkdirSync(path, { recursive: true })
  return path
}

async function checkFigures(): Promise<string[]> {
  const into = freshFolder('figures')
  const suite = new OfficeSuite(into)
  console.log(`The sample’s documents in ${suite.version()}:`)
  const file = join(into, 'sample.xlsx')
  return [...(await checkFormulas(suite, into, file)), ...(await checkStandard(file, into))]
}

async function checkFonts(fonts: Fonts): Promise<string[]> {
  const into = freshFolder(fonts)
  return checkPrints(new OfficeSuite(into, fonts), into, fonts, wanted)
}

async function main(): Promise<number> {
  const failures = [
    ...(given.length === 0 ? await checkFigures() : []),
    ...(await checkFonts('metric font')),
    ...(await checkFonts('fallback font'))
  ]
  for (const failure of failures) console.error(failure)
  console.log(`Pictures of the pages are kept in ${join('build', 'office')}.`)
  return failures.length === 0 ? 0 : 1
}

main().then(
  (code) => {
    process.exitCode = code
  },
  (error: unknown) => {
    console.error(error instanceof Error ? error.message : error)
    process.exitCode = error instanceof MissingProgram ? 2 : 1
  }
)

import {
  copyFileSync,
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync
} from 'node:fs'
import { join, resolve } from 'node:path'
import { parseArgs } from 'node:util'
import { build, type Plugin } from 'esbuild'
import { functionMetadata } from './functionMetadata'
import { helpPages } from './helpPages'
import { checkedBase, checkedOffice, checkedSupport, developmentBase, manifestFor } from './manifest'
import { hostedOffice, loadingScript, panePage, serverPolicy } from './pane'
import { paneStyle } from './style'

const root = join(__dirname, '..')
const from = (...parts: string[]): string => join(root, ...parts)

/** What a build is for. `before` are addresses of scripts that the page loads ahead of office.js. */
export interface BuildOptions {
  out: string
  base: string
  office: string
  before?: string[]
  /** Where a person asks for help; the list of cell functions where there is no such page. */
  support?: string
}

/** Builds the add-in into a folder that can be served as it is. Nothing of office.js is copied. */
export async function buildAddin({ out, base, office, before, support }: BuildOptions): Promise<void> {
  const address = checkedBase(base)
  const write = (name: string, content: string): void => writeFileSync(join(out, name), content)
  emptyOwnFolder(out)
  mkdirSync(join(out, 'help'), { recursive: true })
  mkdirSync(join(out, 'icons'))
  await Promise.all([
    script(from('taskpane', 'loading', 'loading.ts'), join(out, loadingScript)),
    script(from('functions', 'main.ts'), join(out, 'functions.js')),
    script(from('taskpane', 'main.ts'), join(out, 'taskpane.js')),
    script(from('taskpane', 'documents.ts'), join(out, lateScript), 'esm'),
    functionMetadata(address).then((metadata) => write('functions.json', JSON.stringify(metadata, null, 2)))
  ])
  write('taskpane.css', paneStyle())
  write('taskpane.html', panePage(readFileSync(from('taskpane', 'taskpane.html'), 'utf8'), office, before))
  write('content-policy.txt', `Content-Security-Policy: ${serverPolicy(office)}\n`)
  write('manifest.xml', manifestFor(readFileSync(from('manifest.xml'), 'utf8'), address, support))
  for (const [name, page] of helpPages()) write(join('help', name), page)
  copyFileSync(from('tools', 'help.css'), join(out, 'help', 'help.css'))
  for (const name of readdirSync(from('assets', 'icons')))
    copyFileSync(from('assets', 'icons', name), join(out, 'icons', name))
}

const ownNames =
  /^(functions\.js(on)?|(documents|loading)\.js|content-policy\.txt|taskpane\.(html|js|css)|manifest\.xml|help|icons)$/

/** Clears an earlier build away; a folder that holds anything else is left alone. */
function emptyOwnFolder(out: string): void {
  if (!existsSync(out)) return
  const other = readdirSync(out).find((name) => !ownNames.test(name))
  if (other !== undefined)
    throw new Error(`${out} holds ${other}, which no build of ours wrote: give an empty folder`)
  rmSync(out, { recursive: true })
}

/** Documents and drawings, which the pane fetches when somebody opens a tree or writes a sheet. */
const lateScript = 'documents.js'

/** Leaves the one `import('./documents')` to the browser, which finds the script beside the pane's own. */
const fetchedLate: Plugin = {
  name: 'fetched-late',
  setup: ({ onResolve }) => {
    onResolve({ filter: /^\.\/documents$/ }, ({ kind }) =>
      kind === 'dynamic-import' ? { path: `./${lateScript}`, external: true } : null
    )
  }
}

/**
 * One script from a module and all it needs, classic unless it is fetched by another; license notices of libraries stay
 * at its end.
 */
export async function script(entry: string, outfile: string, format: 'iife' | 'esm' = 'iife'): Promise<void> {
  await build({
    entryPoints: [entry],
    outfile,
    bundle: true,
    minify: true,
    format,
    plugins: [fetchedLate],
    target: 'es2020',
    charset: 'utf8',
    legalComments: 'eof',
    logLevel: 'error'
  })
}

export const usage = `Builds the add-in into a folder that any web server can hand out.

  --base URL     where that folder will be served (https; ${developmentBase} if left out)
  --office URL   where the page loads Microsoft's office.js from: the address of your cloud
                 (${hostedOffice} if left out)
  --support URL  the page where your people ask for help, named in the manifest (the list of cell
                 functions if left out)
  --out FOLDER   dist if left out; a folder that holds anything else is left alone
`

async function main(): Promise<void> {
  const { values } = parseArgs({
    options: {
      base: { type: 'string', default: developmentBase },
      office: { type: 'string', default: hostedOffice },
      support: { type: 'string' },
      out: { type: 'string', default: 'dist' },
      help: { type: 'boolean', default: false }
    }
  })
  if (values.help) {
    console.log(usage)
    return
  }
  const support = values.support === undefined ? undefined : checkedSupport(values.support)
  const out = resolve(root, values.out)
  await buildAddin({ out, base: values.base, office: checkedOffice(values.office), support })
  console.log(`Built for ${checkedBase(values.base)} into ${out}`)
}

if (require.main === module)
  main().catch((error: unknown) => {
    console.error(error instanceof Error ? error.message : error)
    process.exitCode = 1
  })

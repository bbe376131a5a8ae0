/**
 * Builds what the server hands out, once for each state of the sources: the result lies in build/ under a key made from
 * the contents of every source file, so that a second start has nothing to build.
 */
import { createHash } from 'node:crypto'
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  utimesSync
} from 'node:fs'
import { join } from 'node:path'
import { hostedOffice } from '../../../tools/pane'

export const projectRoot = join(__dirname, '../../..')

const sources = [
  'shared',
  'src',
  'functions',
  'taskpane',
  'tools',
  'assets',
  'manifest.xml',
  'package-lock.json'
]

function addFiles(hash: ReturnType<typeof createHash>, path: string): void {
  if (!existsSync(path)) return
  try {
    for (const name of readdirSync(path).sort()) addFiles(hash, join(path, name))
  } catch {
    hash.update(path.slice(projectRoot.length)).update(readFileSync(path))
  }
}

function keyOf(kind: string, variant: string): string {
  const hash = createHash('sha256').update(variant)
  for (const source of sources) addFiles(hash, join(projectRoot, source))
  return `${kind}-${hash.digest('hex').slice(0, 16)}`
}

/** How many results are left standing: one that another server is handing out must not be deleted while in use. */
const kept = 6
/** A build that has taken this long, in milliseconds, was broken off. */
const abandoned = 600_000

function clearOlder(home: string, kind: string): void {
  const age = (name: string) => statSync(join(home, name), { throwIfNoEntry: false })?.mtimeMs ?? 0
  const all = readdirSync(home)
  const given = Date.now() - abandoned
  for (const name of all.filter((name) => name.startsWith('making-') && age(name) < given))
    rmSync(join(home, name), { recursive: true, force: true })
  const folders = all.filter((name) => name.startsWith(`${kind}-`))
  for (const name of folders.sort((a, b) => age(b) - age(a)).slice(kept))
    rmSync(join(home, name), { recursive: true, force: true })
}

/** The folder for this state of the sources, made by `make` where it is not there yet. */
async function once(kind: string, variant: string, make: (folder: string) => Promise<void>): Promise<string> {
  const home = join(projectRoot, 'build')
  const key = keyOf(kind, variant)
  const folder = join(home, key)
  if (existsSync(folder)) {
    const now = new Date()
    utimesSync(folder, now, now)
    return folder
  }
  mkdirSync(home, { recursive: true })
  const fresh = mkdtempSync(join(home, 'making-'))
  try {
    await make(fresh)
    if (!existsSync(folder)) renameSync(fresh, folder)
    clearOlder(home, kind)
  } finally {
    rmSync(fresh, { recursive: true, force: true })
  }
  return folder
}

/** Loaded where something has to be built, as the tools of a build are slow to load. */
const addinBuild = () => import('../../../tools/build')

/** The page's own scripts and the grid, and the script that joins the pane to the host. */
async function buildPage(folder: string): Promise<void> {
  const { build } = await import('esbuild')
  const common = {
    bundle: true,
    minify: true,
    target: 'es2022',
    legalComments: 'none',
    logLevel: 'error',
    define: { 'process.env.NODE_ENV': '"production"' }
  } as const
  const page = join(projectRoot, 'src/workbench/page')
  await build({
    ...common,
    entryPoints: { page: join(page, 'main.ts'), look: join(page, 'page.css') },
    outdir: folder,
    format: 'esm',
    splitting: true
  })
  const bridge = join(projectRoot, 'src/workbench/host/bridge.ts')
  await build({ ...common, entryPoints: { bridge }, outdir: folder, format: 'iife' })
}

export interface BuiltWorkbench {
  page: string
  addin: string
}

/** The workbench's page, and the add-in built to stand beside it with the office.js of this machine. */
export async function buildWorkbench(): Promise<BuiltWorkbench> {
  const folder = await once('workbench', '', async (fresh) => {
    const addin = join(fresh, 'addin')
    const { buildAddin } = await addinBuild()
    await Promise.all([
      buildPage(join(fresh, 'page')),
      buildAddin({
        out: addin,
        base: 'http://localhost/addin',
        office: '/office/office.js',
        before: ['/page/bridge.js']
      })
    ])
  })
  return { page: join(folder, 'page'), addin: join(folder, 'addin') }
}

/** The add-in as Excel loads it from this machine. */
export function buildForExcel(base: string): Promise<string> {
  return once('excel', base, async (fresh) => {
    const { buildAddin } = await addinBuild()
    await buildAddin({ out: fresh, base, office: hostedOffice })
  })
}

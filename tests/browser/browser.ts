/**
 * Finds a browser for the tests and the pictures: an installed Chrome, Chromium or Edge, or else the Chromium that the
 * development package @sparticuz/chromium carries. Where neither starts, it throws: a browser test never passes unseen.
 */
import { execFileSync } from 'node:child_process'
import { existsSync, mkdirSync, mkdtempSync, readFileSync, renameSync, rmSync } from 'node:fs'
import { delimiter, join } from 'node:path'
import { chromium, type Browser, type BrowserServer, type LaunchOptions } from 'playwright-core'

const root = join(__dirname, '../..')

const flags = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--font-render-hinting=none'
]

const names = [
  'google-chrome-stable',
  'google-chrome',
  'chromium',
  'chromium-browser',
  'microsoft-edge-stable',
  'microsoft-edge',
  'chrome.exe',
  'msedge.exe'
]

const places = [
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  '/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge',
  ...['PROGRAMFILES', 'PROGRAMFILES(X86)', 'LOCALAPPDATA'].flatMap((variable) =>
    ['Google/Chrome/Application/chrome.exe', 'Microsoft/Edge/Application/msedge.exe'].map((file) =>
      join(process.env[variable] ?? '', file)
    )
  )
]

/** The browsers installed on this machine. */
export function installedBrowsers(): string[] {
  const onPath = (process.env['PATH'] ?? '')
    .split(delimiter)
    .flatMap((folder) => names.map((name) => join(folder, name)))
  return [...onPath, ...places].filter((file) => file !== '' && existsSync(file))
}

interface Carried {
  file: string
  environment: Record<string, string>
}

function missesLibraries(file: string): boolean {
  try {
    return execFileSync('ldd', [file], { encoding: 'utf8' }).includes('not found')
  } catch {
    return true
  }
}

/**
 * Unpacks the carried browser into the build folder, in a process of its own because the package unpacks into the
 * temporary folder and decides by its environment whether to unpack the shared libraries too.
 */
function carriedBrowser(): Carried {
  const packed = join(root, 'node_modules/@sparticuz/chromium/package.json')
  const { version } = JSON.parse(readFileSync(packed, 'utf8')) as { version: string }
  const home = join(root, 'build', `browser-${version}`)
  if (!existsSync(join(home, 'chromium'))) {
    mkdirSync(join(root, 'build'), { recursive: true })
    const fresh = mkdtempSync(join(root, 'build', 'unpacking-'))
    const script = "require('@sparticuz/chromium').executablePath().then(() => process.exit(0))"
    execFileSync(process.execPath, ['-e', script], {
      cwd: root,
      env: { ...process.env, TMPDIR: fresh, AWS_EXECUTION_ENV: 'AWS_Lambda_nodejs20.x' }
    })
    try {
      renameSync(fresh, home)
    } catch {
      rmSync(fresh, { recursive: true, force: true })
    }
  }
  const file = join(home, 'chromium')
  const environment: Record<string, string> = {}
  if (missesLibraries(file)) environment['LD_LIBRARY_PATH'] = join(home, 'al2023', 'lib')
  if (!existsSync('/etc/fonts/fonts.conf')) environment['FONTCONFIG_PATH'] = join(home, 'fonts')
  return { file, environment }
}

/** Starts the first browser that works, in the way given. */
async function firstThatStarts<T>(start: (options: LaunchOptions) => Promise<T>): Promise<T> {
  const failures: string[] = []
  for (const executablePath of installedBrowsers()) {
    try {
      return await start({ executablePath, headless: true, args: flags })
    } catch (error) {
      failures.push(`${executablePath}: ${String(error).split('\n')[0]}`)
    }
  }
  try {
    const { file, environment } = carriedBrowser()
    const env = { ...(process.env as Record<string, string>), ...environment }
    return await start({ executablePath: file, headless: true, args: flags, env })
  } catch (error) {
    failures.push(`@sparticuz/chromium: ${String(error).split('\n').slice(0, 12).join('\n')}`)
  }
  throw new Error(
    `No browser could be started, so the browser tests cannot run. Install Chrome, Chromium or Edge and try again.\n${failures.join('\n')}`
  )
}

/** A browser of one's own. */
export function startBrowser(): Promise<Browser> {
  return firstThatStarts((options) => chromium.launch(options))
}

/** A browser that several processes share; each connects to its address. */
export function startBrowserServer(): Promise<BrowserServer> {
  return firstThatStarts((options) => chromium.launchServer(options))
}

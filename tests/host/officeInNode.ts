/**
 * Loads the unmodified Office client library in Node and joins it to our host over a book in memory: the same library
 * files that a development page loads, evaluated in the test's global scope. Nothing in them is patched.
 */
import { readFileSync } from 'node:fs'
import { basename, dirname, join } from 'node:path'
import { setBridge, type HostPort } from '../../src/workbench/host/bridgeObjects'
import { createHost, type Host, type HostOptions } from '../../src/workbench/host/host'
import { MemoryBook } from '../../src/workbench/memoryBook'

const library = dirname(require.resolve('@microsoft/office-js/dist/office.js'))
const page = 'https://localhost/taskpane.html'

/** Indirect, so that the library's declarations become globals as they do in a page. */
const evaluate = eval

interface Script {
  src?: string
  onload?: () => void
}

function runFile(name: string): void {
  evaluate(readFileSync(join(library, name), 'utf8'))
}

/** The library waits up to 10 s for scripts that it no longer needs: that keeps no process from its end. */
function freeLongTimers(): void {
  const { setTimeout: start } = globalThis
  const freeing = (call: () => void, after = 0, ...given: []): NodeJS.Timeout => {
    const timer = start(call, after, ...given)
    return after < 5000 ? timer : timer.unref()
  }
  globalThis.setTimeout = Object.assign(freeing, start)
}

/** As much of a document as the library looks at while it starts. */
function smallDocument() {
  const head = {
    appendChild(script: Script) {
      setTimeout(() => {
        const name = basename(new URL(script.src ?? '').pathname)
        runFile(script.src?.includes('/en-us/') ? join('en-us', name) : name)
        script.onload?.()
      }, 0)
      return script
    }
  }
  return {
    readyState: 'complete',
    URL: page,
    head,
    getElementsByTagName: (tag: string) =>
      tag === 'head' ? [head] : [{ src: 'https://localhost/office.js' }],
    createElement: () => ({ setAttribute: () => undefined }),
    addEventListener: () => undefined
  }
}

export interface OfficeInNode {
  Excel: typeof Excel
  Office: typeof Office
  OfficeExtension: typeof OfficeExtension
  CustomFunctions: typeof CustomFunctions
  book: MemoryBook
  host: Host
}

/**
 * Once in a test file: the library keeps one bridge for good. Resolves after the library's own start-up calls, so that
 * the requests a test counts are its own.
 */
export async function startOffice(
  book = new MemoryBook('Trees'),
  options?: HostOptions
): Promise<OfficeInNode> {
  const host = createHost(book, options)
  const started = startUp(host)
  Object.assign(globalThis, {
    window: globalThis,
    document: smallDocument(),
    location: new URL(page),
    history: {},
    navigator: { userAgent: 'Node' }
  })
  freeLongTimers()
  setBridge(globalThis as never, started.port)
  runFile('office.js')
  await Office.onReady()
  await started.done
  return { Excel, Office, OfficeExtension, CustomFunctions, book, host }
}

/** Passes everything on, and tells when both calls of the library's start have been answered. */
function startUp(host: Host): { port: HostPort; done: Promise<void> } {
  const awaited = ['CustomFunctions', 'AddinInternalService']
  let finish: () => void
  const done = new Promise<void>((resolve) => (finish = resolve))
  const port: HostPort = {
    listen: (send) => host.listen(send),
    readSettings: () => host.readSettings(),
    writeSettings: (settings) => host.writeSettings(settings),
    async process(body, flags) {
      const answer = await host.process(body, flags)
      const text = JSON.stringify(body)
      const met = awaited.findIndex((service) => text.includes(`.${service}"`))
      if (met >= 0) awaited.splice(met, 1)
      if (awaited.length === 0) setTimeout(finish, 0)
      return answer
    }
  }
  return { port, done }
}

/** The code of the error that the work ends with; undefined where it ends well. */
export async function errorOf(work: Promise<unknown>): Promise<OfficeExtension.Error | undefined> {
  try {
    await work
    return undefined
  } catch (error) {
    if (error instanceof OfficeExtension.Error) return error
    throw error
  }
}

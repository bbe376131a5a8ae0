/** The browser and the workbench that all browser tests share: started once in a run, before the first of them. */
import { chromium, type Browser, type BrowserServer } from 'playwright-core'
import { startBrowserServer } from './browser'
import { startWorkbench, type Workbench } from './workbench'

const names = { browser: 'LIMBWRIGHT_TEST_BROWSER', workbench: 'LIMBWRIGHT_TEST_WORKBENCH' } as const

let started: { server: BrowserServer; workbench: Workbench } | null = null

/** Starts both; the processes that run the tests inherit the addresses. */
export async function startShared(): Promise<void> {
  const [server, workbench] = await Promise.all([startBrowserServer(), startWorkbench()])
  started = { server, workbench }
  process.env[names.browser] = server.wsEndpoint()
  process.env[names.workbench] = workbench.address
}

export async function stopShared(): Promise<void> {
  await Promise.all([started?.server.close(), started?.workbench.stop()])
}

function addressOf(what: keyof typeof names): string {
  const address = process.env[names[what]]
  if (address === undefined)
    throw new Error(`No ${what} is shared: these tests run in the jest project “browser”.`)
  return address
}

/** A connection to the browser; closing it closes the pages that it opened, and nobody else's. */
export function connectBrowser(): Promise<Browser> {
  return chromium.connect(addressOf('browser'))
}

export const workbenchAddress = (): string => addressOf('workbench')

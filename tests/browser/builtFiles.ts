import { existsSync, readFileSync } from 'node:fs'
import { extname } from 'node:path'
import type { Route } from 'playwright-core'

const types: Record<string, string> = { '.html': 'text/html', '.js': 'text/javascript', '.css': 'text/css' }

/** Answers a request of the page with a file, or that there is none. */
export function answerWith(route: Route, file: string | null): Promise<void> {
  if (file === null || !existsSync(file)) return route.fulfill({ status: 404, body: '' })
  return route.fulfill({
    body: readFileSync(file),
    contentType: types[extname(file)] ?? 'application/octet-stream'
  })
}

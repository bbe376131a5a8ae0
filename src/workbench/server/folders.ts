/** Answers requests from folders of this machine: what each address may reach, and with which headers. */
import { createReadStream, statSync } from 'node:fs'
import type { IncomingMessage, ServerResponse } from 'node:http'
import { extname, join, normalize } from 'node:path'

export interface Folder {
  /** Begins and ends with "/". */
  address: string
  folder: string
  headers?: Record<string, string>
}

const types: Record<string, string> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.xml': 'application/xml; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.woff2': 'font/woff2',
  '.txt': 'text/plain; charset=utf-8'
}

function fileFor(folders: Folder[], path: string): { file: string; folder: Folder } | null {
  for (const folder of folders) {
    if (!path.startsWith(folder.address)) continue
    const rest = normalize(path.slice(folder.address.length) || 'index.html')
    if (rest.startsWith('..') || rest.includes('\0')) return null
    const file = join(folder.folder, rest)
    if (statSync(file, { throwIfNoEntry: false })?.isFile()) return { file, folder }
  }
  return null
}

/** Hosts under which this machine may be asked; anything else is another site reaching in through a name of its own. */
function isLocal(host: string | undefined): boolean {
  return /^(localhost|127\.0\.0\.1|\[::1\])(:\d+)?$/.test(host ?? '')
}

function refuse(response: ServerResponse, status: number, sentence: string): void {
  response.writeHead(status, { 'Content-Type': 'text/plain; charset=utf-8' })
  response.end(sentence)
}

/** The folders are tried in order. */
export function serveFolders(folders: Folder[]) {
  return (request: IncomingMessage, response: ServerResponse): void => {
    if (!isLocal(request.headers.host)) return refuse(response, 403, 'Only this machine is answered.\n')
    if (request.method !== 'GET' && request.method !== 'HEAD')
      return refuse(response, 405, 'Only reading is answered.\n')
    let path: string
    try {
      path = decodeURIComponent(new URL(request.url ?? '/', 'http://localhost').pathname)
    } catch {
      return refuse(response, 400, 'This address cannot be read.\n')
    }
    const found = fileFor(folders, path)
    if (found === null) return refuse(response, 404, 'There is no such file.\n')
    response.writeHead(200, {
      'Content-Type': types[extname(found.file)] ?? 'application/octet-stream',
      'Cache-Control': 'no-cache',
      'X-Content-Type-Options': 'nosniff',
      ...found.folder.headers
    })
    if (request.method === 'HEAD') response.end()
    else createReadStream(found.file).pipe(response)
  }
}

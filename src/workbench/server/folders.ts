/** Answers requests from folders of this machine: what each address may reach, and with which headers. */
import type { IncomingMessage, ServerResponse } from 'node:http'
import serveStatic from 'serve-static'

export interface Folder {
  /** Begins and ends with "/". */
  address: string
  folder: string
  headers?: Record<string, string>
}

/** Hosts under which this machine may be asked; anything else is another site reaching in through a name of its own. */
function isLocal(host: string | undefined): boolean {
  return /^(localhost|127\.0\.0\.1|\[::1\])(:\d+)?$/.test(host ?? '')
}

function refuse(response: ServerResponse, status: number, sentence: string): void {
  response.writeHead(status, { 'Content-Type': 'text/plain; charset=utf-8' })
  response.end(sentence)
}

type Answer = (request: IncomingMessage, response: ServerResponse, next: (error?: unknown) => void) => void

/** What one folder answers. An address that is none of its files, for whatever reason, goes on to the next folder. */
function answerFrom({ address, folder, headers = {} }: Folder): Answer {
  const answer = serveStatic(folder, {
    dotfiles: 'ignore',
    redirect: false,
    cacheControl: false,
    setHeaders: (response) => {
      const all = { 'Cache-Control': 'no-cache', 'X-Content-Type-Options': 'nosniff', ...headers }
      for (const [name, value] of Object.entries(all)) response.setHeader(name, value)
    }
  })
  return (request, response, next) => {
    const asked = request.url ?? '/'
    if (!asked.startsWith(address)) {
      next()
      return
    }
    request.url = `/${asked.slice(address.length)}`
    answer(request, response, (error) => {
      request.url = asked
      next(error)
    })
  }
}

/** The folders are tried in order. */
export function serveFolders(folders: readonly Folder[]) {
  const answers = folders.map(answerFrom)
  return (request: IncomingMessage, response: ServerResponse): void => {
    if (!isLocal(request.headers.host)) {
      refuse(response, 403, 'Only this machine is answered.\n')
      return
    }
    if (request.method !== 'GET' && request.method !== 'HEAD') {
      refuse(response, 405, 'Only reading is answered.\n')
      return
    }
    const tryFrom = (index: number): void => {
      const answer = answers[index]
      if (answer === undefined) refuse(response, 404, 'There is no such file.\n')
      else
        answer(request, response, (error) => {
          if (error === undefined) tryFrom(index + 1)
          else if (response.headersSent) response.destroy()
          else refuse(response, 404, 'There is no such file.\n')
        })
    }
    tryFrom(0)
  }
}

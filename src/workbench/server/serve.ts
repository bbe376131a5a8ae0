/** The two servers of `npm start`: the workbench over HTTP, or the add-in alone over HTTPS for sideloading. */
import { readFileSync } from 'node:fs'
import { createServer, type Server } from 'node:http'
import { createServer as createSecureServer } from 'node:https'
import { join } from 'node:path'
import { hostedOffice, serverPolicy } from '../../../tools/pane'
import { buildForExcel, buildWorkbench, projectRoot } from './built'
import { serveFolders } from './folders'
import { listen, StartFault } from './ports'

/** Nothing but this server may be asked for anything. Only the grid writes styles into its page; the pane needs none. */
const policyOf = (styles: string): string =>
  [
    "default-src 'none'",
    "script-src 'self'",
    `style-src ${styles}`,
    "img-src 'self' data: blob:",
    "font-src 'self' data:",
    "connect-src 'self'",
    "frame-src 'self'",
    "base-uri 'none'",
    "form-action 'none'",
    "frame-ancestors 'self'"
  ].join('; ')

export interface Serving {
  address: string
  close(): Promise<void>
}

function closing(server: Server): () => Promise<void> {
  return () =>
    new Promise((resolve) => {
      server.close(() => resolve())
      server.closeAllConnections()
    })
}

export async function serveWorkbench(port: number): Promise<Serving> {
  const server = createServer()
  const taken = await listen(server, port)
  const { page, addin } = await buildWorkbench()
  const headersOf = (styles: string) => ({
    'Content-Security-Policy': policyOf(styles),
    'Referrer-Policy': 'no-referrer'
  })
  const headers = headersOf("'self' 'unsafe-inline'")
  server.on(
    'request',
    serveFolders([
      { address: '/addin/', folder: addin, headers: headersOf("'self'") },
      { address: '/office/', folder: join(projectRoot, 'node_modules/@microsoft/office-js/dist'), headers },
      { address: '/page/', folder: page, headers },
      { address: '/', folder: join(projectRoot, 'src/workbench/page/static'), headers }
    ])
  )
  return { address: `http://localhost:${taken}`, close: closing(server) }
}

function readCertificate(file: string, what: string): Buffer {
  try {
    return readFileSync(file)
  } catch (error) {
    const missing = (error as NodeJS.ErrnoException).code === 'ENOENT'
    const why = missing ? 'is not there' : 'cannot be read'
    throw new StartFault(
      `The ${what} ${file} ${why}: make a pair with npx office-addin-dev-certs install and name its files.`
    )
  }
}

export async function serveForExcel(port: number, files: { cert: string; key: string }): Promise<Serving> {
  const cert = readCertificate(files.cert, 'certificate')
  const key = readCertificate(files.key, 'key')
  let server
  try {
    server = createSecureServer({ cert, key })
  } catch {
    throw new StartFault(`${files.cert} and ${files.key} are not a certificate and its key in PEM form.`)
  }
  const base = `https://localhost:${await listen(server, port)}`
  const folder = await buildForExcel(base)
  /** Excel on the web reads functions.json from its own site. */
  const headers = {
    'Access-Control-Allow-Origin': '*',
    'Content-Security-Policy': serverPolicy(hostedOffice)
  }
  server.on('request', serveFolders([{ address: '/', folder, headers }]))
  return { address: base, close: closing(server) }
}

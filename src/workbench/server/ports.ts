/** Listening on one port of this machine, and what to say when that does not work. */
import type { Server as PlainServer } from 'node:http'
import type { Server as SecureServer } from 'node:https'

/** Why the server did not start, as one sentence for the user. */
export class StartFault extends Error {}

function sentenceOf(error: NodeJS.ErrnoException, port: number): string {
  if (error.code === 'EADDRINUSE')
    return `Port ${port} is taken by another program: close it, or choose another with npm start -- --port ${port < 65535 ? port + 1 : 4680}.`
  if (error.code === 'EACCES')
    return `Port ${port} may not be used by this user: choose one above 1023, for instance npm start -- --port 4680.`
  return `Port ${port} could not be opened (${error.code ?? error.message}).`
}

/** Listens on the loopback address only, so that no other machine can reach it; resolves with the port. */
export function listen(server: PlainServer | SecureServer, port: number): Promise<number> {
  return new Promise((resolve, reject) => {
    server.once('error', (error) => reject(new StartFault(sentenceOf(error, port))))
    server.listen(port, '127.0.0.1', () => {
      const address = server.address()
      resolve(typeof address === 'object' && address !== null ? address.port : port)
    })
  })
}

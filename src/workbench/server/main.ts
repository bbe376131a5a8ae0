/** `npm start`: builds what is needed, serves it to this machine and says where. */
import { spawn } from 'node:child_process'
import { readOptions, usage } from './serverArguments'
import { StartFault } from './ports'
import { serveForExcel, serveWorkbench } from './serve'

/** Opens the address with the system's own opener; where there is none, the printed address is there to click. */
function openBrowser(address: string): void {
  const windows = process.platform === 'win32'
  const opener = process.platform === 'darwin' ? 'open' : windows ? 'cmd' : 'xdg-open'
  const parameters = windows ? ['/c', 'start', '', address] : [address]
  const child = spawn(opener, parameters, { stdio: 'ignore', detached: true })
  child.on('error', () => process.stderr.write(`No browser could be opened; open ${address} yourself.\n`))
  child.unref()
}

async function main(): Promise<void> {
  const options = readOptions(process.argv.slice(2))
  if (options === 'help') {
    process.stdout.write(usage)
    return
  }
  const serving = options.https
    ? await serveForExcel(options.port, options.https)
    : await serveWorkbench(options.port)
  const what = options.https ? 'Limbwright add-in for Excel' : 'Limbwright workbench'
  process.stdout.write(`${what}: ${serving.address}\n`)
  if (options.open) openBrowser(serving.address)
  for (const signal of ['SIGINT', 'SIGTERM'] as const)
    process.once(signal, () => void serving.close().then(() => process.exit(0)))
}

main().catch((error: unknown) => {
  const known = error instanceof StartFault
  process.stderr.write(`${known ? error.message : String(error instanceof Error ? error.stack : error)}\n`)
  process.exit(known ? 2 : 1)
})

/** The options of `npm start`. */
import { parseArgs } from 'node:util'
import { StartFault } from './ports'

export interface Options {
  port: number
  open: boolean
  /** Files of the certificate, where the add-in itself is served for Excel. */
  https: { cert: string; key: string } | null
}

export const workbenchPort = 4680
/** The development manifest names this one. */
export const addinPort = 3000

export const usage = `Limbwright workbench

  npm start                       the workbench on http://localhost:${workbenchPort}
  npm start -- --port N           on another port
  npm start -- --open             and opens it in the browser
  npm start -- --https --cert FILE --key FILE
                                  the add-in for Excel on https://localhost:${addinPort}
`

function portOf(text: string): number {
  const port = Number(text)
  if (!/^\d+$/.test(text) || port > 65535)
    throw new StartFault(`--port ${text} is not a port: give a whole number from 1 to 65535.`)
  return port
}

export function readOptions(parameters: string[]): Options | 'help' {
  const known = {
    port: { type: 'string' },
    open: { type: 'boolean' },
    https: { type: 'boolean' },
    cert: { type: 'string' },
    key: { type: 'string' },
    help: { type: 'boolean', short: 'h' }
  } as const
  let values
  try {
    values = parseArgs({ args: parameters, options: known }).values
  } catch (error) {
    throw new StartFault(`${(error as Error).message.split('\n')[0] ?? ''} See npm start -- --help.`)
  }
  if (values.help) return 'help'
  const { cert, key } = values
  if (values.https && (cert === undefined || key === undefined))
    throw new StartFault('--https needs a certificate: npm start -- --https --cert FILE --key FILE.')
  if (!values.https && (cert !== undefined || key !== undefined))
    throw new StartFault('--cert and --key go with --https: npm start -- --https --cert FILE --key FILE.')
  const port = values.port === undefined ? (values.https ? addinPort : workbenchPort) : portOf(values.port)
  return {
    port,
    open: values.open === true,
    https: cert !== undefined && key !== undefined ? { cert, key } : null
  }
}

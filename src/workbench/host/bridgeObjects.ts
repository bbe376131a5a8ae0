/**
 * The objects that office.js expects of a native host on Windows, set in the frame that loads it: the message bridge
 * for the batches, and `window.external` for the questions of the start. They must stand before office.js loads.
 */
import type { RequestBody } from './protocol'

/** What the pane's frame needs of the page around it. */
export interface HostPort {
  /** Answers one batch; flags as the client sent them. */
  process(body: RequestBody | string, flags?: number): Promise<string>
  /** What the add-in keeps in the workbook, each as the client serialized it. */
  readSettings(): Readonly<Record<string, string>>
  /** Takes the place of all that was kept. */
  writeSettings(settings: Readonly<Record<string, string>>): void
  /** Hands over each event message until the returned function is called. */
  listen(send: (message: string) => void): () => void
}

interface Bridge {
  sendMessageToHost(text: string): void
  /** Set by office.js while it loads. */
  onMessageFromHost?: (text: string) => void
}

interface ClientMessage {
  id: number
  type: number
  flags?: number
  message: { body: RequestBody | string }
}

type Frame = typeof globalThis & { _richApiNativeBridge?: Bridge; external?: object }

/** Excel for Windows, with the flags 1 (shared runtime) and 2 (custom functions) together. */
const hostInfo = 'Excel$Win32$16.01$en-US$$$$3'

const supported = JSON.stringify({
  ExcelApi: 1.14,
  SharedRuntime: 1.1,
  CustomFunctionsRuntime: 1.3,
  DelayForCellEdit: 1.1
})

/** Sets both objects; the returned function stops the events. */
export function setBridge(frame: Frame, port: HostPort): () => void {
  const bridge = messageBridge(port)
  frame._richApiNativeBridge = bridge
  frame.external = Object.assign(frame.external ?? {}, external(documentContext(port)))
  return port.listen((message) => bridge.onMessageFromHost?.(message))
}

function messageBridge(port: HostPort): Bridge {
  const bridge: Bridge = {
    sendMessageToHost(text) {
      const { id, type, flags, message } = JSON.parse(text) as ClientMessage
      void port
        .process(message.body, flags)
        .then((body) => ({ statusCode: 200, headers: {}, body }))
        .catch((error: unknown) => ({ statusCode: 500, headers: {}, body: String(error) }))
        .then((answer) => bridge.onMessageFromHost?.(JSON.stringify({ id, type, message: answer })))
    }
  }
  return bridge
}

/** The older calls: but for the settings none does more than say yes, since events travel over the message bridge. */
function external(context: object) {
  return {
    GetHostInfo: () => hostInfo,
    GetContext: () => context,
    GetLoggingAllowed: () => false,
    Execute: (_id: number, _parameters: unknown, done: (result: number[]) => void) => {
      done([0])
    },
    RegisterEvent: (_id: number, _target: string, _handler: unknown, done: (result: number) => void) => {
      done(0)
    },
    UnregisterEvent: (_id: number, _target: string, done: (result: number) => void) => {
      done(0)
    }
  }
}

/** The document's settings, in two lists that belong together. */
function documentSettings(port: HostPort) {
  return {
    Read: (keys: string[], values: string[]) => {
      for (const [key, value] of Object.entries(port.readSettings())) {
        keys.push(key)
        values.push(value)
      }
    },
    Write: (keys: string[], values: string[]) => {
      port.writeSettings(Object.fromEntries(keys.map((key, at) => [key, values[at] ?? ''])))
    }
  }
}

function documentContext(port: HostPort) {
  return {
    GetAppType: () => 1,
    GetSolutionRef: () => 'limbwright',
    GetAppVersionMajor: () => 16,
    GetAppVersionMinor: () => 1,
    GetAppUILocale: () => 1033,
    GetAppDataLocale: () => 1033,
    GetDocUrl: () => '',
    GetAppCapabilities: () => 1,
    GetActivationMode: () => 1,
    GetControlIntegrationLevel: () => 1,
    GetSolutionToken: () => '',
    GetSupportedMatrix: () => supported,
    GetHostFullVersion: () => '16.0.0.0',
    GetInitialDisplayMode: () => 0,
    GetOfficeThemeInfo: () => '{}',
    GetSettings: () => documentSettings(port)
  }
}

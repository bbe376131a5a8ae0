/** What `npm start` serves and says, as a command. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { createServer } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { request } from 'playwright-core'
import { certificate, key } from './certificate'
import { runStart, startWorkbench } from '../browser/workbench'

jest.setTimeout(60000)

describe('npm start', () => {
  test('serves the add-in for Excel over HTTPS, with functions.json open to Excel on the web', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'limbwright-'))
    writeFileSync(join(folder, 'cert.pem'), certificate)
    writeFileSync(join(folder, 'key.pem'), key)
    const serving = await startWorkbench([
      ...['--https', '--port', '0', '--cert', join(folder, 'cert.pem'), '--key', join(folder, 'key.pem')]
    ])
    const context = await request.newContext({ ignoreHTTPSErrors: true })
    try {
      const json = await context.get(`${serving.address}/functions.json`)
      expect(json.headers()['access-control-allow-origin']).toBe('*')
      expect(((await json.json()) as { functions: unknown[] }).functions.length).toBeGreaterThan(16)
      const pane = await context.get(`${serving.address}/taskpane.html`)
      expect(await pane.text()).toContain('https://appsforoffice.microsoft.com/lib/1/hosted/office.js')
      expect(pane.headers()['x-frame-options']).toBeUndefined()
      expect(serving.address).toMatch(/^https:\/\/localhost:/)
      const manifest = await context.get(`${serving.address}/manifest.xml`)
      expect(await manifest.text()).toContain(`${serving.address}/taskpane.html`)
    } finally {
      await context.dispose()
      await serving.stop()
      rmSync(folder, { recursive: true })
    }
  })

  test('a taken port gets a sentence and exit code 2', async () => {
    const other = createServer()
    await new Promise<void>((resolve) => other.listen(0, '127.0.0.1', resolve))
    const { port } = other.address() as { port: number }
    const run = await runStart(['--port', String(port)])
    other.close()
    expect(run).toMatchObject({ code: 2, output: '' })
    expect(run.errors).toBe(
      `Port ${port} is taken by another program: close it, or choose another with npm start -- --port ${port + 1}.\n`
    )
  })

  test.each([
    [['--port', 'many'], /--port many is not a port/],
    [['--https'], /--https needs a certificate/],
    [['--https', '--cert', 'no.crt', '--key', 'no.key'], /The certificate no\.crt is not there/],
    [['--frobnicate'], /--frobnicate/]
  ])('%j gets a sentence and exit code 2', async (parameters, sentence) => {
    const run = await runStart(parameters)
    expect(run.code).toBe(2)
    expect(run.errors.trim().split('\n')).toHaveLength(1)
    expect(run.errors).toMatch(sentence)
  })
})

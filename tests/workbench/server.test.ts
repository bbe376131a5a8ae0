import { mkdirSync, mkdtempSync, readdirSync, readlinkSync, rmSync, writeFileSync } from 'node:fs'
import { createServer, request, type Server } from 'node:http'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { readOptions, workbenchPort } from '../../src/workbench/server/serverArguments'
import { serveFolders } from '../../src/workbench/server/folders'
import { listen, StartFault } from '../../src/workbench/server/ports'

describe('the options of npm start', () => {
  test('without any, the workbench is served on its own port', () => {
    expect(readOptions([])).toEqual({ port: workbenchPort, open: false, https: null })
  })

  test('a port and the browser can be asked for', () => {
    expect(readOptions(['--port', '5000', '--open'])).toEqual({ port: 5000, open: true, https: null })
  })

  test('the add-in for Excel goes to port 3000, which the development manifest names', () => {
    expect(readOptions(['--https', '--cert', 'c', '--key', 'k'])).toEqual({
      port: 3000,
      open: false,
      https: { cert: 'c', key: 'k' }
    })
  })

  test.each([
    [['--port', '70000'], '--port 70000 is not a port'],
    [['--port', '1.5'], '--port 1.5 is not a port'],
    [['--https', '--cert', 'c'], '--https needs a certificate'],
    [['--key', 'k'], '--cert and --key go with --https'],
    [['extra'], "Unexpected argument 'extra'"]
  ])('%j is refused in a sentence', (parameters, sentence) => {
    expect(() => readOptions(parameters)).toThrow(StartFault)
    expect(() => readOptions(parameters)).toThrow(sentence)
  })
})

/** What an open file of this process leads to; nothing where it was closed meanwhile. */
function linkOf(fd: string): string {
  try {
    return readlinkSync(`/proc/self/fd/${fd}`)
  } catch {
    return ''
  }
}

describe('serving folders', () => {
  let home: string
  let server: Server
  let port: number

  beforeAll(async () => {
    home = mkdtempSync(join(tmpdir(), 'limbwright-'))
    mkdirSync(join(home, 'open'))
    writeFileSync(join(home, 'open', 'index.html'), '<p>first</p>')
    writeFileSync(join(home, 'open', 'a b.json'), '{}')
    writeFileSync(join(home, 'secret.txt'), 'secret')
    writeFileSync(join(home, 'open', '.hidden'), 'secret')
    const headers = { 'Content-Security-Policy': "default-src 'none'" }
    server = createServer(serveFolders([{ address: '/', folder: join(home, 'open'), headers }]))
    port = await listen(server, 0)
  })
  afterAll(() => {
    server.close()
    rmSync(home, { recursive: true })
  })

  /** A raw request, since fetch would tidy the path before sending it. */
  function ask(path: string, method = 'GET', host = `localhost:${port}`) {
    return new Promise<{ status: number; body: string; type: string; policy: string; sniff: string }>(
      (resolve, reject) => {
        const sent = request({ port, path, method, headers: { host } }, (answer) => {
          let body = ''
          answer.on('data', (part) => (body += String(part)))
          answer.on('end', () =>
            resolve({
              status: answer.statusCode ?? 0,
              body,
              type: String(answer.headers['content-type']),
              policy: String(answer.headers['content-security-policy']),
              sniff: String(answer.headers['x-content-type-options'])
            })
          )
        })
        sent.on('error', reject)
        sent.end()
      }
    )
  }

  test('gives a file with its type and the folder’s headers', async () => {
    expect(await ask('/a%20b.json')).toEqual({
      status: 200,
      body: '{}',
      type: 'application/json; charset=utf-8',
      policy: "default-src 'none'",
      sniff: 'nosniff'
    })
    expect(await ask('/')).toMatchObject({ status: 200, body: '<p>first</p>' })
    expect(await ask('/', 'HEAD')).toMatchObject({ status: 200, body: '' })
  })

  test.each([
    '/../secret.txt',
    '/%2e%2e/secret.txt',
    '/..%2fsecret.txt',
    '/x/../../secret.txt',
    '/nothing',
    '/%E0%A4%A'
  ])('does not leave its folder or invent files: %s', async (path) => {
    const { status, body } = await ask(path)
    expect([400, 404]).toContain(status)
    expect(body).not.toContain('secret\n')
    expect(body).not.toBe('secret')
  })

  test.each([
    ['a slash behind a file', '/index.html/'],
    ['a name that no system has', `/${'a'.repeat(5000)}`],
    ['a null', '/a%00b'],
    ['a file that begins with a dot', '/.hidden'],
    ['an address without a path', 'x']
  ])('%s is not found, and the next request is answered', async (_what, path) => {
    expect([400, 404]).toContain((await ask(path)).status)
    expect(await ask('/')).toMatchObject({ status: 200 })
  })

  test('a download that is broken off leaves no file open', async () => {
    writeFileSync(join(home, 'open', 'large.js'), Buffer.alloc(8 << 20))
    const opened = () =>
      readdirSync('/proc/self/fd')
        .map((fd) => linkOf(fd))
        .filter((to) => to.endsWith('large.js'))
    for (let index = 0; index < 20; index++)
      await new Promise<void>((resolve) => {
        const sent = request({ port, path: '/large.js', headers: { host: 'localhost' } }, (answer) => {
          answer.once('data', () => {
            sent.destroy()
            resolve()
          })
        })
        sent.on('error', () => undefined)
        sent.end()
      })
    for (let tries = 0; opened().length > 0 && tries < 100; tries++)
      await new Promise((resolve) => setTimeout(resolve, 20))
    expect(opened()).toEqual([])
  })

  test('answers only this machine’s own names, and only reading', async () => {
    expect(await ask('/', 'GET', 'elsewhere.example')).toMatchObject({ status: 403 })
    expect(await ask('/', 'POST')).toMatchObject({ status: 405 })
  })

  test('a taken port is reported in a sentence that names the next one', async () => {
    const second = createServer()
    await expect(listen(second, port)).rejects.toThrow(`--port ${port + 1}`)
  })
})

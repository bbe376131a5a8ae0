import { createHash } from 'node:crypto'
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { JSDOM } from 'jsdom'
import { buildAddin } from '../../tools/build'
import {
  checkedBase,
  checkedOffice,
  checkedSupport,
  developmentBase,
  manifestFor
} from '../../tools/manifest'
import { hostedOffice, pagePolicy, panePage, serverPolicy } from '../../tools/pane'
import { buildForTest, testBase } from './addin'

const root = join(__dirname, '../..')
let out = ''
beforeAll(async () => {
  out = await buildForTest()
}, 60000)

const built = (...parts: string[]): string => readFileSync(join(out, ...parts), 'utf8')

function filesUnder(folder: string): string[] {
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .map((name) => join(folder, name))
    .filter((path) => statSync(path).isFile())
}

describe('the built folder', () => {
  test('holds what the manifest and the pages refer to', () => {
    expect(readdirSync(out).sort()).toEqual([
      'content-policy.txt',
      'documents.js',
      'functions.js',
      'functions.json',
      'help',
      'icons',
      'loading.js',
      'manifest.xml',
      'taskpane.css',
      'taskpane.html',
      'taskpane.js'
    ])
  })
  test('holds no file of Microsoft’s library', () => {
    const library = join(root, 'node_modules', '@microsoft', 'office-js', 'dist')
    const digest = (path: string): string => createHash('sha256').update(readFileSync(path)).digest('hex')
    const theirs = new Set(
      readdirSync(library)
        .filter((name) => name.endsWith('.js'))
        .map((name) => digest(join(library, name)))
    )
    expect(theirs.size).toBeGreaterThan(10)
    for (const path of filesUnder(out)) {
      expect(theirs.has(digest(path))).toBe(false)
      if (path.endsWith('.js')) expect(readFileSync(path, 'utf8')).not.toMatch(/OSF\.DDA|_richApiNativeBridge/)
    }
  })
  test('names no machine, and no development address', () => {
    for (const path of filesUnder(out).filter((file) => !file.endsWith('.png'))) {
      const text = readFileSync(path, 'utf8')
      expect(text).not.toContain(root)
      expect(text).not.toContain(developmentBase)
    }
  })
  test('has a manifest for the chosen address', () => {
    expect(built('manifest.xml')).toContain(`DefaultValue="${testBase}/taskpane.html"`)
    expect(built('manifest.xml').match(/https:\/\/example\.org\/limbwright\//g)?.length).toBeGreaterThan(30)
  })
})

describe('the built pane', () => {
  const scriptsOf = (html: string): HTMLScriptElement[] => [
    ...new JSDOM(html).window.document.querySelectorAll('script')
  ]
  test('loads its watch, then office.js, the cell functions and itself, none deferred', () => {
    const scripts = scriptsOf(built('taskpane.html'))
    expect(scripts.map((script) => script.getAttribute('src'))).toEqual([
      'loading.js',
      hostedOffice,
      'functions.js',
      'taskpane.js'
    ])
    for (const script of scripts)
      for (const attribute of ['defer', 'async', 'type']) expect(script.hasAttribute(attribute)).toBe(false)
  })
  test('loads scripts of a host ahead of office.js', () => {
    const page = panePage('<meta charset="utf-8" /><!-- scripts -->', '/office/office.js', ['/a.js', '/b.js'])
    expect(scriptsOf(page).map((script) => script.getAttribute('src'))).toEqual([
      'loading.js',
      '/a.js',
      '/b.js',
      '/office/office.js',
      'functions.js',
      'taskpane.js'
    ])
  })
  test('has a policy ahead of its scripts that allows scripts of office.js and its own, and nothing written into the page', () => {
    const html = built('taskpane.html')
    const policy = new JSDOM(html).window.document
      .querySelector('meta[http-equiv="Content-Security-Policy"]')
      ?.getAttribute('content')
    expect(policy).toBe(pagePolicy(hostedOffice))
    expect(html.indexOf('Content-Security-Policy')).toBeLessThan(html.indexOf('<script'))
    expect(html.indexOf('Content-Security-Policy')).toBeLessThan(html.indexOf('<link'))
    expect(policy).toContain("script-src 'self' https://appsforoffice.microsoft.com")
    expect(policy).toContain("object-src 'none'; base-uri 'self'; form-action 'none'")
    expect(policy).not.toMatch(/frame-ancestors|unsafe|\*|connect-src/)
  })
  test('comes with the header for its server, which sends nothing elsewhere and keeps nobody from framing it', () => {
    expect(built('content-policy.txt')).toBe(`Content-Security-Policy: ${serverPolicy(hostedOffice)}\n`)
    expect(built('content-policy.txt')).toContain("connect-src 'self';")
    expect(built('content-policy.txt')).not.toMatch(/frame-ancestors|unsafe-eval|\*/)
  })
  test('is refused without the place for its scripts', () => {
    expect(() => panePage('<html></html>', hostedOffice)).toThrow(/<!-- scripts -->/)
  })
  test('has a style sheet that fetches nothing', () => {
    expect(built('taskpane.css').length).toBeGreaterThan(200)
    expect(built('taskpane.css')).not.toMatch(/@font-face|@import|https?:|url\(\s*["']?\/\//)
  })
  test('has no inline script or handler, which the policy would stop', () => {
    expect(built('taskpane.html')).not.toMatch(/\son\w+=|javascript:/)
    for (const script of scriptsOf(built('taskpane.html'))) expect(script.textContent).toBe('')
  })
})

describe('help pages', () => {
  const pages = (): string[] => readdirSync(join(out, 'help')).filter((name) => name.endsWith('.html'))
  test('are whole pages with one heading, a title and the cautions', () => {
    expect(pages().length).toBeGreaterThan(17)
    for (const name of pages()) {
      const { document } = new JSDOM(built('help', name)).window
      expect(document.documentElement.lang).toBe('en')
      expect(document.querySelectorAll('h1')).toHaveLength(1)
      expect(document.title).not.toBe('')
      expect(document.querySelector('main')?.textContent).toContain('qualified arborist on site decides')
    }
  })
  test('link only to each other and their style', () => {
    for (const name of pages()) {
      const { document } = new JSDOM(built('help', name)).window
      const targets = [...document.querySelectorAll('[href]')].map((link) => link.getAttribute('href') ?? '')
      for (const target of targets) expect([...pages(), 'help.css']).toContain(target)
      expect(document.querySelectorAll('script, img')).toHaveLength(0)
    }
  })
  test('say how to call the function, what it gives, an example and the source', () => {
    const page = built('help', 'aspectratio.html')
    expect(page).toContain('=LIMB.ASPECTRATIO(limb_diameter, stem_diameter, [measured])')
    for (const heading of ['Parameters', 'What it gives', 'Examples', 'When a cell is wrong', 'Source'])
      expect(page).toContain(`<h2>${heading}</h2>`)
    expect(page).toContain('<code>=LIMB.ASPECTRATIO(6, 10)</code> gives <samp>0.6</samp>')
  })
})

describe('the address of a build', () => {
  test.each([
    ['https://example.org/limbwright/', 'https://example.org/limbwright'],
    ['https://localhost:3000', 'https://localhost:3000'],
    ['http://localhost:4321', 'http://localhost:4321']
  ])('%s is taken as %s', (base, checked) => expect(checkedBase(base)).toBe(checked))
  test.each([
    ['example.org', /not an address/],
    ['http://example.org', /not https/],
    ['ftp://example.org', /not https/],
    ['https://example.org/?a=1', /must end with its path/]
  ])('%s is refused', (base, sentence) => expect(() => checkedBase(base)).toThrow(sentence))
})

describe('the options of a build', () => {
  // The address of the GCC High cloud: Office Add-ins documentation, "Guidance for deploying Office Add-ins on government clouds".
  const cloud = 'https://appsforoffice.gcch.cdn.office.net/appsforoffice/lib/1/hosted/office.js'
  test('another address of office.js is loaded, and allowed by both policies', () => {
    expect(checkedOffice(cloud)).toBe(cloud)
    const page = panePage('<meta charset="utf-8" /><!-- scripts -->', cloud)
    expect(page).toContain(`<script src="${cloud}"></script>`)
    for (const policy of [page, serverPolicy(cloud)]) {
      expect(policy).toContain("script-src 'self' https://appsforoffice.gcch.cdn.office.net")
      expect(policy).not.toContain('appsforoffice.microsoft.com')
    }
  })
  test.each([
    ['appsforoffice/office.js', /not an address/],
    ['http://example.org/office.js', /not https/],
    ['https://example.org/', /does not end in office\.js/]
  ])('%s is refused as office.js', (address, sentence) =>
    expect(() => checkedOffice(address)).toThrow(sentence)
  )
  test('a page for support stands in the manifest, and only there', () => {
    const template = readFileSync(join(root, 'manifest.xml'), 'utf8')
    const support = 'https://example.org/ask?a=1&b="2"'
    const manifest = manifestFor(template, testBase, checkedSupport(support))
    const { document } = new JSDOM(manifest, { contentType: 'text/xml' }).window
    const named = document.getElementsByTagName('SupportUrl')[0]?.getAttribute('DefaultValue')
    expect(named).toBe('https://example.org/ask?a=1&b=%222%22')
    expect(manifest.match(/\/ask/g)).toHaveLength(1)
    expect(() => checkedSupport('mailto:help@example.org')).toThrow(/not https/)
    expect(() => checkedSupport('help')).toThrow(/not an address/)
  })
})

test('a folder that holds something else is left alone', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'limbwright-'))
  const precious = join(folder, 'inventory.xlsx')
  mkdirSync(folder, { recursive: true })
  writeFileSync(precious, 'trees')
  try {
    await expect(buildAddin({ out: folder, base: testBase, office: hostedOffice })).rejects.toThrow(/inventory\.xlsx/)
    expect(readFileSync(precious, 'utf8')).toBe('trees')
  } finally {
    rmSync(folder, { recursive: true })
  }
})

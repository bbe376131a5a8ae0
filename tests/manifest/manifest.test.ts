/**
 * The manifest is checked offline: element order after the public documentation of the add-in only manifest ("How to
 * find the proper order of manifest elements", Office Add-ins documentation), string lengths after its reference.
 */
import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { JSDOM } from 'jsdom'
import packaged from '../../package.json'
import { version } from '../../shared/version'
import { developmentBase, manifestFor } from '../../tools/manifest'

const root = join(__dirname, '../..')
const source = readFileSync(join(root, 'manifest.xml'), 'utf8')
const { document } = new JSDOM(source, { contentType: 'text/xml' }).window

const all = (name: string): Element[] => [...document.getElementsByTagName(name)]
const one = (name: string): Element => {
  const found = all(name)
  if (found.length !== 1) throw new Error(`${found.length} elements ${name}`)
  return found[0]!
}
const text = (name: string): string => one(name).textContent?.trim() ?? ''
const value = (element: Element): string => element.getAttribute('DefaultValue') ?? ''

/** The order in which children must stand under each parent, as far as the manifest uses them. */
const order: Record<string, string[]> = {
  OfficeApp: [
    'Id',
    'Version',
    'ProviderName',
    'DefaultLocale',
    'DisplayName',
    'Description',
    'IconUrl',
    'HighResolutionIconUrl',
    'SupportUrl',
    'AppDomains',
    'Hosts',
    'Requirements',
    'DefaultSettings',
    'Permissions',
    'VersionOverrides'
  ],
  VersionOverrides: ['Description', 'Requirements', 'Hosts', 'Resources'],
  'VersionOverrides Host': ['Runtimes', 'AllFormFactors', 'DesktopFormFactor'],
  DesktopFormFactor: ['GetStarted', 'FunctionFile', 'ExtensionPoint'],
  GetStarted: ['Title', 'Description', 'LearnMoreUrl'],
  'AllFormFactors ExtensionPoint': ['Script', 'Page', 'Metadata', 'Namespace'],
  Group: ['Label', 'Icon', 'Control'],
  Control: ['Label', 'Supertip', 'Icon', 'Action'],
  Supertip: ['Title', 'Description'],
  'Action[xsi\\:type="ShowTaskpane"]': ['TaskpaneId', 'SourceLocation', 'Title'],
  'Action[xsi\\:type="ExecuteFunction"]': ['FunctionName'],
  Resources: ['bt:Images', 'bt:Urls', 'bt:ShortStrings', 'bt:LongStrings']
}

test('it is well-formed XML of a task pane add-in', () => {
  expect(document.getElementsByTagName('parsererror')).toHaveLength(0)
  expect(document.documentElement.getAttribute('xsi:type')).toBe('TaskPaneApp')
  expect(one('VersionOverrides').getAttribute('xsi:type')).toBe('VersionOverridesV1_0')
})

test.each(Object.entries(order))('the children of %s stand in their order', (parent, names) => {
  const parents = [...document.querySelectorAll(parent)]
  expect(parents.length).toBeGreaterThan(0)
  for (const element of parents) {
    const places = [...element.children].map((child) => names.indexOf(child.tagName))
    expect(places).not.toContain(-1)
    expect([...places].sort((a, b) => a - b)).toEqual(places)
  }
})

describe('resources', () => {
  const defined = ['bt:Image', 'bt:Url', 'bt:String']
    .flatMap((name) => all(name))
    .flatMap((element) => element.getAttribute('id') ?? [])
  const used = [...document.querySelectorAll('[resid]')].map((element) => element.getAttribute('resid')!)
  test('each id is defined once, at most 32 characters long', () => {
    expect(new Set(defined).size).toBe(defined.length)
    for (const id of defined) expect(id.length).toBeLessThanOrEqual(32)
  })
  test('each is used, and each use is defined', () => {
    expect([...new Set(used)].sort()).toEqual([...defined].sort())
  })
  test('texts keep to their lengths', () => {
    const strings = (parent: string): string[] => [...one(parent).children].map(value)
    for (const short of strings('bt:ShortStrings')) expect(short.length).toBeLessThanOrEqual(125)
    for (const long of strings('bt:LongStrings')) expect(long.length).toBeLessThanOrEqual(250)
    for (const any of [...strings('bt:ShortStrings'), ...strings('bt:LongStrings')]) expect(any).not.toBe('')
    expect(value(one('DisplayName')).length).toBeLessThanOrEqual(125)
    expect(value(document.querySelector('OfficeApp > Description')!).length).toBeLessThanOrEqual(250)
    expect(text('ProviderName').length).toBeLessThanOrEqual(125)
  })
  test('every address is https, on the development base', () => {
    const addresses = [...document.querySelectorAll('[DefaultValue]')]
      .map(value)
      .filter((v) => v.includes('//'))
    expect(addresses.length).toBeGreaterThan(30)
    for (const address of addresses) {
      expect(new URL(address).protocol).toBe('https:')
      expect(address.startsWith(`${developmentBase}/`)).toBe(true)
    }
  })
})

describe('the shared runtime', () => {
  test('has one page for runtime, functions, commands and pane, and lives long', () => {
    const runtime = one('Runtime')
    expect(runtime.getAttribute('lifetime')).toBe('long')
    const pages = [
      runtime,
      document.querySelector('Page > SourceLocation')!,
      one('FunctionFile'),
      document.querySelector('Action > SourceLocation')!
    ].map((element) => element.getAttribute('resid'))
    expect(new Set(pages)).toEqual(new Set(['Page.Url']))
    expect(value(document.querySelector('DefaultSettings > SourceLocation')!)).toBe(
      `${developmentBase}/taskpane.html`
    )
  })
  test('is required, with the functions’ runtime and no Excel API above 1.14', () => {
    const sets = Object.fromEntries(
      all('Set').map((set) => [
        set.getAttribute('Name')!,
        Number(set.getAttribute('MinVersion')?.split('.')[1])
      ])
    )
    expect(sets).toEqual({ SharedRuntime: 1, CustomFunctionsRuntime: 3, ExcelApi: 14 })
  })
  test('the functions stand under LIMB', () => {
    const id = one('Namespace').getAttribute('resid')!
    expect(value(document.querySelector(`[id="${id}"]`)!)).toBe('LIMB')
  })
})

describe('the commands on the Home tab', () => {
  test('are Plan inventory and Open pane', () => {
    expect(one('OfficeTab').getAttribute('id')).toBe('TabHome')
    const labels = all('Control').map((control) => {
      const id = control.querySelector(':scope > Label')!.getAttribute('resid')!
      return value(document.querySelector(`[id="${id}"]`)!)
    })
    expect(labels).toEqual(['Plan inventory', 'Open pane'])
    expect(text('FunctionName')).toBe('planSelection')
    expect(text('TaskpaneId')).not.toBe('')
  })
  test('have ids of their own', () => {
    const ids = [...all('Control'), ...all('Group')].map((element) => element.getAttribute('id'))
    expect(new Set(ids).size).toBe(3)
  })
})

describe('icons', () => {
  /** Width and height from a PNG's header. */
  function pixels(address: string): [number, number] {
    const file = join(root, 'assets', address.slice(developmentBase.length + 1))
    expect(existsSync(file)).toBe(true)
    const bytes = readFileSync(file)
    expect(bytes.subarray(1, 4).toString('latin1')).toBe('PNG')
    return [bytes.readUInt32BE(16), bytes.readUInt32BE(20)]
  }
  const addressOf = (resid: string): string => value(document.querySelector(`[id="${resid}"]`)!)
  test('each has the size that it is declared with', () => {
    const images = all('bt:Image').filter((image) => image.hasAttribute('size'))
    expect(images).toHaveLength(24)
    for (const image of images) {
      const size = Number(image.getAttribute('size'))
      expect(pixels(addressOf(image.getAttribute('resid')!))).toEqual([size, size])
    }
  })
  test('each group of icons has every size that Office asks for', () => {
    for (const icon of all('Icon')) {
      const sizes = [...icon.children].map((image) => Number(image.getAttribute('size')))
      expect(sizes).toEqual([16, 20, 24, 32, 40, 48, 64, 80])
    }
  })
  test('the list of add-ins gets 32 and 64 pixels', () => {
    expect(pixels(value(one('IconUrl')))).toEqual([32, 32])
    expect(pixels(value(one('HighResolutionIconUrl')))).toEqual([64, 64])
  })
})

describe('version and address', () => {
  test('the version is that of package.json in four parts', () => {
    expect(text('Version')).toBe(`${packaged.version}.0`)
    expect(version).toBe(packaged.version)
    expect(text('Id')).toMatch(/^[0-9a-f]{8}-[0-9a-f]{4}-4[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/)
  })
  test('a build puts its own address everywhere', () => {
    const deployed = manifestFor(source, 'https://example.org/a&b')
    expect(deployed).not.toContain('localhost')
    const page = new JSDOM(deployed, { contentType: 'text/xml' }).window.document
    expect(page.querySelector('DefaultSettings > SourceLocation')?.getAttribute('DefaultValue')).toBe(
      'https://example.org/a&b/taskpane.html'
    )
  })
})

/**
 * Every member of the Excel API that our code uses, resolved by the compiler, belongs to a requirement set that the manifest
 * asks for or that the code asks for before it uses the member. The sets stand in the comments of @types/office-js.
 */
import { execFileSync } from 'node:child_process'
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import ts from 'typescript'

const root = join(__dirname, '../..')
const apiFile = /@types\/office-js\/index\.d\.ts$/

interface Use {
  readonly member: string
  /** For instance ExcelApi. */
  readonly set: string
  readonly version: number
  readonly file: string
}

/** 1.9 before 1.14. */
const versionOf = (text: string): number => {
  const [major = 0, minor = 0] = text.split('.').map(Number)
  return major * 1000 + minor
}

const written = (version: number): string => `${Math.floor(version / 1000)}.${version % 1000}`

/** The set that the comment of a declaration, or of what it stands in, names; null where none does. */
function setOf(declaration: ts.Node): { set: string; version: number } | null {
  for (let node: ts.Node = declaration; !ts.isSourceFile(node); node = node.parent) {
    const text = node.getFullText().slice(0, node.getLeadingTriviaWidth())
    const found = /\[Api set: (\w+)(?: ([\d.]+))?/.exec(text)
    if (found?.[1] !== undefined) return { set: found[1], version: versionOf(found[2] ?? '0') }
  }
  return null
}

function nameOf(symbol: ts.Symbol, declaration: ts.Declaration): string {
  const parent = declaration.parent as Partial<ts.InterfaceDeclaration>
  return parent.name === undefined ? symbol.name : `${parent.name.getText()}.${symbol.name}`
}

/** The members used in a file, each by its declaration of the lowest set: overloads and merged types have several. */
function usesIn(file: ts.SourceFile, checker: ts.TypeChecker): Use[] {
  const uses: Use[] = []
  const note = (node: ts.Node, symbol: ts.Symbol | undefined): void => {
    const declarations = (symbol?.declarations ?? []).filter((each) =>
      apiFile.test(each.getSourceFile().fileName)
    )
    const sets = declarations.flatMap((each) => setOf(each) ?? [])
    const [lowest] = sets.sort((a, b) => a.version - b.version)
    const [first] = declarations
    if (symbol === undefined || first === undefined || lowest === undefined) return
    uses.push({ member: nameOf(symbol, first), ...lowest, file: `${file.fileName}:${node.getStart(file)}` })
  }
  const visit = (node: ts.Node): void => {
    if (ts.isIdentifier(node)) {
      const { parent } = node
      if (ts.isShorthandPropertyAssignment(parent))
        note(node, checker.getShorthandAssignmentValueSymbol(parent))
      // A part of an object that the API takes: its type is what the place asks for.
      if (ts.isPropertyAssignment(parent) || ts.isShorthandPropertyAssignment(parent))
        note(node, checker.getContextualType(parent.parent)?.getProperty(node.text))
      if (ts.isBindingElement(parent))
        note(
          node,
          checker.getTypeAtLocation(parent.parent).getProperty((parent.propertyName ?? node).getText(file))
        )
      note(node, checker.getSymbolAtLocation(node))
    }
    ts.forEachChild(node, visit)
  }
  visit(file)
  return uses
}

/** The members that files use; `extra` is a file that stands in none. */
function membersUsed(files: readonly string[], extra = ''): Use[] {
  const { options } = ts.parseJsonConfigFileContent(
    ts.readConfigFile(join(root, 'tsconfig.json'), (path) => readFileSync(path, 'utf8')).config,
    ts.sys,
    root
  )
  const host = ts.createCompilerHost(options)
  const extraFile = join(root, 'src/excel/zz-extra.ts')
  const { getSourceFile, fileExists } = host
  host.fileExists = (path) => path === extraFile || fileExists(path)
  host.getSourceFile = (path, language, ...rest) =>
    path === extraFile
      ? ts.createSourceFile(path, extra, language, true)
      : getSourceFile(path, language, ...rest)
  const names = extra === '' ? files : [...files, extraFile]
  const program = ts.createProgram([...names], { ...options, noEmit: true }, host)
  const checker = program.getTypeChecker()
  return names.flatMap((name) => {
    const file = program.getSourceFile(name)
    return file === undefined ? [] : usesIn(file, checker)
  })
}

const manifest = readFileSync(join(root, 'manifest.xml'), 'utf8')
const asked = new Map(
  [...manifest.matchAll(/<Set Name="(\w+)" MinVersion="([\d.]+)"/g)].map(([, set = '', version = '']) => [
    set,
    versionOf(version)
  ])
)
/** What the code asks for at run time, before it uses members of it. */
const checks = /isSetSupported\(\s*'(\w+)',\s*'([\d.]+)'\s*\)/g
const granted = (text: string): Map<string, number> =>
  new Map([...text.matchAll(checks)].map(([, set = '', version = '']) => [set, versionOf(version)]))

/** Uses above what the manifest asks for and what their own file checks. */
function beyond(uses: readonly Use[], textOf: (file: string) => string): string[] {
  const found = uses.filter(({ set, version, file }) => {
    // The types name Outlook's set alone for the event of a command, which every program has.
    if (set === 'Mailbox') return false
    const own = granted(textOf(file.replace(/:\d+$/, ''))).get(set) ?? 0
    return version > Math.max(asked.get(set) ?? 0, own) || (!asked.has(set) && own === 0)
  })
  return [...new Set(found.map(({ member, set, version }) => `${member} is of ${set} ${written(version)}`))]
}

const files = execFileSync(
  'git',
  ['ls-files', '-co', '--exclude-standard', 'src/excel', 'taskpane', 'functions'],
  {
    cwd: root,
    encoding: 'utf8'
  }
)
  .split('\n')
  .filter((file) => file.endsWith('.ts'))
  .map((file) => join(root, file))

const later = `export async function late(context: Excel.RequestContext): Promise<void> {
  const { linkedWorkbooks } = context.workbook
  linkedWorkbooks.refreshAllLinks()
  context.workbook.worksheets.getItem('a').showDataTypeIcons = true
  await context.sync()
}`

let uses: Use[]
beforeAll(() => {
  uses = membersUsed(files, later)
})

test('the manifest asks for sets by number', () => {
  expect(asked.get('ExcelApi')).toBe(versionOf('1.14'))
})

test('no member is above what the manifest asks for or a check at run time grants', () => {
  const ours = uses.filter(({ file }) => !file.includes('zz-extra'))
  expect(new Set(ours.map(({ member }) => member)).size).toBeGreaterThan(150)
  for (const member of [
    'PageLayout.setPrintTitleRows',
    'Range.copyFrom',
    'Shape.placement',
    'Worksheet.name'
  ])
    expect(ours.map((use) => use.member)).toContain(member)
  expect(beyond(ours, (file) => readFileSync(file, 'utf8'))).toEqual([])
})

test('a member above it fails, and passes where its file asks first', () => {
  const extra = uses.filter(({ file }) => file.includes('zz-extra'))
  const without = beyond(extra, () => later)
  expect(without).toContain('Workbook.linkedWorkbooks is of ExcelApiOnline 1.1')
  expect(without).toContain('Worksheet.showDataTypeIcons is of ExcelApi 1.19')
  const guarded = beyond(
    extra,
    () => `${later} if (Office.context.requirements.isSetSupported('ExcelApi', '1.19')) {}`
  )
  expect(guarded).not.toContain('Worksheet.showDataTypeIcons is of ExcelApi 1.19')
})

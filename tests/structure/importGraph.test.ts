import { readdirSync, readFileSync, statSync } from 'node:fs'
import { dirname, join, relative, resolve } from 'node:path'

const root = resolve(__dirname, '../..')

/** What each folder may import of ours, besides itself. */
const arrows: Record<string, string[]> = {
  shared: [],
  'src/formulas': ['shared'],
  'src/inventory': ['src/formulas', 'shared'],
  'src/season': ['src/inventory', 'shared'],
  'src/plan': ['src/season', 'src/inventory', 'src/formulas', 'shared'],
  'src/price': ['src/plan', 'src/formulas', 'shared'],
  'src/drawing': ['src/sheets', 'src/plan', 'src/inventory', 'src/formulas', 'shared'],
  'src/sheets': [
    'src/drawing',
    'src/price',
    'src/plan',
    'src/season',
    'src/inventory',
    'src/formulas',
    'shared'
  ],
  'src/excel': ['src/sheets', 'src/drawing', 'src/inventory', 'shared'],
  'src/file': ['src/sheets', 'src/drawing', 'src/price', 'src/plan', 'src/inventory', 'shared'],
  functions: ['src/plan', 'src/inventory', 'src/formulas', 'shared'],
  taskpane: [
    'src/excel',
    'src/sheets',
    'src/drawing',
    'src/price',
    'src/plan',
    'src/season',
    'src/inventory',
    'src/formulas',
    'shared'
  ]
}

/** The folders without effects. */
const pure = ['formulas', 'inventory', 'season', 'plan', 'price', 'sheets', 'drawing'].map(
  (name) => `src/${name}`
)

function sources(folder: string): string[] {
  return readdirSync(join(root, folder)).flatMap((name) => {
    const path = join(folder, name)
    if (statSync(join(root, path)).isDirectory()) return sources(path)
    return name.endsWith('.ts') ? [path] : []
  })
}

function imports(file: string): string[] {
  const text = readFileSync(join(root, file), 'utf8')
  return [...text.matchAll(/(?:from|import|require\()\s*['"]([^'"]+)['"]/g)].map((match) => match[1]!)
}

function folderOf(path: string): string {
  const known = Object.keys(arrows).filter((folder) => path === folder || path.startsWith(`${folder}/`))
  return known.sort((a, b) => b.length - a.length)[0] ?? path
}

describe('the import graph', () => {
  for (const [folder, allowed] of Object.entries(arrows)) {
    it(`lets ${folder} import ${allowed.join(', ') || 'nothing of ours'}`, () => {
      const files = sources(folder)
      expect(files.length).toBeGreaterThan(0)
      for (const file of files)
        for (const name of imports(file).filter((each) => each.startsWith('.'))) {
          const target = folderOf(relative(root, resolve(root, dirname(file), name)))
          expect([file, [folder, ...allowed].includes(target) ? 'allowed' : target]).toEqual([
            file,
            'allowed'
          ])
        }
    })
  }

  it('keeps Office and the clock out of the engine and the documents', () => {
    for (const file of ['shared', ...pure].flatMap(sources)) {
      const text = readFileSync(join(root, file), 'utf8').replace(/\/\*[^]*?\*\/|\/\/.*$/gm, '')
      expect([
        file,
        /\b(Excel|Office)\.|\bDate\.now\(|new Date\(\)|\bdocument\.|\bwindow\./.exec(text)?.[0]
      ]).toEqual([file, undefined])
    }
  })

  it('touches Excel in src/excel only', () => {
    for (const file of ['taskpane', 'functions', 'src/file'].flatMap(sources))
      expect([file, /\bExcel\./.test(readFileSync(join(root, file), 'utf8'))]).toEqual([file, false])
  })
})

/** What no tool sees in the import graph. The arrows between the folders, and circles, are `npm run arrows`. */
import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs'
import { createRequire } from 'node:module'
import { join, resolve } from 'node:path'

const root = resolve(__dirname, '../..')

/** The folders without effects. */
const pure = ['formulas', 'inventory', 'season', 'plan', 'price', 'jobs', 'sheets', 'drawing']
  .map((name) => `src/${name}`)
  .filter((folder) => existsSync(join(root, folder)))

function sources(folder: string): string[] {
  return readdirSync(join(root, folder)).flatMap((name) => {
    const path = join(folder, name)
    if (statSync(join(root, path)).isDirectory()) return sources(path)
    return name.endsWith('.ts') ? [path] : []
  })
}

/** The files in which the pattern is found, each with what was found. */
function found(files: string[], pattern: RegExp, readable = (text: string) => text): string[] {
  expect(files.length).toBeGreaterThan(10)
  return files.flatMap((file) => {
    const match = pattern.exec(readable(readFileSync(join(root, file), 'utf8')))
    return match === null ? [] : [`${file}: ${match[0]}`]
  })
}

const withoutComments = (text: string): string => text.replace(/\/\*[^]*?\*\/|\/\/.*$/gm, '')

describe('the import graph', () => {
  it('has arrows for every folder that holds code of the product', () => {
    const folders = readdirSync(join(root, 'src')).map((name) => `src/${name}`)
    const { forbidden } = createRequire(__filename)('../../.dependency-cruiser.cjs') as {
      forbidden: { name: string }[]
    }
    const ruled = forbidden.map(({ name }) => name)
    for (const folder of ['shared', 'functions', 'taskpane', ...folders])
      expect(ruled).toContain(`arrows of ${folder}`)
  })

  it('keeps Office and the clock out of the engine and the documents', () => {
    const outside = /\b(Excel|Office)\.|\bDate\.now\(|new Date\(\)|\bdocument\.|\bwindow\./
    expect(found(['shared', ...pure].flatMap(sources), outside, withoutComments)).toEqual([])
  })

  it('touches Excel in src/excel only', () => {
    expect(found(['taskpane', 'functions', 'src/file'].flatMap(sources), /\bExcel\./)).toEqual([])
  })
})

/** The library that reads and writes files is known in one folder, so that another could take its place there. */
import { readdirSync, readFileSync } from 'node:fs'
import { join, relative, resolve } from 'node:path'

const root = resolve(__dirname, '../..')
const adapter = 'src/file/file-library'
const libraries = /(?:from|import|require\()\s*\(?['"](hucre|jszip|yauzl)(?:\/[^'"]*)?['"]/

/** Tests read what we wrote with the library itself, and the bench compares with it. */
const product = ['shared', 'src', 'functions', 'taskpane', 'tools']

function sources(folder: string): string[] {
  return readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.ts'))
    .map((name) => relative(root, join(root, folder, name)).replaceAll('\\', '/'))
}

const importers = product
  .flatMap(sources)
  .filter((file) => libraries.test(readFileSync(join(root, file), 'utf8')))

describe('the file library', () => {
  test('is imported by its adapter only', () => {
    expect(importers.filter((file) => !file.startsWith(`${adapter}/`))).toEqual([])
  })

  test('is found where it is imported', () => {
    expect(importers).toContain(`${adapter}/packBook.ts`)
    expect(importers).toContain(`${adapter}/drawnCharts.ts`)
  })

  test('does not show through: what the adapter gives is declared by us', () => {
    const outside = product.flatMap(sources).filter((file) => !file.startsWith(`${adapter}/`))
    const named = outside.filter((file) =>
      /\bhucre\b|\bjszip\b/i.test(readFileSync(join(root, file), 'utf8'))
    )
    expect(named).toEqual([])
  })
})

/**
 * The cell functions are a permanent interface: golden.json lists every id with its parameters, optional ones in
 * brackets. Ids stay, and parameters are only ever appended, optional. The list may grow and never shrink or change.
 */
import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { createContext, runInContext } from 'node:vm'
import { countTags, functionFiles, readFunctionDocs } from '../../tools/functionDocs'
import type { FunctionMetadata } from '../../tools/functionMetadata'
import { buildForTest, testBase } from '../build/addin'
import golden from './golden.json'

let out = ''
let metadata: FunctionMetadata
beforeAll(async () => {
  out = await buildForTest()
  metadata = JSON.parse(readFileSync(join(out, 'functions.json'), 'utf8')) as FunctionMetadata
}, 60000)

/** What the built script associates, loaded where there is nothing but the language and `CustomFunctions`. */
function associated(): Map<string, (...given: unknown[]) => unknown> {
  const found = new Map<string, (...given: unknown[]) => unknown>()
  const CustomFunctions = {
    associate(id: string, call: (...given: unknown[]) => unknown) {
      if (found.has(id)) throw new Error(`${id} is associated twice`)
      found.set(id, call)
    }
  }
  runInContext(readFileSync(join(out, 'functions.js'), 'utf8'), createContext({ CustomFunctions }))
  return found
}

test('every tagged function has an entry, and every entry a tag', () => {
  const tags = functionFiles().reduce((sum, file) => sum + countTags(file), 0)
  expect(metadata.functions).toHaveLength(tags)
  expect(readFunctionDocs()).toHaveLength(tags)
})

test('ids and parameters are those of the golden list', () => {
  const built = Object.fromEntries(
    metadata.functions.map(({ id, parameters }) => [
      id,
      parameters.map(({ name, optional }) => (optional === true ? `[${name}]` : name))
    ])
  )
  expect(built).toEqual(golden)
})

test('optional parameters come last', () => {
  for (const { parameters } of metadata.functions) {
    const optional = parameters.map((parameter) => parameter.optional === true)
    expect([...optional].sort((a, b) => Number(a) - Number(b))).toEqual(optional)
  }
})

test('every parameter takes cells of any kind, one or a range', () => {
  for (const { parameters } of metadata.functions)
    for (const { type, dimensionality } of parameters)
      expect([type, dimensionality]).toEqual(['any', 'matrix'])
})

test('error cells reach the functions as values, entities do not', () => {
  expect(metadata.allowErrorForDataTypeAny).toBe(true)
  expect(metadata.allowCustomDataForDataTypeAny).toBe(false)
})

test('each function and parameter is described, the function in one sentence without its source', () => {
  for (const { id, description, parameters } of metadata.functions) {
    expect(description).toMatch(/^[A-Z][^.]*\.$/)
    expect(description.length).toBeLessThanOrEqual(125)
    expect(description).not.toMatch(/@|source/i)
    expect(description).not.toContain(id)
    for (const parameter of parameters) expect(parameter.description).toMatch(/^\S.{10,}\.$/)
  }
})

test('each entry’s help link leads to a page that the build wrote', () => {
  for (const { id, helpUrl } of metadata.functions) {
    expect(helpUrl).toBe(`${testBase}/help/${id.toLowerCase()}.html`)
    const page = readFileSync(join(out, 'help', `${id.toLowerCase()}.html`), 'utf8')
    expect(page).toContain(`<h1>LIMB.${id}</h1>`)
    expect(existsSync(join(out, 'help', 'help.css'))).toBe(true)
  }
})

test('the built script associates every id at once, without a page', () => {
  expect([...associated().keys()].sort()).toEqual(Object.keys(golden))
})

test('the built script calculates', () => {
  const ratio = associated().get('ASPECTRATIO')
  expect(JSON.stringify(ratio?.([[6]], [[10]], null, { functionName: 'ASPECTRATIO' }))).toBe('[[0.6]]')
})

/**
 * A cell function stands in its file, in functions/all.ts, in the golden list and in a test of its own. The compiler ties
 * the parameters to how their cells are read; here the doc comment, which no compiler reads, is tied to them, and whatever
 * place a function is missing from is named.
 */
import { existsSync } from 'node:fs'
import { join } from 'node:path'
import { cellFunctions } from '../../functions/all'
import { readFunctionDocs, type FunctionDoc } from '../../tools/functionDocs'
import golden from './golden.json'

const list = (parameters: readonly { name: string; optional: boolean }[]): string =>
  parameters.map(({ name, optional }) => (optional ? `[${name}]` : name)).join(', ')

const published = golden as Record<string, string[]>

/** What is missing for a function, each with the place to put it right. */
function missing({ id, file, declared, parameters }: FunctionDoc): string[] {
  const test = `tests/functions/${id.toLowerCase()}.test.ts`
  const places: [boolean, string][] = [
    [declared.name === id, `${file}: the function tagged ${id} is called ${declared.name}`],
    [
      list(declared.parameters) === list(parameters),
      `${file}: the doc comment of ${id} has ${list(parameters)}, its code ${list(declared.parameters)}`
    ],
    [id in cellFunctions, `functions/all.ts: ${id} of ${file} is not gathered`],
    [
      published[id]?.join(', ') === list(parameters),
      `tests/functions/golden.json: ${id} has ${published[id]?.join(', ') ?? 'no entry'}, its code ${list(parameters)}`
    ],
    [existsSync(join(__dirname, '../..', test)), `${test}: there is no test of ${id}`]
  ]
  return places.filter(([there]) => !there).map(([, sentence]) => sentence)
}

const docs = readFunctionDocs()

test.each(docs.map((doc) => [doc.id, doc] as const))('%s stands in every place it has to', (_id, doc) => {
  expect(missing(doc)).toEqual([])
})

test('what is gathered and published is documented', () => {
  const ids = docs.map(({ id }) => id)
  expect(Object.keys(cellFunctions).sort()).toEqual(ids)
  expect(Object.keys(golden)).toEqual(ids)
})

test('a function that was only begun is told every place that is left', () => {
  const begun: FunctionDoc = {
    ...docs[0]!,
    id: 'BEGUN',
    file: 'functions/begun.ts',
    declared: { name: 'BEGUN', parameters: [{ name: 'trunk', optional: false }] },
    parameters: [{ name: 'stem', optional: false, text: '' }]
  }
  expect(missing(begun)).toEqual([
    'functions/begun.ts: the doc comment of BEGUN has stem, its code trunk',
    'functions/all.ts: BEGUN of functions/begun.ts is not gathered',
    'tests/functions/golden.json: BEGUN has no entry, its code stem',
    'tests/functions/begun.test.ts: there is no test of BEGUN'
  ])
})

/** Every code of the catalog is raised somewhere: a sentence that nobody can meet is taken out. */
import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { problem, problemCodes } from '../../shared/problems'

const root = join(__dirname, '../..')

/** The product's own code, without the catalog itself. */
const product = ['shared', 'src', 'functions', 'taskpane']
  .flatMap((folder) =>
    readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' }).map((name) => join(folder, name))
  )
  .filter((name) => name.endsWith('.ts') && name !== join('shared', 'problems.ts'))
  .map((name) => readFileSync(join(root, name), 'utf8'))
  .join('\n')

test.each(problemCodes)('%s is named where it is raised', (code) => {
  // The product itself would fill the screen where this fails.
  expect([code, product.includes(`'${code}'`)]).toEqual([code, true])
})

test('a sentence is filled with its facts, and takes the address for {cell}', () => {
  const { message, remedy } = problem('parent-unknown', 'Trees!F7', { limb: 'L2', text: 'L9', tree: 'T1' })
  expect(message).toBe('Limb L2 at Trees!F7 names the parent L9, which tree T1 does not list.')
  expect(remedy).toBe('Correct the parent’s id, or clear it if the limb grows from the trunk.')
})

test('a fact that a sentence needs cannot be left out, nor another one given', () => {
  // @ts-expect-error: the sentence names the stray text too
  expect(problem('parent-unknown', 'Trees!F7', { limb: 'L2', tree: 'T1' }).message).toContain('{text}')
  // @ts-expect-error: this sentence has no room for a tree
  expect(problem('several-areas', '', { count: 2, tree: 'T1' }).message).not.toContain('T1')
  // @ts-expect-error: facts are needed here
  expect(problem('several-areas', '').message).toContain('{count}')
})

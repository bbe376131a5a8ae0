/**
 * What client, crew and office read is in the words of the trade: quarter and three-eighths and never eighths in figures,
 * foliage removed and never the word of papers for it, and none of the words of the arithmetic behind the choice.
 */
import { execFileSync } from 'node:child_process'
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import ts from 'typescript'

const root = join(__dirname, '../..')

/** What a person reads comes from here; the formulas' own helps are their doc comments. */
const shown = [
  'shared',
  'src/plan',
  'src/season',
  'src/price',
  'src/jobs',
  'src/sheets',
  'src/drawing',
  'src/file',
  'src/excel',
  'taskpane',
  'functions'
]

const notSaid = /\bdoses?\b|\bnext priorit|\bobjectives?\b|(?<![\d/.])[1-7]\/8(?![\d/]| ?(?:in|"))/i

/** ANSI A300 states the objectives of a specification in this word; what the reader of lengths takes is what users type. */
const allowed = [
  ['src/sheets/specification/specificationTree.ts', 'Objective'],
  ['shared/lengths.ts', '/8']
] as const

const files = execFileSync('git', ['ls-files', '-co', '--exclude-standard', ...shown], {
  cwd: root,
  encoding: 'utf8'
})
  .split('\n')
  .filter((file) => file.endsWith('.ts'))

/** The texts of a file that are sentences or labels: with a space or a capital letter, as keys have neither. */
function textsOf(file: string): string[] {
  const source = ts.createSourceFile(
    file,
    readFileSync(join(root, file), 'utf8'),
    ts.ScriptTarget.Latest,
    true
  )
  const texts: string[] = []
  const visit = (node: ts.Node): void => {
    if (ts.isImportDeclaration(node) || ts.isLiteralTypeNode(node)) return
    if (ts.isStringLiteral(node) || ts.isNoSubstitutionTemplateLiteral(node)) texts.push(node.text)
    else if (ts.isTemplateExpression(node))
      texts.push(node.head.text + node.templateSpans.map(({ literal }) => `…${literal.text}`).join(''))
    ts.forEachChild(node, visit)
  }
  visit(source)
  return texts.filter((text) => /\s|^[A-Z]/.test(text))
}

/** The help of a cell function as Excel shows it. */
function helpsOf(file: string): string[] {
  const text = readFileSync(join(root, file), 'utf8')
  return [...text.matchAll(/\/\*\*(?:(?!\*\/)[\s\S])*@customfunction[\s\S]*?\*\//g)].map(([comment]) =>
    comment.replace(/@(?:customfunction|example|source).*(?:\n \* {2}.*)*/g, '')
  )
}

const isAllowed = (file: string, text: string): boolean =>
  allowed.some(([path, words]) => path === file && text.includes(words))

test('no text that a person reads says dose, objective, next priority or eighths in figures', () => {
  expect(files.length).toBeGreaterThan(300)
  const found = files.flatMap((file) =>
    [...textsOf(file), ...(file.startsWith('functions/') ? helpsOf(file) : [])]
      .filter((text) => notSaid.test(text) && !isAllowed(file, text))
      .map((text) => `${file}: ${text}`)
  )
  expect(found).toEqual([])
})

test('nor does a page of help', () => {
  for (const page of ['README.md', 'docs/estimate.md', 'docs/worked-trees.md']) {
    const lines = readFileSync(join(root, page), 'utf8').split('\n')
    expect(lines.filter((line) => notSaid.test(line)).map((line) => `${page}: ${line}`)).toEqual([])
  }
})

test.each(['The dose of a cut', 'Shortened by 2/8', 'lowers the next priority', 'Objective: none'])(
  '“%s” would be found',
  (text) => {
    expect(notSaid.test(text)).toBe(true)
  }
)

test.each(['4 7/8 in', 'a 5/8" cut', '17/8/2026', 'foliage removed'])('“%s” may stand', (text) => {
  expect(notSaid.test(text)).toBe(false)
})

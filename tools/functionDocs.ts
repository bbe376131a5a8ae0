import { readdirSync, readFileSync } from 'node:fs'
import { basename, join } from 'node:path'
import ts from 'typescript'

/** What the doc comment of one cell function says. */
export interface FunctionDoc {
  id: string
  /** The file it stands in, and what the code itself calls it and its parameters. */
  file: string
  declared: { name: string; parameters: { name: string; optional: boolean }[] }
  summary: string
  parameters: { name: string; optional: boolean; text: string }[]
  gives: string
  /** A formula, what it gives, and a remark about that. */
  examples: { formula: string; result: string; note: string }[]
  source: string
  /** What a range gives: a result for each cell, one for all of it, or a table. */
  shape: 'cells' | 'one' | 'table'
}

const folder = join(__dirname, '..', 'functions')

/** The files of `functions/` that hold cell functions. */
export function functionFiles(): string[] {
  return readdirSync(folder)
    .filter((name) => name.endsWith('.ts'))
    .map((name) => join(folder, name))
    .filter((path) => countTags(path) > 0)
}

/** How many cell functions a file says it holds. */
export function countTags(path: string): number {
  return readFileSync(path, 'utf8').match(/@customfunction\b/g)?.length ?? 0
}

/** Every cell function with what its doc comment says, in the order of their ids. */
export function readFunctionDocs(): FunctionDoc[] {
  return functionFiles()
    .flatMap(docsOf)
    .sort((a, b) => (a.id < b.id ? -1 : 1))
}

function docsOf(path: string): FunctionDoc[] {
  const file = ts.createSourceFile(path, readFileSync(path, 'utf8'), ts.ScriptTarget.Latest, true)
  return file.statements.filter(ts.isFunctionDeclaration).flatMap((statement) => {
    const doc = docOf(statement)
    return doc === null ? [] : [doc]
  })
}

function docOf(statement: ts.FunctionDeclaration): FunctionDoc | null {
  const tags = ts.getJSDocTags(statement)
  const text = (name: string): string[] =>
    tags.filter((tag) => tag.tagName.text === name).map((tag) => plain(tag.comment))
  const [id] = text('customfunction')
  if (id === undefined) return null
  const comments = ts.getJSDocCommentsAndTags(statement).filter(ts.isJSDoc)
  return {
    id,
    file: `functions/${basename(statement.getSourceFile().fileName)}`,
    declared: {
      name: statement.name?.text ?? '',
      parameters: statement.parameters.map((parameter) => ({
        name: parameter.name.getText(),
        optional: parameter.questionToken !== undefined
      }))
    },
    summary: plain(comments[0]?.comment),
    parameters: tags.filter(ts.isJSDocParameterTag).map((tag) => ({
      name: tag.name.getText(),
      optional: tag.isBracketed,
      text: plain(tag.comment)
    })),
    gives: text('returns')[0] ?? '',
    examples: text('example').map(exampleOf),
    source: text('source')[0] ?? '',
    shape: text('oneresult').length > 0 ? 'one' : text('table').length > 0 ? 'table' : 'cells'
  }
}

function plain(comment: string | ts.NodeArray<ts.JSDocComment> | undefined): string {
  return (ts.getTextOfJSDocComment(comment) ?? '').replace(/\s+/g, ' ').trim()
}

function exampleOf(text: string): FunctionDoc['examples'][number] {
  const [formula = '', rest = ''] = text.split(' gives ')
  const [result = '', note = ''] = rest.split(/, (?=which )/)
  return { formula, result, note }
}

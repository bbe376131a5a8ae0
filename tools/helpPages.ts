import { cautions } from '../src/sheets/cautions'
import { readFunctionDocs, type FunctionDoc } from './functionDocs'

const escapes: Record<string, string> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' }

function escape(text: string): string {
  return text.replace(/[&<>"]/g, (sign) => escapes[sign] ?? sign)
}

function page(title: string, body: string): string {
  return `<!doctype html>
<html lang="en">
  <head>
    <meta charset="utf-8" />
    <meta name="viewport" content="width=device-width, initial-scale=1" />
    <meta name="color-scheme" content="light dark" />
    <title>${escape(title)}</title>
    <link rel="stylesheet" href="help.css" />
  </head>
  <body>
${body}
  </body>
</html>
`
}

function call(doc: FunctionDoc): string {
  const parameters = doc.parameters.map(({ name, optional }) => (optional ? `[${name}]` : name))
  return `=LIMB.${doc.id}(${parameters.join(', ')})`
}

function section(heading: string, content: string): string {
  return `      <section>\n        <h2>${heading}</h2>\n        ${content}\n      </section>\n`
}

function parametersOf(doc: FunctionDoc): string {
  if (doc.parameters.length === 0) return ''
  const items = doc.parameters.map(
    ({ name, optional, text }) =>
      `<dt><code>${escape(name)}</code>${optional ? ' <span class="aside">may be left out</span>' : ''}</dt>` +
      `<dd>${escape(text)}</dd>`
  )
  return section('Parameters', `<dl>${items.join('')}</dl>`)
}

function examplesOf(doc: FunctionDoc): string {
  const items = doc.examples.map(
    ({ formula, result, note }) =>
      `<li><code>${escape(formula)}</code> gives <samp>${escape(result)}</samp>${note === '' ? '' : `, ${escape(note)}`}</li>`
  )
  return section(items.length > 1 ? 'Examples' : 'Example', `<ul>${items.join('')}</ul>`)
}

const rangesAndErrors =
  section(
    'Ranges and blanks',
    '<p>Give one cell or a whole range; single cells, rows and columns stretch to the others and the results spill. ' +
      'A row whose required cells are all blank, or all 0, stays empty. A blank optional cell takes its default.</p>'
  ) +
  section(
    'When a cell is wrong',
    '<p>In a range, a text that begins with <code>! </code> stands in that row and says what to correct; the other rows are ' +
      'not affected, and the text passes through other functions of ours. A single cell shows ' +
      '<code>#VALUE!</code>, or <code>#N/A</code> where something is missing, with the same sentence. ' +
      'Ranges that do not fit together give <code>#VALUE!</code>.</p>'
  )

const oneResultErrors =
  section(
    'Ranges and blanks',
    '<p>Give a whole range for one result. Blank cells and zeros are passed over; if all are blank, the result stays empty.</p>'
  ) +
  section(
    'When a cell is wrong',
    '<p>The result shows <code>#VALUE!</code>, or <code>#N/A</code> where something is missing, with a sentence that names ' +
      'the cell within the range and says what to correct. A text of ours that begins with <code>! </code> passes through.</p>'
  )

/** A table says in its own words what happens to wrong cells. */
const errorsOf = { cells: rangesAndErrors, one: oneResultErrors, table: '' } as const

const cautionList = `<ul>${cautions.map((sentence) => `<li>${escape(sentence)}</li>`).join('')}</ul>`

const home = '    <nav><a href="index.html">All cell functions</a></nav>\n'

/** The page that a function's help link opens. */
export function helpPage(doc: FunctionDoc): string {
  const body =
    `${home}    <main>\n      <h1>LIMB.${doc.id}</h1>\n      <p class="lead">${escape(doc.summary)}</p>\n` +
    `      <pre><code>${escape(call(doc))}</code></pre>\n` +
    parametersOf(doc) +
    section('What it gives', `<p>${escape(doc.gives)}</p>`) +
    examplesOf(doc) +
    (doc.parameters.length === 0 ? '' : errorsOf[doc.shape]) +
    (doc.source === '' ? '' : section('Source', `<p>${escape(doc.source)}</p>`)) +
    section('Before anyone cuts', cautionList) +
    '    </main>'
  return page(`LIMB.${doc.id}`, body)
}

function indexPage(docs: FunctionDoc[]): string {
  const items = docs.map(
    (doc) =>
      `<dt><a href="${doc.id.toLowerCase()}.html">LIMB.${doc.id}</a></dt><dd>${escape(doc.summary)}</dd>`
  )
  const body =
    '    <main>\n      <h1>Limbwright: cell functions</h1>\n' +
    '      <p class="lead">Measure and judge limbs in your own cells, or press Plan inventory on the Home tab: it is found by its headers.</p>\n' +
    `      <dl class="index">${items.join('')}</dl>\n${rangesAndErrors}` +
    section('Before anyone cuts', cautionList) +
    '    </main>'
  return page('Limbwright: cell functions', body)
}

/** Every help page by its file name. */
export function helpPages(): Map<string, string> {
  const docs = readFunctionDocs()
  const pages = new Map(docs.map((doc) => [`${doc.id.toLowerCase()}.html`, helpPage(doc)]))
  return pages.set('index.html', indexPage(docs))
}

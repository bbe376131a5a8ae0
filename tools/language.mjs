/**
 * The language of the project: plain standard US English in comments, names, sentences and documents. Here are the words
 * that are not used and what to write instead; `npm run lint` goes by this list in scripts, and
 * tests/structure/language.test.ts in every other text.
 */

/** Old-fashioned and bookish words, by what to write instead. A pattern is looked for in any case of letters. */
const plain = {
  'compute, calculate or estimate': ['reckon'],
  again: ['\\banew\\b', '\\bafresh\\b'],
  'is reported, shown or stated': ['\\b(?:is|are|be|was|were|being|been) said\\b'],
  agree: ['\\bof (?:a|one) mind\\b'],
  expects: ['\\bwants? to hear\\b'],
  'by itself': ['\\bown accord\\b'],
  'belongs to': ['\\bown business\\b'],
  continues: ['\\bgo(?:es)? on up\\b'],
  'correct or fix': ['\\bmend(?:s|ed|ing)?\\b'],
  'more costly': ['\\bdearer\\b'],
  'per, as in one row per limb': ['\\b(?:one|a) (?:row|line|column|page|sentence) a [a-z]+'],
  while: ['\\bwhilst\\b'],
  among: ['\\bamongst\\b'],
  'so far': ['\\bhitherto\\b'],
  'of it, in it, by that': ['\\b(?:there|where)(?:of|in|by|upon|with|from)\\b'],
  percent: ['\\bper cent\\b']
}

/** British spellings, each with the American one; `$1` is what the pattern found in its first brackets. */
const american = {
  $1meter: ['(milli|centi|kilo)metre'],
  meter: ['(?<![a-zé])metre', 'cubicmetre', 'permetre', 'heightmetre', 'tometre', 'lengthmetre'],
  liter: ['(?<![a-zé])litre'],
  color: ['colour'],
  center: ['\\bcentre', 'centred\\b'],
  catalog: ['catalogue'],
  program: ['programme(?![rds])'],
  gray: ['\\bgrey'],
  license: ['licence'],
  $1ense: ['\\b(def|off)ence'],
  $1or: ['(behavi|fav|hon|hum|lab|neighb|rum|vap|vig)our(?!e?ux|ce)'],
  $1ze: [
    '((?:real|organ|recogn|normal|summar|prior[ei]t|categor|character|emphas|energ|final|general|initial|item|local|maxim|' +
      'memor|minim|mobil|modern|optim|serial|special|stabil|standard|symbol|util|visual)i)s(?:e[sdr]?\\b|ing|ation)'
  ],
  '$1z, as in analyze': ['((?:anal|paral)y)s(?:ed?|ing)\\b'],
  '$1ed or $1ing, with one l': ['(label|cancel|travel|model|level|signal|total)l(?:ed(?!by)|ing)'],
  $1: ['\\b((?:to|up|down|out|in|back|after)ward)s\\b'],
  $1ed: ['\\b(learn|burn|dream|leap)t\\b'],
  judgment: ['judgement'],
  aging: ['\\bageing'],
  fulfill: ['\\bfulfil(?!l)'],
  skillful: ['\\bskilful'],
  artifact: ['artefact'],
  fiber: ['\\bfibre'],
  mold: ['\\bmould'],
  plow: ['\\bplough'],
  skeptic: ['\\bsceptic']
}

/** Where such a word stays: what users type, and names that are not ours. A path that ends in / is a folder. */
export const exemptions = [
  { path: 'tools/language.mjs', words: /./, why: 'this list' },
  { path: 'tests/structure/language.test.ts', words: /./, why: 'tries the list' },
  {
    path: 'shared/units.ts',
    words: /^(milli|centi)?metre/,
    why: 'units as users type them'
  },
  { path: 'shared/columns.ts', words: /^vigour$/, why: 'a header as users type it' },
  {
    path: 'src/inventory/headers/words/',
    words: /^(vigour|neighbour|litre|localis)/i,
    why: 'headers as users type them'
  },
  { path: 'tests/inventory/real/', words: /^(vigour|metre)/i, why: 'headers as users type them' },
  {
    path: 'src/inventory/headers/words/',
    words: /^(vigour|neighbour|litre|localis)/i,
    why: 'headers as users type them'
  },
  { path: 'tests/inventory/real/', words: /^(vigour|metre)/i, why: 'headers as users type them' }
]

const rules = [...Object.entries(plain), ...Object.entries(american)].flatMap(([write, patterns]) =>
  // Words of a phrase may be parted by the end of a line of a comment.
  patterns.map((pattern) => ({
    write,
    pattern: new RegExp(pattern.replaceAll(' ', '(?:\\s|\\*|//)+'), 'gi')
  }))
)

/** The words in a text that are not used here: where each begins, and what to write instead. */
export function unusedWords(path, text) {
  const exempt = exemptions.filter((each) =>
    each.path.endsWith('/') ? path.startsWith(each.path) : path === each.path
  )
  return rules
    .flatMap(({ write, pattern }) =>
      [...text.matchAll(pattern)].map((found) => ({
        word: found[0].replace(/(?:\s|\*|\/\/)+/g, ' '),
        at: found.index,
        write: write.replaceAll('$1', (found[1] ?? '').toLowerCase())
      }))
    )
    .filter(({ word }) => !exempt.some(({ words }) => words.test(word)))
    .sort((a, b) => a.at - b.at)
}

/** The rule of eslint that goes by the list: comments, texts and names alike. */
export const usEnglish = {
  meta: {
    type: 'suggestion',
    schema: [],
    messages: { word: '“{{word}}” is not used here; write: {{write}}.' }
  },
  create: ({ report, filename, cwd, sourceCode }) => ({
    Program() {
      const path = filename.slice(cwd.length + 1).replaceAll('\\', '/')
      for (const { word, at, write } of unusedWords(path, sourceCode.text))
        report({ loc: sourceCode.getLocFromIndex(at), messageId: 'word', data: { word, write } })
    }
  })
}

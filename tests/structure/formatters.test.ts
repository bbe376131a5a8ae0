import { execFileSync } from 'node:child_process'
import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'

const root = join(__dirname, '../..')

/** What only `shared/words` does: digits, percents, groups, lists, plurals and dates of texts that a person reads. */
const formatters: Record<string, RegExp> = {
  toFixed: /\.toFixed\(/,
  toLocaleString: /\.toLocale(Date|Time)?String\(/,
  Intl: /\bIntl\./,
  'a percent by hand': /\$\{[^}]*\} ?%[` ,.;)]|\+ ' ?%'|Math\.(round|floor|ceil)\([^()]*\* ?100\)/,
  'thousands by hand': /\\B\(\?=\(\\d\{3\}\)/,
  'a list by hand': /slice\(0, -1\)\.join\(', '\)/,
  'a plural by hand': /=== 1 \? '(\w+)' : '\1e?s'|=== 1 \? '1 /,
  'a day by hand': /toISOString\(\)\.slice/
}

/** Where a formatter stands that writes for no reader, or reads before it writes, each with its reason. */
const exceptions: Record<string, string> = {
  'src/inventory/headers/measures.ts': 'a measuring height as the words of a header are compared by',
  'shared/numbers.ts': 'the digits of a number that was read, as they are kept',
  'shared/money.ts': 'the digits of an amount for JSON, where nothing is grouped',
  'src/drawing/paint/svgNodes.ts': 'coordinates of an SVG',
  'src/formulas/speciesDensities.ts': 'the moisture in the name of a source',
  'shared/numberFormats.ts': 'a cell as the readers take it, which no person reads',
  'src/price/readRate.ts': 'reads a rate: the digits are those of the cell, and its range stands beside it',
  'src/price/hundredths.ts': 'whole hundredths to add and to share by, as the formulas of the sheet do',
  'taskpane/plan/doseBar.ts': 'the length of a bar for the style sheet'
}

/** Comments say how texts look; strings of a regular expression stay. */
const uncommented = (text: string): string => text.replace(/\/\*[^]*?\*\/|^\s*\/\/.*$/gm, '')

const files = execFileSync(
  'git',
  ['ls-files', '-co', '--exclude-standard', 'shared', 'src', 'functions', 'taskpane'],
  {
    cwd: root,
    encoding: 'utf8'
  }
)
  .split('\n')
  .filter((file) => file.endsWith('.ts') && existsSync(join(root, file)))
  // The workbench plays Excel, whose own formats it imitates.
  .filter((file) => !file.startsWith('shared/words/') && !file.startsWith('src/workbench/'))

function found(file: string): string[] {
  const text = uncommented(readFileSync(join(root, file), 'utf8'))
  return Object.entries(formatters)
    .filter(([, pattern]) => pattern.test(text))
    .map(([name]) => name)
}

describe('one formatter a kind', () => {
  test('no file has one of its own', () => {
    expect(files.length).toBeGreaterThan(200)
    const own = files.filter((file) => !(file in exceptions)).map((file) => [file, found(file)] as const)
    expect(own.filter(([, names]) => names.length > 0)).toEqual([])
  })

  test('every exception still needs to be one', () => {
    expect(
      Object.keys(exceptions).filter((file) => !files.includes(file) || found(file).length === 0)
    ).toEqual([])
  })

  test.each([
    ['toFixed', 'value.toFixed(2)'],
    ['toLocaleString', "high.toLocaleString('en-US')"],
    ['Intl', 'new Intl.NumberFormat()'],
    ['a percent by hand', '`${whole} %`'],
    ['a percent by hand', 'Math.round(share * 100)'],
    ['thousands by hand', String.raw`/\B(?=(\d{3})+(?!\d))/g`],
    ['a list by hand', "words.slice(0, -1).join(', ')"],
    ['a plural by hand', "length === 1 ? 'row' : 'rows'"],
    ['a day by hand', 'date.toISOString().slice(0, 10)']
  ])('%s is recognized in %s', (name, line) => {
    expect(formatters[name]!.test(line)).toBe(true)
  })
})

import { execFileSync } from 'node:child_process'
import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { exemptions, unusedWords } from '../../tools/language.mjs'

const root = join(__dirname, '../..')

const texts = execFileSync('git', ['ls-files', '-co', '--exclude-standard'], { cwd: root, encoding: 'utf8' })
  .split('\n')
  .filter((file) => /\.(ts|mts|mjs|cjs|md|html|css|scss|xml|svg|jsonc?)$|^NOTICE$/.test(file))
  .filter((file) => file !== 'package-lock.json' && existsSync(join(root, file)))
  .map((file) => [file, readFileSync(join(root, file), 'utf8')] as const)

const line = (text: string, at: number): number => text.slice(0, at).split('\n').length

describe('plain standard US English', () => {
  test('stands in every text of the project', () => {
    expect(texts.length).toBeGreaterThan(600)
    const found = texts.flatMap(([file, text]) =>
      unusedWords(file, text).map(
        ({ word, at, write }) => `${file}:${line(text, at)}: “${word}”: write ${write}`
      )
    )
    expect(found).toEqual([])
  })

  test('each exemption is still needed', () => {
    for (const { path, words } of exemptions) {
      const own = texts.filter(([file]) => (path.endsWith('/') ? file.startsWith(path) : file === path))
      const used = own.flatMap(([, text]) => unusedWords('', text)).filter(({ word }) => words.test(word))
      expect([path, used.length > 0]).toEqual([path, true])
    }
  })

  test.each([
    ['reckonedAnew', ['compute, calculate or estimate']],
    ['It is\n * said anew.', ['is reported, shown or stated', 'again']],
    ['millimetresPer wholeProgramme', ['millimeter', 'program']],
    ['the centre of a catalogue', ['center', 'catalog']],
    ['recognised, organisation', ['recognize', 'organize']],
    ['the behaviour of neighbours', ['behavior', 'neighbor']],
    ['labelled, cancelling', ['labeled or labeling, with one l', 'canceled or canceling, with one l']],
    ['towards, upwards', ['toward', 'upward']],
    ['one row a limb', ['per, as in one row per limb']]
  ])('“%s” is not used', (text, write) => {
    expect(unusedWords('x.ts', text).map((found) => found.write)).toEqual(write)
  })

  test.each([
    'diamètre, diametre, perimetre, symmetry, vigoureux',
    'aria-labelledby, programmer, organism, analyses, fulfilled',
    'recommend, advise, promise, otherwise, four hours',
    'forward, said, there, a row of a table'
  ])('“%s” may stand', (text) => {
    expect(unusedWords('x.ts', text)).toEqual([])
  })
})
